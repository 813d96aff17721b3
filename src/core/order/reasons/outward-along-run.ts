import type { Figure } from '../../figure'
import type { MessageValue } from '../../message'
import type { Job } from '../../operations/job'
import { wallRound } from '../../operations/neighbours'
import { type Outward, outwardPairs, type SharedStart, sharedStarts, startFloor } from '../../operations/runs'
import type { Operation, OrderReason } from '../../plan/types'
import { because, practice, reason } from '../reason'
import type { Work } from '../work'
import type { OrderRule } from './rule'

const COST = 15

/** Along a run one unit comes after the other, outward from where it begins, and each is levelled to the one before it. */
export const outwardAlongRun: OrderRule = (job, work) => [
  ...outwardPairs(job).flatMap((pair) => [
    // The corner unit before its neighbours is a rule of its own.
    ...(pair.corner ? [] : outward(job, work.move(pair.from.id), work.move(pair.to.id), pair)),
    ...outward(job, work.get(`level:${pair.from.id}`), work.get(`level:${pair.to.id}`), pair),
  ]),
  ...sharedStarts(job).flatMap((shared) => afterBoth(work, shared)),
]

/** The second of two units on one highest floor stands level before what lies beyond the first of them is set. */
function afterBoth(work: Work, { shares, to, pair }: SharedStart): readonly OrderReason[] {
  const floor = startFloor(pair)
  return reason({
    before: work.get(`level:${shares.id}`) ?? work.move(shares.id),
    after: work.move(to.id),
    kind: 'practice',
    rule: 'outward-along-run',
    basis: practice(BASIS['high-point']),
    because: because('outward-along-run.shared-high-point', {
      unit: to.name,
      other: shares.name,
      start: pair.startAt.name,
      ...(floor === undefined ? {} : { floor }),
    }),
    facts: [`units.${shares.id}`, `units.${to.id}`, `units.${pair.startAt.id}`],
    figures: pair.by,
    cost: COST,
  })
}

/** Where the two of a pair meet, along the wall of the second. */
export function meetsAt(job: Job, { from, to }: Outward): Figure {
  if (from.wall !== to.wall)
    return wallRound(job, from.wall, 'right') === to.wall ? to.plan.left : to.plan.right
  return runsRight({ from, to }) ? to.plan.left : to.plan.right
}

function runsRight({ from, to }: Pick<Outward, 'from' | 'to'>): boolean {
  const [a, b] = [from.plan.left, to.plan.left]
  return a.state === 'unknown' || b.state === 'unknown' || a.value <= b.value
}

const BASIS = {
  corner: 'a run grows outwards from the corner unit, each unit levelled to the one before',
  tall: 'wall units begin beside the tall whose top they share, and grow away from it',
  'high-point': 'with no corner a run begins over the highest floor',
  'near-end': 'a run grows outwards, each unit levelled to the one before',
} as const

function outward(
  job: Job,
  before: Operation | undefined,
  after: Operation | undefined,
  pair: Outward,
): readonly OrderReason[] {
  const { from, to, by, start, startAt } = pair
  const values: Record<string, MessageValue> = {
    unit: to.name,
    other: from.name,
    at: meetsAt(job, pair),
    start: startAt.name,
  }
  const floor = startFloor(pair)
  return reason({
    before,
    after,
    kind: 'practice',
    rule: 'outward-along-run',
    basis: practice(BASIS[start]),
    because: because(`outward-along-run.${start}`, floor === undefined ? values : { ...values, floor }),
    facts: [`units.${from.id}`, `units.${to.id}`, `units.${startAt.id}`],
    figures: by,
    cost: COST,
  })
}
