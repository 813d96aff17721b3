import { derive, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import { type HoodOverHob, hoodPlaces } from '../placing/hood-places'
import { overLimit } from '../placing/over-limit'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import { applianceSaid } from '../units/part-name'
import type { Found, Rule, Site } from './rule'

const PLAY = known(1, 0, 'mm', [], {
  kind: 'common-practice',
  why: 'a hood wants 1 mm more than its own width to go up between two units',
})
/** Both units are set to their marks, each within 1 mm (common practice): their places on the wall are chosen, not read. */
const TO_THE_MARKS = 2
/** The narrowest hood commonly made, and what is still taken for a space made for it. Common practice. */
const NARROWEST = 600
const MADE_FOR_IT = 10

const HIGH: readonly UnitPlan['kind'][] = ['wall', 'corner-wall', 'bridging', 'tall', 'open-end']

interface Gap {
  readonly left: UnitPlan
  readonly right: UnitPlan
  readonly width: Figure
}

/** The high units left and right of where the hood hangs, and the width between them. */
function gapAt(site: Site, { wall, middle, within }: HoodOverHob): Gap | null {
  const high = site.along(wall).filter(({ kind, unit }) => HIGH.includes(kind) && unit !== within)
  if (!hasValue(middle)) return null
  const left = high.filter(({ right }) => hasValue(right) && right.value <= middle.value).at(-1)
  const right = high.find((one) => hasValue(one.left) && one.left.value >= middle.value)
  if (left === undefined || right === undefined) return null
  const width = derive(
    'mm',
    rule.basis,
    [right.left, left.right],
    (to, from) => (to as number) - (from as number),
  )
  const isKnown = hasValue(width)
  return { left, right, width: isKnown ? { ...width, pm: Math.min(width.pm, TO_THE_MARKS) } : width }
}

function judged(site: Site, place: HoodOverHob): Found | null {
  const { hood, wall } = place
  const gap = gapAt(site, place)
  // A hood in a unit of its own hangs in that, not in a gap.
  const isBuiltIn = site.units.some(({ unit, kind }) => unit === place.within && kind !== 'appliance-space')
  if (gap === null || isBuiltIn) return null
  const { left, right, width } = gap
  const short = sum('mm', rule.basis, [hood.widthNeeded, PLAY], [width])
  const stands = overLimit(short)
  const values = {
    hood: applianceSaid(hood),
    left: left.name,
    right: right.name,
    width,
    needed: hood.widthNeeded,
    short,
  }
  const common = {
    subjects: [hood.id],
    about: [hood.id, left.unit, right.unit],
    where: { wall, along: left.right, height: left.underside },
    ask: ['ask'] as const,
  }
  if (stands === 'within') return null
  if (stands === 'not-known') {
    const isMadeForIt = hasValue(width) && width.value <= NARROWEST + MADE_FOR_IT
    const from = [factId('appliances', hood.id, 'widthNeeded')]
    return isMadeForIt ? { ...common, weight: 'ask', said: ['not-known', values], from } : null
  }
  const weight = stands === 'over' ? 'stop' : 'ask'
  return { ...common, weight, said: [stands === 'over' ? 'narrow' : 'may-be-narrow', values] }
}

/** F100: a hood that is wider than the gap left for it between two wall units. */
export const rule: Rule = {
  id: 'hood-gap',
  heading: 'The gap for the hood',
  catches: ['F100'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'from the right side of one unit to the left side of the next' },
  why: 'A hood sold as 600 needs more than 600, and two units hung first leave it just that or less.',
  words: {
    narrow:
      '{hood} does not go in between {left} and {right}: there are {width}, and it needs {needed} and a little play. It is {short} too wide.',
    'may-be-narrow':
      '{hood} may not go in between {left} and {right}: there are {width}, and it needs {needed} and a little play. Readings this near cannot tell.',
    'not-known':
      '{hood} goes in between {left} and {right}, where there are {width}. How wide it is nobody has entered; a hood sold as 600 needs more than that.',
    ask: 'Measure the body of the hood. Measure the gap at the wall and at the front, below and above, once one unit hangs.',
  },
  check: (site) =>
    hoodPlaces(site.kitchen, site.survey, site.units).flatMap((place) => judged(site, place) ?? []),
}
