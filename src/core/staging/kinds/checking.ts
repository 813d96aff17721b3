import { extentOf } from '../../plan/travel-path'
import type { RoomPoint } from '../../plan/types'
import { act, atPart, atUnit, BACK, DOWN, elsewhere, onPart, RIGHT, type Stages, unitPoint } from '../stage'

const middleOf = (ring: readonly RoomPoint[]): RoomPoint => ({
  x: ring.reduce((sum, p) => sum + p.x, 0) / ring.length,
  y: ring.reduce((sum, p) => sum + p.y, 0) / ring.length,
  z: ring[0]?.z ?? 0,
})

/** Every box on the list, over the place its unit is going to have. */
export const deliveryChecked: Stages = ({ standing }) =>
  standing.planned.map((place) =>
    act(
      'delivery-list',
      `planned:${place.unit.unit}`,
      { at: middleOf(place.footprints[0] ?? []), into: DOWN, across: RIGHT },
      { kind: 'tick' },
    ),
  )

/** Switched off and proved dead by somebody who may: what only they may do is never acted out. */
export const provedDead: Stages = () => [elsewhere('lamp', 'room'), elsewhere('proving-unit', 'room')]
export const restored: Stages = () => [elsewhere('proving-unit', 'room')]
/** By word of mouth. */
export const called: Stages = () => [elsewhere('telephone', 'room')]
export const asbestosAsked: Stages = () => [elsewhere('telephone', 'room'), elsewhere('hands', 'room')]

/** A string from end to end of the fronts of each run, and the long level on their tops. */
export const proved: Stages = ({ plan, standing }) => {
  const runs = new Map<string, (typeof standing.units)[number][]>()
  for (const u of standing.units) {
    if (u.tilt !== null || !['base', 'corner-base'].includes(u.unit.kind)) continue
    runs.set(u.unit.wall, [...(runs.get(u.unit.wall) ?? []), u])
  }
  return plan.walls.flatMap((wall) => {
    const units = runs.get(wall.wall) ?? []
    const ends = units.flatMap((u) => {
      const { width, depth, height } = extentOf(u.unit.solid)
      return [0, width].map((x) => unitPoint(u, { x, y: depth, z: height }))
    })
    const along = (p: RoomPoint) => p.x * wall.alongDir.x + p.y * wall.alongDir.y
    const sorted = [...ends].sort((a, b) => along(a) - along(b))
    const [from, to] = [sorted[0], sorted.at(-1)]
    if (from === undefined || to === undefined) return []
    const across = { x: wall.alongDir.x, y: wall.alongDir.y, z: 0 }
    const contact = { at: from, into: DOWN, across }
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2, z: (from.z + to.z) / 2 }
    const on = `unit:${units[0]?.unit.unit}`
    return [
      act('string-line', on, contact, { kind: 'draw', to, by: null }),
      act('long-level', on, { ...contact, at: middle }, { kind: 'rest' }),
    ]
  })
}

/** Joints sealed, doors looked at, what is left noted. */
export const snagged: Stages = ({ standing }) => {
  const tops = standing.parts
    .map((p) => p.part)
    .filter((part) => part.kind === 'worktop' && part.pose !== null)
  const sealed = tops.map((part) =>
    act('sealant-gun', `part:${part.part}`, atPart(part, [0, 0, 1], DOWN, RIGHT), {
      kind: 'draw',
      to: onPart(part, 1, 0, 1),
      by: null,
    }),
  )
  const looked = standing.units.slice(0, 1).map((u) => {
    const { width, depth, height } = extentOf(u.unit.solid)
    const front = { x: width / 2, y: depth + 30, z: height / 2 }
    return act('camera', `unit:${u.unit.unit}`, atUnit(u, front, BACK, RIGHT), { kind: 'tick' })
  })
  return [...sealed, ...looked]
}
