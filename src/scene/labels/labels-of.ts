import { message } from '../../core/message'
import type { Standing } from '../../core/plan/standing-at'
import { type Carriage, extentOf, roomPoint } from '../../core/plan/travel-path'
import type { Plan, RoomPoint } from '../../core/plan/types'
import { type Display, figureText } from '../../core/words/format'
import { say } from '../../core/words/say'
import type { View } from '../camera/choose-view'
import { type Blocker, isBlocked } from '../camera/rays'
import { type Dimension, dimensionsOf, middleOf } from '../parts/dimension'
import { holePlace } from '../parts/hole-place'
import { clearRings } from '../parts/keep-clear'
import { endsOf } from '../parts/lines'
import type { RoomShape } from '../room-shape'
import { isCutAway } from '../sketch-scene'
import { onWall, placedWall } from '../wall-place'
import type { Wanted } from './place-labels'

/** A text on the picture. The picture never says anything that isn't also said in words beside it. */
export interface Label {
  readonly id: string
  readonly text: string
  readonly tone: 'ink' | 'chalk' | 'pencil' | 'refused'
  readonly isStrong: boolean
  readonly anchors: readonly RoomPoint[]
  readonly likes: Wanted['likes']
  /** Written only where it fits between these two points on the screen. */
  readonly fits: readonly [RoomPoint, RoomPoint] | null
  /** The line it is written along, if any. */
  readonly along: readonly [RoomPoint, RoomPoint] | null
}

/** Along a line, from its right end: where its name may stand. */
const ALONG_LINE = [0.9, 0.8, 0.7, 0.97, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1]
/** More numbers than this on one picture are noise. */
const MOST_NUMBERS = 8

/** All texts of a picture, the most important first. */
export function labelsOf(
  plan: Plan,
  standing: Standing,
  view: View,
  room: RoomShape,
  display: Display,
): readonly Label[] {
  const hidden = new Set(view.hidden)
  const isVisible = visibleFrom(view, standing, hidden)
  return [
    ...unitLabels(standing, hidden, isVisible, true),
    ...dimensionLabels(dimensionsOf(plan, standing, room), display),
    ...holeLabels(plan, standing, hidden),
    ...lineLabels(plan, standing, hidden, isVisible, display),
    ...markLabels(plan, standing, hidden, isVisible, display),
    ...clearLabels(standing, room),
    ...unitLabels(standing, hidden, isVisible, false),
  ].filter((label) => label.anchors.length > 0)
}

type Sees = (point: RoomPoint, except?: string) => boolean

/** Whether the eye sees a point past the units that stand in the room. */
function visibleFrom(view: View, standing: Standing, hidden: ReadonlySet<string>): Sees {
  const blockers: readonly Blocker[] = standing.units
    .filter((u) => u.tilt === null && !isCutAway(u, hidden))
    .map((u) => ({ id: u.unit.unit, wall: null, pose: u.pose, boxes: u.unit.solid }))
  return (point, except) => !blockers.some((b) => b.id !== except && isBlocked(view.eye, point, b))
}

/** Names on the fronts of units; the one in hand in chalk and first. */
function unitLabels(
  standing: Standing,
  hidden: ReadonlySet<string>,
  isVisible: Sees,
  inHand: boolean,
): readonly Label[] {
  return standing.units.flatMap((u) => {
    const [box] = u.unit.solid
    if (u.isInHand !== inHand || box === undefined || isCutAway(u, hidden)) return []
    const extent = extentOf(u.unit.solid)
    const on = (at: Carriage, fx: number, fz: number): RoomPoint =>
      roomPoint(at, extent, {
        x: box.x0 + fx * (box.x1 - box.x0),
        y: box.y1 + 1,
        z: box.z0 + fz * (box.z1 - box.z0),
      })
    const spots = [0.5, 0.62, 0.38, 0.74, 0.26, 0.86].map((fz) => on(u, 0.5, fz))
    return [
      {
        id: `name:${u.unit.unit}`,
        text: u.unit.name,
        tone: inHand ? ('chalk' as const) : ('pencil' as const),
        isStrong: inHand,
        anchors: spots.filter((p) => inHand || isVisible(p, u.unit.unit)),
        likes: 'on' as const,
        fits: inHand ? null : ([on(u, 0.06, 0.5), on(u, 0.94, 0.5)] as const),
        along: null,
      },
    ]
  })
}

const pointOf = ([x, y, z]: readonly [number, number, number]): RoomPoint => ({ x, y, z })

function dimensionLabels(dimensions: readonly Dimension[], display: Display): readonly Label[] {
  return dimensions.map((d) => ({
    id: d.id,
    text: figureText(d.figure, { display }),
    tone: 'ink',
    isStrong: true,
    anchors: [middleOf(d)],
    likes: 'above',
    fits: null,
    along: [pointOf(d.from), pointOf(d.to)],
  }))
}

function holeLabels(plan: Plan, standing: Standing, hidden: ReadonlySet<string>): readonly Label[] {
  const now = standing.holes.filter((h) => h.isNow && !hidden.has(h.hole.wall))
  return now.slice(0, MOST_NUMBERS).flatMap(({ hole }) => {
    const place = holePlace(plan, standing, hole)
    if (place === null || place.behind !== null) return []
    const isRefused = hole.verdict === 'refused'
    if (!isRefused && hole.number === null) return []
    return [
      {
        id: `number:${hole.id}`,
        text: isRefused ? say(message('scene.refused')) : String(hole.number),
        tone: isRefused ? ('refused' as const) : ('ink' as const),
        isStrong: true,
        anchors: [{ ...place.at, z: place.at.z + 24 }],
        likes: 'above' as const,
        fits: null,
        along: null,
      },
    ]
  })
}

/** What a line is and how high, on the wall the operation is about, or as it is struck. */
function lineLabels(
  plan: Plan,
  standing: Standing,
  hidden: ReadonlySet<string>,
  isVisible: Sees,
  display: Display,
): readonly Label[] {
  const about = standing.operation?.wall ?? null
  return standing.lines.flatMap(({ line, isNow }) => {
    const wall = placedWall(plan, line.wall)
    if (wall === undefined || hidden.has(line.wall) || line.height.state === 'unknown') return []
    if (!isNow && about !== null && line.wall !== about) return []
    const [from, to] = endsOf(line, wall)
    const z = line.height.value
    const at = (along: number): RoomPoint => pointOf(onWall(wall)(along, 3, z))
    const anchors = ALONG_LINE.map((f) => at(from + f * (to - from)))
    return [
      {
        id: `line:${line.id}`,
        text: say(message(`scene.line.${line.of}`, { height: line.height }), display),
        tone: line.of === 'line' ? ('ink' as const) : ('chalk' as const),
        isStrong: isNow,
        anchors: anchors.filter((p) => isVisible(p)),
        likes: 'above' as const,
        fits: null,
        along: [at(from), at(to)],
      },
    ]
  })
}

/** How far along a mark is, while it is being made. */
function markLabels(
  plan: Plan,
  standing: Standing,
  hidden: ReadonlySet<string>,
  isVisible: Sees,
  display: Display,
): readonly Label[] {
  const now = standing.marks.filter((m) => m.isNow && !hidden.has(m.mark.wall))
  return now.flatMap(({ mark }) => {
    const wall = placedWall(plan, mark.wall)
    if (wall === undefined || mark.along.state === 'unknown') return []
    const unit = plan.units.find((u) => u.unit === mark.about)
    const z = unit === undefined || unit.top.state === 'unknown' ? 0 : unit.top.value
    const [x, y] = onWall(wall)(mark.along.value, 3, z)
    const at = { x, y, z: z + 45 }
    return [
      {
        id: `mark:${mark.id}`,
        text: figureText(mark.along, { display, withUnit: false }),
        tone: 'chalk' as const,
        isStrong: false,
        anchors: isVisible(at) ? [at] : [],
        likes: 'above' as const,
        fits: null,
        along: null,
      },
    ]
  })
}

function clearLabels(standing: Standing, room: RoomShape): readonly Label[] {
  return clearRings(standing, room).map((area, i) => {
    const spot = (fx: number) => {
      const n = area.length
      const middle = {
        x: area.reduce((s, p) => s + p.x, 0) / n,
        y: area.reduce((s, p) => s + p.y, 0) / n,
      }
      const [a = middle, b = middle] = area
      const p = { x: middle.x + fx * (a.x - b.x), y: middle.y + fx * (a.y - b.y) }
      return { ...p, z: room.floorOr(p) }
    }
    return {
      id: `keep-clear:${i}`,
      text: say(message('scene.keep-clear')),
      tone: 'pencil',
      isStrong: false,
      anchors: [spot(0), spot(0.25), spot(-0.25)],
      likes: 'on',
      fits: null,
      along: null,
    }
  })
}
