import { derive, type Figure, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import { type Found, lessThan, margin, missing, type Rule, type Site } from './rule'

/** Two fronts side by side that differ by more are seen to. Common practice. */
const SEEN = 2
/** Talls no further apart than this, mm, stand side by side: a panel may be between. Common practice. */
const SIDE_BY_SIDE = 50
/** What is built in at eye level, and shows a front that is looked at beside another. */
const BUILT_IN: readonly string[] = ['oven', 'microwave']

type Appliance = Kitchen['appliances'][number]

/** An appliance in its housing: where its front begins and ends, from the line. */
interface Housed {
  readonly appliance: Appliance
  readonly tall: UnitPlan
  readonly bottom: Figure
  readonly top: Figure
}

function housed(site: Site, tall: UnitPlan): readonly Housed[] {
  return site.kitchen.appliances
    .filter(({ kind, over }) => over === tall.unit && BUILT_IN.includes(kind))
    .map((appliance) => {
      const bottom = sum('mm', rule.basis, [tall.underside, appliance.shelf])
      return { appliance, tall, bottom, top: sum('mm', rule.basis, [bottom, appliance.heightMin]) }
    })
}

/** Its shelf so high that it does not go in under the top of its housing. */
function tooHigh(site: Site, { appliance, tall }: Housed): readonly Found[] {
  const needed = sum('mm', rule.basis, [appliance.shelf, appliance.heightMin])
  const left = lessThan(tall.height, needed, 'height of the housing less shelf and appliance')
  const key = margin(left)
  if (key !== 'short' && key !== 'near') return []
  const values = {
    name: site.name(appliance.id),
    unit: tall.name,
    shelf: appliance.shelf,
    tall: appliance.heightMin,
    height: tall.height,
  }
  return [
    {
      subjects: [appliance.id],
      about: [appliance.id, tall.unit],
      weight: key === 'short' ? 'stop' : 'ask',
      said: [key === 'short' ? 'too-high' : 'near', { ...values, short: missing(left) }],
      figures: [left],
      where: { wall: tall.wall, along: tall.left },
      ask: ['ask'],
    },
  ]
}

/** The lowest appliance of each of two talls side by side: in line at the bottom or at the top, or seen not to be. */
function sideBySide(site: Site, a: Housed, b: Housed): readonly Found[] {
  const common = {
    subjects: [a.appliance.id, b.appliance.id],
    about: [a.appliance.id, b.appliance.id, a.tall.unit, b.tall.unit],
    where: { wall: b.tall.wall, along: b.tall.left },
    ask: ['ask'] as const,
  }
  const names = { left: site.name(a.appliance.id), right: site.name(b.appliance.id) }
  const unread = [a, b].filter(({ appliance }) => !hasValue(appliance.shelf))
  if (unread.length > 0) {
    const from = unread.map(({ appliance }) => factId('appliances', appliance.id, 'shelf'))
    return [{ ...common, weight: 'ask', said: ['not-read', names], from }]
  }
  const [low, high] = [stepBetween(a.bottom, b.bottom), stepBetween(a.top, b.top)]
  // Of one whose height is not known only the bottoms can be told apart.
  if (!isSeen(low) || (hasValue(high) && !isSeen(high))) return []
  const step = derive('mm', rule.basis, [low], (by) => Math.abs(by as number))
  const upper = hasValue(low) && low.value < 0 ? a : b
  const values = { upper: site.name(upper.appliance.id), lower: upper === a ? names.right : names.left, step }
  return [{ ...common, weight: 'warn', said: ['step', values], figures: [low, high] }]
}

const stepBetween = (a: Figure, b: Figure): Figure => sum('mm', rule.basis, [b], [a])
const isSeen = (step: Figure): boolean => hasValue(step) && Math.abs(step.value) > SEEN + step.pm

function neighbours(site: Site, wall: string): readonly Found[] {
  const talls = site.along(wall).filter(({ kind }) => kind === 'tall')
  return talls.slice(1).flatMap((right, i) => {
    const left = talls[i] as UnitPlan
    const gap = sum('mm', rule.basis, [right.left], [left.right])
    if (!hasValue(gap) || gap.value > SIDE_BY_SIDE) return []
    const [a, b] = [lowestIn(site, left), lowestIn(site, right)]
    return a === undefined || b === undefined ? [] : sideBySide(site, a, b)
  })
}

/** One whose shelf is not known counts as the lowest: it may be. */
function lowestIn(site: Site, tall: UnitPlan): Housed | undefined {
  const at = ({ bottom }: Housed): number => (hasValue(bottom) ? bottom.value : Number.NEGATIVE_INFINITY)
  return [...housed(site, tall)].sort((a, b) => at(a) - at(b))[0]
}

/** F55: an oven in a tall unit out of line with the one beside it, or on a shelf too high for its housing. */
export const rule: Rule = {
  id: 'appliance-in-tall',
  heading: 'Ovens in tall units',
  catches: ['F55'],
  dangerous: false,
  basis: {
    kind: 'common-practice',
    why: 'ovens side by side are set in line at the bottom or at the top; a step of more than 2 mm is seen',
  },
  why: 'The shelves are drilled before the ovens are unpacked; then one door is a hand lower than the next.',
  words: {
    step: '{upper} sits {step} higher in its tall unit than {lower} beside it. They line up neither at the bottom nor at the top, and that is seen.',
    'not-read':
      '{left} and {right} are in tall units side by side, and nobody has said how high their shelves are. Whether they line up cannot be told.',
    'too-high':
      '{name} does not go into {unit}: its shelf at {shelf} and its own height of {tall} come to more than the {height} there are. {short} is missing.',
    near: '{name} may not go into {unit}: its shelf at {shelf} and its own height of {tall} come very near the {height} there are.',
    ask: 'Measure each shelf up from the underside of its unit, and read the sheets of both appliances. Shelf and filler panel give.',
  },
  check: (site) => [
    ...site.units
      .filter(({ kind }) => kind === 'tall')
      .flatMap((tall) => housed(site, tall).flatMap((one) => tooHigh(site, one))),
    ...site.kitchen.walls.flatMap(({ id }) => neighbours(site, id)),
  ],
}
