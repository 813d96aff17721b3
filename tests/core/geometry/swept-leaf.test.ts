import { expect, test } from 'vitest'
import { distanceOutside } from '../../../src/core/geometry/polygon'
import { type Leaf, leafAt, reachOf, sweptLeaf } from '../../../src/core/geometry/swept-leaf'
import type { PlanPoint } from '../../../src/core/plan/types'

const door: Leaf = {
  pivot: { x: 0, y: 0 },
  shut: 0,
  opens: 'anticlockwise',
  width: 600,
  thickness: 20,
  handle: 30,
  handleBack: 50,
  handleEdge: 0,
}
/** Skew in the room, the other hand, wide. */
const wide: Leaf = {
  ...door,
  pivot: { x: 410, y: -95 },
  shut: 203,
  opens: 'clockwise',
  width: 926,
  handle: 65,
  handleBack: 150,
  handleEdge: 40,
}

const round = (points: readonly PlanPoint[]) =>
  points.map(({ x, y }) => `${Math.round(x) + 0},${Math.round(y) + 0}`).sort()

test('shut, the leaf lies behind its face and the handle before it', () => {
  const [leaf = [], handle = []] = leafAt(door, 0)
  expect(round(leaf)).toEqual(['0,-20', '0,0', '600,-20', '600,0'])
  expect(round(handle)).toEqual(['550,0', '550,30', '600,0', '600,30'])
})

test('square, its outer face stands in line with its hinge and the handle past it', () => {
  const [leaf = [], handle = []] = leafAt(door, 90)
  expect(round(leaf)).toEqual(['0,0', '0,600', '20,0', '20,600'])
  expect(round(handle)).toEqual(['-30,550', '-30,600', '0,550', '0,600'])
})

test('the other hand is the mirror image', () => {
  const other: Leaf = { ...door, shut: 180, opens: 'clockwise' }
  for (const angle of [0, 17, 90, 133]) {
    const mirrored = leafAt(door, angle).map((part) => round(part.map(({ x, y }) => ({ x: -x, y }))))
    expect(leafAt(other, angle).map(round)).toEqual(mirrored)
  }
})

test('without a handle there is only the leaf; its reach is then its width', () => {
  expect(leafAt({ ...door, handle: 0 }, 40)).toHaveLength(1)
  expect(reachOf({ width: 600, handle: 0, handleEdge: 0 })).toBe(600)
  expect(reachOf({ width: 440, handle: 300, handleEdge: 40 })).toBe(500)
})

/** Points all over the leaf and its handle, turned by plain rotation: a second way that knows no hulls. */
function turnedPoints(leaf: Leaf, angle: number): readonly PlanPoint[] {
  const way = leaf.opens === 'anticlockwise' ? 1 : -1
  const turn = ((leaf.shut + way * angle) * Math.PI) / 180
  const spots: [number, number][] = []
  for (let i = 0; i <= 12; i++) {
    for (let j = 0; j <= 4; j++) {
      spots.push([(leaf.width * i) / 12, (-leaf.thickness * j) / 4])
      const wide = leaf.handleBack - leaf.handleEdge
      spots.push([leaf.width - leaf.handleEdge - (wide * i) / 12, (leaf.handle * j) / 4])
    }
  }
  return spots.map(([along, ahead]) => ({
    x: leaf.pivot.x + along * Math.cos(turn) - way * ahead * Math.sin(turn),
    y: leaf.pivot.y + along * Math.sin(turn) + way * ahead * Math.cos(turn),
  }))
}

test.each([
  ['a unit door', door, 110],
  ['a wide door the other way round', wide, 90],
  ['a part of a degree', door, 0.3],
])('no place the leaf is ever in lies outside its slices: %s', (_, leaf, to) => {
  const slices = sweptLeaf(leaf, 0, to)
  for (let k = 0; k <= 400; k++) {
    const angle = (to * k) / 400
    const here = slices.filter((slice) => slice.from <= angle + 1e-9 && slice.to >= angle - 1e-9)
    for (const point of turnedPoints(leaf, angle)) {
      const outside = Math.min(...here.map(({ polygon }) => distanceOutside(polygon, point)))
      expect(outside).toBeLessThan(1e-6)
    }
  }
})

test('the slices hold hardly more than the leaf: each of their corners is at most 0.2 mm from it at some angle', () => {
  for (const { from, to, polygon } of sweptLeaf(wide, 0, 90)) {
    for (const corner of polygon) {
      const angles = Array.from({ length: 21 }, (_, i) => from + ((to - from) * i) / 20)
      const off = Math.min(
        ...angles.flatMap((angle) => leafAt(wide, angle).map((part) => distanceOutside(part, corner))),
      )
      expect(off).toBeLessThan(0.2)
    }
  }
})

test('slices follow one another from shut to open', () => {
  const slices = sweptLeaf({ ...door, handle: 0 }, 0, 90)
  expect(slices).toHaveLength(90)
  expect(slices[0]?.from).toBe(0)
  expect(slices.at(-1)?.to).toBe(90)
})
