import { disagreement } from '../agree'
import { type Case, underside } from '../case'
import type { GivenUnit } from '../given'
import { less, type Measure, nought, taken, work } from '../measure'
import { isCarcass } from '../positions'

/** North America: what one person may be planned to lift, by the equation of its institute, in millimetres and kg. */
const BEST = 23
/** kg: figures are kept to a thousandth, and inches to a hundredth of a millimetre. */
const NEAR = 0.01

/**
 * One person's lift in North America is shown with what the equation recommends at both ends, and nobody is left to lift
 * more than that alone. Elsewhere no such figure is shown.
 */
export function checkAlone(c: Case, unit: GivenUnit): void {
  const lift = c.planUnits.get(unit.id)?.lift
  if (lift === undefined) return
  const wanted = c.given.region === 'north-america' && isCarcass(unit) && unit.kind !== 'tall'
  if (lift.alone === undefined || !wanted) {
    if (wanted) c.refuse('lift', unit.id, 'what is recommended for one person is not shown')
    if (lift.alone !== undefined && !wanted) {
      c.refuse('lift', unit.id, 'a weight for one person is shown that nothing recommends')
    }
    return
  }
  const to = less(underside(c, unit.id), taken(c.plan.floor.highPoint.z))
  const own = [recommended(unit, nought, to), recommended(unit, to, to)]
  const lower = work(own, (a, b) => Math.min(a, b))
  const { alone } = lift
  for (const [figure, measure] of [
    [alone.lifting, own[0]],
    [alone.placing, own[1]],
    [alone.lower, lower],
  ] as const) {
    const fault = measure === undefined ? null : disagreement(figure, measure, NEAR)
    if (fault !== null) c.refuse('lift', unit.id, `weight for one person: ${fault}`)
  }
  const mass = taken(lift.massStripped).value
  const isLoneLift = lift.people === 1 && lift.aid === 'none'
  if (isLoneLift && (mass === null || lower.value === null || mass > lower.value + NEAR)) {
    c.refuse('lift', unit.id, 'one person is to lift more than is recommended for one')
  }
}

/** Hands under the box at this height, `to` being as far as it goes up from the floor. */
function recommended({ width, height, depth }: GivenUnit, at: Measure, to: Measure): Measure {
  const isSmall = (width.value ?? Infinity) <= 400 && (height.value ?? Infinity) <= 300
  return work([depth, at, to], (d, hands, end) => {
    const reach = Math.max(250, d / 2 + (hands >= 250 ? 200 : 250))
    const rise = Math.max(250, Math.abs(end))
    if (reach > 630 || hands > 1750 || rise > 1750) return 0
    const grip = isSmall ? (hands < 750 ? 0.95 : 1) : 0.9
    const height = 1 - (3 * Math.abs(Math.max(0, hands) - 750)) / 10_000
    return (BEST * 250 * height * (0.82 + 45 / rise) * grip) / reach
  })
}
