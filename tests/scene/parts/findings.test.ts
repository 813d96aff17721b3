import { describe, expect, test } from 'vitest'
import { letteredFindings } from '../../../src/core/plan/findings-at'
import { standingAt } from '../../../src/core/plan/standing-at'
import { holePlace } from '../../../src/core/views/hole-place'
import { nothingLeftOut } from '../../../src/core/views/kept'
import { roomShape } from '../../../src/core/views/room-shape'
import { makeViews } from '../../../src/core/views/views'
import { viewOfSpot } from '../../../src/scene/camera/look-at'
import { flagsOf } from '../../../src/scene/labels/flags-of'
import { findingSpots } from '../../../src/scene/parts/findings'
import { partsIn } from '../../../src/scene/sketch'
import { sketchScene } from '../../../src/scene/sketch-scene'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const room = roomShape(plan)
const indexOf = (id: string) => {
  const index = plan.operations.findIndex((o) => o.id === id)
  if (index < 0) throw new Error(`no operation ${id}`)
  return index
}
const standing = (id: string, t = 0) => standingAt(plan, indexOf(id), t)

function spots(id: string, open: string | null = null, hidden: readonly string[] = [], t = 0) {
  const now = standing(id, t)
  return findingSpots(plan, now, letteredFindings(plan, now.operation, open), room, new Set(hidden))
}
const spotOf = (id: string, finding: string, t = 0) =>
  spots(id, null, [], t).find((s) => s.finding.id === finding)

/** Along a wall, out of it, and up. */
function onWall(wall: string, at: { x: number; y: number; z: number }) {
  const frame = plan.walls.find((w) => w.wall === wall)
  if (frame === undefined) throw new Error(wall)
  const [dx, dy] = [at.x - frame.origin.x, at.y - frame.origin.y]
  return {
    along: dx * frame.alongDir.x + dy * frame.alongDir.y,
    out: dx * frame.outDir.x + dy * frame.outDir.y,
    up: at.z,
  }
}

describe('a finding is drawn at its place', () => {
  test('on the wall, as far along and as high as it says', () => {
    const spot = spotOf('place:base-3', 'bracket-needs-timber:base-3')
    const { where } = plan.findings.find((f) => f.id === 'bracket-needs-timber:base-3') ?? {}
    if (spot === undefined || where == null) throw new Error('it is not drawn')
    const at = onWall('a', spot.at)
    expect(at.along).toBeCloseTo(where.along ?? 0, 6)
    expect(at.up).toBeCloseTo(where.height ?? 0, 6)
    expect(at.out).toBeLessThan(20)
  })

  test('in front of the unit that hides that spot of the wall', () => {
    const before = spotOf('place:tall-1', 'door-strikes-wall:tall-1')
    const after = spotOf('restrain:tall-1', 'door-strikes-wall:tall-1')
    if (before === undefined || after === undefined) throw new Error('it is not drawn')
    expect(onWall('a', before.at).out).toBeLessThan(20)
    expect(onWall('a', after.at).out).toBeGreaterThan(500)
  })

  test('on its unit wherever that is on its way', () => {
    const [lying, standingUp] = [0, 1].map((t) => spotOf('stand-up:tall-1', 'lift-over-filter:tall-1', t))
    if (lying === undefined || standingUp === undefined) throw new Error('it is not drawn')
    expect(standingUp.at.z - lying.at.z).toBeGreaterThan(1000)
  })

  test('at the holes this step makes, of all that it is about', () => {
    const here = spots('restrain:tall-1').filter((s) => s.finding.id === 'hole-past-50:a')
    const { holes } = plan.operations[indexOf('restrain:tall-1')] ?? { holes: [] }
    expect(here).toHaveLength(holes.length)
    expect(here.length).toBeGreaterThan(0)
  })

  test('in the sketch, as a part of its own, and on the unit that moves in its own frame', () => {
    const now = standing('stand-up:tall-1')
    const found = { lettered: letteredFindings(plan, now.operation, null), open: null }
    const { still, moving } = sketchScene(plan, now, room, nothingLeftOut, false, found)
    expect(partsIn([still])).toContain('finding:hole-past-50:a')
    expect(partsIn([still])).not.toContain('finding:lift-over-filter:tall-1')
    expect(moving === null ? [] : partsIn([moving.sketch])).toContain('finding:lift-over-filter:tall-1')
  })

  test('a wall that is left out takes what is on it along', () => {
    expect(spots('fix:base-4').some((s) => s.wall?.wall === 'b')).toBe(true)
    expect(spots('fix:base-4', null, ['b']).some((s) => s.wall?.wall === 'b')).toBe(false)
  })
})

describe('flags', () => {
  test('one for each finding, lettered in the order of the list, the open one among them', () => {
    const other = 'socket-behind:dishwasher-socket+dishwasher-space'
    const flags = flagsOf(spots('restrain:tall-1', other), other)
    expect(flags.map((f) => f.letter)).toEqual(['A', 'B', 'C'])
    expect(flags.map((f) => f.isOpen)).toEqual([false, false, true])
    expect(flags[0]).toMatchObject({
      finding: 'hole-past-50:a',
      isGrave: true,
      words: 'Holes deep enough to meet any cable',
    })
  })
})

describe('looking at a finding', () => {
  const views = makeViews(plan, 1.6)
  test.each(plan.operations.flatMap((o) => spots(o.id).map((s) => [o.id, s.finding.id, s] as const)))(
    '%s, %s: its wall is seen from the room, and the eye is near',
    (id, _, spot) => {
      const chosen = views.at(indexOf(id))
      const view = viewOfSpot(chosen, spot, room, 1.6)
      const { at, wall } = spot
      expect(view.hidden).not.toContain(wall?.wall ?? 'none')
      const distance = Math.hypot(view.eye.x - at.x, view.eye.y - at.y, view.eye.z - at.z)
      expect(distance).toBeLessThan(6500)
      if (wall !== null) expect(onWall(wall.wall, view.eye).out).toBeGreaterThan(1000)
    },
  )

  test('the picture is of its wall, not of what is beside the room', () => {
    const id = 'stand-up:tall-1'
    const spot = spotOf(id, 'hole-past-50:a')
    if (spot === undefined) throw new Error('it is not drawn')
    const target = onWall('a', viewOfSpot(views.at(indexOf(id)), spot, room, 1.6).target)
    expect(onWall('a', spot.at).along).toBeLessThan(300)
    expect(target.along).toBeGreaterThan(600)
  })
})

test('what is found where a hole is made through a unit is shown round its mark, inside', () => {
  const now = standing('second-fix:wall-1')
  const spots = findingSpots(plan, now, letteredFindings(plan, now.operation, null), room, new Set())
  const spot = spots.find((s) => s.finding.id === 'screw-length-marginal:a.second-fixing')
  const made = now.holes.find((h) => h.hole.id === 'second.wall-1.a-s3')
  expect(spot).toBeDefined()
  expect(spot?.at).toEqual(made && holePlace(plan, now, made.hole)?.at)
})
