import { valueOf } from '../figure'
import type { Kitchen, OrderWish } from '../kitchen/schema'
import { message } from '../message'
import type { Finding, NoPlan, Operation, OrderReason } from '../plan/types'
import { wishConflicts } from './wish-conflicts'

/** What setting aside a wish that is not a must costs, in minutes: more than most practices. */
const SOFT_COST = 25

export interface WishesRead {
  readonly reasons: readonly OrderReason[]
  readonly findings: readonly Finding[]
}

/** What comes of the wishes: reasons, or contradictions and the ways out of them. */
export interface WishesAnswered extends WishesRead, Pick<NoPlan, 'conflicts' | 'repairs'> {}

/**
 * The wishes on the order of this kitchen. Those that must hold are tried against its hard reasons and each other; any
 * contradiction is told with the hard reasons it runs through.
 */
export function answerWishes(
  kitchen: Kitchen,
  operations: readonly Operation[],
  reasons: readonly OrderReason[],
): WishesAnswered {
  const read = readWishes(kitchen, operations)
  const hard = reasons.filter((reason) => reason.hard)
  return { ...read, ...wishConflicts(operations, hard, read.reasons) }
}

type Side = OrderWish['before']

/** Whether one side of a wish means this operation: by id, or by kind, or by what it is done on, or both. */
function means(side: Side, operation: Operation, walls: ReadonlySet<string>): boolean {
  const { operation: id, kind, on } = side
  if (id === undefined && kind === undefined && on === undefined) return false
  if (id !== undefined && id !== operation.id) return false
  if (kind !== undefined && kind !== operation.kind) return false
  if (on === undefined) return true
  return operation.on.includes(on) || (walls.has(on) && operation.wall === on)
}

/** Wishes on the order, as reasons like any other; those that name nothing that is to be done are asked about. */
export function readWishes(kitchen: Kitchen, operations: readonly Operation[]): WishesRead {
  const walls = new Set(kitchen.walls.map((wall) => wall.id))
  const reasons: OrderReason[] = []
  const findings: Finding[] = []
  for (const wish of [...kitchen.wishes.order].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const before = operations.filter((operation) => means(wish.before, operation, walls))
    const after = operations.filter((operation) => means(wish.after, operation, walls))
    const pairs = before.flatMap((b) => after.flatMap((a) => (a.id === b.id ? [] : [[b, a] as const])))
    reasons.push(...pairs.map(([b, a]) => wishReason(wish, b, a)))
    if (pairs.length === 0) findings.push(namesNothing(wish, before.length === 0 ? 'before' : 'after'))
  }
  return { reasons, findings }
}

function wishReason(wish: OrderWish, before: Operation, after: Operation): OrderReason {
  const least = valueOf(wish.minLag)
  const most = valueOf(wish.maxLag)
  const figures = [wish.minLag, wish.maxLag].filter((lag) => lag.state !== 'unknown')
  const key =
    least === undefined
      ? most === undefined
        ? 'because.wish'
        : 'because.wish.at-most'
      : most === undefined
        ? 'because.wish.at-least'
        : 'because.wish.between'
  return {
    id: `${before.id} < ${after.id}: wish.${wish.id}`,
    before: before.id,
    after: after.id,
    kind: 'wish',
    rule: wish.id,
    hard: wish.hard,
    cost: wish.hard ? 0 : SOFT_COST,
    basis: { kind: 'wish' },
    from: [`wishes.order.${wish.id}`],
    figures,
    because: message(key, { wish: wish.id, least: wish.minLag, most: wish.maxLag }),
    minLag: least ?? 0,
    maxLag: most ?? null,
  }
}

function namesNothing(wish: OrderWish, side: 'before' | 'after'): Finding {
  const { operation, kind, on } = wish[side]
  const named = [operation, kind, on].filter((word) => word !== undefined).join(' ')
  return {
    id: `wish-names-nothing:${wish.id}`,
    rule: 'wish-names-nothing',
    called: message('called.wish-names-nothing'),
    weight: 'ask',
    dangerous: false,
    about: [wish.id],
    where: null,
    say: message(named === '' ? 'finding.wish-names-nothing.empty' : 'finding.wish-names-nothing', {
      wish: wish.id,
      named,
    }),
    figures: [],
    from: [`wishes.order.${wish.id}`],
    basis: { kind: 'wish' },
    ask: message('finding.wish-names-nothing.ask'),
    waysOut: [],
  }
}

/** Waits that one crew, one operation after another, does not meet in the order that was made: see `Arrangement.late`. */
export function lateWishes(late: readonly string[], reasons: readonly OrderReason[]): readonly Finding[] {
  return reasons
    .filter((reason) => late.includes(reason.id))
    .map((reason) => ({
      id: `wish-not-met:${[reason.rule, reason.before, reason.after].join('+')}`,
      rule: 'wish-not-met',
      called: message('called.wish-not-met'),
      weight: 'warn',
      dangerous: false,
      about: [reason.rule, reason.before, reason.after],
      where: null,
      say: message('finding.wish-not-met', { wish: reason.rule, most: reason.maxLag ?? 0 }),
      figures: reason.figures,
      from: reason.from,
      basis: { kind: 'wish' },
      ask: message('finding.wish-not-met.ask'),
      waysOut: [],
    }))
}
