import { expect, test } from 'vitest'
import { known, unknown } from '../../../src/core/figure'
import { tipsOnItsFeet } from '../../../src/core/units/tips'

const mm = (value: number) => known(value, 0, 'mm', [])
const foot = (id: string, x: number, y: number) => ({ id, x: mm(x), y: mm(y) })
const solid = [{ x0: 0, x1: 600, y0: 0, y1: 560, z0: 0, z1: 720 }]
const FOUR = [foot('bl', 50, 50), foot('br', 550, 50), foot('fl', 50, 500), foot('fr', 550, 500)]
const tips = (feet: typeof FOUR, stands: 'legs' | 'plates' = 'legs') =>
  tipsOnItsFeet({ stands, feet }, { solid })

// The middle of the carcass is at 300, 280. The line from fl to br passes 300, 275: 3.6 away from it.
test('a unit on four feet stands; with its front right one gone its weight is just past the line between two', () => {
  expect(tips(FOUR)).toBe(false)
  expect(tips(FOUR.slice(0, 3))).toBe(true)
  expect(tips(FOUR.slice(0, 2))).toBe(true)
})

// With fl at 530 that line passes 300, 290: the middle is 7 inside it, with it at 560, 300, 305, it is 17 inside.
test('weight nearer that line than fronts may shift it counts as past it', () => {
  const with3 = (y: number) => [...FOUR.slice(0, 2), foot('fl', 50, y)]
  expect(tips(with3(530))).toBe(true)
  expect(tips(with3(560))).toBe(false)
})

test('nothing is said of a unit that hangs, or while a foot has no place', () => {
  expect(tips(FOUR.slice(0, 2), 'plates')).toBe(false)
  const lost = { id: 'fl', x: unknown('mm', ['x']), y: mm(500) }
  expect(tipsOnItsFeet({ stands: 'legs', feet: [...FOUR.slice(0, 2), lost] }, { solid })).toBe(false)
})
