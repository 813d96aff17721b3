import type { Figure } from '../../core/figure'
import type { HoldingPlan, UnitId } from '../../core/plan/types'
import type { Case } from '../case'
import type { GivenUnit } from '../given'
import { isHung } from '../positions'

const VERDICTS = new Set(['exceeds', 'below the figure you entered', 'unknown'])
/** Newtons in the weight of a kilogram. */
const GRAVITY = 9.81
const HANGERS = 2

/** A load, and the figures somebody entered that it is held against. */
interface Against {
  readonly load: Figure
  readonly entered: readonly number[]
}

/** What is said of capacity is one of three things, and follows from the figures entered. */
export function checkCapacity(c: Case, unit: UnitId, holding: HoldingPlan): void {
  const { verdict } = holding
  const given = c.units.get(unit)?.unit
  if (!VERDICTS.has(verdict)) c.refuse('verdict', unit, `"${verdict}" is not a thing to say about capacity`)
  if (verdict === 'unknown' || given === undefined) return
  const told = comparisons(c, given, holding).filter((a) => a.entered.length > 0)
  const loads = told.flatMap(({ load, entered }) => (load.state === 'unknown' ? [] : [{ ...load, entered }]))
  if (loads.length === 0) {
    c.refuse('verdict', unit, `it is called "${verdict}" though no figure was entered to tell by`)
  } else if (verdict === 'exceeds' && withinTogether(loads)) {
    c.refuse('verdict', unit, 'no load on it exceeds a figure entered')
  } else if (verdict === 'below the figure you entered') {
    const over = loads.find((l) => l.value > Math.max(...l.entered))
    if (over !== undefined)
      c.refuse('verdict', unit, `a load of ${over.value} is over ${over.entered.join(', ')}`)
  }
}

/** Pull and shear against the makers' figures for the fixings, weight on a hanger against its rated load. */
function comparisons(c: Case, unit: GivenUnit, holding: HoldingPlan): readonly Against[] {
  const purposes = isHung(unit) ? ['plate', 'rail', 'back-rail', 'cleat'] : ['base-bracket', 'tall-restraint']
  const own = c.plan.holes.filter((h) => h.for.includes(unit.id) && purposes.includes(h.purpose))
  const fixings = c.given.fixings.filter((f) => own.some((h) => h.fixing === f.id))
  const known = (values: readonly (number | null)[]): readonly number[] => values.filter((v) => v !== null)
  const rated = unit.hanging.ratedPerHanger.value
  const onHangers = unit.stands === 'plates' || unit.stands === 'rail'
  return [
    { load: holding.pullPerFixing, entered: known(fixings.map((f) => f.pull.value)) },
    { load: holding.shearPerFixing, entered: known(fixings.map((f) => f.shear.value)) },
    { load: holding.shear, entered: onHangers && rated !== null ? [rated * HANGERS * GRAVITY] : [] },
  ]
}

/** All loads within what was entered, and pull and shear within it together: a fixing takes both at once. */
function withinTogether(
  loads: readonly { readonly value: number; readonly pm: number; readonly entered: readonly number[] }[],
): boolean {
  const shares = loads.map((l) => (l.value + l.pm) / Math.min(...l.entered))
  return shares.every((share) => share <= 1) && shares.reduce((total, share) => total + share, 0) <= 1
}
