import { describe, expect, test } from 'vitest'
import { standingAt } from '../../../src/core/plan/standing-at'
import { roomShape } from '../../../src/core/views/room-shape'
import { sketchAppliances } from '../../../src/scene/parts/appliances'
import { newSketch, type Sketch } from '../../../src/scene/sketch'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const room = roomShape(plan)
function drawn(id: string, of = plan, hidden: readonly string[] = []): Sketch {
  const index = of.operations.findIndex((o) => o.id === id)
  const sketch = newSketch()
  sketchAppliances(
    sketch,
    of,
    standingAt(of, index < 0 ? of.operations.length : index, 0),
    roomShape(of),
    new Set(hidden),
  )
  return sketch
}
const solid = (s: Sketch) => [...new Set(s.faces.parts)].sort()
const holes = (s: Sketch) => [...new Set(s.washes.parts)].sort()
/** Least and most of x, y and z of the faces of a part. */
function around(s: Sketch, part: string): readonly (readonly [number, number])[] {
  const own = s.faces.parts.flatMap((p, i) => (p === part ? [i] : []))
  return [0, 1, 2].map((axis) => {
    const all = own.map((i) => s.faces.points[3 * i + axis] ?? 0)
    return [Math.min(...all), Math.max(...all)] as const
  })
}

describe('appliances', () => {
  test('each is there from the step that connects it, and all are in the last picture', () => {
    expect(solid(drawn('restore-supply:room'))).toEqual([])
    expect(solid(drawn('connect:hob-1'))).toContain('appliance:hob-1')
    expect(solid(drawn(''))).toEqual(['appliance:dishwasher-1', 'appliance:hob-1', 'appliance:sink-1'])
  })

  test('in a space: as wide as it, from the floor to its height', () => {
    const [, y, z] = around(drawn(''), 'appliance:dishwasher-1')
    const space = plan.units.find((u) => u.unit === 'dishwasher-space')
    if (space?.pose == null || y === undefined || z === undefined) throw new Error('no space')
    expect(y[1] - y[0]).toBeGreaterThan(560)
    expect(y[1] - y[0]).toBeLessThan(600 + 10)
    expect(z[1]).toBeLessThan(space.pose.z + 720)
    expect(z[0]).toBeGreaterThanOrEqual(room.floorOr(space.pose))
  })

  test('in a worktop: on it, over its unit and no wider', () => {
    const [x, , z] = around(drawn(''), 'appliance:hob-1')
    expect(x?.[0]).toBeGreaterThan(2140)
    expect(x?.[1]).toBeLessThan(2940)
    expect(z?.[0]).toBe(-100)
  })

  test('the cut-out is in the worktop from when it is laid until what goes into it comes', () => {
    expect(holes(drawn('prove:room'))).toEqual([])
    expect(holes(drawn('worktop:worktop-a'))).toEqual(['appliance:hob-1'])
    expect(holes(drawn('connect:hob-1'))).not.toContain('appliance:hob-1')
  })

  test('a worktop of which no cut-out is told has none drawn', () => {
    const uncut = {
      ...plan,
      operations: plan.operations.map((o) => ({
        ...o,
        from: o.from.filter((f) => !f.includes('.cutouts.')),
      })),
    }
    expect(holes(drawn('worktop:worktop-a', uncut))).toEqual([])
  })

  test('the space shows once units stand on its wall, and goes with a wall that is left out', () => {
    const isShown = (s: Sketch) => s.strokes.hair.parts.includes('appliance:dishwasher-space')
    expect(isShown(drawn('place:corner-1'))).toBe(false)
    expect(isShown(drawn('join:base-4+base-5'))).toBe(true)
    expect(isShown(drawn('join:base-4+base-5', plan, ['b']))).toBe(false)
  })

  test('two for one unit are drawn once', () => {
    const all = solid(drawn('', planOf('galley')))
    expect(all.filter((p) => p === 'appliance:oven-1' || p === 'appliance:hob-1')).toHaveLength(1)
  })
})
