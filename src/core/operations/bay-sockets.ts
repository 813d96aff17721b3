import { hasValue } from '../figure'
import type { Message } from '../message'
import type { NamedFigure, UnitPlan } from '../plan/types'
import { type Behind, behindUnit } from './behind-unit'
import { type Job, unitsAlong } from './job'
import { shown, told } from './make'

/** What plugs in: a switch or an aerial in a bay is no matter for the appliance. */
const POWER: readonly string[] = ['socket', 'fused spur', 'cooker outlet']

const powerBehind = (job: Job, plan: UnitPlan, from: 'underside' | 'floor'): readonly Behind[] =>
  behindUnit(job, plan, from).filter((one) => one.isOutlet && POWER.includes(one.what))

export interface BaySockets {
  readonly does: readonly Message[]
  readonly figures: readonly NamedFigure[]
  /** Whether an outlet lies in a bay, out of reach of whoever has to pull the plug. */
  readonly outOfReach: boolean
}

/**
 * Where an appliance in a space plugs in, as far as the file says: an outlet behind the appliance cannot be reached once it
 * stands there; one in the unit beside it can.
 */
export function baySockets(job: Job): BaySockets {
  const spaces = job.context.units.filter(({ kind }) => kind === 'appliance-space')
  const within = spaces.flatMap((bay) => powerBehind(job, bay, 'floor').map((one) => ({ bay, one })))
  const [first] = within
  const figures = within.map(({ bay, one }) =>
    shown(`bay.${bay.unit}.${one.id}`, one.along, 'bay-outlet', {
      what: one.what,
      bay: bay.name,
      wall: job.wallName(bay.wall),
    }),
  )
  if (first !== undefined) {
    const does = [told('prove', 'outlet-in-bay', { what: first.one.what, bay: first.bay.name })]
    return { does, figures, outOfReach: true }
  }
  const beside = spaces.flatMap((bay) => besideBay(job, bay))
  return { does: beside.slice(0, 1), figures: [], outOfReach: false }
}

/** The outlet in a unit on either side of a bay, below its worktop. */
function besideBay(job: Job, bay: UnitPlan): readonly Message[] {
  const row = unitsAlong(job, bay.wall).filter(({ kind }) => kind === 'base' || kind === 'corner-base')
  const touches = (a: UnitPlan['left'], b: UnitPlan['left']) =>
    hasValue(a) && hasValue(b) && Math.abs(a.value - b.value) <= 1
  return row
    .filter((unit) => touches(unit.right, bay.left) || touches(unit.left, bay.right))
    .flatMap((unit) =>
      powerBehind(job, unit, 'underside')
        .slice(0, 1)
        .map(({ what }) => told('prove', 'outlet-beside', { what, bay: bay.name, unit: unit.name })),
    )
}
