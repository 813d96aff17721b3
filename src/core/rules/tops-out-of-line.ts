import { derive, hasValue, type ValueFigure } from '../figure'
import { HIGH_KINDS } from '../kitchen/kinds'
import type { UnitPlan } from '../plan/types'
import type { Found, Rule, Site } from './rule'

/** A step along the top that is seen. Common practice: a college marking sheet rejects a line that is out by more. */
const SEEN = 2

interface Step {
  readonly left: UnitPlan
  readonly right: UnitPlan
  readonly by: ValueFigure
}

/** Neighbours along a wall whose tops differ, each with the step from the left one up to the right one. */
function stepsOn(site: Site, wall: string): readonly Step[] {
  const high = site.along(wall).filter(({ kind }) => HIGH_KINDS.includes(kind))
  return high.flatMap((right, i) => {
    const left = high[i - 1]
    if (left === undefined) return []
    const by = derive('mm', rule.basis, [right.top, left.top], (r, l) => (r as number) - (l as number))
    return hasValue(by) && Math.abs(by.value) > SEEN + by.pm ? [{ left, right, by }] : []
  })
}

function told(site: Site, wall: string): readonly Found[] {
  const steps = stepsOn(site, wall)
  const [first] = [...steps].sort((a, b) => Math.abs(b.by.value) - Math.abs(a.by.value))
  if (first === undefined) return []
  const { left, right, by } = first
  const step = { ...by, value: Math.abs(by.value) }
  const [high, low] = by.value > 0 ? [right, left] : [left, right]
  const values = { high: high.name, low: low.name, step, wall: site.name(wall), along: right.left }
  return [
    {
      subjects: [wall],
      about: steps.flatMap((one) => [one.left.unit, one.right.unit]),
      weight: 'warn',
      said: [steps.length === 1 ? 'step' : 'steps', { ...values, others: steps.length - 1 }],
      where: { wall, along: right.left, height: high.top },
      figures: [step, ...steps.map((one) => one.by)],
      ask: ['ask'],
    },
  ]
}

/** F56: tops of tall and wall units along one wall that do not line up. */
export const rule: Rule = {
  id: 'tops-out-of-line',
  heading: 'Tops that do not line up',
  catches: ['F56'],
  dangerous: false,
  basis: {
    kind: 'common-practice',
    why: 'tops along one wall are set in one line; a step of more than 2 mm is seen',
  },
  why: 'Talls go up first, and the wall units beside them end higher or lower for as long as the kitchen stands.',
  words: {
    step: '{high} ends {step} higher than {low}, on {wall} at {along} from its left end. Tops that do not line up are seen, and a cornice cannot run across.',
    steps:
      '{high} ends {step} higher than {low}, on {wall} at {along} from its left end; there are {others} more such steps on this wall. Tops that do not line up are seen, and a cornice cannot run across.',
    ask: 'If it is meant so, leave it. Else order carcasses whose heights add up, or set one of the heights free.',
  },
  check: (site) => site.kitchen.walls.flatMap(({ id }) => told(site, id)),
}
