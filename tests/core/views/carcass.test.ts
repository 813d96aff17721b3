import { describe, expect, test } from 'vitest'
import type { LocalBox, UnitPlan } from '../../../src/core/plan/types'
import { carcassBoards, insideFace, shelfHeights } from '../../../src/core/views/carcass'
import { planOutline } from '../../../src/core/views/plan-outline'
import { samplePlan } from '../../support/sample-plan'

const unit = (id: string): UnitPlan => samplePlan.units.find((u) => u.unit === id) as UnitPlan
const box = (x0: number, x1: number, y0: number, y1: number): LocalBox => ({ x0, x1, y0, y1, z0: 0, z1: 720 })
const solids: readonly (readonly [string, readonly LocalBox[]])[] = [
  ['one box', [box(0, 600, 0, 560)]],
  ['an arm on the left', [box(0, 900, 0, 560), box(0, 560, 560, 900)]],
  ['an arm on the right', [box(0, 900, 0, 560), box(340, 900, 560, 900)]],
  ['boxes that overlap', [box(0, 900, 0, 560), box(0, 560, 0, 900)]],
]

describe('outline of a carcass', () => {
  test('one box is open at its front only', () => {
    expect(planOutline([box(0, 600, 0, 560)]).filter((s) => s.isOpen)).toEqual([
      { x0: 600, y0: 560, x1: 0, y1: 560, isOpen: true },
    ])
  })

  test.each(solids.slice(1))('a corner unit is open at both sides of its inner corner: %s', (_, solid) => {
    const sides = planOutline(solid)
    expect(sides).toHaveLength(6)
    const open = sides.filter((s) => s.isOpen)
    expect(open).toHaveLength(2)
    const [a, b] = open
    const meets = (a?.x1 === b?.x0 && a?.y1 === b?.y0) || (b?.x1 === a?.x0 && b?.y1 === a?.y0)
    expect(meets).toBe(true)
    // None of them is at the outside of the room's corner.
    expect(open.some((s) => s.y0 === 0 && s.y1 === 0)).toBe(false)
  })

  test.each(solids)('goes round once, inside on the left: %s', (_, solid) => {
    const sides = planOutline(solid)
    for (const [i, s] of sides.entries()) {
      const next = sides[(i + 1) % sides.length]
      expect([s.x1, s.y1]).toEqual([next?.x0, next?.y0])
    }
    const area = sides.reduce((sum, s) => sum + s.x0 * s.y1 - s.x1 * s.y0, 0) / 2
    expect(area).toBe(solid.length === 1 ? 600 * 560 : 900 * 560 + 560 * 340)
  })
})

describe('boards of a carcass', () => {
  test('it is hollow and open: a line from the front reaches the back panel, none gets through it', () => {
    const boards = carcassBoards(unit('wall-1'))
    const at = (x: number, y: number, z: number) =>
      boards.some((b) => b.x0 < x && x < b.x1 && b.y0 < y && y < b.y1 && b.z0 < z && z < b.z1)
    for (let y = 30; y < 330; y += 10) expect(at(300, y, 360)).toBe(false)
    expect(at(300, 18, 360)).toBe(true)
    expect(at(9, 200, 360)).toBe(true)
    expect(at(300, 200, 9)).toBe(true)
    expect(at(300, 200, 711)).toBe(true)
  })

  test('a base unit has rails for a top, and a hole through its back rail shows in front of that', () => {
    const base = unit('base-1')
    const top = carcassBoards(base).filter((b) => b.z1 === 720 && b.z0 > 600)
    expect(top).toHaveLength(2)
    expect(insideFace(base, 680)).toBeGreaterThan(insideFace(base, 300))
    const rail = top.find((b) => b.y0 < 100)
    expect(insideFace(base, 680)).toBeGreaterThan(rail?.y1 ?? 1000)
  })

  test('shelves: one in a base unit, more the taller it is, all inside', () => {
    expect(shelfHeights(unit('base-1'), 720)).toEqual([360])
    expect(shelfHeights(unit('wall-1'), 720)).toEqual([240, 480])
    expect(shelfHeights(unit('tall-1'), 1970)).toHaveLength(6)
  })
})
