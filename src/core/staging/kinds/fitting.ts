import type { StandingUnit } from '../../plan/standing-at'
import { boxAround, extentOf } from '../../plan/travel-path'
import type { FittedPart, RoomPoint } from '../../plan/types'
import {
  act,
  atPart,
  atUnit,
  BACK,
  DOWN,
  elsewhere,
  figureOf,
  inHand,
  onPart,
  RIGHT,
  type Stage,
  type Stages,
  UP,
  unitPoint,
} from '../stage'
import type { Act } from '../staging'

/** Put together, knocked home, and measured corner to corner: a square one has two equal diagonals. */
export const assembled: Stages = (stage) =>
  inHand(stage).flatMap((unit) => {
    const { width, depth, height } = extentOf(unit.unit.solid)
    const on = `unit:${unit.unit.unit}`
    const corner = (x: number, z: number): RoomPoint => ({ x, y: depth, z })
    return [
      act('mallet', on, atUnit(unit, { x: width / 2, y: depth / 2, z: height }, DOWN, RIGHT), {
        kind: 'knock',
      }),
      ...[
        [corner(0, 0), corner(width, height)],
        [corner(width, 0), corner(0, height)],
      ].map(([from, to]) =>
        act('tape', on, atUnit(unit, from as RoomPoint, BACK, RIGHT), {
          kind: 'measure',
          to: unitPoint(unit, to as RoomPoint),
          by: figureOf(stage, 'diagonal'),
        }),
      ),
    ]
  })

/** Heights at which two sides are screwed together, share of the side. */
const JOINED_AT = [0.85, 0.15] as const
/** How far behind the front edge, mm: out of sight behind a hinge plate, common practice. */
const BEHIND_FRONT = 50

/** Clamped flush at the front, then screwed side to side no deeper than both boards. */
export const joined: Stages = (stage) => {
  const units = inHand(stage)
  const [a, b] = units
  if (a === undefined || b === undefined) return []
  const [left, right] = leftFirst(a, b)
  const both = figureOf(stage, 'both-sides')
  const { width } = extentOf(left.unit.solid)
  // They share only as much side as the lower and the shallower of them has.
  const low = Math.max(left.pose.z, right.pose.z)
  const high = Math.min(...units.map((u) => u.pose.z + extentOf(u.unit.solid).height))
  const deep = Math.min(...units.map((u) => extentOf(u.unit.solid).depth))
  return JOINED_AT.flatMap((share): readonly Act[] => {
    const z = low + share * (high - low) - left.pose.z
    const on = `unit:${left.unit.unit}`
    const clamp = atUnit(left, { x: width, y: deep, z }, BACK, RIGHT)
    const screw = atUnit(left, { x: width - 18, y: deep - BEHIND_FRONT, z }, RIGHT, { x: 0, y: 1, z: 0 })
    return [
      act('clamps', on, clamp, { kind: 'press' }),
      ...(both === null ? [] : [act('drill-driver', on, screw, { kind: 'drive', by: both })]),
    ]
  })
}

/** The one whose right side is the joint. */
function leftFirst(a: StandingUnit, b: StandingUnit): readonly [StandingUnit, StandingUnit] {
  const middle = unitPoint(b, { x: extentOf(b.unit.solid).width / 2, y: 0, z: 0 })
  const yaw = (a.pose.yaw * Math.PI) / 180
  const x = (middle.x - a.pose.x) * Math.cos(yaw) + (middle.y - a.pose.y) * Math.sin(yaw)
  return x > extentOf(a.unit.solid).width / 2 ? [a, b] : [b, a]
}

const partsNow = ({ standing }: Stage): readonly FittedPart[] =>
  standing.parts.filter((p) => p.isNow && p.part.pose !== null).map((p) => p.part)

/** Held where it goes, the wall's line scribed down its edge, planed to it, and clamped. */
export const panelFitted: Stages = (stage) =>
  partsNow(stage).flatMap((part): readonly Act[] => {
    const on = `part:${part.part}`
    const has = (tool: string) => stage.operation.tools.includes(tool)
    const top = atPart(part, [0, 0.5, 1], BACK, RIGHT)
    return [
      ...(has('scribe-block')
        ? [act('scribe-block', on, top, { kind: 'draw', to: onPart(part, 0, 0.5, 0), by: null })]
        : []),
      ...(has('clamps')
        ? [act('clamps', on, atPart(part, [0.5, 1, 0.8], BACK, RIGHT), { kind: 'press' })]
        : []),
      act(
        has('drill-driver') ? 'drill-driver' : 'screwdriver',
        on,
        atPart(part, [0.5, 0.5, 0.2], BACK, RIGHT),
        {
          kind: 'press',
        },
      ),
    ]
  })

/** Laid, read, and sealed along the wall. It was cut on trestles before it came here, so no saw is shown on it. */
export const worktopLaid: Stages = (stage) =>
  partsNow(stage).flatMap((part): readonly Act[] => {
    const on = `part:${part.part}`
    return [
      act('level', on, atPart(part, [0.5, 0.5, 1], DOWN, RIGHT), { kind: 'rest' }),
      act('sealant-gun', on, atPart(part, [0, 0, 1], DOWN, RIGHT), {
        kind: 'draw',
        to: onPart(part, 1, 0, 1),
        by: null,
      }),
    ]
  })

/** Cut to the floor and pressed onto the legs behind it. */
export const plinthClipped: Stages = (stage) =>
  partsNow(stage).flatMap((part): readonly Act[] => [
    act('scribe-block', `part:${part.part}`, atPart(part, [0, 1, 0.1], BACK, RIGHT), {
      kind: 'draw',
      to: onPart(part, 1, 1, 0.1),
      by: null,
    }),
    ...[0.15, 0.5, 0.85].map((x) =>
      act('hands', `part:${part.part}`, atPart(part, [x, 1, 0.5], BACK, RIGHT), { kind: 'press' }),
    ),
  ])

/** Upstands, cornices, pelmets: cut, then fixed or bedded along their length. */
export const finished: Stages = (stage) =>
  partsNow(stage).flatMap((part): readonly Act[] => {
    const on = `part:${part.part}`
    const saw = stage.operation.tools.includes('mitre-saw') ? 'mitre-saw' : 'saw'
    const bed = stage.operation.tools.includes('sealant-gun')
    return [
      act(saw, on, atPart(part, [1, 1, 1], DOWN, RIGHT), { kind: 'tick' }),
      bed
        ? act('sealant-gun', on, atPart(part, [0, 0.5, 1], DOWN, RIGHT), {
            kind: 'draw',
            to: onPart(part, 1, 0.5, 1),
            by: null,
          })
        : act('drill-driver', on, atPart(part, [0.5, 0.5, 0], UP, RIGHT), { kind: 'press' }),
    ]
  })

/** Hung on its plates, then each is turned until the gaps are even. */
export const frontsHung: Stages = (stage) => {
  const own = partsNow(stage).filter((p) => p.kind === 'front')
  if (own.length > 0) return own.flatMap((part) => frontTurned(part, stage))
  return inHand(stage).flatMap((unit) => {
    const { width, depth, height } = extentOf(unit.unit.solid)
    return [0.85, 0.15].map((z) =>
      act(
        'screwdriver',
        `front:${unit.unit.unit}`,
        atUnit(unit, { x: width * 0.06, y: depth + 20, z: height * z }, BACK, RIGHT),
        { kind: 'turn', turns: null, raises: null },
      ),
    )
  })
}

/** A door is turned at its hinges: of two over one unit, each at its outer edge. A drawer front is turned at its middle. */
function frontTurned(part: FittedPart, { standing }: Stage): readonly Act[] {
  const { x0, x1, z0, z1 } = boxAround(part.solid)
  const unit = standing.units.find((u) => part.of.includes(u.unit.unit))
  const isRight = unit !== undefined && x0 > extentOf(unit.unit.solid).width / 4
  const isDrawer = x1 - x0 > z1 - z0
  const across = isDrawer ? 0.5 : isRight ? 0.94 : 0.06
  return (isDrawer ? [0.5] : [0.85, 0.15]).map((up) =>
    act('screwdriver', `part:${part.part}`, atPart(part, [across, 1, up], BACK, RIGHT), {
      kind: 'turn',
      turns: null,
      raises: null,
    }),
  )
}

/**
 * An appliance or a sink in a unit: pushed in, and screwed there. Connecting it is for whoever may, and is never acted
 * out; nor is what is walked into a space of its own.
 */
export const connected: Stages = ({ standing, operation }) => {
  const tool = operation.trade === 'electrician' ? 'proving-unit' : 'screwdriver'
  const bay = standing.units.find((u) => operation.from.includes(`units.${u.unit.unit}`))
  if (bay === undefined || operation.trade !== null) return [elsewhere(tool, 'room')]
  const { width, depth, height } = extentOf(bay.unit.solid)
  const front = atUnit(bay, { x: width / 2, y: depth, z: height / 2 }, BACK, RIGHT)
  return (['hands', tool] as const).map((by) => act(by, `unit:${bay.unit.unit}`, front, { kind: 'press' }))
}
