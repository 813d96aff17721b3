/** Where a tool waits: in front of its work, through no board, and not before the mark it comes to. */
import { Vector3 } from 'three'
import { describe, expect, test } from 'vitest'
import { standingAt } from '../../../src/core/plan/standing-at'
import type { Hole, RoomPoint } from '../../../src/core/plan/types'
import { stagingAt } from '../../../src/core/staging'
import type { Act } from '../../../src/core/staging/staging'
import { makeViews } from '../../../src/core/views/views'
import { piecesOf } from '../../../src/scene/tools/pieces'
import { waitingOf } from '../../../src/scene/tools/waiting'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const views = makeViews(plan, 1.5)

/** Every corner of a tool in the room, at a moment of an act of an operation. */
function drawn(id: string, act: (acts: readonly Act[]) => Act | undefined, progress: number) {
  const index = plan.operations.findIndex((o) => o.id === id)
  const found = act(stagingAt(plan, index)?.acts ?? [])
  if (found === undefined || found.contact === null) throw new Error(`${id}: no such act`)
  const { eye } = views.at(index)
  const around = { standing: standingAt(plan, index, 0), room: views.room, eye }
  const [piece] = piecesOf(found, waitingOf(found, around))
  if (piece === undefined) throw new Error(`${id}: nothing drawn`)
  const { points } = piece.sketch.faces
  const spots = Array.from({ length: points.length / 3 }, (_, i) =>
    new Vector3(points[3 * i], points[3 * i + 1], points[3 * i + 2]).applyMatrix4(piece.at(progress)),
  )
  return { act: found, at: found.contact.at, spots, eye }
}
const first = (acts: readonly Act[]) => acts[0]
const bored = (acts: readonly Act[]) => acts.find((a) => a.motion.kind === 'bore')
const holeOf = (act: Act): Hole => {
  const hole = plan.holes.find((h) => `hole:${h.id}` === act.on)
  if (hole === undefined) throw new Error(act.on)
  return hole
}
const nearest = (spots: readonly Vector3[], { x, y, z }: RoomPoint) =>
  Math.min(...spots.map((s) => Math.hypot(s.x - x, s.y - y, s.z - z)))

describe('as a step is first shown', () => {
  test.each(['drill-rail:rail-1', 'fix:base-1', 'fix:base-4', 'fix:corner-1', 'mark-holes:a'])(
    '%s: at the first of its holes, by their numbers',
    (id) => {
      const { act, spots, at } = drawn(id, first, 0)
      const operation = plan.operations.find((o) => o.id === id)
      const numbers = (operation?.holes ?? []).flatMap((h) => {
        const hole = plan.holes.find((x) => x.id === h)
        return hole === undefined || hole.verdict === 'refused' ? [] : [hole.number ?? 0]
      })
      expect(holeOf(act).number).toBe(Math.min(...numbers))
      expect(nearest(spots, at)).toBeLessThan(220)
    },
  )

  test('the drill for a rail is not in the tall unit beside it', () => {
    const { spots } = drawn('drill-rail:rail-1', first, 0)
    expect(Math.min(...spots.map((p) => p.x))).toBeGreaterThan(640)
  })

  test.each(['drill-rail:rail-1', 'fix:base-1', 'fix:base-4', 'second-fix:wall-2', 'second-fix:wall-3'])(
    '%s: no corner of the tool is before the mark from where it is looked at',
    (id) => {
      const { spots, at, eye } = drawn(id, first, 0)
      const look = new Vector3(at.x - eye.x, at.y - eye.y, at.z - eye.z)
      const distance = look.length()
      look.normalize()
      for (const spot of spots) {
        const to = new Vector3(spot.x - eye.x, spot.y - eye.y, spot.z - eye.z)
        const along = to.dot(look)
        // How far beside the line of sight, as it looks at the mark's own distance.
        const beside = (Math.sqrt(Math.max(0, to.lengthSq() - along * along)) * distance) / along
        expect(beside).toBeGreaterThan(((8 / 600) * distance * 2 * Math.tan((20 * Math.PI) / 180)) / 1.3)
      }
    },
  )
})

describe('while it is worked with', () => {
  test.each(['wall-1', 'wall-2', 'wall-3', 'wall-4'])('%s: a drill is not through its bottom', (id) => {
    const unit = plan.units.find((u) => u.unit === id)
    for (const progress of [0, 0.2, 0.5, 0.82]) {
      const { spots } = drawn(`second-fix:${id}`, bored, progress)
      expect(Math.min(...spots.map((p) => p.z))).toBeGreaterThan((unit?.pose?.z ?? 0) + 14)
    }
  })

  test('what is done low down stays above the floor', () => {
    for (const id of ['plinth:plinth-a', 'plinth:plinth-b']) {
      const { spots } = drawn(id, first, 0)
      for (const p of spots) expect(p.z).toBeGreaterThan(views.room.floorOr(p) - 4)
    }
  })
})
