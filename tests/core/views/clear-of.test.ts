import { PerspectiveCamera, Vector3 } from 'three'
import { describe, expect, test } from 'vitest'
import type { RoomPoint } from '../../../src/core/plan/types'
import { type CoveredPicture, clearOf } from '../../../src/core/views/clear-of'
import { FIELD } from '../../../src/core/views/frame-view'
import type { View, ViewSubject } from '../../../src/core/views/view'
import { makeViews, roundedAspect } from '../../../src/core/views/views'
import { samplePlan } from '../../support/sample-plan'

const SIZE = { width: 390, height: 332 }
const aspect = SIZE.width / SIZE.height
const cover = (x: number, y: number, width: number, height: number) => ({
  x0: x / SIZE.width,
  x1: (x + width) / SIZE.width,
  y0: y / SIZE.height,
  y1: (y + height) / SIZE.height,
})
/** As they lie over the picture of a phone: to the foot of it. */
const phone: CoveredPicture = {
  covers: [cover(4, 276, 167, 56), cover(327, 276, 59, 56)],
  aspect,
  mark: 8 / SIZE.height,
}

/** Where the real camera of three shows a point, as shares of the picture from its top left. */
function shownBy({ eye, target, raised = 0 }: View): (p: RoomPoint) => { x: number; y: number } {
  const camera = new PerspectiveCamera(FIELD, aspect, 0.3, 60)
  camera.position.set(eye.x / 1000, eye.z / 1000, -eye.y / 1000)
  camera.lookAt(target.x / 1000, target.z / 1000, -target.y / 1000)
  camera.updateMatrixWorld()
  camera.setViewOffset(aspect, 1, 0, raised, aspect, 1)
  return (p) => {
    const { x, y } = new Vector3(p.x / 1000, p.z / 1000, -p.y / 1000).project(camera)
    return { x: (1 + x) / 2, y: (1 - y) / 2 }
  }
}

/** Points of the edges and diagonals of a body, close to each other, that the covers lie over. */
function coveredPoints(view: View, { bodies, fixings }: ViewSubject): number {
  const shown = shownBy(view)
  const spots = [
    ...bodies.flatMap((body) => {
      const at = body.map(shown)
      return at.flatMap((a) =>
        at.flatMap((b) =>
          Array.from({ length: 21 }, (_, i) => ({
            x: a.x + ((b.x - a.x) * i) / 20,
            y: a.y + ((b.y - a.y) * i) / 20,
          })),
        ),
      )
    }),
    ...fixings.map(({ at }) => shown(at)),
  ]
  return spots.filter(({ x, y }) =>
    phone.covers.some((c) => x > c.x0 + 1e-6 && x < c.x1 - 1e-6 && y > c.y0 + 1e-6 && y < c.y1 - 1e-6),
  ).length
}

const outOfPicture = (view: View, { bodies, fixings }: ViewSubject) =>
  [...bodies.flat(), ...fixings.map((f) => f.at)]
    .map(shownBy(view))
    .filter(({ x, y }) => x < 0 || x > 1 || y < 0 || y > 1).length

const views = makeViews(samplePlan, roundedAspect(SIZE.width, SIZE.height))
const steps = samplePlan.operations.map((operation, i) => {
  const [chosen, subject] = [views.at(i), views.about(i)]
  return { id: operation.id, chosen, subject, clear: clearOf(chosen, subject, phone) }
})

describe('what lies over a picture', () => {
  test('on a phone covers neither the part in hand nor a fixing, of any step', () => {
    const under = steps.filter((s) => coveredPoints(s.clear, s.subject) > 0).map((s) => s.id)
    const were = steps.filter((s) => coveredPoints(s.chosen, s.subject) > 0).map((s) => s.id)
    expect(under).toEqual([])
    expect(were.length).toBeGreaterThan(5)
  })

  test('puts nothing out of the picture that was in it', () => {
    for (const { id, chosen, clear, subject } of steps)
      expect(outOfPicture(clear, subject), id).toBeLessThanOrEqual(outOfPicture(chosen, subject))
  })

  test('changes nothing where it covers nothing, and the eye stays on its line where it does', () => {
    for (const { chosen, clear, subject } of steps) {
      if (coveredPoints(chosen, subject) === 0 && (clear.raised ?? 0) === 0) expect(clear).toBe(chosen)
      const way = (v: View) =>
        new Vector3(v.eye.x - v.target.x, v.eye.y - v.target.y, v.eye.z - v.target.z).normalize()
      expect(way(clear).distanceTo(way(chosen))).toBeLessThan(1e-9)
      expect(clear.target).toEqual(chosen.target)
    }
    const [first] = steps
    if (first === undefined) throw new Error('the sample is empty')
    expect(clearOf(first.chosen, first.subject, { ...phone, covers: [] })).toBe(first.chosen)
  })

  test('where nothing helps the view stays as it was chosen', () => {
    const whole = { ...phone, covers: [{ x0: 0, x1: 1, y0: 0, y1: 1 }] }
    for (const { chosen, subject } of steps) expect(clearOf(chosen, subject, whole)).toBe(chosen)
  })
})
