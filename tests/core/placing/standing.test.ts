import { describe, expect, test } from 'vitest'
import type { Mover } from '../../../src/core/placing/judge'
import { bodiesOf, type PlacedUnit } from '../../../src/core/placing/placed'
import { COMFORTABLE, findStandUp } from '../../../src/core/placing/standing'
import { noSlack, type Room, surroundingsOf } from '../../../src/core/placing/surroundings'
import { aBase, aRoom, aTall, FLOOR, pose, rectangle } from './rooms'

function search(units: readonly PlacedUnit[], room: Room, hint: { x: number; y: number } | null = null) {
  const [body, ...others] = bodiesOf(units)
  if (body === undefined) throw new Error('a unit with a body')
  const mover: Mover = { body, others, slack: noSlack, underCeiling: true, slices: new Map() }
  return findStandUp(mover, surroundingsOf(room), hint)
}
const at = (search: ReturnType<typeof findStandUp>) => {
  const first = search.found[0]?.segments[0]
  return first?.kind === 'stand-up' ? { over: first.over, x: first.upright.x, y: first.upright.y } : undefined
}
const tall = aTall('t', pose(0, 0, FLOOR + 50))

describe('which side, which spot', () => {
  test('over the back, as near its place as the head is clear of the wall behind', () => {
    expect(at(search([tall], aRoom(rectangle(4000, 4000), 2400)))).toEqual({ over: 'back', x: 0, y: -2050 })
  })
  test('the room is not deep enough for that: along the wall', () => {
    const found = search([tall], aRoom(rectangle(4000, 2000), 2400))
    expect(at(found)?.over).toBe('left')
    expect([...found.refused.keys()]).not.toContain('left')
  })
  test.each([
    ['over the back', 660, 2000 + 580 + 1],
    ['over the left', 2600 + 1, 1300],
    ['over the left, with a hand of room', 2600 + 100, 1300],
  ])('a floor hardly big enough is found: %s', (_, width, depth) => {
    const found = search([tall], aRoom(rectangle(width, depth), 2400))
    expect(found.found.length).toBeGreaterThan(0)
    expect(found.found[0]?.clearance).toBeLessThanOrEqual(COMFORTABLE)
  })
  test('of spots that are all tight the clearest', () => {
    const inTheMiddle = aTall('t', pose(1120, 0, FLOOR + 50))
    const { found } = search([inTheMiddle], aRoom(rectangle(2690, 1300), 2400))
    expect(found.length).toBeGreaterThan(1)
    expect(found[0]?.clearance).toBe(45)
    expect(found.at(-1)?.clearance).toBe(20)
  })
  test.each([
    ['one way', 2600 - 1, 1300],
    ['the other', 660, 2580 - 1],
  ])('one that is too small by a millimetre is not: %s', (_, width, depth) => {
    expect(search([tall], aRoom(rectangle(width, depth), 2400)).found).toEqual([])
  })
  test('the sides it may not be tilted over are left out', () => {
    const sideways = { ...tall, standUp: { sides: ['right'] as const, blocks: 20, reach: 0 } }
    expect(at(search([sideways], aRoom(rectangle(4000, 4000), 2400)))?.over).toBe('right')
  })
  test('near where the user lets units be set down', () => {
    const far = search([tall], aRoom(rectangle(6000, 6000), 2400), { x: 3300, y: -4290 })
    expect(at(far)).toEqual({ over: 'back', x: 3000, y: -4000 })
  })
})

describe('other units', () => {
  const opposite = [0, 1, 2, 3, 4].map((i) => aBase(`c${i}`, pose(3000 - i * 600, -3000, FLOOR + 150, 180)))
  test('a spot clear of all of them is better than a nearer one over them', () => {
    const found = search([tall, ...opposite], aRoom(rectangle(3000, 3000), 2400))
    expect(found.found[0]?.blockedBy).toEqual([])
    expect(at(found)?.over).not.toBe('back')
  })
  test('where every spot is over some, the one over fewest', () => {
    const run = [0, 1, 2].map((i) => aBase(`b${i}`, pose(600 + i * 600, 0, FLOOR + 150)))
    const { found } = search([{ ...tall }, ...run, ...opposite], aRoom(rectangle(3000, 3000), 2400))
    const counts = found.map((path) => path.blockedBy.length)
    expect(counts).toEqual([...counts].sort((a, b) => a - b))
  })
})

test('the floor there is what it stands on, with the blocks', () => {
  const room = aRoom(rectangle(4000, 4000), 2400, {
    floorHighUnder: (polygon) => FLOOR + Math.max(...polygon.map(({ y }) => (y < -2500 ? 12 : 0))),
  })
  const first = search([tall], room).found[0]?.segments[0]
  expect(first).toMatchObject({ upright: { z: FLOOR + 12 + 20 } })
})
