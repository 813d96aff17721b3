import { describe, expect, test } from 'vitest'
import { makeViews } from '../../../src/core/views/views'
import { fixedView, turnedView } from '../../../src/scene/camera/look'
import { sampleIndex, samplePlan } from '../../support/sample-plan'

describe("the user's own turn", () => {
  const views = makeViews(samplePlan, 1.6)
  const chosen = views.at(sampleIndex('hang:wall-2'))

  test('goes round what is looked at, keeps its distance, and leaves out other walls', () => {
    const turned = turnedView(chosen, { turn: 180, tip: 0, closer: 1 }, views.room)
    expect(turned.target).toEqual(chosen.target)
    const distance = (v: typeof chosen) =>
      Math.hypot(v.eye.x - v.target.x, v.eye.y - v.target.y, v.eye.z - v.target.z)
    expect(distance(turned)).toBeCloseTo(distance(chosen), 0)
    expect(turned.hidden).toContain('long')
    expect(turnedView(chosen, { turn: 0, tip: 0, closer: 2 }, views.room).eye).not.toEqual(chosen.eye)
    expect(turnedView(chosen, { turn: 0, tip: 0, closer: 1 }, views.room)).toBe(chosen)
  })

  test('a given camera says itself which walls are in its way', () => {
    const view = fixedView(
      { eye: { x: 1500, y: 4000, z: 0 }, target: { x: 1500, y: -1000, z: 0 } },
      views.room,
    )
    expect(view.hidden).toEqual(['window'])
    expect(view.azimuth).toBeCloseTo(90)
  })
})
