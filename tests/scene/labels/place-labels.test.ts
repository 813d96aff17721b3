import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { crosses, overlap, placeLabels, type Wanted } from '../../../src/scene/labels/place-labels'

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
