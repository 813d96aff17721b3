import type { Job } from '../../operations/job'
import { type Joint, joints } from '../../operations/neighbours'
import { type Outward, outwardPairs } from '../../operations/runs'
import { because, practice, reason } from '../reason'
import type { Work } from '../work'
import type { OrderRule } from './rule'

const COST = 5

/** Joints go outward from the unit that was levelled first: each next one is drawn to what is joined already. */
export const joinsOutward: OrderRule = (job, work) => {
  const all = joints(job)
  const inTurn = sequence(job, all)
  return inTurn.flatMap(({ first, next, start }) =>
    reason({
      before: joinOf(work, first),
      after: joinOf(work, next),
      kind: 'practice',
      rule: 'joins-outward',
      basis: practice('joints go outward from the unit that was levelled first'),
      because: because('joins-outward', {
        left: first.left.name,
        right: first.right.name,
        start,
        at: first.right.plan.left,
      }),
      facts: [first.left, first.right, next.left, next.right].map((unit) => `units.${unit.id}`),
      figures: [next.right.plan.left],
      cost: COST,
    }),
  )
}

const joinOf = (work: Work, { left, right }: Joint) =>
  work.ofKind('join').find((join) => join.on.includes(left.id) && join.on.includes(right.id))

interface Turn {
  readonly first: Joint
  readonly next: Joint
  readonly start: string
}

/** One joint and the next outward: of pairs along a run, and of a run that begins at a tall or ends against one. */
function sequence(job: Job, all: readonly Joint[]): readonly Turn[] {
  const pairs = outwardPairs(job)
  const of = (a: string, b: string) =>
    all.find(({ left, right }) => (left.id === a && right.id === b) || (left.id === b && right.id === a))
  const talls = (unit: string) =>
    all.filter(
      ({ left, right }) =>
        (left.id === unit && right.way === 'tall') || (right.id === unit && left.way === 'tall'),
    )
  return pairs.flatMap((pair): readonly Turn[] => {
    const own = of(pair.from.id, pair.to.id)
    if (own === undefined) return []
    const start = pair.startAt.name
    const onward = pairs
      .filter((other) => other.from.id === pair.to.id)
      .flatMap((p) => of(p.from.id, p.to.id) ?? [])
    return [
      ...onward.map((next) => ({ first: own, next, start })),
      ...talls(pair.to.id).map((next) => ({ first: own, next, start })),
      ...(isFirst(pair, pairs) ? talls(pair.from.id).map((first) => ({ first, next: own, start })) : []),
    ]
  })
}

/** The run begins with this pair, beside the tall. */
function isFirst(pair: Outward, pairs: readonly Outward[]): boolean {
  return pair.start === 'tall' && !pairs.some((other) => other.to.id === pair.from.id)
}
