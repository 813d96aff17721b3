import { describe, expect, test } from 'vitest'
import {
  blockingGraph,
  blockingGraphs,
  knots,
  type RoomBox,
  SIX_WAYS,
} from '../../../src/core/placing/blocking'
import { prismOver, prismsAt, rectangleInRoom } from '../../../src/core/placing/solid'
import { box, pose } from './rooms'

const roomBox = (x: number, y: number, z: number, size = 100): RoomBox => ({
  x0: x,
  x1: x + size,
  y0: y,
  y1: y + size,
  z0: z,
  z1: z + size,
})
const asPrism = (b: RoomBox) =>
  prismOver(
    [
      { x: b.x0, y: b.y0 },
      { x: b.x1, y: b.y0 },
      { x: b.x1, y: b.y1 },
      { x: b.x0, y: b.y1 },
    ],
    b.z0,
    b.z1,
  )

describe('boxes square to the room', () => {
  const row = [roomBox(0, 0, 0), roomBox(100, 50, 0), roomBox(300, 0, 0), roomBox(0, 0, 100)]
  const graphs = blockingGraphs(row)
  test('in a row along x: each is blocked by those beyond it', () => {
    expect(graphs['+x']).toEqual([[1, 2], [2], [], []])
    expect(graphs['-x']).toEqual([[], [0], [0, 1], []])
  })
  test('only what is in line counts', () => {
    expect(graphs['+y']).toEqual([[], [], [], []])
  })
  test('what stands on it blocks the way up', () => {
    expect(graphs['+z']).toEqual([[3], [], [], []])
    expect(graphs['-z']).toEqual([[], [], [], [0]])
  })
  test('a step of contact is no overlap', () => {
    expect(blockingGraphs([roomBox(0, 0, 0), roomBox(200, 99.95, 0)])['+x']).toEqual([[], []])
    expect(blockingGraphs([roomBox(0, 0, 0), roomBox(200, 99.8, 0)])['+x']).toEqual([[1], []])
  })
  test('the graph of prisms says the same', () => {
    const parts = row.map((b) => [asPrism(b)])
    expect(blockingGraph(parts, { yaw: 0 })).toEqual(graphs['+x'])
    expect(blockingGraph(parts, { yaw: 270 })).toEqual(graphs['-y'])
    expect(blockingGraph(parts, 'up')).toEqual(graphs['+z'])
    expect(blockingGraph(parts, 'down')).toEqual(graphs['-z'])
  })
})

describe('knots', () => {
  test('an L and a block in its arm lock each other in one direction; the knot is named whole', () => {
    const l = [box(900, 100, 700), { ...box(100, 900, 700) }, { ...box(900, 100, 700), y0: 800, y1: 900 }]
    const inside = { ...box(300, 300, 700), x0: 200, x1: 500, y0: 200, y1: 500 }
    const parts = [
      prismsAt(l, pose(0, 0, 0)),
      prismsAt([inside], pose(0, 0, 0)),
      prismsAt([box(50, 50, 700)], pose(5000, 0, 0)),
    ]
    expect(knots(blockingGraph(parts, { yaw: 270 }))).toEqual([[0, 1]])
    // Out of its open end it goes.
    expect(knots(blockingGraph(parts, { yaw: 0 }))).toEqual([])
  })
  test('three parts at mixed angles round a pinwheel never lock in one level direction', () => {
    const parts = [0, 120, 240].map((yaw) => [
      prismOver(rectangleInRoom(pose(0, 0, 0, yaw), 20, 400, -40, 0), 0, 700),
    ])
    for (const yaw of [0, 45, 90, 200]) expect(knots(blockingGraph(parts, { yaw }))).toEqual([])
  })
  test('no parts, no graph', () => {
    expect(blockingGraph([], 'up')).toEqual([])
  })
})

test('all six graphs of 60 boxes in less than 5 ms once warm', () => {
  const boxes = Array.from({ length: 60 }, (_, i) =>
    roomBox((i % 8) * 101, (Math.floor(i / 8) % 4) * 103, (i % 3) * 107),
  )
  const times = Array.from({ length: 60 }, () => {
    const start = performance.now()
    const graphs = blockingGraphs(boxes)
    const arcs = SIX_WAYS.flatMap((way) => graphs[way].flat()).length
    const took = performance.now() - start
    expect(arcs).toBeGreaterThan(60)
    return took
  })
  expect(Math.min(...times.slice(10))).toBeLessThan(5)
})
