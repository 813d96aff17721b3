import type { OrderReason } from '../../core/plan/types'
import type { Case } from '../case'
import { obligations } from '../must-come-before'
import { onTiltFloor, pathBlockers, tiltBlockers } from '../replay'

/** The order keeps every obligation, and every reason the plan gives; and the reasons tell of every obligation. */
export function checkOrder(c: Case): void {
  const follows = implied(c.plan.reasons.filter((r) => r.hard))
  for (const { before, after, rule, told } of obligations(c)) {
    if (!comesBefore(c, before, after)) {
      c.refuse('order', after, `it comes before ${before}: ${rule}`)
    }
    if (told && !follows(before, after)) {
      c.refuse('reason missing', `${before} < ${after}`, `no hard reason tells of it: ${rule}`)
    }
  }
  for (const reason of c.plan.reasons) checkReason(c, reason)
  checkSetAside(c)
  const ids = new Set<string>()
  for (const { id } of c.plan.reasons) {
    if (ids.has(id)) c.refuse('reason', id, 'it is given twice')
    ids.add(id)
  }
}

function comesBefore(c: Case, before: string, after: string): boolean {
  const a = c.place.get(before)
  const b = c.place.get(after)
  return a !== undefined && b !== undefined && a < b
}

/** Whether one operation must come before another by a chain of the given reasons. */
export function implied(reasons: readonly OrderReason[]): (before: string, after: string) => boolean {
  const next = new Map<string, string[]>()
  for (const r of reasons) next.set(r.before, [...(next.get(r.before) ?? []), r.after])
  const reach = new Map<string, ReadonlySet<string>>()
  return (before, after) => {
    const known = reach.get(before) ?? reachable(next, before)
    reach.set(before, known)
    return known.has(after)
  }
}

function reachable(next: ReadonlyMap<string, readonly string[]>, start: string): ReadonlySet<string> {
  const seen = new Set<string>()
  const todo = [start]
  for (let at = todo.pop(); at !== undefined; at = todo.pop()) {
    for (const to of next.get(at) ?? []) {
      if (seen.has(to)) continue
      seen.add(to)
      todo.push(to)
    }
  }
  return seen
}

const KINDS = new Set([
  'geometry',
  'support',
  'access',
  'datum',
  'service',
  'cure',
  'finish',
  'safety',
  'practice',
  'wish',
])

function checkReason(c: Case, reason: OrderReason): void {
  const { id, before, after, kind, rule, hard } = reason
  for (const end of [before, after]) {
    if (!c.place.has(end)) c.refuse('reason', id, `it speaks of ${end}, which is no operation of the plan`)
  }
  if (id !== `${before} < ${after}: ${kind}.${rule}`) c.refuse('reason', id, 'its id does not say what it is')
  if (before === after || !KINDS.has(kind) || rule === '') c.refuse('reason', id, 'it is not well formed')
  if (reason.from.length === 0) c.refuse('reason', id, 'it rests on no fact')
  if (hard ? reason.cost !== 0 : reason.cost < 0) c.refuse('reason', id, 'its cost makes no sense')
  if (reason.minLag < 0 || (reason.maxLag !== null && reason.maxLag < reason.minLag)) {
    c.refuse('reason', id, 'its waits make no sense')
  }
  if (hard && !comesBefore(c, before, after)) c.refuse('reason broken', id, 'the order does not keep it')
  if (hard && kind === 'geometry') checkGeometry(c, reason)
}

/** A reason that says "geometry" is true in this room: the unit put in later really would be in the way. */
function checkGeometry(c: Case, reason: OrderReason): void {
  const [moved = '', blocker = ''] = [reason.before, reason.after].map((id) => id.split(':')[1] ?? '')
  const path = c.plan.paths.find((p) => p.unit === moved)
  if (path === undefined) {
    c.refuse('geometry', reason.id, `${moved} has no path that anything could block`)
    return
  }
  const really = [...pathBlockers(c, path), ...tiltBlockers(c, path), ...onTiltFloor(c, path)]
  if (!really.includes(blocker)) {
    c.refuse('geometry', reason.id, `${blocker} would not be in the way of ${moved}`)
  }
}

/** What the plan says it sets aside is just what its order does not keep. */
function checkSetAside(c: Case): void {
  const broken = c.plan.reasons
    .filter(
      (r) => !r.hard && c.place.has(r.before) && c.place.has(r.after) && !comesBefore(c, r.before, r.after),
    )
    .map((r) => r.id)
  const said = new Set(c.plan.order.setAside)
  for (const id of broken) {
    if (!said.has(id))
      c.refuse('set aside', id, 'the order does not keep this preferred reason and does not say so')
  }
  for (const id of said) {
    if (!broken.includes(id)) c.refuse('set aside', id, 'it is said to be set aside and is not')
  }
}
