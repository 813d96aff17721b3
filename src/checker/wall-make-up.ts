import type { GivenFixing, GivenStud, GivenWall } from './given'
import { exactly, type Measure, notKnown, sum } from './measure'

/** What a wall is made of, as far as holes and fixings go by it. */

const STUD_WALLS = new Set(['timber-stud', 'metal-stud', 'lath-and-plaster'])
const MASONRY = new Set(['brick', 'dense-block', 'aircrete', 'old-brick', 'concrete', 'stone'])
/** Of a layer that nobody has said the make of: it may be what holds, or what does not. */
const NOT_SAID = ''
/** What a wall is called says what it is built of; the other names leave that to its layers. */
const NAMED_FOR_ITS_BASE = new Set(['aircrete', 'old-brick', 'concrete'])
const STUDS = new Set(['timber-stud', 'metal-stud'])

/** Fixings go into studs only: between them nothing carries. */
export function isStudWall(wall: GivenWall): boolean {
  return wall.construction !== null && STUD_WALLS.has(wall.construction)
}

const CONFIRMED = new Set(['both-edges', 'fixings-seen', 'seen-open'])

/** A stud that may be drilled for: found by both edges or seen, its width known. One beep is not a stud. */
export function isUsable(stud: GivenStud): boolean {
  return stud.confirmed !== null && CONFIRMED.has(stud.confirmed) && stud.width.value !== null
}

/** Materials that count as the base a fixing holds in, in this wall. */
export function baseMaterials(wall: GivenWall): readonly string[] {
  if (isStudWall(wall)) {
    const studs = wall.studs.map((s) => (s.material === 'steel' ? 'metal-stud' : 'timber-stud'))
    const built = wall.construction === 'metal-stud' ? ['metal-stud'] : ['timber-stud']
    return [...new Set([...built, ...studs, 'timber-batten'])]
  }
  const first = wall.layers.find((layer) => layer.material === NOT_SAID || MASONRY.has(layer.material))
  if (first !== undefined) return first.material === NOT_SAID ? [] : [first.material]
  const { construction } = wall
  return construction !== null && NAMED_FOR_ITS_BASE.has(construction) ? [construction] : []
}

/** Thickness of everything in front of the base material, finishes still to come included. */
export function layersInFront(wall: GivenWall): Measure {
  const base = isStudWall(wall) ? STUDS : MASONRY
  const index = wall.layers.findIndex((layer) => layer.material === NOT_SAID || base.has(layer.material))
  if (wall.layers[index]?.material === NOT_SAID) return notKnown(`walls.${wall.id}.layers`)
  const front = index < 0 ? wall.layers : wall.layers.slice(0, index)
  return sum(exactly(0), ...[...wall.layersToCome, ...front].map((layer) => layer.thickness))
}

/** The fixings of the file that were bought for a purpose and hold in this wall's base material. */
export function fixingsFor(
  fixings: readonly GivenFixing[],
  wall: GivenWall,
  purpose: string,
): readonly GivenFixing[] {
  const base = baseMaterials(wall)
  return fixings.filter((f) => f.purposes.includes(purpose) && f.into.some((m) => base.includes(m)))
}
