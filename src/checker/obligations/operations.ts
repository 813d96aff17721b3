import type { Operation } from '../../core/plan/types'
import type { Case } from '../case'
import { eitherWay, expectedOperations, jointOf, timberLacking } from '../expected-operations'

/** Everything that has to be done is there once; nothing is there that this kitchen does not call for. */
export function checkOperations(c: Case): void {
  const { operations } = c.plan
  const expected = expectedOperations(c)
  const counts = new Map<string, number>()
  for (const op of operations) counts.set(op.id, (counts.get(op.id) ?? 0) + 1)
  for (const [id, count] of counts) {
    if (count > 1) c.refuse('operation twice', id, `it is in the plan ${count} times`)
    if (!expected.allowed(id)) c.refuse('operation unknown', id, 'this kitchen calls for no such operation')
  }
  for (const id of expected.required) {
    if (!counts.has(id))
      c.refuse('operation missing', id, 'this kitchen calls for it and the plan leaves it out')
  }
  for (const ways of eitherWay(c)) {
    const there = ways.filter((id) => counts.has(id)).length
    if (there !== 1) c.refuse('operation missing', ways.join(' or '), `the part is fitted ${there} times`)
  }
  for (const id of timberLacking(c)) {
    c.refuse('operation missing', id, 'too little timber is behind the unit, and none is put in')
  }
  checkJoints(c, expected.joints)
  for (const op of operations) checkIdentity(c, op)
}

function checkJoints(c: Case, joints: readonly (readonly [string, string])[]): void {
  const there = c.plan.operations.flatMap((op) => {
    const pair = jointOf(op)
    return pair === null ? [] : [pair.toSorted().join('+')]
  })
  for (const [a, b] of joints) {
    const pair = [a, b].toSorted().join('+')
    const count = there.filter((t) => t === pair).length
    if (count !== 1)
      c.refuse('operation missing', `join:${a}+${b}`, `the two touch and are joined ${count} times`)
  }
}

/** The id says what is done to what, and the operation's own fields say the same. */
function checkIdentity(c: Case, op: Operation): void {
  const [kind = '', objects = '', more] = op.id.split(':')
  if (more !== undefined || kind !== op.kind || !/^[a-z][a-z-]*$/.test(kind) || objects === '') {
    c.refuse('operation id', op.id, 'the id is not its kind and what it acts on')
  }
  if (op.kind === 'join' && objects.split('+').some((id) => !op.on.includes(id))) {
    c.refuse('operation id', op.id, 'it does not say that it acts on both units')
  }
  const unit = c.units.get(objects)
  if (unit !== undefined && !op.on.includes(objects)) {
    c.refuse('operation id', op.id, 'it does not say that it acts on its unit')
  }
  checkReferences(c, op)
}

function checkReferences(c: Case, op: Operation): void {
  const lists: readonly (readonly [readonly string[], ReadonlySet<string>, string])[] = [
    [op.holding, new Set(c.units.keys()), 'unit'],
    [op.changes.map((ch) => ch.unit), new Set(c.units.keys()), 'unit'],
    [op.lines, new Set(c.plan.lines.map((l) => l.id)), 'line'],
    [op.marks, new Set(c.plan.marks.map((m) => m.id)), 'mark'],
    [op.holes, new Set(c.plan.holes.map((h) => h.id)), 'hole'],
    [op.rails, new Set(c.given.rails.map((r) => r.id)), 'rail'],
    [op.wall === null ? [] : [op.wall], new Set(c.room.frames.keys()), 'wall'],
  ]
  for (const [ids, there, what] of lists) {
    for (const id of ids) if (!there.has(id)) c.refuse('reference', op.id, `there is no ${what} ${id}`)
  }
  if (op.path !== null && c.plan.paths[op.path] === undefined) {
    c.refuse('reference', op.id, `there is no path number ${op.path}`)
  }
  if (op.people < 1 || op.minutes.low > op.minutes.typical || op.minutes.typical > op.minutes.high) {
    c.refuse('operation figures', op.id, 'its people or minutes make no sense')
  }
  const done = c.achieved.done.has(op.id)
  if (op.done !== done) {
    c.refuse('done', op.id, done ? 'the day log says it is done' : 'the day log does not say it is done')
  }
}
