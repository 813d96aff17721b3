/** Difference networks against a second opinion: every subset of wishes tried, each judged by Floyd and Warshall. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { tightestRoom } from '../../src/core/difference/bounds'
import { allMinimalConflicts, leastRepairs } from '../../src/core/difference/conflicts'
import { type Constraint, type ConstraintGroup, isConsistent } from '../../src/core/difference/network'
import { shortestConflict } from '../../src/core/difference/shortest-conflict'

const NODES = ['a', 'b', 'c', 'd', 'e', 'f']
const node = fc.constantFrom(...NODES)

/** Quarters, so that sums are exact however they are added. */
const bare = fc
  .record({ from: node, to: node, most: fc.integer({ min: -16, max: 24 }).map((q) => q / 4) })
  .map((one) => (one.from === one.to ? { ...one, most: Math.abs(one.most) } : one))
const listOf = (prefix: string, maxLength: number, minLength = 0) =>
  fc
    .array(bare, { minLength, maxLength })
    .map((list) =>
      list.map((one, i): Constraint => ({ ...one, id: `${prefix}${String(i).padStart(2, '0')}` })),
    )

const groups = fc
  .array(fc.array(bare, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 9 })
  .map((all) =>
    all.map(
      (list, g): ConstraintGroup => ({
        id: `g${g}`,
        constraints: list.map((one, i) => ({ ...one, id: `g${g}.${i}` })),
      }),
    ),
  )

/** Least sums from each to each, in a table: all pairs through each middle in turn. */
function leastSums(constraints: readonly Constraint[]): readonly (readonly number[])[] {
  const least = NODES.map((_, i) => NODES.map((_, k) => (i === k ? 0 : Number.POSITIVE_INFINITY)))
  const at = (row: number, column: number) => (least[row] as number[])[column] as number
  const lower = (row: number, column: number, value: number) => {
    if (value < at(row, column)) (least[row] as number[])[column] = value
  }
  for (const { from, to, most } of constraints) lower(NODES.indexOf(from), NODES.indexOf(to), most)
  for (let k = 0; k < NODES.length; k++) {
    for (let i = 0; i < NODES.length; i++) {
      for (let j = 0; j < NODES.length; j++) lower(i, j, at(i, k) + at(k, j))
    }
  }
  return least
}

const holds = (constraints: readonly Constraint[]): boolean =>
  leastSums(constraints).every((row, i) => (row[i] as number) >= 0)

/** Every subset of the groups, and whether it holds with the background. */
function subsets(all: readonly ConstraintGroup[], background: readonly Constraint[]) {
  return Array.from({ length: 2 ** all.length }, (_, bits) => {
    const chosen = all.filter((_, i) => (bits & (1 << i)) !== 0)
    const ids = chosen.map(({ id }) => id)
    return { ids, holds: holds([...background, ...chosen.flatMap(({ constraints }) => constraints)]) }
  })
}

const inOrder = (sets: readonly (readonly string[])[]) => sets.map((set) => set.join(' ')).sort()

test('all smallest contradictions and all least repairs, against every subset', () => {
  let clashing = 0
  let several = 0
  fc.assert(
    fc.property(groups, listOf('k', 4), (all, background) => {
      const tried = subsets(all, background)
      const bad = tried.filter((one) => !one.holds).map(({ ids }) => ids)
      const within = (small: readonly string[], large: readonly string[]) =>
        small.every((id) => large.includes(id))
      const smallest = bad.filter(
        (set) => !bad.some((other) => other.length < set.length && within(other, set)),
      )
      const most = Math.max(...tried.filter((one) => one.holds).map(({ ids }) => ids.length))
      const repairs = tried
        .filter((one) => one.holds && one.ids.length === most)
        .map(({ ids }) => all.map(({ id }) => id).filter((id) => !ids.includes(id)))
      expect(inOrder(allMinimalConflicts(all, background))).toEqual(inOrder(smallest))
      expect(inOrder(leastRepairs(all, background))).toEqual(inOrder(repairs))
      clashing += smallest.length > 0 ? 1 : 0
      several += smallest.length > 1 ? 1 : 0
    }),
    { seed: 20_261, numRuns: 500 },
  )
  // The cases must not be all easy ones.
  expect(clashing).toBeGreaterThan(200)
  expect(several).toBeGreaterThan(100)
})

test('whether constraints hold together', () => {
  fc.assert(
    fc.property(listOf('k', 16, 2), (all) => {
      expect(isConsistent(all)).toBe(holds(all))
      expect(shortestConflict(all) === undefined).toBe(holds(all))
    }),
    { seed: 20_262, numRuns: 500 },
  )
})

test('the room of each thing, and that the constraints named add up to its ends', () => {
  fc.assert(
    fc.property(listOf('k', 12), (all) => {
      fc.pre(holds(all))
      const sums = leastSums(all)
      const room = tightestRoom(all, 'a')
      for (const [thing, { lowest, highest }] of room ?? []) {
        const i = NODES.indexOf(thing)
        const [up, down] = [(sums[0] as number[])[i] as number, (sums[i] as number[])[0] as number]
        expect(highest?.value ?? Number.POSITIVE_INFINITY).toBe(up)
        expect(lowest?.value ?? Number.NEGATIVE_INFINITY).toBe(-down + 0)
        const total = (by: readonly string[] = []) =>
          by.reduce((sum, id) => sum + (all.find((one) => one.id === id)?.most ?? Number.NaN), 0)
        if (highest) expect(total(highest.by)).toBe(highest.value)
        if (lowest) expect(total(lowest.by) + lowest.value).toBe(0)
      }
    }),
    { seed: 20_263, numRuns: 500 },
  )
})

test('the contradiction told is a ring of the fewest constraints, and misses by what it says', () => {
  let told = 0
  fc.assert(
    fc.property(listOf('k', 10, 6), (all) => {
      const conflict = shortestConflict(all)
      if (conflict === undefined) return
      told++
      const within = all.filter(({ id }) => conflict.constraints.includes(id))
      expect(holds(within)).toBe(false)
      expect(within.reduce((sum, { most }) => sum + most, 0)).toBe(-conflict.by)
      // Nothing smaller contradicts itself.
      for (let bits = 0; bits < 2 ** all.length; bits++) {
        const some = all.filter((_, i) => (bits & (1 << i)) !== 0)
        if (some.length < within.length) expect(holds(some)).toBe(true)
      }
    }),
    { seed: 20_264, numRuns: 300 },
  )
  expect(told).toBeGreaterThan(50)
})

test('the order in which groups and constraints are listed changes nothing', () => {
  fc.assert(
    fc.property(groups, listOf('k', 4), (all, background) => {
      const turned = [...all]
        .reverse()
        .map(({ id, constraints }) => ({ id, constraints: [...constraints].reverse() }))
      const back = [...background].reverse()
      expect(allMinimalConflicts(turned, back)).toEqual(allMinimalConflicts(all, background))
      expect(leastRepairs(turned, back)).toEqual(leastRepairs(all, background))
      expect(shortestConflict(back)).toEqual(shortestConflict(background))
    }),
    { seed: 20_265, numRuns: 300 },
  )
})
