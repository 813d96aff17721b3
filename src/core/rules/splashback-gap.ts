import { type Basis, hasValue, known } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import { HUNG_KINDS } from '../kitchen/kinds'
import type { FinishingPart } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import { partName } from '../units/part-name'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a splashback wants 2 mm over its height to go in and be sealed; a joint of more than 5 mm is seen',
}
const PLAY = known(2, 0, 'mm', [], practice)
const SEEN = 5

/** The lowest hung unit over the stretch of wall that the units of a splashback take up; none: it ends free. */
function lowestOver(site: Site, { of }: FinishingPart): UnitPlan | undefined {
  const own = of.flatMap((id) => site.unit(id) ?? [])
  const over = site.units.filter((unit) => {
    if (!HUNG_KINDS.includes(unit.kind)) return false
    return own.some(
      (below) =>
        below.wall === unit.wall &&
        hasValue(below.left) &&
        hasValue(below.right) &&
        hasValue(unit.left) &&
        hasValue(unit.right) &&
        unit.left.value < below.right.value &&
        unit.right.value > below.left.value,
    )
  })
  const heightOf = ({ underside }: UnitPlan) => (hasValue(underside) ? underside.value : Infinity)
  return [...over].sort((a, b) => heightOf(a) - heightOf(b))[0]
}

function judged(site: Site, part: FinishingPart): Found | null {
  const over = lowestOver(site, part)
  if (over === undefined) return null
  const gap = sum('mm', rule.basis, [over.underside], [heightNamed(site.heights, 'worktop-top')])
  const tall = sum('mm', practice, [part.height, PLAY], [gap])
  const stands = overLimit(tall)
  if (!hasValue(gap) || !hasValue(part.height) || stands === 'not-known') return null
  const open = sum('mm', rule.basis, [gap], [part.height])
  const values = { part: partName(site.kitchen, part), unit: over.name, gap, height: part.height, open }
  const common = {
    subjects: [part.id],
    about: [part.id, over.unit],
    where: { wall: over.wall, along: over.left, height: over.underside },
  }
  // A millimetre more, for the cut.
  const fits = Math.floor(gap.value - gap.pm - PLAY.value) - 1
  const edits = [{ set: factId('finishing', part.id, 'height'), to: fits }]
  if (stands !== 'within') {
    return {
      ...common,
      weight: stands === 'over' ? 'stop' : 'ask',
      said: [stands === 'over' ? 'tall' : 'near', { ...values, over: tall, play: PLAY }],
      ask: ['ask'],
      waysOut: [{ said: ['cut', { fits: known(fits, 0, 'mm', gap.from) }], cost: 'an hour', edits }],
    }
  }
  if (!hasValue(open) || open.value - open.pm <= SEEN) return null
  return { ...common, weight: 'warn', said: ['short', values], ask: ['ask'] }
}

/** F84: a splashback that is higher than the gap it goes into, or so low that the gap over it is seen. */
export const rule: Rule = {
  id: 'splashback-gap',
  heading: 'The gap for the splashback',
  catches: ['F84'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'from the top of the worktop to the underside of the units over it' },
  why: 'A splashback is ordered to the drawing and not to the units as they hang; glass and stone are not cut on site.',
  words: {
    tall: 'The {part} does not go in under {unit}: it is {height} high, the gap over the worktop is {gap}, and {play} are wanted for the joint. It is {over} too high.',
    near: 'The {part} may not go in under {unit}: it is {height} high and the gap over the worktop is {gap}. Readings this near cannot tell: measure the gap when the units hang.',
    short:
      'The {part} leaves a gap of {open} under {unit}: it is {height} high, the gap over the worktop is {gap}.',
    ask: 'Order a splashback only when worktop and units are in, from the gap measured at both ends.',
    cut: 'Have it made {fits} high.',
  },
  check: (site) =>
    site.kitchen.finishing
      .filter(({ kind }) => kind === 'splashback')
      .flatMap((part) => judged(site, part) ?? []),
}
