/** The bubble in the picture stands where the trial puts it, and the unit leans the way its words say. */
import { expect, test } from 'vitest'
import { LEAN_DRAWN } from '../../../src/core/levelling/lie'
import { beginTrial, withReading } from '../../../src/core/levelling/trial'
import type { Trial } from '../../../src/core/levelling/trial-heights'
import { standingAt } from '../../../src/core/plan/standing-at'
import { nothingLeftOut } from '../../../src/core/views/kept'
import { roomShape } from '../../../src/core/views/room-shape'
import { sketchScene } from '../../../src/scene/sketch-scene'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const room = roomShape(plan)

function drawn(id: string, tried: Trial | null) {
  const index = plan.operations.findIndex((o) => o.id === id)
  const unit = plan.units.find((u) => plan.operations[index]?.on.includes(u.unit))
  if (unit === undefined) throw new Error(id)
  const { still } = sketchScene(
    plan,
    standingAt(plan, index, 0),
    room,
    nothingLeftOut,
    false,
    undefined,
    tried,
  )
  const { points, parts, colours } = still.faces
  const of = (part: string, colour?: string) =>
    parts.flatMap((p, i) =>
      p === part && (colour === undefined || colours[i] === colour)
        ? [[points[i * 3], points[i * 3 + 1], points[i * 3 + 2]] as [number, number, number]]
        : [],
    )
  const middle = (all: readonly (readonly number[])[], k: number) =>
    (Math.max(...all.map((p) => p[k] ?? 0)) + Math.min(...all.map((p) => p[k] ?? 0))) / 2
  const level = `level:${unit.unit}`
  return {
    unit,
    body: of(`unit:${unit.unit}`),
    bubble: of(level, '#F2F8F3'),
    tube: of(level, '#7FB394'),
    middle,
  }
}

/** Wall a runs along +x, and the room is at −y of it: right is +x, out is −y. */
function trialAt(id: string, axis: Trial['axis'], mmInAMetre: number): Trial {
  const { unit } = drawn(id, null)
  const begun: Trial = { ...beginTrial(id, unit), axis: 'along' }
  const level = withReading({ ...withReading(begun, unit, 0), axis: 'out' }, unit, 0)
  return withReading({ ...level, axis }, unit, mmInAMetre / 1000)
}

const onWallA = (kind: string) =>
  plan.operations.find((o) => o.kind === 'level' && o.wall === 'a' && o.id.includes(kind))?.id ?? ''

test.each([
  ['base', 'along', 0, 1],
  ['base', 'out', 1, -1],
  ['wall', 'along', 0, 1],
  ['tall', 'along', 0, 1],
  ['tall', 'out', 1, -1],
] as const)('%s, %s: the bubble goes to the high end', (kind, axis, k, sign) => {
  const id = onWallA(kind)
  /** From the middle of its tube; at a tall both go the way its top leans. */
  const at = (mm: number) => {
    const { bubble, tube, middle } = drawn(id, trialAt(id, axis, mm))
    return middle(bubble, k) - middle(tube, k)
  }
  const none = at(0)
  expect((at(3) - none) * sign).toBeGreaterThan(4)
  expect((at(-3) - none) * sign).toBeLessThan(-4)
  // At the end of its tube it goes no further.
  expect(at(9)).toBeCloseTo(at(8), 0)
})

test('the unit is drawn high where it is high, so many times as far as the words say', () => {
  const id = onWallA('base')
  const top = (mm: number, isRight: boolean) => {
    const { body, middle } = drawn(id, trialAt(id, 'along', mm))
    const x = middle(body, 0)
    return Math.max(...body.filter((p) => p[0] > x === isRight).map((p) => p[2]))
  }
  const { unit } = drawn(id, null)
  const width = unit.solid[0]?.x1 ?? 0
  expect(top(0, true)).toBeCloseTo(top(0, false), 6)
  expect(top(2, true) - top(2, false)).toBeCloseTo(0.002 * width * LEAN_DRAWN, 0)
})

test('with nothing tried, or something tried at another step, all of it stands as it is planned', () => {
  const id = onWallA('base')
  const before = drawn(id, null)
  const other = drawn(id, { ...trialAt(id, 'along', 4), operation: 'level:somewhere-else' })
  expect(other.body).toEqual(before.body)
  expect(other.bubble).toEqual(before.bubble)
})
