import type { GivenAccessory, GivenAlong, GivenWall } from '../given'
import type { Levels } from '../levels'
import { type Measure, work } from '../measure'
import { fromLeft } from '../room'
import { OPEN, type OwnBand, type WallBands } from './band'

/** Either side of an accessory's plate, for a drill that wanders; common practice. */
const DRILL_MARGIN = 10

/** In a wall no thicker than this, what is on the other face counts on this one. */
const THIN_WALL = 100
/** Width drawn for a plate nobody has measured. */
const DRAWN_WIDTH = 150

/** Everything on the other face shows on this one in a thin wall, and in one of unknown thickness. */
export function showsThrough(wall: GivenWall): boolean {
  return wall.thickness.value === null || wall.thickness.value <= THIN_WALL
}

export function accessoryBands(levels: Levels, wall: GivenWall, a: GivenAccessory): WallBands {
  const along = fromLeft(wall, a.along)
  const height = levels.onWall(a.height, wall.id, along)
  const common = { wall: wall.id, about: a.id, face: a.face, weight: weightOf(wall, a.face, a.along) }
  const beside = work([along, a.width], (_, width = 0) => width / 2 + DRILL_MARGIN)
  const above = work([height, a.tall], (_, tall = 0) => tall / 2 + DRILL_MARGIN)
  const bands: OwnBand[] = []
  if (beside.value !== null && along.value !== null) {
    bands.push({
      ...common,
      kind: 'accessory-vertical',
      left: along.value - beside.value,
      right: along.value + beside.value,
      bottom: -OPEN,
      top: OPEN,
    })
  }
  if (above.value !== null && height.value !== null) {
    bands.push({
      ...common,
      kind: 'accessory-horizontal',
      left: -OPEN,
      right: OPEN,
      bottom: height.value - above.value,
      top: height.value + above.value,
    })
  }
  const unknown = bands.length === 2 ? [] : [a.id]
  const thick = a.face === 'other' && !showsThrough(wall)
  const open = !isPlain(a.face, a.along) && showsThrough(wall) ? [a.id] : []
  return {
    bands: [...bands, ...unmeasured(common, along, height, bands)],
    unknown: thick ? [] : [...unknown, ...open],
  }
}

/** On the other face, yet measured on this one: which of the two was meant is not known. */
export function isPlain(face: 'room' | 'other', along: GivenAlong): boolean {
  return face === 'room' || along.face === 'other'
}

/** What is on the other face counts for sure in a thin wall; in a thick one only for what comes near that face. */
export function weightOf(wall: GivenWall, face: 'room' | 'other', along: GivenAlong): OwnBand['weight'] {
  const sure = face === 'room' || (showsThrough(wall) && isPlain(face, along))
  return sure ? 'refuse' : 'either'
}

/** An accessory whose plate nobody measured is drawn 150 wide: a hole in that may be refused or asked about. */
function unmeasured(
  common: Pick<OwnBand, 'wall' | 'about' | 'face'>,
  along: Measure,
  height: Measure,
  sure: readonly OwnBand[],
): readonly OwnBand[] {
  const half = DRAWN_WIDTH / 2 + DRILL_MARGIN
  const missing = (kind: OwnBand['kind']): boolean => !sure.some((b) => b.kind === kind)
  const open = { left: -OPEN, right: OPEN, bottom: -OPEN, top: OPEN, weight: 'either' as const }
  const bands: OwnBand[] = []
  if (along.value !== null && missing('accessory-vertical')) {
    const [left, right] = [along.value - half, along.value + half]
    bands.push({ ...common, ...open, kind: 'accessory-vertical', left, right })
  }
  if (height.value !== null && missing('accessory-horizontal')) {
    const [bottom, top] = [height.value - half, height.value + half]
    bands.push({ ...common, ...open, kind: 'accessory-horizontal', bottom, top })
  }
  return bands
}
