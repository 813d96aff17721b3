import fc from 'fast-check'
import { expect, test } from 'vitest'
import { stripes } from '../../src/scene/parts/bands'
import {
  boxEdges,
  boxFaces,
  dashed,
  dot,
  face,
  newSketch,
  type Point,
  partsIn,
  wash,
} from '../../src/scene/sketch'

const origin: Point = [0, 0, 0]
const length = ([a, b]: readonly [Point, Point]) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

test.each([
  ['unbroken', [], 100, [100]],
  ['ends in a gap', [30, 20], 100, [30, 30]],
  ['ends in a short dash', [30, 20], 110, [30, 30, 10]],
  ['dash-dot', [40, 10, 5, 10], 130, [40, 5, 40, 5]],
  ['nothing to draw', [30, 20], 0, []],
])('dashes: %s', (_, pattern, whole, pieces) => {
  expect(dashed(pattern, origin, [0, whole, 0]).map(length)).toEqual(pieces.map((p) => expect.closeTo(p, 9)))
})

test('a box is twelve triangles and twelve edges, all on the part they belong to', () => {
  const sketch = newSketch()
  const box = { x0: 0, x1: 1, y0: 0, y1: 2, z0: 0, z1: 3 }
  const shades = { right: 'r', left: 'l', front: 'f', back: 'b', top: 't', under: 'u' }
  boxFaces(sketch, 'unit:a', shades, (x, y, z) => [x, y, z], box)
  boxEdges(sketch, 'unit:a', { weight: 'fine', colour: 'k' }, (x, y, z) => [x, y, z], box)
  expect(sketch.faces.points).toHaveLength(12 * 9)
  expect(sketch.strokes.fine.points).toHaveLength(12 * 6)
  expect(partsIn([sketch])).toEqual(['unit:a'])
})

test('parts are named once and in the same order whatever is drawn first', () => {
  const [a, b] = [newSketch(), newSketch()]
  face(a, 'wall:b', 'c', [origin, [1, 0, 0], [0, 1, 0]])
  dot(b, 'hole:a', 'dot', 'c', origin)
  wash(b, 'wall:b', 'c', 0.5, [origin, [1, 0, 0], [0, 1, 0]])
  expect(partsIn([a, b])).toEqual(['hole:a', 'wall:b'])
  expect(partsIn([b, a])).toEqual(['hole:a', 'wall:b'])
})

test('hatching stays within its band and fills about half of it', () => {
  const extent = fc.integer({ min: -2000, max: 2000 })
  const size = fc.integer({ min: 20, max: 3000 })
  fc.assert(
    fc.property(extent, size, extent, size, (left, width, bottom, height) => {
      const r = { left, right: left + width, bottom, top: bottom + height }
      const found = stripes(r)
      for (const [x, z] of found.flat()) {
        expect(x).toBeGreaterThanOrEqual(r.left - 1e-6)
        expect(x).toBeLessThanOrEqual(r.right + 1e-6)
        expect(z).toBeGreaterThanOrEqual(r.bottom - 1e-6)
        expect(z).toBeLessThanOrEqual(r.top + 1e-6)
      }
      const filled = found.reduce((sum, s) => sum + area(s), 0) / (width * height)
      if (width > 300) expect(filled).toBeCloseTo(17 / 36, 1)
    }),
    { numRuns: 60 },
  )
})

function area(ring: readonly (readonly [number, number])[]): number {
  const twice = ring.reduce((sum, [x, y], i) => {
    const [p, q] = ring[(i + 1) % ring.length] ?? [x, y]
    return sum + x * q - p * y
  }, 0)
  return Math.abs(twice) / 2
}
