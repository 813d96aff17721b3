import { expect, test } from 'vitest'
import type { Leaf } from '../../../src/core/geometry/swept-leaf'
import { prismOver } from '../../../src/core/placing/solid'
import { meets, nearTo, sweepOfLeaf } from '../../../src/core/placing/swept-against'

/** From the origin, shut along +x, opening towards +y; no handle. */
const leaf: Leaf = {
  pivot: { x: 0, y: 0 },
  shut: 0,
  opens: 'anticlockwise',
  width: 800,
  thickness: 40,
  handle: 0,
  handleBack: 0,
  handleEdge: 0,
}
const sweep = sweepOfLeaf(leaf, 90, 0, 2000)
const block = (x: number, y: number, bottom = 0, top = 900) =>
  prismOver(
    [
      { x, y },
      { x: x + 400, y },
      { x: x + 400, y: y + 400 },
      { x, y: y + 400 },
    ],
    bottom,
    top,
  )

test('a corner 750 from the hinge is met by a leaf of 800 where it stands, and goes 50 or so into its way', () => {
  // (450, 600): 750 away. The free edge, at radius 800, comes to the face at 600 where sin a = 600 / 800: 48.6°.
  const met = meets(sweep, block(450, 600))
  expect(met?.angle).toBe(48)
  expect(met?.by).toBeGreaterThan(49.9)
  expect(met?.by).toBeLessThan(52)
})

test('a corner 850 away is passed, but is not further than 60', () => {
  // (510, 680)
  expect(meets(sweep, block(510, 680))).toBeNull()
  expect(nearTo(sweep, block(510, 680), 60)).toBe(true)
  expect(nearTo(sweep, block(510, 680), 40)).toBe(false)
})

test('what begins above the leaf or ends below it is not met', () => {
  expect(meets(sweep, block(450, 600, 2000, 2200))).toBeNull()
  expect(meets(sweep, block(450, 600, -200, 0))).toBeNull()
})

test('a handle reaches past square where the leaf does not', () => {
  const beside = block(-430, 500)
  expect(meets(sweep, beside)).toBeNull()
  const handled = sweepOfLeaf({ ...leaf, handle: 60, handleBack: 150 }, 90, 0, 2000)
  expect(meets(handled, beside)?.by).toBeCloseTo(30, 0)
})
