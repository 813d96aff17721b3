import type { Standing, StandingUnit } from '../../core/plan/standing-at'
import { type Carriage, extentOf, roomPoint } from '../../core/plan/travel-path'
import type { Plan, RoomPoint, WallFrame } from '../../core/plan/types'
import { shelfHeights } from '../../core/views/carcass'
import { holePlace } from '../../core/views/hole-place'
import { type LeftOut, leftOutOf } from '../../core/views/kept'
import { endsOf } from '../../core/views/line-ends'
import { type Blocker, isBlocked } from '../../core/views/rays'
import type { RoomShape } from '../../core/views/room-shape'
import type { View } from '../../core/views/view'
import { lengthOf, onWall, placedWall } from '../../core/views/wall-place'
import { type Display, figureText } from '../../core/words/format'
import { type Dimension, dimensionsOf, partWay } from '../parts/dimension'
import { clearRings } from '../parts/keep-clear'
import { sayInScene } from '../say-in-scene'
import { isCutAway } from '../sketch-scene'
import { isLineInUse, wallTone } from '../wall-tone'
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
  /** Of a level line: its wall, its height, and those of its ends that show. */
  readonly level?: {
    readonly wall: string
    readonly z: number
    readonly within: readonly RoomPoint[]
    readonly ends: readonly RoomPoint[]
  }
  /** Not what the step is about: left out where there is little room. */
  readonly isAside: boolean
  /** The figure of a mark, one of many alike. */
  readonly isMark: boolean
  /** Nearer to its own mark than to any other: somebody drills by it. */
  readonly isNearest?: boolean
  /** Written in its own place or not at all, or moved aside with a line back to its place. */
  readonly moves: 'no' | 'with-leader'
}

/** Along a line, from its right end: where its name may stand. */
const ALONG_LINE = [0.9, 0.8, 0.7, 0.97, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1]
/** About half the length of a line's name as it lies on the wall, mm. */
const HALF_NAME = 200
/** Along a dimension: the middle if it shows. */
const ALONG_DIMENSION = [0.5, 0.35, 0.65, 0.2, 0.8]
/** Below the top of a wall, mm, where its name stands. */
const UNDER_TOP = 190
/** More numbers than this on one picture are noise; one that finds no room is left out in any case. */
const MOST_NUMBERS = 30

/** All texts of a picture, the most important first. */
export function labelsOf(
  plan: Plan,
  standing: Standing,
  view: View,
  room: RoomShape,
  display: Display,
): readonly Label[] {
  const leftOut = leftOutOf(view)
  const hidden = leftOut.walls
  const isVisible = visibleFrom(view, standing, leftOut)
  return [
    ...unitLabels(standing, leftOut, isVisible, true),
    ...dimensionLabels(dimensionsOf(plan, standing, room), isVisible, display),
    ...holeLabels(plan, standing, hidden),
    ...lineLabels(plan, standing, hidden, isVisible, display),
    ...markLabels(plan, standing, hidden, isVisible, display),
    ...clearLabels(standing, room, isVisible),
    ...unitLabels(standing, leftOut, isVisible, false),
    ...plannedLabels(plan, standing, hidden),
    ...wallLabels(standing, hidden, room),
  ].filter((label) => label.anchors.length > 0)
}

type Sees = (point: RoomPoint, except?: string) => boolean

/** Whether the eye sees a point past the units that stand in the room. */
function visibleFrom(view: View, standing: Standing, leftOut: LeftOut): Sees {
  const blockers: readonly Blocker[] = standing.units
    .filter((u) => u.tilt === null && !isCutAway(u, leftOut))
    .map((u) => ({ id: u.unit.unit, wall: null, pose: u.pose, boxes: u.unit.solid }))
  return (point, except) => !blockers.some((b) => b.id !== except && isBlocked(view.eye, point, b))
}

/** Names on the fronts of units; the one in hand in chalk and first. */
function unitLabels(
  standing: Standing,
  leftOut: LeftOut,
  isVisible: Sees,
  inHand: boolean,
): readonly Label[] {
  return standing.units.flatMap((u) => {
    const [box] = u.unit.solid
    if (u.isInHand !== inHand || box === undefined || isCutAway(u, leftOut)) return []
    const extent = extentOf(u.unit.solid)
    const on = (at: Carriage, fx: number, fz: number): RoomPoint =>
      roomPoint(at, extent, {
        x: box.x0 + fx * (box.x1 - box.x0),
        y: box.y1 + 1,
        z: box.z0 + fz * (box.z1 - box.z0),
      })
    const heights = bayMiddles(u, box.z1 - box.z0)
    const spots = heights.map((fz) => on(u, 0.5, fz))
    const isClear = (fz: number) => [0.15, 0.5, 0.85].every((fx) => isVisible(on(u, fx, fz), u.unit.unit))
    // A name that doesn't fit on the open front goes on the side that faces the eye.
    const sides = [box.x0 - 1, box.x1 + 1].flatMap((x) =>
      [0.5, 0.75, 0.25].map((fz) =>
        roomPoint(u, extent, { x, y: (box.y0 + box.y1) / 2, z: box.z0 + fz * (box.z1 - box.z0) }),
      ),
    )
    return [
      {
        id: `name:${u.unit.unit}`,
        text: u.unit.name,
        tone: inHand ? ('chalk' as const) : ('pencil' as const),
        isStrong: inHand,
        anchors: inHand
          ? [...spots, ...sides.filter((p) => isVisible(p))]
          : spots.filter((_, i) => isClear(heights[i] ?? 0.5)),
        likes: 'on' as const,
        fits: inHand ? null : ([on(u, 0.06, 0.5), on(u, 0.94, 0.5)] as const),
        along: null,
        moves: inHand ? ('with-leader' as const) : ('no' as const),
        isAside: !inHand,
        isMark: false,
      },
    ]
  })
}

/** Middles of the bays between shelves, as shares of the height, nearest the middle first. */
function bayMiddles({ unit, shelves }: StandingUnit, height: number): readonly number[] {
  if (shelves === 'out') return [0.5, 0.3, 0.7, 0.85, 0.15]
  const levels = [0, ...shelfHeights(unit, height), height]
  return levels
    .slice(1)
    .map((z, i) => (z + (levels[i] ?? 0)) / 2 / height)
    .sort((a, b) => Math.abs(a - 0.5) - Math.abs(b - 0.5))
}
const pointOf = ([x, y, z]: readonly [number, number, number]): RoomPoint => ({ x, y, z })

function dimensionLabels(
  dimensions: readonly Dimension[],
  isVisible: Sees,
  display: Display,
): readonly Label[] {
  return dimensions.map((d) => ({
    id: d.id,
    text: figureText(d.figure, { display }),
    tone: 'ink',
    isStrong: true,
    anchors: ALONG_DIMENSION.map((f) => partWay(d, f)).filter((p) => isVisible(p)),
    likes: 'above',
    fits: null,
    along: [pointOf(d.from), pointOf(d.to)],
    moves: 'with-leader',
    isAside: false,
    isMark: false,
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
        text: isRefused ? sayInScene('scene.refused') : String(hole.number),
        tone: isRefused ? ('refused' as const) : ('ink' as const),
        isStrong: true,
        anchors: [{ ...place.at, z: place.at.z + 24 }],
        likes: 'above' as const,
        fits: null,
        along: null,
        moves: 'with-leader' as const,
        isNearest: true,
        isAside: false,
        isMark: false,
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
  const named = new Set<string>()
  const longestFirst = [...standing.lines].sort(
    (a, b) => lengthNamed(plan, b) - lengthNamed(plan, a) || lengthStruck(plan, b) - lengthStruck(plan, a),
  )
  const heights = new Set<string>()
  return longestFirst.flatMap((struck) => {
    const { line, isNow } = struck
    const wall = placedWall(plan, line.wall)
    if (wall === undefined || hidden.has(line.wall) || line.height.state === 'unknown') return []
    if (!isNow && line.wall !== about) return []
    if (!isLineInUse(standing, struck, wallTone(standing, wall))) return []
    // The same line on several walls is named once, on the longest.
    if (named.has(line.of)) return []
    named.add(line.of)
    // Two lines at one height are one to the eye; while they are struck each is still told.
    const level = `${line.wall} ${Math.round(line.height.value)}`
    if (heights.has(level) && !isNow) return []
    heights.add(level)
    const [from, to] = endsOf(line, wall)
    const z = line.height.value
    const at = (along: number): RoomPoint => pointOf(onWall(wall)(along, 3, z))
    const spots = ALONG_LINE.map((f) => from + f * (to - from))
    // The name is as long as a stretch of the line: both its ends must show too.
    const clear = spots.filter((along) => [-HALF_NAME, 0, HALF_NAME].every((d) => isVisible(at(along + d))))
    const anchors = (clear.length > 0 || !isNow ? clear : spots.filter((along) => isVisible(at(along)))).map(
      at,
    )
    return [
      {
        id: `line:${line.id}`,
        text: sayInScene(
          `scene.line.${line.throughRail === true ? 'rail-screws' : line.of}`,
          { height: line.height },
          display,
        ),
        tone: line.of === 'line' ? ('ink' as const) : ('chalk' as const),
        isStrong: isNow,
        anchors,
        likes: 'above' as const,
        fits: null,
        along: [at(from), at(to)],
        level: {
          wall: line.wall,
          z,
          within: [0, lengthOf(wall)].map((end) =>
            at(meetsWall(plan, wall, end, hidden) ? end : end === 0 ? -PAST_END : end + PAST_END),
          ),
          ends: [at(to), at(from)].filter((p) => isVisible(p)),
        },
        moves: isNow ? ('with-leader' as const) : ('no' as const),
        isAside: !isNow,
        isMark: false,
      },
    ]
  })
}

/** Past a wall's end where no other is drawn there is as much room as a name takes, mm. */
const PAST_END = 1200

/** Whether another wall that is drawn begins or ends where this one ends. */
function meetsWall(plan: Plan, wall: WallFrame, end: number, hidden: ReadonlySet<string>): boolean {
  const [x, y] = onWall(wall)(end, 0, 0)
  return plan.walls.some(({ wall: id }) => {
    const other = placedWall(plan, id)
    if (other === undefined || id === wall.wall || hidden.has(id)) return false
    return [0, lengthOf(other)].some((along) => {
      const [u, v] = onWall(other)(along, 0, 0)
      return Math.hypot(u - x, v - y) < HALF_NAME
    })
  })
}

function lengthNamed(plan: Plan, { line }: Standing['lines'][number]): number {
  const wall = placedWall(plan, line.wall)
  return wall === undefined ? 0 : lengthOf(wall)
}

function lengthStruck(plan: Plan, { line }: Standing['lines'][number]): number {
  const wall = placedWall(plan, line.wall)
  if (wall === undefined) return 0
  const [from, to] = endsOf(line, wall)
  return to - from
}

/** How far along a mark is, while it is being made. */
/** How far above a mark its figure begins, mm. */
const ABOVE_MARK = 45

/** Where a mark is made: on the line of the tops of its unit, or on the line itself. */
export function markPlace(plan: Plan, mark: Plan['marks'][number]): RoomPoint | null {
  const wall = placedWall(plan, mark.wall)
  if (wall === undefined || mark.along.state === 'unknown') return null
  const unit = plan.units.find((u) => u.unit === mark.about)
  const z = unit === undefined || unit.top.state === 'unknown' ? 0 : unit.top.value
  const [x, y] = onWall(wall)(mark.along.value, 3, z)
  return { x, y, z }
}

function markLabels(
  plan: Plan,
  standing: Standing,
  hidden: ReadonlySet<string>,
  isVisible: Sees,
  display: Display,
): readonly Label[] {
  const now = standing.marks.filter((m) => m.isNow && !hidden.has(m.mark.wall))
  const written = new Set<string>()
  return now.flatMap(({ mark }) => {
    const place = markPlace(plan, mark)
    if (place === null || mark.along.state === 'unknown') return []
    const { z } = place
    const at = { ...place, z: z + ABOVE_MARK }
    // Two units that meet have one edge between them: it is written once.
    const edge = `${mark.wall} ${Math.round(mark.along.value)} ${Math.round(z)}`
    if (written.has(edge)) return []
    written.add(edge)
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
        moves: 'with-leader' as const,
        isNearest: true,
        isAside: false,
        isMark: true,
      },
    ]
  })
}

/** Names of the units at their places, while the delivery is checked against them. */
function plannedLabels(plan: Plan, standing: Standing, hidden: ReadonlySet<string>): readonly Label[] {
  return standing.planned.flatMap(({ unit, wall }) => {
    const frame = placedWall(plan, wall?.wall ?? null)
    if (wall === null || frame === undefined || hidden.has(frame.wall)) return []
    const on = (f: number, g: number): RoomPoint =>
      pointOf(
        onWall(frame)(
          wall.left + f * (wall.right - wall.left),
          3,
          wall.bottom + g * (wall.top - wall.bottom),
        ),
      )
    return [
      {
        id: `planned:${unit.unit}`,
        text: unit.name,
        tone: 'chalk' as const,
        isStrong: false,
        anchors: [0.5, 0.35, 0.65, 0.2, 0.8].map((g) => on(0.5, g)),
        likes: 'on' as const,
        fits: [on(0, 0.5), on(1, 0.5)] as const,
        along: null,
        moves: 'no' as const,
        isAside: true,
        isMark: false,
      },
    ]
  })
}

/** Names of the walls, under their tops, while nobody works on one of them. */
function wallLabels(standing: Standing, hidden: ReadonlySet<string>, room: RoomShape): readonly Label[] {
  const { operation, units } = standing
  if (operation === null || operation.wall !== null || units.length > 0) return []
  return room.walls.flatMap((wall) => {
    if (hidden.has(wall.wall)) return []
    const z = room.topOf(wall).z - UNDER_TOP
    const on = (f: number): RoomPoint => pointOf(onWall(wall)(f * lengthOf(wall), 3, z))
    return [
      {
        id: `wall:${wall.wall}`,
        text: wall.name,
        tone: 'ink' as const,
        isStrong: true,
        anchors: [0.5, 0.35, 0.65].map(on),
        likes: 'on' as const,
        fits: [on(0), on(1)] as const,
        along: null,
        moves: 'no' as const,
        isAside: false,
        isMark: false,
      },
    ]
  })
}

function clearLabels(standing: Standing, room: RoomShape, isVisible: Sees): readonly Label[] {
  return clearRings(standing, room).map((area, i) => {
    const n = area.length
    const middle = { x: area.reduce((s, p) => s + p.x, 0) / n, y: area.reduce((s, p) => s + p.y, 0) / n }
    const [a = middle, b = middle, c = middle] = area
    const spot = (f: number, g: number): RoomPoint => {
      const p = {
        x: middle.x + f * (b.x - a.x) + g * (c.x - b.x),
        y: middle.y + f * (b.y - a.y) + g * (c.y - b.y),
      }
      return { ...p, z: room.floorOr(p) }
    }
    const isClear = (f: number, g: number) => [-0.25, 0, 0.25].every((d) => isVisible(spot(f + d, g)))
    const spots = [0, 0.2, 0.35, -0.2].filter((g) => isClear(0, g)).map((g) => spot(0, g))
    return {
      id: `keep-clear:${i}`,
      text: sayInScene('scene.keep-clear'),
      tone: 'pencil',
      isStrong: false,
      anchors: spots,
      likes: 'on',
      fits: null,
      along: null,
      moves: 'no',
      isAside: false,
      isMark: false,
    }
  })
}
