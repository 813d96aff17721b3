import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Anchor, overlaps, placeLabels, spread, stagger } from '../../../src/ui/paper/wall/spread'

const heights = fc.array(fc.integer({ min: -2000, max: 2000 }), { maxLength: 12 })

describe('labels in a column', () => {
  test('keep their distance and their order', () => {
    fc.assert(
      fc.property(heights, (wanted) => {
        const placed = spread(wanted, 50)
        const order = wanted
          .map((_, i) => i)
          .sort((a, b) => (wanted[a] as number) - (wanted[b] as number) || a - b)
        for (let k = 1; k < order.length; k++) {
          const gap = (placed[order[k] as number] as number) - (placed[order[k - 1] as number] as number)
          expect(gap).toBeGreaterThanOrEqual(50 - 1e-6)
        }
      }),
    )
  })

  test('stay where they are when there is room', () => {
    expect(spread([300, 0, 100], 50)).toEqual([300, 0, 100])
  })

  test('a crowd stays about its middle', () => {
    expect(spread([100, 100, 100], 50)).toEqual([50, 100, 150])
  })
})

test('labels of a chain that would touch go to another row', () => {
  expect(stagger([0, 100, 120, 300], [40, 40, 40, 40], 5)).toEqual([0, 0, 1, 0])
})

describe('numbers beside their marks', () => {
  const grid = fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 7 }), fc.integer({ min: 0, max: 4 })), {
    maxLength: 20,
    selector: ([x, y]) => `${x} ${y}`,
  })

  test('touch no mark and no other number', () => {
    fc.assert(
      fc.property(grid, (cells) => {
        const anchors: readonly Anchor[] = cells.map(([x, y]) => ({ x: x * 60, y: y * 60, w: 26, h: 14 }))
        const placed = placeLabels(anchors, 10, [])
        placed.forEach((a, i) => {
          for (const b of placed.slice(i + 1)) expect(overlaps(a, b)).toBe(false)
          for (const { x, y } of anchors)
            expect(overlaps(a, { x: x - 10, y: y - 10, w: 20, h: 20 })).toBe(false)
        })
      }),
    )
  })

  test('keep off what is taken', () => {
    const name = { x: 10, y: -20, w: 100, h: 40 }
    const [label] = placeLabels([{ x: 0, y: 0, w: 26, h: 14 }], 10, [name])
    expect(label !== undefined && overlaps(label, name)).toBe(false)
  })
})
