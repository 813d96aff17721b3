import { type Figure, hasValue, known, sortedIds, valueOf } from '../figure'
import type { Opening, Wall } from '../kitchen/schema'
import type { Band, WallFrame } from '../plan/types'
import type { CableBands } from '../region/region'
import type { Survey } from '../survey/survey'
import { band } from './band'

const ON_FACE = known(0, 0, 'mm', [])
/** The floor along the wall is looked up this often for its highest and lowest place. */
const STEP = 500

/**
 * Bands that some countries lay down whether or not an accessory is to be seen: at set heights above the floor or below
 * the ceiling along the whole wall, and up and down beside doors and windows. Above a floor that falls, a band reaches
 * from its lowest to its highest place.
 *
 * Source: the region pack; German practice, from secondary sources.
 */
export function zoneBands(
  wall: Wall,
  frame: WallFrame,
  survey: Pick<Survey, 'along' | 'floorAt'>,
  bands: CableBands,
): readonly Band[] {
  return [...fixedHorizontal(wall, frame, survey, bands), ...besideOpenings(wall, survey, bands)]
}

function fixedHorizontal(
  wall: Wall,
  frame: WallFrame,
  survey: Pick<Survey, 'floorAt'>,
  bands: CableBands,
): readonly Band[] {
  if (bands.fixedHorizontal.length === 0) return []
  const floors = floorAlong(wall, frame, survey)
  return bands.fixedHorizontal.map(({ from, to, above }) => {
    const [low, high] = above === 'floor' ? extremes(floors) : [frame.ceiling, frame.ceiling]
    const [lower, upper] = above === 'floor' ? [from, to] : [-to, -from]
    return band({
      id: `zone.${wall.id}.${above}-${from}`,
      wall: wall.id,
      kind: 'accessory-horizontal',
      about: [wall.id],
      left: null,
      right: null,
      bottom: { at: low, off: lower },
      top: { at: high, off: upper },
      rests: above === 'floor' ? floors : [],
      basis: bands.basis,
    })
  })
}

function floorAlong(wall: Wall, frame: WallFrame, survey: Pick<Survey, 'floorAt'>): readonly Figure[] {
  const length = valueOf(frame.length)
  if (length === undefined) return [survey.floorAt(wall.id, frame.length, ON_FACE)]
  const places: Figure[] = []
  for (let at = 0; at < length; at += STEP) places.push(known(at, 0, 'mm', []))
  return [...places, frame.length].map((along) => survey.floorAt(wall.id, along, ON_FACE))
}

function extremes(figures: readonly Figure[]): readonly [Figure, Figure] {
  const values = figures.filter(hasValue)
  const first = figures[0] as Figure
  if (values.length < figures.length) return [worst(figures, first), worst(figures, first)]
  const sorted = [...values].sort((a, b) => a.value - b.value)
  return [sorted[0] ?? first, sorted[sorted.length - 1] ?? first]
}

/** One unknown figure standing for several: it lacks what any of them lacks. */
function worst(figures: readonly Figure[], first: Figure): Figure {
  return {
    state: 'unknown',
    unit: first.unit,
    basis: first.basis,
    from: sortedIds(figures.flatMap((f) => f.from)),
    missing: sortedIds(figures.flatMap((f) => (f.state === 'unknown' ? f.missing : []))),
  }
}

function besideOpenings(wall: Wall, survey: Pick<Survey, 'along'>, bands: CableBands): readonly Band[] {
  const beside = bands.besideOpenings
  if (beside === null) return []
  const bandAt = (opening: Opening, side: 'left' | 'right') =>
    band({
      id: `zone.${wall.id}.${opening.id}-${side}`,
      wall: wall.id,
      kind: 'accessory-vertical',
      about: [opening.id],
      left: {
        at: survey.along(wall.id, opening[side]),
        off: side === 'left' ? -beside.to : beside.from,
      },
      right: {
        at: survey.along(wall.id, opening[side]),
        off: side === 'left' ? -beside.from : beside.to,
      },
      bottom: null,
      top: null,
      basis: bands.basis,
    })
  return wall.openings.flatMap((opening) => [bandAt(opening, 'left'), bandAt(opening, 'right')])
}
