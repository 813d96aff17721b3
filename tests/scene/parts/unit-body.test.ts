import { describe, expect, test } from 'vitest'
import type { LocalBox, UnitPlan } from '../../../src/core/plan/types'
import { sketchUnitBody } from '../../../src/scene/parts/unit-body'
import { newSketch } from '../../../src/scene/sketch'
import { samplePlan } from '../../support/sample-plan'

const unit = (id: string): UnitPlan => samplePlan.units.find((u) => u.unit === id) as UnitPlan
const box = (x0: number, x1: number, y0: number, y1: number): LocalBox => ({ x0, x1, y0, y1, z0: 0, z1: 720 })
const solids: readonly (readonly [string, readonly LocalBox[]])[] = [
  ['one box', [box(0, 600, 0, 560)]],
  ['an arm on the left', [box(0, 900, 0, 560), box(0, 560, 560, 900)]],
  ['an arm on the right', [box(0, 900, 0, 560), box(340, 900, 560, 900)]],
  ['boxes that overlap', [box(0, 900, 0, 560), box(0, 560, 0, 900)]],
]

describe('the carcass drawn', () => {
  test.each(solids)('stays within the solid of the plan: %s', (_, solid) => {
    for (const kind of ['base', 'wall', 'corner-base'] as const) {
      const sketch = newSketch()
      const style = { isInHand: false, hasShelves: true }
      sketchUnitBody(sketch, { ...unit('base-1'), kind, solid }, (x, y, z) => [x, y, z], style)
      const { points } = sketch.faces
      expect(points.length).toBeGreaterThan(0)
      for (let i = 0; i < points.length; i += 3) {
        const [x = 0, y = 0, z = 0] = points.slice(i, i + 3)
        const isIn = solid.some(
          (b) =>
            x >= b.x0 - 1e-6 &&
            x <= b.x1 + 1e-6 &&
            y >= b.y0 - 1e-6 &&
            y <= b.y1 + 1e-6 &&
            z >= 0 &&
            z <= 720,
        )
        expect(isIn).toBe(true)
      }
    }
  })
})
