import type { Standing, StandingUnit } from '../../core/plan/standing-at'
import type { Plan, WallFrame } from '../../core/plan/types'
import { BOARD, insideFace, isOpenTopped, topRails } from '../../core/views/carcass'
import { type Rectangle, rectangleOf } from '../../core/views/rectangle'
import type { RoomShape } from '../../core/views/room-shape'
import { onWall, placedWall } from '../../core/views/wall-place'
import { palette, roomShade } from '../palette'
import { type Pen, type Sketch, stroke, wash } from '../sketch'
import { extents, stripes } from './bands'

/** Of the face inside a unit the marks of holes stand out 4 mm; what lies behind its back is drawn under them, mm. */
const UNDER_MARKS = { stud: -3.4, band: -2.8, edge: -3.1 } as const
/** Fainter than on the wall itself: it is seen through a board. */
const OPACITY = { stud: 0.5, band: 0.38 } as const
const edge: Pen = { weight: 'hair', colour: palette.timberEdge, dashes: [40, 30] }

/**
 * What lies in the wall behind the back of a unit, as if the back could be seen through: somebody drills there, and the
 * unit hides the timber that is to be met and the bands that are not.
 */
export function sketchBehindBack(
  sketch: Sketch,
  plan: Plan,
  wallThings: Standing['wallThings'],
  { unit, pose }: StandingUnit,
  room: RoomShape,
): void {
  const wall = placedWall(plan, unit.wall)
  const [box, ...more] = unit.solid
  if (wall === undefined || box === undefined || more.length > 0 || unit.left.state === 'unknown') return
  const stands = (pose.x - wall.origin.x) * wall.outDir.x + (pose.y - wall.origin.y) * wall.outDir.y
  const seen = {
    left: unit.left.value + BOARD,
    right: unit.left.value + box.x1 - box.x0 - BOARD,
    bottom: pose.z + BOARD,
    top: pose.z + box.z1 - (isOpenTopped(unit) ? 0 : BOARD),
  }
  for (const zone of zonesOf(unit, pose.z, seen)) {
    const out = stands + insideFace(unit, (zone.bottom + zone.top) / 2 - pose.z)
    const shown = { sketch, wall, out }
    for (const { thing } of wallThings) {
      if (thing.wall !== wall.wall || !TIMBER.includes(thing.kind)) continue
      const r = within(rectangleOf(thing, room, wall), zone)
      if (r !== null) timber(shown, `${thing.kind}:${thing.id}`, r)
    }
    for (const band of plan.bands) {
      if (band.wall !== wall.wall) continue
      const r = within(extents(band, room, wall), zone)
      if (r === null) continue
      const colour = band.kind === 'lintel' ? palette.pencil : roomShade.band
      for (const stripe of stripes(r))
        wash(sketch, `band:${band.id}`, colour, OPACITY.band, on(shown, UNDER_MARKS.band, stripe))
    }
  }
}

const TIMBER: readonly string[] = ['stud', 'nogging', 'pattress']

/** A base unit's upper rail stands before its back: what is behind it is drawn on the rail. */
function zonesOf(unit: StandingUnit['unit'], underside: number, seen: Rectangle): readonly Rectangle[] {
  const [box] = unit.solid
  const rail = isOpenTopped(unit) && box !== undefined ? topRails(box).at(-1) : undefined
  if (rail === undefined) return [seen]
  const at = underside + rail.z0
  return [
    { ...seen, top: at },
    { ...seen, bottom: at },
  ]
}

function within(r: Rectangle | null, zone: Rectangle): Rectangle | null {
  if (r === null) return null
  const cut = {
    left: Math.max(r.left, zone.left),
    right: Math.min(r.right, zone.right),
    bottom: Math.max(r.bottom, zone.bottom),
    top: Math.min(r.top, zone.top),
  }
  return cut.left < cut.right && cut.bottom < cut.top ? cut : null
}

interface Shown {
  readonly sketch: Sketch
  readonly wall: WallFrame
  readonly out: number
}

const on = ({ wall, out }: Shown, layer: number, flat: readonly (readonly [number, number])[]) =>
  flat.map(([along, z]) => onWall(wall)(along, out + layer, z))

function timber(shown: Shown, part: string, r: Rectangle): void {
  const round = [
    [r.left, r.bottom],
    [r.right, r.bottom],
    [r.right, r.top],
    [r.left, r.top],
  ] as const
  wash(shown.sketch, part, roomShade.studFill, OPACITY.stud, on(shown, UNDER_MARKS.stud, round))
  const [a, b, c, d] = on(shown, UNDER_MARKS.edge, round)
  if (a === undefined || b === undefined || c === undefined || d === undefined) return
  stroke(shown.sketch, part, edge, a, d)
  stroke(shown.sketch, part, edge, b, c)
}
