import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Standing, standingAt } from '../../../src/core/plan/standing-at'
import { extentOf, roomPoint, travel } from '../../../src/core/plan/travel-path'
import type { PathSegment, Pose } from '../../../src/core/plan/types'
import { planOf } from '../../support/kitchens'
import { sampleIndex, samplePlan, withoutPose } from '../../support/sample-plan'

const at = (id: string, t = 0, plan = samplePlan): Standing => standingAt(plan, sampleIndex(id), t)
const found = (standing: Standing, id: string) => standing.units.find((u) => u.unit.unit === id)
const poseOf = (id: string): Pose => samplePlan.units.find((u) => u.unit === id)?.pose as Pose

describe('what stands', () => {
  test('nothing before the first operation, everything after the last', () => {
    const first = standingAt(samplePlan, -1, 0)
    expect([first.units, first.lines, first.holes, first.rails, first.places]).toEqual([[], [], [], [], []])

    const last = standingAt(samplePlan, samplePlan.operations.length, 0)
    expect(last.operation).toBeNull()
    expect(last.units.map((u) => u.unit.unit)).toEqual(samplePlan.units.map((u) => u.unit))
    for (const { unit, pose, tilt, isInHand } of last.units) {
      expect({ pose, tilt, isInHand }).toEqual({ pose: unit.pose, tilt: null, isInHand: false })
    }
    expect(last.lines).toHaveLength(samplePlan.lines.length)
    expect(last.parts.map((p) => p.part.kind)).toEqual(['front', 'front', 'worktop'])
  })

  test('a unit is not there before it is brought in, except the one in hand', () => {
    expect(at('hang:wall-2').units.map((u) => [u.unit.unit, u.isInHand])).toEqual([
      ['tall-1', false],
      ['wall-1', false],
      ['wall-2', true],
    ])
    expect(at('drill-rail:rail-1').units.map((u) => u.unit.unit)).toEqual(['tall-1'])
  })

  test('a unit without a known place is never drawn, and has no outline', () => {
    const plan = withoutPose('wall-2')
    for (let i = 0; i <= plan.operations.length; i += 1) {
      const standing = standingAt(plan, i, 0.5)
      expect(found(standing, 'wall-2')).toBeUndefined()
      expect(standing.places.map((p) => p.unit.unit)).not.toContain('wall-2')
    }
  })

  test('states change when their operation is done, and a hooked unit is held', () => {
    expect(found(at('hang:wall-1', 0), 'wall-1')).toMatchObject({ state: 'carried', isHeld: true })
    expect(found(at('hang:wall-1', 1), 'wall-1')).toMatchObject({ state: 'hooked', isHeld: true })
    expect(found(at('second-fix:wall-1', 0), 'wall-1')).toMatchObject({ state: 'locked', isHeld: true })
    expect(found(at('hang:wall-2', 0), 'wall-1')).toMatchObject({ state: 'secured', isHeld: false })
  })

  test('an operation about the whole room singles nobody out', () => {
    expect(at('prove:room').units.filter((u) => u.isInHand)).toEqual([])
    expect(at('join:wall-1+wall-2').units.filter((u) => u.isInHand)).toHaveLength(2)
  })
})

describe('the journey', () => {
  const journeys = samplePlan.operations.filter((o) => o.path !== null)

  test.each(journeys.map((o) => [o.id]))('%s begins and ends exactly where its path does', (id) => {
    const operation = samplePlan.operations[sampleIndex(id)]
    const path = samplePlan.paths[operation?.path ?? -1]
    const unit = path?.unit ?? ''
    const first = path?.segments[0]
    const start = found(at(id, 0), unit)
    const end = found(at(id, 1), unit)
    if (operation?.kind === 'stand-up') {
      expect(start?.tilt).toEqual({ over: 'back', angle: 90 })
      expect(end?.pose).toEqual(first?.kind === 'stand-up' ? first.upright : undefined)
    } else {
      expect(start?.tilt).toBeNull()
      expect(end?.pose).toEqual(poseOf(unit))
    }
    expect(end?.tilt).toBeNull()
  })

  test('a tall lies before it is raised, stands when it is brought in, and each takes its own part of the path', () => {
    const raised = found(at('stand-up:tall-1', 1), 'tall-1')
    expect(found(at('place:tall-1', 0), 'tall-1')?.pose).toEqual(raised?.pose)
    expect(found(at('assemble:tall-1'), 'tall-1')?.tilt).toEqual({ over: 'back', angle: 90 })
    expect(found(at('level:tall-1'), 'tall-1')?.pose).toEqual(poseOf('tall-1'))
  })

  test('no corner jumps: a step in t moves every corner by no more than the path is long for it', () => {
    const step = 1 / 150
    for (const operation of journeys) {
      const unit = samplePlan.paths[operation.path ?? -1]?.unit ?? ''
      const extent = extentOf(samplePlan.units.find((u) => u.unit === unit)?.solid ?? [])
      const corner = (t: number) => {
        const now = found(at(operation.id, t), unit)
        if (now === undefined) throw new Error(`${unit} is gone at ${t}`)
        return roomPoint(now, extent, { x: extent.width, y: extent.depth, z: extent.height })
      }
      for (let i = 0; i < 150; i += 1) {
        const [a, b] = [corner(i * step), corner((i + 1) * step)]
        expect(Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)).toBeLessThan(60)
      }
    }
  })
})

describe('leaning', () => {
  const extent = { width: 600, depth: 580, height: 1970 }
  const pose = { x: 0, y: 0, z: 20, yaw: 0 }
  test.each([
    ['back', { x: 0, y: 0, z: 0 }, { x: 0, y: 0, z: 20 }],
    ['back', { x: 0, y: 0, z: 1970 }, { x: 0, y: 1970, z: 20 }],
    ['back', { x: 600, y: 580, z: 0 }, { x: 600, y: 0, z: 600 }],
    ['front', { x: 0, y: 580, z: 1970 }, { x: 0, y: -2550, z: 20 }],
    ['left', { x: 0, y: 0, z: 1970 }, { x: -1970, y: 0, z: 20 }],
    ['right', { x: 600, y: 0, z: 1970 }, { x: 2570, y: 0, z: 20 }],
  ] as const)('lying on its %s a corner is where it should be', (over, local, room) => {
    const p = roomPoint({ pose, tilt: { over, angle: 90 } }, extent, local)
    expect([p.x, p.y, p.z]).toEqual([room.x, room.y, room.z].map((v) => expect.closeTo(v, 6)))
  })

  test('nothing of it goes below the edge it leans over, at any angle', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('back', 'front', 'left', 'right' as const),
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.tuple(fc.nat(600), fc.nat(580), fc.nat(1970)),
        (over, angle, [x, y, z]) =>
          roomPoint({ pose, tilt: { over: over as 'back', angle } }, extent, { x, y, z }).z >= 20 - 1e-6,
      ),
    )
  })
})

describe('travel', () => {
  const p = (x: number, yaw = 0): Pose => ({ x, y: 0, z: 0, yaw })
  const move = (from: Pose, to: Pose): PathSegment => ({ kind: 'move', from, to })
  const extent = { width: 1, depth: 1, height: 1 }

  test('goes by length, over pieces without length, and the shorter way round', () => {
    const path = [move(p(0), p(300)), move(p(300), p(300)), move(p(300), p(400))]
    expect(travel(path, extent, 0.5)?.pose.x).toBeCloseTo(200)
    expect(travel(path, extent, 0.75)?.pose.x).toBeCloseTo(300)
    expect(travel([move(p(0, 170), p(10, -170))], extent, 0.5)?.pose.yaw).toBeCloseTo(180)
    expect(travel([move(p(5), p(5))], extent, 0.5)?.pose).toEqual(p(5))
    expect(travel([], extent, 0.5)).toBeNull()
  })

  test('t outside 0..1 stays on the path', () => {
    expect(standingAt(samplePlan, sampleIndex('hang:wall-1'), -3)).toEqual(at('hang:wall-1', 0))
    expect(standingAt(samplePlan, sampleIndex('hang:wall-1'), 7)).toEqual(at('hang:wall-1', 1))
  })
})

describe('on the wall', () => {
  test('lines and marks appear when they are struck and stay', () => {
    expect(at('trace:long').lines).toEqual([])
    expect(at('strike:line').lines.map((l) => [l.line.id, l.isNow])).toEqual([
      ['line.window', true],
      ['line.long', true],
    ])
    const later = at('hang:wall-1')
    expect(later.lines.filter((l) => l.isNow)).toEqual([])
    expect(later.lines).toHaveLength(samplePlan.lines.length)
    expect(later.marks).toHaveLength(samplePlan.marks.length)
  })

  test('holes are marked, then drilled; a refused one is never drilled', () => {
    const marked = at('mark-holes:long').holes
    expect(marked).toHaveLength(samplePlan.holes.length)
    expect(new Set(marked.map((h) => h.state))).toEqual(new Set(['marked']))
    const drilling = at('drill-rail:rail-1').holes
    expect(drilling.filter((h) => h.state === 'marked' && h.isNow)).toHaveLength(4)
    const done = at('drill-rail:rail-1', 1).holes
    expect(done.filter((h) => h.state === 'drilled' && h.isNow)).toHaveLength(4)
    const end = standingAt(samplePlan, samplePlan.operations.length, 1).holes
    expect(end.find((h) => h.hole.verdict === 'refused')?.state).toBe('marked')
  })

  test('a rail is on the wall when it is fixed, not when its holes are drilled', () => {
    expect(at('drill-rail:rail-1').rails).toEqual([])
    expect(at('fix-rail:rail-1').rails.map((r) => r.isNow)).toEqual([true])
    expect(at('hang:wall-1').rails.map((r) => r.isNow)).toEqual([false])
  })

  test('plates are on the wall once fixed, one for each side of its unit', () => {
    const [rail] = samplePlan.holes
    const holes = ['left.1', 'left.2', 'right.1', 'right.2'].map((end) => ({
      ...(rail as NonNullable<typeof rail>),
      id: `plate.wall-1.${end}`,
      purpose: 'plate' as const,
    }))
    const [first] = samplePlan.operations
    const fix = {
      ...(first as NonNullable<typeof first>),
      id: 'fix-plates:wall-1',
      kind: 'fix-plates',
      on: ['wall-1'],
    }
    const plan = { ...samplePlan, holes, operations: [fix] }
    expect(standingAt(plan, 0, 0).plates.map((p) => [p.plate, p.holes.length, p.isNow])).toEqual([
      ['plate.wall-1.left', 2, true],
      ['plate.wall-1.right', 2, true],
    ])
    expect(standingAt(plan, 0, 0).places.map((p) => p.unit.unit)).toEqual(['wall-1'])
    expect(standingAt(plan, -1, 0).plates).toEqual([])
  })

  test('a nogging is not in the wall before it is let in; studs are', () => {
    const kinds = (s: Standing) => new Set(s.wallThings.map((t) => t.thing.kind))
    expect(kinds(at('mark-holes:long'))).toEqual(new Set(['stud', 'accessory', 'window']))
    expect(kinds(at('fit-nogging:long.nogging-1'))).toContain('nogging')
  })

  test('bands are hatched always, boldly where something is drilled or traced now', () => {
    expect(at('drill-rail:rail-1').bands).toEqual({ isHatched: true, boldOn: ['long'] })
    expect(at('hang:wall-1').bands).toEqual({ isHatched: true, boldOn: [] })
  })
})

describe('round the unit in hand', () => {
  test('its place is outlined on the wall and on the floor until it is there', () => {
    const [place] = at('hang:wall-2').places
    expect(place).toMatchObject({
      isHung: true,
      wall: { wall: 'long', left: 1220, right: 1820, bottom: 400, top: 1120 },
    })
    expect(place?.footprints[0]?.map((p) => [p.x, p.y])).toEqual(
      [
        [3000, -1220],
        [3000, -1820],
        [2670, -1820],
        [2670, -1220],
      ].map(([x = 0, y = 0]) => [expect.closeTo(x, 6), expect.closeTo(y, 6)]),
    )
    expect(at('level:wall-2').places).toEqual([])
  })

  test('the floor it passes over is kept clear, and the floor under it while it only hangs', () => {
    const ring = at('stand-up:tall-1').keepClear[0] ?? []
    const out = ring.map((p) => 3000 - p.x)
    expect(Math.min(...out)).toBeCloseTo(30)
    expect(Math.max(...out)).toBeCloseTo(2000 + 580)
    expect(at('level:wall-1').keepClear).toHaveLength(1)
    expect(at('level:base-1').keepClear).toEqual([])
  })

  test('a level lies on the unit being levelled, and only then', () => {
    expect(at('level:wall-2').levelOn).toBe('wall-2')
    expect(at('lock:wall-2').levelOn).toBeNull()
  })

  test('fronts go on with their own operation', () => {
    expect(at('worktop:worktop-1').parts.map((p) => [p.part.part, p.isNow])).toEqual([['worktop-1', true]])
    expect(at('hang-fronts:base-2').parts.map((p) => p.isNow)).toEqual([true, true, false])
    expect(found(at('hang-fronts:base-2'), 'base-2')?.fronts).toBe('now')
  })
})

test('a place no hole goes to is struck off as its wall is marked, stays so, and is never drilled', () => {
  const plan = planOf('l-shape')
  const refused = plan.holes.filter((h) => h.verdict === 'refused')
  expect(refused.length).toBeGreaterThan(1)
  for (const hole of refused) {
    const marking = plan.operations.findIndex((o) => o.id === `mark-holes:${hole.wall}`)
    const states = [marking - 1, marking, marking + 1, plan.operations.length].map(
      (index) => standingAt(plan, index, 0).holes.find((h) => h.hole === hole) ?? null,
    )
    expect(states.map((s) => s && [s.state, s.isNow])).toEqual([
      null,
      ['marked', true],
      ['marked', false],
      ['marked', false],
    ])
  }
})
