import type { PlanPoint, WallFrame } from '../../core/plan/types'
import type { RoomShape } from '../../core/views/room-shape'
import { lengthOf, onWall } from '../../core/views/wall-place'
import { palette, roomShade } from '../palette'
import { face, type Pen, type Point, polyline, ring, type Sketch, stroke } from '../sketch'
import { trianglesOf } from '../triangles'

const BOARD = 150
const edge: Pen = { weight: 'fine', colour: palette.pencil }
const notRead: Pen = { weight: 'hair', colour: palette.pencil, dashes: [60, 60] }

/** Floor and walls. A wall between the eye and the room is left out, and only its foot is drawn. */
export function sketchRoom(sketch: Sketch, room: RoomShape, hidden: ReadonlySet<string>): void {
  sketchFloor(sketch, room)
  for (const wall of room.walls) {
    if (hidden.has(wall.wall)) sketchFoot(sketch, room, wall)
    else sketchWall(sketch, room, wall)
  }
}

function onFloor(room: RoomShape, p: PlanPoint, lift = 0): Point {
  return [p.x, p.y, room.floorOr(p) + lift]
}

function sketchFloor(sketch: Sketch, room: RoomShape): void {
  if (!room.isFloorKnown) {
    ring(
      sketch,
      'floor',
      notRead,
      room.outline.map((p) => onFloor(room, p)),
    )
    return
  }
  for (const triangle of trianglesOf(room.outline)) {
    face(
      sketch,
      'floor',
      roomShade.floor,
      triangle.map((p) => onFloor(room, p)),
    )
  }
  for (const [from, to] of boardLines(room)) {
    stroke(
      sketch,
      'floor',
      { weight: 'hair', colour: roomShade.board },
      onFloor(room, from, 1),
      onFloor(room, to, 1),
    )
  }
}

/** Joints between floorboards, along the longest wall, cut where the room ends. */
function boardLines(room: RoomShape): readonly (readonly [PlanPoint, PlanPoint])[] {
  const longest = [...room.walls].sort((a, b) => lengthOf(b) - lengthOf(a))[0]
  if (longest === undefined) return []
  const { origin, alongDir, outDir } = longest
  const local = room.outline.map((p) => ({
    along: (p.x - origin.x) * alongDir.x + (p.y - origin.y) * alongDir.y,
    out: (p.x - origin.x) * outDir.x + (p.y - origin.y) * outDir.y,
  }))
  const lowest = Math.min(...local.map((p) => p.out))
  const highest = Math.max(...local.map((p) => p.out))
  const at = (along: number, out: number): PlanPoint => ({
    x: origin.x + along * alongDir.x + out * outDir.x,
    y: origin.y + along * alongDir.y + out * outDir.y,
  })
  const lines: (readonly [PlanPoint, PlanPoint])[] = []
  for (let out = Math.ceil(lowest / BOARD) * BOARD + BOARD / 2; out < highest; out += BOARD) {
    const cuts = local
      .flatMap((a, i) => {
        const b = local[(i + 1) % local.length] ?? a
        if (a.out > out === b.out > out) return []
        return [a.along + ((out - a.out) / (b.out - a.out)) * (b.along - a.along)]
      })
      .sort((a, b) => a - b)
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      lines.push([at(cuts[i] ?? 0, out), at(cuts[i + 1] ?? 0, out)])
    }
  }
  return lines
}

function foot(room: RoomShape, wall: WallFrame): readonly [Point, Point] {
  const at = onWall(wall)
  const end = (along: number): Point => {
    const [x, y] = at(along, 0, 0)
    return onFloor(room, { x, y }, 1)
  }
  return [end(0), end(lengthOf(wall))]
}

function sketchFoot(sketch: Sketch, room: RoomShape, wall: WallFrame): void {
  const [from, to] = foot(room, wall)
  stroke(sketch, `foot:${wall.wall}`, { weight: 'hair', colour: palette.pencil }, from, to)
}

function sketchWall(sketch: Sketch, room: RoomShape, wall: WallFrame): void {
  const part = `wall:${wall.wall}`
  const at = onWall(wall)
  const { z, isKnown } = room.topOf(wall)
  const [low0, low1] = foot(room, wall)
  const [top0, top1] = [at(0, 0, z), at(lengthOf(wall), 0, z)]
  face(sketch, part, room.isLit(wall.outDir) ? roomShade.wallLit : roomShade.wallAside, [
    low0,
    low1,
    top1,
    top0,
  ])
  polyline(sketch, part, edge, [top0, low0])
  polyline(sketch, part, edge, [low1, top1])
  stroke(sketch, part, room.isFloorKnown ? edge : notRead, low0, low1)
  stroke(sketch, part, isKnown ? edge : notRead, top0, top1)
}
