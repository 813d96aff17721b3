import fc from 'fast-check'
import toposort from 'toposort'
import { describe, expect, test } from 'vitest'
import { type ArrangeInput, arrange } from '../../src/core/order/arrange'
import { blocksOf } from '../../src/core/order/blocks'
import { loopsIn } from '../../src/core/order/graph'
import { costParts, MINUTES, pricesOf, total } from '../../src/core/order/objective'
import { leastOfPairs, problemOf } from '../../src/core/order/problem'
import { type Operation, type OrderReason, STAGES } from '../../src/core/plan/types'
import { held, input, must, rather, work } from '../support/some-work'

const TOOLS = ['drill', 'level', 'saw', 'screwdriver', 'laser']

interface Shape {
  readonly operations: readonly Operation[]
  readonly reasons: readonly OrderReason[]
  readonly places: ArrangeInput['places']
  /** An order that keeps every hard reason and every hold. */
  readonly good: readonly string[]
}

/** Random work that can be ordered: a hidden order, held stretches of it, hard arcs along it, preferred ones anywhere. */
const shape = (most: number): fc.Arbitrary<Shape> =>
  fc
    .integer({ min: 2, max: most })
    .chain((n) =>
      fc.record({
        stages: fc.array(fc.integer({ min: 0, max: STAGES.length - 1 }), { minLength: n, maxLength: n }),
        people: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: n, maxLength: n }),
        tools: fc.array(fc.subarray(TOOLS), { minLength: n, maxLength: n }),
        at: fc.array(fc.tuple(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 0, max: 5000 })), {
          minLength: n,
          maxLength: n,
        }),
        names: fc.shuffledSubarray([...Array(n).keys()], { minLength: n, maxLength: n }),
        done: fc.integer({ min: 0, max: n }),
        hard: fc.array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1)), { maxLength: 2 * n }),
        soft: fc.array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1), fc.integer({ min: 1, max: 40 })), {
          maxLength: n,
        }),
        holds: fc.array(fc.boolean(), { minLength: n, maxLength: n }),
      }),
    )
    .map(({ stages, people, tools, at, names, done, hard, soft, holds }) => {
      const good = names.map((name) => `op:${name}`)
      const operations = good.map((id, i) =>
        work(id, {
          stage: STAGES[stages[i] as number] ?? 'snag',
          people: people[i] as number,
          tools: tools[i] as string[],
          done: done === 1 && i === 0,
        }),
      )
      // Holds tie neighbours of the hidden order.
      const block: number[] = []
      holds.forEach((tied, i) => {
        block.push(i > 0 && tied && i % 4 !== 0 ? (block[i - 1] as number) : i)
      })
      const reasons = [
        ...good.slice(1).flatMap((id, i) => (block[i + 1] === block[i] ? [held(good[i] as string, id)] : [])),
        ...hard.flatMap(([a, b]) => (a < b ? [must(good[a] as string, good[b] as string)] : [])),
        ...soft.flatMap(([a, b, cost]) =>
          a === b ? [] : [rather(good[a] as string, good[b] as string, cost)],
        ),
      ]
      const unique = [...new Map(reasons.map((r) => [r.id, r])).values()]
      const places = new Map(good.map((id, i) => [id, { x: at[i]?.[0] ?? 0, y: at[i]?.[1] ?? 0 }]))
      return { operations, reasons: unique, places, good }
    })

function arranged(given: ArrangeInput) {
  const result = arrange(given)
  if (!result.ok)
    throw new Error(`loops: ${result.error.map((l) => l.reasons.map((r) => r.id).join('; ')).join(' | ')}`)
  return result.value
}

function broken(order: readonly string[], reasons: readonly OrderReason[]): readonly string[] {
  const at = new Map(order.map((id, i) => [id, i]))
  return reasons.flatMap((r) => {
    const [a, b] = [at.get(r.before) ?? -1, at.get(r.after) ?? -1]
    if (!r.hard || (a < b && (r.maxLag !== 0 || blockTogether(order, reasons, r)))) return []
    return [r.id]
  })
}

/** The operations of one held stretch lie side by side. */
function blockTogether(order: readonly string[], reasons: readonly OrderReason[], r: OrderReason): boolean {
  const blocks = blocksOf(order, reasons)
  const block = blocks.of[order.indexOf(r.before)]
  const places = order.flatMap((_, i) => (blocks.of[i] === block ? [i] : []))
  return places.every((place, i) => i === 0 || place === (places[i - 1] as number) + 1)
}

/** The cost of an order by the words of the objective, written out a second time. */
function costByHand(s: Shape, order: readonly string[]): number {
  const ops = order.map((id) => s.operations.find((o) => o.id === id) as Operation)
  let cost = 0
  ops.forEach((a, i) => {
    for (const b of ops.slice(i + 1)) {
      if (STAGES.indexOf(a.stage) > STAGES.indexOf(b.stage)) cost += MINUTES.stage
      if (!a.done && b.done) cost += MINUTES.done
    }
    const before = ops[i - 1]
    if (a.people > 1 && (before?.people ?? 1) < 2) cost += MINUTES.helper
    if (before === undefined) return
    cost += a.tools.filter((t) => !before.tools.includes(t)).length * MINUTES.tool
    const [p, q] = [s.places.get(before.id), s.places.get(a.id)]
    if (p !== undefined && q !== undefined) cost += (Math.hypot(p.x - q.x, p.y - q.y) / 1000) * MINUTES.metre
  })
  for (const r of s.reasons) if (!r.hard && order.indexOf(r.before) > order.indexOf(r.after)) cost += r.cost
  return cost
}

/** Stage by stage, ties by id, as hard reasons and holds let it: what one would do without reckoning. */
function plainStageOrder(s: Shape): readonly string[] {
  const ids = s.operations.map((o) => o.id).sort((a, b) => Number(a.slice(3)) - Number(b.slice(3)))
  const blocks = blocksOf(ids, s.reasons)
  const stageOf = (block: number) => {
    const first = ids[(blocks.members[block] as readonly number[])[0] as number]
    return STAGES.indexOf((s.operations.find((o) => o.id === first) as Operation).stage)
  }
  const blockOf = (id: string) => blocks.of[ids.indexOf(id)] as number
  const left = new Set(blocks.members.keys())
  const order: number[] = []
  while (left.size > 0) {
    const free = [...left].filter((b) =>
      s.reasons.every(
        (r) => !r.hard || blockOf(r.after) !== b || blockOf(r.before) === b || !left.has(blockOf(r.before)),
      ),
    )
    const next = free.sort((a, b) => stageOf(a) - stageOf(b) || a - b)[0] as number
    left.delete(next)
    order.push(next)
  }
  return order.flatMap((b) => (blocks.members[b] as readonly number[]).map((i) => ids[i] as string))
}

describe('the arranged order', () => {
  test('holds every operation once, keeps every hard reason and every hold', () => {
    fc.assert(
      fc.property(shape(30), (s) => {
        const { order } = arranged(input(s.operations, s.reasons, { places: s.places }))
        expect([...order].sort()).toEqual([...s.good].sort())
        expect(broken(order, s.reasons)).toEqual([])
      }),
      { numRuns: 300, seed: 1 },
    )
  })

  test('says its cost and what it sets aside as they are', () => {
    fc.assert(
      fc.property(shape(25), (s) => {
        const { order, report } = arranged(input(s.operations, s.reasons, { places: s.places }))
        expect(report.cost).toBeCloseTo(costByHand(s, order), 1)
        const parts = Object.values(report.parts).reduce((sum, part) => sum + part, 0)
        expect(parts).toBeCloseTo(report.cost, 1)
        const aside = s.reasons.filter((r) => !r.hard && order.indexOf(r.before) > order.indexOf(r.after))
        expect([...report.setAside].sort()).toEqual(aside.map((r) => r.id).sort())
      }),
      { numRuns: 200, seed: 2 },
    )
  })

  test('is never worse than plain stage order', () => {
    fc.assert(
      fc.property(shape(25), (s) => {
        const { order } = arranged(input(s.operations, s.reasons, { places: s.places }))
        expect(costByHand(s, order)).toBeLessThanOrEqual(costByHand(s, plainStageOrder(s)) + 1e-6)
      }),
      { numRuns: 300, seed: 3 },
    )
  })

  test('is the same however operations and reasons are listed', () => {
    fc.assert(
      fc.property(shape(20), fc.infiniteStream(fc.nat(1_000_000)), (s, random) => {
        const shuffled = <T>(list: readonly T[]): readonly T[] =>
          list
            .map((item) => ({ item, key: random.next().value as number }))
            .sort((a, b) => a.key - b.key)
            .map(({ item }) => item)
        const one = arranged(input(s.operations, s.reasons, { places: s.places }))
        const other = arranged(input(shuffled(s.operations), shuffled(s.reasons), { places: s.places }))
        expect(JSON.stringify(other)).toBe(JSON.stringify(one))
      }),
      { numRuns: 100, seed: 4 },
    )
  })

  test('cannot be bettered by moving one stretch', () => {
    fc.assert(
      fc.property(shape(9), (s) => {
        const { order } = arranged(input(s.operations, s.reasons, { places: s.places }))
        const cost = costByHand(s, order)
        for (let from = 0; from < order.length; from++) {
          for (let to = 0; to < order.length; to++) {
            const moved = order.filter((_, i) => i !== from)
            moved.splice(to, 0, order[from] as string)
            if (broken(moved, s.reasons).length > 0) continue
            expect(costByHand(s, moved)).toBeGreaterThanOrEqual(cost - 1e-6)
          }
        }
      }),
      { numRuns: 60, seed: 5 },
    )
  })

  test('of few operations is mostly the best there is, and never below what the report says none can be', () => {
    let best = 0
    const runs = 120
    fc.assert(
      fc.property(shape(6), (s) => {
        const { order } = arranged(input(s.operations, s.reasons, { places: s.places }))
        const ids = s.operations.map((o) => o.id).sort()
        const operations = ids.map((id) => s.operations.find((o) => o.id === id) as Operation)
        const priced = input(operations, s.reasons, { places: s.places })
        const prices = pricesOf(priced)
        const optimum = Math.min(
          ...permutations(ids)
            .filter((o) => broken(o, s.reasons).length === 0)
            .map((o) =>
              total(
                costParts(
                  prices,
                  o.map((id) => ids.indexOf(id)),
                ),
              ),
            ),
        )
        const cost = costByHand(s, order)
        expect(cost).toBeGreaterThanOrEqual(optimum - 1e-6)
        if (cost <= optimum + 1e-6) best++
        const least = leastOfPairs(problemOf(ids, s.reasons, blocksOf(ids, s.reasons), prices))
        expect(least).toBeLessThanOrEqual(optimum + 1e-6)
      }),
      { numRuns: runs, seed: 6 },
    )
    expect(best / runs).toBeGreaterThan(0.85)
  })
})

function permutations<T>(list: readonly T[]): readonly (readonly T[])[] {
  if (list.length < 2) return [list]
  return list.flatMap((item, i) =>
    permutations(list.filter((_, k) => k !== i)).map((rest) => [item, ...rest]),
  )
}

describe('an order kept from before', () => {
  test('that is still possible is kept to the last place', () => {
    fc.assert(
      fc.property(shape(25), (s) => {
        const { order } = arranged(input(s.operations, s.reasons, { places: s.places, kept: s.good }))
        expect(order).toEqual(s.good)
      }),
      { numRuns: 200, seed: 7 },
    )
  })

  test('moves nothing for what is new', () => {
    fc.assert(
      fc.property(shape(25), fc.integer({ min: 2, max: 5 }), (s, every) => {
        const blocks = blocksOf(s.good, s.reasons)
        const kept = s.good.filter((_, i) => (blocks.of[i] as number) % every !== 0)
        const { order } = arranged(input(s.operations, s.reasons, { places: s.places, kept }))
        expect(order.filter((id) => kept.includes(id))).toEqual(kept)
        expect(broken(order, s.reasons)).toEqual([])
      }),
      { numRuns: 300, seed: 8 },
    )
  })

  test('forgets what is no longer done, and moves no more than a new hard reason asks', () => {
    fc.assert(
      fc.property(shape(20), fc.nat(), fc.nat(), (s, x, y) => {
        const [a, b] = [s.good[x % s.good.length] as string, s.good[y % s.good.length] as string]
        const reasons = [...s.reasons, must(a, b, { rule: 'new' })]
        const result = arrange(
          input(s.operations, reasons, { places: s.places, kept: ['gone:away', ...s.good] }),
        )
        if (!result.ok || a === b) return
        expect(broken(result.value.order, reasons)).toEqual([])
        if (s.good.indexOf(a) < s.good.indexOf(b)) expect(result.value.order).toEqual(s.good)
      }),
      { numRuns: 300, seed: 9 },
    )
  })
})

describe('loops', () => {
  const arcs = fc.array(fc.tuple(fc.nat(9), fc.nat(9)), { maxLength: 25 })
  const ids = [...Array(10).keys()].map((i) => `op:${i}`)

  test('are found just when a sorter from elsewhere finds one', () => {
    fc.assert(
      fc.property(arcs, (pairs) => {
        const reasons = pairs.flatMap(([a, b]) => (a === b ? [] : [must(`op:${a}`, `op:${b}`)]))
        const edges = reasons.map((r): [string, string] => [r.before, r.after])
        let sorted = true
        try {
          toposort.array(ids, edges)
        } catch {
          sorted = false
        }
        expect(loopsIn(ids, reasons).length === 0).toBe(sorted)
      }),
      { numRuns: 500, seed: 10 },
    )
  })

  test('are told by a ring of reasons, each of which is needed for it', () => {
    fc.assert(
      fc.property(arcs, (pairs) => {
        const reasons = pairs.flatMap(([a, b]) => (a === b ? [] : [must(`op:${a}`, `op:${b}`)]))
        for (const loop of loopsIn(ids, reasons)) {
          loop.reasons.forEach((r, i) => {
            expect(r.after).toBe(loop.reasons[(i + 1) % loop.reasons.length]?.before)
            expect(loop.operations).toContain(r.before)
          })
          for (const gone of loop.reasons) {
            expect(
              loopsIn(
                ids,
                loop.reasons.filter((r) => r.id !== gone.id),
              ),
            ).toEqual([])
          }
        }
      }),
      { numRuns: 300, seed: 11 },
    )
  })
})
