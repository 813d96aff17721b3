import { describe, expect, test } from 'vitest'
import { FAR } from '../../../src/core/placing/judge'
import { candidatePaths, type PlacedUnit, pathRefusedBy, type Room } from '../../../src/core/placing/paths'
import { rectangleInRoom } from '../../../src/core/placing/solid'
import { diagonalOf } from '../../../src/core/placing/stand-up'
import type { Obstacle, PlacingPath } from '../../../src/core/plan/types'
import { aBase, aRoom, aTall, aWallUnit, FLOOR, pose, rectangle } from './rooms'

const FINAL = FLOOR + 150
function best(unit: PlacedUnit, room: Room): PlacingPath {
  const path = candidatePaths([unit], room).candidates.get(unit.unit)?.[0]
  if (path === undefined) throw new Error('no path')
  return path
}
function block(
  x: number,
  y: number,
  width: number,
  depth: number,
  bottom: number | null,
  top: number | null,
): Obstacle {
  return { id: 'block', polygon: rectangleInRoom(pose(x, y, 0), 0, width, 0, depth), bottom, top }
}
const room = (obstacles: readonly Obstacle[] = [], ceiling: number | null = 2400): Room =>
  aRoom(rectangle(9000, 9000), ceiling, { obstacles })

describe('clearance', () => {
  test('the wall it comes to stand against is left out, the nearest side wall counts', () => {
    expect(best(aBase('b', pose(1000, 0, FINAL)), room()).clearance).toBe(1000)
    expect(best(aBase('b', pose(3, 0, FINAL)), room()).clearance).toBe(3)
    expect(best(aBase('b', pose(0, 0, FINAL)), room()).clearance).toBe(0)
  })
  test('so is a boxing behind its back, but not one beside it', () => {
    const unit = aBase('b', pose(1000, -100, FINAL))
    expect(best(unit, room([block(1100, 0, 300, 100, null, null)])).clearance).toBe(1000)
    expect(best(unit, room([block(1620, 0, 300, 200, null, null)])).clearance).toBe(20)
  })
  test('something over it, by the height between, lifted as it is', () => {
    const shelf = block(1000, 0, 600, 300, FINAL + 720 + 45, FINAL + 1000)
    expect(best(aBase('b', pose(1000, 0, FINAL)), room([shelf])).clearance).toBe(15)
  })
  test('the ceiling over a unit being hooked on', () => {
    const wall = aWallUnit('w', pose(1000, 0, FLOOR + 1400))
    expect(best(wall, room()).clearance).toBe(2400 - 1400 - 720 - 15)
    expect(best(wall, room([], null)).clearance).toBe(1000)
  })
  test('while it is stood up all walls count, and the ceiling over the diagonal', () => {
    const tall = aTall('t', pose(4000, 0, FLOOR + 60))
    const diagonal = diagonalOf(2000, 580)
    expect(best(tall, room()).clearance).toBe(50)
    const low = best(tall, room([], diagonal + 20 + 30))
    expect(low.clearance).toBeCloseTo(30, 2)
  })
  test('swung on its feet it is never a leg and a whole diagonal high at once', () => {
    // Feet 60 in and 60 long: sqrt(2060² + 520²) = 2124.62, and 10 for hands. A leg and the bare diagonal: 2142.4.
    const insets = { back: 60, front: 60, left: 60, right: 60 }
    const swung = { sides: ['back'] as const, blocks: 60, reach: 60, insets }
    const tall = { ...aTall('t', pose(4000, 0, FLOOR + 60)), standUp: swung }
    const stoodUp = (ceiling: number) => candidatePaths([tall], room([], ceiling)).notStoodUp.length === 0
    expect(stoodUp(2134.7)).toBe(true)
    expect(stoodUp(2134.4)).toBe(false)
    expect(best(tall, room([], 2140)).clearance).toBeCloseTo(2140 - 2124.62, 2)
  })
  test('a lamp that it clears on its feet is not in its way, whatever a diagonal on top of the legs would reach', () => {
    const insets = { back: 60, front: 60, left: 60, right: 60 }
    const swung = { sides: ['back'] as const, blocks: 60, reach: 60, insets }
    const tall = { ...aTall('t', pose(4000, 0, FLOOR + 60)), standUp: swung }
    const lamp = block(0, 0, 9000, 9000, FLOOR + 2136, FLOOR + 2400)
    expect(candidatePaths([tall], room([lamp])).notStoodUp).toEqual([])
    const lower = block(0, 0, 9000, 9000, FLOOR + 2134, FLOOR + 2400)
    expect(candidatePaths([tall], room([lower])).notStoodUp).toHaveLength(1)
  })
  test('nothing fixed near: the cut-off', () => {
    const open = { ...room([], null), outline: null }
    expect(best(aBase('b', pose(1000, 0, FINAL)), open).clearance).toBe(FAR)
  })
})

describe('a unit being stood up', () => {
  const tall = aTall('t', pose(4000, 0, FLOOR + 20))
  const path = best(tall, room())
  const diagonal = diagonalOf(2000, 580)
  // Where the corner is highest: tan θ = h/s, the corner then being straight above the turning edge.
  const beamAt = (over: number): Room =>
    room([block(4000, -1950, 600, 200, FLOOR + 20 + diagonal + over, FLOOR + 2400)])

  test.each([
    ['10 for the hands and a hair', 10.2, null],
    ['not quite 10', 9.8, 'block'],
    ['in the swing itself', -1, 'block'],
  ])('under a beam: %s', (_, over, hit) => {
    expect(pathRefusedBy(path, tall, beamAt(over))?.id ?? null).toBe(hit)
  })
  test('what stands low under the head is in the way only as the head comes down there', () => {
    // 300 high, on the floor under the middle of the lying unit: in the way. As high behind the turning edge: not.
    expect(pathRefusedBy(path, tall, room([block(4000, -1000, 600, 100, FLOOR, FLOOR + 300)]))?.id).toBe(
      'block',
    )
    expect(pathRefusedBy(path, tall, room([block(4000, -2700, 600, 100, FLOOR, FLOOR + 300)]))).toBeNull()
  })
})
