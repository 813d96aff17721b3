import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  crosses,
  type Level,
  overlap,
  placeLabels,
  type Wanted,
} from '../../../src/scene/labels/place-labels'

const bounds = { x: 0, y: 0, width: 800, height: 600 }
const label = (id: string, x: number, y: number, more: Partial<Wanted> = {}): Wanted => ({
  id,
  width: 80,
  height: 16,
  anchors: [{ x, y }],
  likes: 'on',
  ...more,
})

const spot = fc.record({ x: fc.integer({ min: -50, max: 850 }), y: fc.integer({ min: -50, max: 650 }) })
const anyLabel = fc.record({
  width: fc.integer({ min: 10, max: 200 }),
  height: fc.constant(16),
  anchors: fc.array(spot, { minLength: 1, maxLength: 3 }),
  likes: fc.constantFrom('on', 'above', 'below', 'right' as const),
  isFixed: fc.boolean(),
})

test('whatever is asked for, no two texts touch, none leaves the picture, none covers a mark or an edge', () => {
  fc.assert(
    fc.property(
      fc.array(anyLabel, { maxLength: 25 }),
      fc.array(spot, { maxLength: 8 }),
      fc.array(fc.record({ from: spot, to: spot }), { maxLength: 8 }),
      (wanted, dots, edges) => {
        const marks = dots.map(({ x, y }) => ({ x: x - 8, y: y - 8, width: 16, height: 16 }))
        const labels = wanted.map(
          (w, i): Wanted => ({ ...w, likes: w.likes as Wanted['likes'], id: String(i) }),
        )
        const placed = placeLabels(labels, bounds, marks, edges)
        for (const [i, a] of placed.entries()) {
          expect(a.x >= 0 && a.y >= 0 && a.x + a.width <= 800 && a.y + a.height <= 600).toBe(true)
          for (const b of placed.slice(i + 1)) expect(overlap(a, b)).toBe(false)
          for (const m of marks) expect(overlap(a, m)).toBe(false)
          for (const e of edges) expect(crosses(e, a)).toBe(false)
        }
      },
    ),
    { numRuns: 150 },
  )
})

describe('where a text goes', () => {
  test('where it likes to be, when nothing is there', () => {
    const at = (likes: Wanted['likes']) => placeLabels([label('a', 400, 300, { likes })], bounds, [], [])[0]
    expect(at('on')).toMatchObject({ x: 360, y: 292 })
    expect(at('above')?.y).toBeLessThan(300 - 16)
    expect(at('below')?.y).toBeGreaterThan(300)
    expect(at('right')?.x).toBeGreaterThan(400)
  })

  test('the second of two at one spot moves aside, with a line back if it asks for one', () => {
    const two = [label('a', 400, 300), label('b', 400, 300, { hasLeader: true })]
    const [a, b] = placeLabels(two, bounds, [], [])
    expect(a).toMatchObject({ x: 360, y: 292, leader: null })
    expect(b?.leader === null || b?.leader?.from).toBeTruthy()
    expect(b?.y).not.toBe(292)
  })

  test('one that may not move is left out instead, and so is one that finds no room', () => {
    const fixed = [label('a', 400, 300), label('b', 400, 300, { isFixed: true })]
    expect(placeLabels(fixed, bounds, [], []).map((p) => p.id)).toEqual(['a'])
    const small = { x: 0, y: 0, width: 60, height: 60 }
    expect(placeLabels([label('a', 30, 30)], small, [], [])).toEqual([])
  })

  test('a text of a line may touch its own line, not another', () => {
    const own = { from: { x: 0, y: 300 }, to: { x: 800, y: 300 }, of: 'a' }
    const on = label('a', 400, 300, { mindsLines: true, isFixed: true })
    expect(placeLabels([on], bounds, [], [own])).toHaveLength(1)
    expect(placeLabels([on], bounds, [], [{ ...own, of: 'b' }])[0]?.y).not.toBe(292)
  })
})

describe('names of levels', () => {
  const level = (id: string, z: number, y: number, from: number, to: number, slope = 0): Wanted => {
    const at = (x: number) => ({ x, y: y + slope * (x - 400) })
    const line: Level['line'] = { from: at(from), to: at(to), of: id }
    return {
      ...label(id, 0, 0, { likes: 'above', mindsLines: true, hasLeader: true }),
      anchors: [0.9, 0.7, 0.5, 0.3, 0.1].map((f) => at(from + f * (to - from))),
      level: { wall: 'w', z, line, within: [0, 800], ends: [at(to), at(from)] },
    }
  }
  const lines = (all: readonly Wanted[]) => all.flatMap((w) => w.level?.line ?? [])
  const placed = (all: readonly Wanted[]) => placeLabels(all, bounds, [], lines(all))

  test('three lines close together are named in their order, whichever is asked for first', () => {
    const three = [
      level('top', 300, 300, 200, 600, 0.2),
      level('middle', 290, 310, 200, 420, 0.2),
      level('low', 280, 320, 210, 380, 0.2),
    ]
    for (const order of [three, [...three].reverse(), [1, 0, 2].map((i) => three[i] as Wanted)]) {
      const sorted = [...placed(order)].sort((a, b) => a.y - b.y)
      expect(sorted.map((p) => p.id)).toEqual(['top', 'middle', 'low'])
    }
  })

  test('a name never stands beyond another line, and is left out rather than that', () => {
    const far = { ...level('top', 300, 300, 0, 800), height: 40 }
    const [between, low] = [
      { ...level('between', 290, 310, 0, 800), height: 40 },
      level('low', 280, 320, 0, 800),
    ]
    const all = placed([far, between, low])
    expect(all.map((p) => p.id).sort()).toEqual(['low', 'top'])
    expect((all.find((p) => p.id === 'top')?.y ?? 0) + 40).toBeLessThanOrEqual(300)
    expect(all.find((p) => p.id === 'low')?.y).toBeGreaterThanOrEqual(320)
  })

  test('one beside the end of its line has a leader to it, which crosses no other', () => {
    const above = level('above', 300, 306, 100, 700)
    const own = level('own', 290, 316, 100, 400)
    const under = level('under', 280, 326, 100, 380)
    const [p] = placed([above, own, under]).filter((l) => l.id === 'own')
    expect(p?.leader?.from).toEqual({ x: 400, y: 316 })
    expect(p?.y).toBeGreaterThan(306)
  })

  test('a line that is drawn with no name keeps names on their side too', () => {
    const own = level('own', 290, 310, 0, 800)
    const other = level('other', 300, 305, 0, 800).level as Level
    const y = (unnamed: readonly Level[]) => placeLabels([own], bounds, [], [], 3, unnamed)[0]?.y ?? 0
    expect(y([])).toBeLessThan(305)
    expect(y([other])).toBeGreaterThan(305)
  })

  const many = fc.array(
    fc.record({
      z: fc.integer({ min: 0, max: 30 }),
      from: fc.integer({ min: 0, max: 300 }),
      long: fc.integer({ min: 60, max: 500 }),
    }),
    { minLength: 2, maxLength: 7 },
  )
  test('whatever lines there are, names keep their order', () => {
    fc.assert(
      fc.property(many, fc.double({ min: -0.4, max: 0.4, noNaN: true }), (all, slope) => {
        const wanted = all.map(({ z, from, long }, i) =>
          level(String(i), z * 10, 450 - z * 10, from, from + long, slope),
        )
        const found = placed(wanted)
        for (const a of found)
          for (const b of found) {
            const [za, zb] = [all[Number(a.id)]?.z ?? 0, all[Number(b.id)]?.z ?? 0]
            if (za > zb) expect(a.y).toBeLessThan(b.y)
          }
      }),
      { numRuns: 100 },
    )
  })
})

test('a number stands nearer to its own mark than to any other, and its leader goes over none; else it is left out', () => {
  fc.assert(
    fc.property(fc.array(spot, { minLength: 2, maxLength: 12 }), (dots) => {
      const marks = dots.map(({ x, y }) => ({ x: x - 8, y: y - 8, width: 16, height: 16, isHole: true }))
      const wanted = dots.map(
        ({ x, y }, i): Wanted => ({
          id: String(i),
          width: 20,
          height: 16,
          anchors: [{ x, y: y - 6 }],
          likes: 'above',
          hasLeader: true,
          isNearest: true,
        }),
      )
      for (const { id, leader, ...r } of placeLabels(wanted, bounds, marks, [])) {
        const away = ({ x, y }: { x: number; y: number }) =>
          Math.hypot(Math.max(r.x - x, 0, x - r.x - r.width), Math.max(r.y - y, 0, y - r.y - r.height))
        const own = dots[Number(id)] as { x: number; y: number }
        // Marks that lie on one another are told apart by nobody.
        const others = dots.filter((d) => Math.hypot(d.x - own.x, d.y - own.y) > 14)
        for (const other of others) expect(away(other)).toBeGreaterThanOrEqual(away(own) - 14)
        for (const other of others)
          if (leader !== null)
            expect(
              crosses(leader, { x: other.x - 8, y: other.y - 8, width: 16, height: 16 }) &&
                Math.hypot(other.x - own.x, other.y - own.y) > 30,
            ).toBe(false)
      }
    }),
  )
  // Between two marks it belongs to one of them.
  const two = [100, 130].map((x) => ({ x: x - 8, y: 92, width: 16, height: 16, isHole: true }))
  const [placed] = placeLabels(
    [label('8', 100, 94, { width: 24, likes: 'above', isNearest: true })],
    bounds,
    two,
    [],
  )
  expect((placed?.x ?? 0) + 12).toBeLessThan(115)
})
