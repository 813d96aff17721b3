/**
 * All smallest contradictions among groups of constraints (wishes), beside a background that always holds: each is a set
 * of groups that cannot hold together although any part of it can. And all ways to mend them with as few groups
 * dropped as possible.
 *
 * What must be dropped has to meet every contradiction, and a contradiction is whatever meets every such way out. So the
 * two are found together: take the least sets that meet all contradictions known so far; if dropping one of them does
 * not help, what is left holds a new contradiction; when all of them help, none is left to find.
 *
 * The work grows with the number of contradictions, which a dozen wishes keep small.
 */
import { type Constraint, type ConstraintGroup, isConsistent } from './network'

/** Some of the groups, as bits: group i is in when bit i is set. */
type Choice = bigint

interface Found {
  readonly conflicts: readonly Choice[]
  /** Every least set of groups whose dropping mends all. */
  readonly repairs: readonly Choice[]
}

/**
 * Every contradiction that has nothing to spare, as group ids in code-unit order; smaller ones first. None: an empty
 * list. A background that contradicts itself: one, of no groups at all.
 */
export function allMinimalConflicts(
  groups: readonly ConstraintGroup[],
  background: readonly Constraint[],
): readonly (readonly string[])[] {
  const { names, found } = explore(groups, background)
  return named(found.conflicts, names)
}

/**
 * Every way to make the rest hold together by dropping as few groups as can be, as group ids. Nothing to mend: one way,
 * dropping nothing. A background that contradicts itself cannot be mended: an empty list.
 */
export function leastRepairs(
  groups: readonly ConstraintGroup[],
  background: readonly Constraint[],
): readonly (readonly string[])[] {
  const { names, found } = explore(groups, background)
  const least = Math.min(...found.repairs.map(sizeOf))
  return named(
    found.repairs.filter((repair) => sizeOf(repair) === least),
    names,
  )
}

function explore(groups: readonly ConstraintGroup[], background: readonly Constraint[]) {
  const sorted = [...groups].sort((a, b) => (a.id < b.id ? -1 : 1))
  const names = sorted.map(({ id }) => id)
  const bits = sorted.map((_, i) => 1n << BigInt(i))
  const holds = remembered((choice) =>
    isConsistent([
      ...background,
      ...sorted.flatMap(({ constraints }, i) => ((choice & (bits[i] as bigint)) === 0n ? [] : constraints)),
    ]),
  )
  return { names, found: holds(0n) ? search(bits, holds) : { conflicts: [0n], repairs: [] } }
}

function remembered(test: (choice: Choice) => boolean): (choice: Choice) => boolean {
  const known = new Map<Choice, boolean>()
  return (choice) => {
    const before = known.get(choice)
    if (before !== undefined) return before
    const answer = test(choice)
    known.set(choice, answer)
    return answer
  }
}

function search(bits: readonly Choice[], holds: (choice: Choice) => boolean): Found {
  const all = bits.reduce((sum, bit) => sum | bit, 0n)
  const conflicts: Choice[] = []
  let repairs: readonly Choice[] = [0n]
  for (;;) {
    const left = repairs.map((repair) => all & ~repair).find((choice) => !holds(choice))
    if (left === undefined) return { conflicts, repairs }
    const conflict = shrink(left, bits, holds)
    conflicts.push(conflict)
    repairs = meetingToo(repairs, conflict, bits)
  }
}

/** Takes groups out of a contradiction as long as it stays one. */
function shrink(choice: Choice, bits: readonly Choice[], holds: (choice: Choice) => boolean): Choice {
  return bits.reduce((left, bit) => ((left & bit) !== 0n && !holds(left & ~bit) ? left & ~bit : left), choice)
}

/** The least sets that meet one set more: those that do already, the others widened by each of its groups. */
function meetingToo(sets: readonly Choice[], one: Choice, bits: readonly Choice[]): readonly Choice[] {
  const meeting = sets.filter((set) => (set & one) !== 0n)
  const widened = sets
    .filter((set) => (set & one) === 0n)
    .flatMap((set) => bits.filter((bit) => (bit & one) !== 0n).map((bit) => set | bit))
  const needed = widened.filter((set) => !meeting.some((smaller) => (smaller & set) === smaller))
  return [...meeting, ...new Set(needed)]
}

function sizeOf(choice: Choice): number {
  let size = 0
  for (let left = choice; left > 0n; left &= left - 1n) size++
  return size
}

/** Sets of names, smaller sets first, then by their names. */
function named(choices: readonly Choice[], names: readonly string[]): readonly (readonly string[])[] {
  return choices
    .map((choice) => names.filter((_, i) => (choice & (1n << BigInt(i))) !== 0n))
    .sort((a, b) => a.length - b.length || compareLists(a, b))
}

function compareLists(a: readonly string[], b: readonly string[]): number {
  const at = a.findIndex((name, i) => name !== b[i])
  return at < 0 ? 0 : (a[at] as string) < (b[at] as string) ? -1 : 1
}
