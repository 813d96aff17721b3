import { derive, type Figure, type InputId, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Layer, Wall } from '../kitchen/schema'

export type Material = NonNullable<Layer['material']>

/** What a fixing is to hold in, and what it must first go through. */
export interface Backing {
  /** Null: nobody has said what is behind the face. */
  readonly material: Material | null
  /** Materials a fixing may be made for to hold here. */
  readonly accepts: readonly Material[]
  /** Everything between the finished face and that material, finishes to come included. */
  readonly inFront: Figure
  /** Board on dabs: the fixing must bridge the void without crushing the board. */
  readonly needsStandOff: boolean
}

const BASES: readonly Material[] = ['brick', 'dense-block', 'aircrete', 'old-brick', 'concrete', 'stone']
/** In a stud wall the stud begins where the cavity does. */
const CAVITY: readonly Material[] = ['timber-stud', 'metal-stud', 'void', 'insulation']
/** Walls whose name says what is behind the face, when no layer does. */
const BY_CONSTRUCTION: Readonly<Partial<Record<NonNullable<Wall['construction']>, Material>>> = {
  aircrete: 'aircrete',
  'old-brick': 'old-brick',
  concrete: 'concrete',
}

/**
 * What a hole in a masonry wall ends in: the first brick, block, concrete or stone behind the face. Plaster, board,
 * dabs, insulation and tiles are only gone through.
 */
export function masonryBacking(wall: Wall): Backing {
  const at = wall.layers.findIndex(isOneOf(BASES))
  if (wall.layers[at]?.material === null) {
    return {
      ...noBacking([materialOf(wall, wall.layers[at])]),
      needsStandOff: wall.construction === 'dot-and-dab',
    }
  }
  const implied = wall.construction === null ? undefined : BY_CONSTRUCTION[wall.construction]
  const found = wall.layers[at]?.material ?? (wall.layers.length > 0 ? implied : undefined)
  const before = at >= 0 ? wall.layers.slice(0, at) : wall.layers
  return {
    material: found ?? null,
    accepts: found === undefined ? [] : [found],
    inFront: found === undefined ? noLayers(wall) : through(wall, before),
    needsStandOff: wall.construction === 'dot-and-dab',
  }
}

/** What a hole into a stud or a nogging goes through first: everything up to the cavity. */
export function studBacking(
  wall: Wall,
  material: Material,
  accepts: readonly Material[] = [material],
): Backing {
  const at = wall.layers.findIndex(isOneOf(CAVITY))
  const reached = wall.layers[at]
  const before = at >= 0 ? wall.layers.slice(0, at) : wall.layers
  return {
    material,
    accepts,
    inFront:
      wall.layers.length === 0
        ? noLayers(wall)
        : reached?.material === null
          ? unknown('mm', [materialOf(wall, reached)])
          : through(wall, before),
    needsStandOff: false,
  }
}

/** Nothing to hold: the construction is not known, or there is only the cavity behind; `lacking` would settle it. */
export function noBacking(lacking: readonly InputId[]): Backing {
  return { material: null, accepts: [], inFront: unknown('mm', lacking), needsStandOff: false }
}

function through(wall: Wall, before: readonly Layer[]): Figure {
  const layers = [...wall.layersToCome, ...before]
  return derive(
    'mm',
    { kind: 'geometry', why: 'the layers in front of what holds, finishes to come included, added up' },
    layers.map((layer) => layer.thickness),
    (...thicknesses) => thicknesses.reduce((sum, t) => sum + t, 0),
  )
}

/** Whether a layer is one of these, or may be for all that anybody has said of it. */
const isOneOf =
  (materials: readonly Material[]) =>
  ({ material }: Layer): boolean =>
    material === null || materials.includes(material)

const materialOf = (wall: Wall, layer: Layer): InputId =>
  factId('walls', wall.id, 'layers', layer.id, 'material')

function noLayers(wall: Wall): Figure {
  return unknown('mm', [factId('walls', wall.id, 'layers')])
}
