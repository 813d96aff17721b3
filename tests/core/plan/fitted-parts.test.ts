import { describe, expect, test } from 'vitest'
import { planOf } from '../../support/kitchens'

const parts = planOf('l-shape').parts ?? []
const box = (id: string) => {
  const solid = parts.find((p) => p.part === id)?.solid[0]
  if (solid === undefined) throw new Error(`no front ${id}`)
  return solid
}

describe('fronts lie on their unit as they will be seen', () => {
  test('drawers rise from the deepest, the shallow one on top', () => {
    expect(box('base-3.drawer-bottom').z1).toBeLessThan(box('base-3.drawer-middle').z0)
    expect(box('base-3.drawer-middle').z1).toBeLessThan(box('base-3.drawer-top').z0)
    expect(box('base-3.drawer-top').z1).toBeCloseTo(720 - 1.5, 3)
  })

  test('doors as wide as their unit go one above another, the lower in line with base units', () => {
    expect(box('tall-1.door-lower').z1).toBeLessThan(box('tall-1.door-upper').z0)
    expect(box('tall-1.door-lower').x1).toBe(box('tall-1.door-upper').x1)
    expect(Math.abs(box('tall-1.door-lower').z1 - box('base-1.door').z1)).toBeLessThan(5)
  })

  test('a pair of doors shares the width', () => {
    expect(box('base-2.door-left').x1).toBeLessThan(box('base-2.door-right').x0)
  })

  test('the door of a corner unit is no wider than its sheet says, and away from the corner', () => {
    const { x0, x1 } = box('corner-1.door')
    expect(x0).toBeCloseTo(1.5, 3)
    expect(Math.abs(x1 - 297)).toBeLessThan(4)
  })
})
