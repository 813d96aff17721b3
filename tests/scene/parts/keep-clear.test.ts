import { expect, test } from 'vitest'
import { standingAt } from '../../../src/core/plan/standing-at'
import { roomShape } from '../../../src/core/views/room-shape'
import { clearRings } from '../../../src/scene/parts/keep-clear'
import { sampleIndex, samplePlan } from '../../support/sample-plan'

test('areas to keep clear stop at the walls they reach', () => {
  const room = roomShape(samplePlan)
  for (const id of ['stand-up:tall-1', 'place:tall-1', 'hang:wall-1', 'place:base-4']) {
    const rings = clearRings(standingAt(samplePlan, sampleIndex(id), 0), room)
    expect(rings.length).toBeGreaterThan(0)
    for (const { x, y } of rings.flat()) {
      expect(x).toBeLessThanOrEqual(3000 + 1e-6)
      expect(y).toBeLessThanOrEqual(1e-6)
    }
  }
})
