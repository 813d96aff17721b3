import type { Case } from './case'
import type { Polygon } from './polygon'
import { fromLeft, wallRectangle, wallStrips } from './room'
import type { Prism } from './solids'
import { lowestSpanned } from './surface'

/** What never moves: walls as strips behind their faces, and boxings, beams and the like. */
export interface FixedThing {
  readonly id: string
  readonly wall: string | null
  readonly solid: Prism
}

const OPEN = Number.POSITIVE_INFINITY

export function fixedThings(c: Case): readonly FixedThing[] {
  return [
    ...wallStrips(c.room).map(({ wall, strip }) => ({
      id: `wall ${wall}`,
      wall,
      solid: { polygon: strip, bottom: -OPEN, top: OPEN },
    })),
    ...boxes(c),
  ]
}

/** Boxes of the file. A face nobody has read is taken as open, so that the box is rather too big than too small. */
function boxes(c: Case): readonly FixedThing[] {
  return c.given.boxes.flatMap((box): readonly FixedThing[] => {
    const frame = c.room.frames.get(box.wall)
    if (frame === undefined || !frame.placed) return []
    const left = fromLeft(frame.wall, box.left).value
    const right = fromLeft(frame.wall, box.right).value
    const out = box.out.value
    if (left === null || right === null || out === null || right <= left) return []
    const near = Math.min(box.near.value ?? 0, out)
    const polygon = wallRectangle(frame, left, right, near, out)
    const middle = polygon.reduce((m, p) => ({ x: m.x + p.x / 4, y: m.y + p.y / 4 }), { x: 0, y: 0 })
    const bottom = c.levels.of(box.bottom, middle).value ?? -OPEN
    const top = c.levels.of(box.top, middle).value ?? OPEN
    return [{ id: `box ${box.id}`, wall: null, solid: { polygon, bottom, top } }]
  })
}

/**
 * Lowest ceiling over an area: of the surface through the readings where it spans the area, of all readings where it does
 * not reach. Null when nothing is read, or a reading is not known.
 */
export function ceilingOver(c: Case, over: Polygon): number | null {
  const { ceiling } = c.levels
  const known = ceiling.readings.flatMap((r) => (r.z.value === null ? [] : [r.z.value]))
  // A reading without a place, or without a level, may be lower than all the others.
  if (known.length < c.given.ceiling.length || known.length === 0) return null
  return lowestSpanned(ceiling, over) ?? Math.min(...known)
}
