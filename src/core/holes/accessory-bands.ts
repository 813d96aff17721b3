import { hasValue, type InputId, sortedIds } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Accessory, Wall } from '../kitchen/schema'
import type { Band } from '../plan/types'
import type { CableBands } from '../region/region'
import type { Survey } from '../survey/survey'
import { around, band } from './band'

/** Drawn half width of a band whose accessory has no size yet: 150 mm across, wider than a twin plate with its margin. */
const UNSIZED_HALF = 75

/** Is the other face near enough for its accessories to count on this one? Not known counts as near. */
export function isThin(wall: Wall, bands: CableBands): boolean {
  const { thickness } = wall
  return !hasValue(thickness) || thickness.value - thickness.pm <= bands.thinWall
}

/**
 * Where the cable of each accessory is to be expected: straight up and down from it, the full height of the wall, and
 * straight to either side, its full length; as wide as its plate, and a margin for a drill that wanders. Accessories on
 * the other face make the same bands on this one, mirrored where they were measured over there.
 *
 * The bands say where a cable is allowed, not where it is: older work ignores them.
 * Source: BS 7671 regulation 522.6.202(i); NHBC Standards 8.1.7.
 */
export function accessoryBands(
  wall: Wall,
  survey: Pick<Survey, 'along' | 'height'>,
  bands: CableBands,
): readonly Band[] {
  return wall.accessories.flatMap((accessory) => bandsOf(accessory, wall, survey, bands))
}

function bandsOf(
  accessory: Accessory,
  wall: Wall,
  survey: Pick<Survey, 'along' | 'height'>,
  bands: CableBands,
): readonly Band[] {
  const along = survey.along(wall.id, accessory.along)
  const height = survey.height(accessory.height, { wall: wall.id, along, out: zeroOut })
  const shared = {
    wall: wall.id,
    about: [accessory.id],
    face: accessory.face,
    basis: bands.basis,
    from: accessory.face === 'other' ? wall.thickness.from : [],
    lacking: faceInDoubt(accessory, wall),
  }
  const [left, right] = around(along, halfWidth(accessory.width, bands))
  const [bottom, top] = around(height, halfWidth(accessory.tall, bands))
  return [
    band({
      ...shared,
      id: `accessory-vertical.${wall.id}.${accessory.id}`,
      kind: 'accessory-vertical',
      left,
      right,
      bottom: null,
      top: null,
      rests: [accessory.width],
      widthPm: halfPm(accessory.width),
    }),
    band({
      ...shared,
      id: `accessory-horizontal.${wall.id}.${accessory.id}`,
      kind: 'accessory-horizontal',
      left: null,
      right: null,
      bottom,
      top,
      rests: [accessory.tall],
      widthPm: halfPm(accessory.tall),
    }),
  ]
}

const zeroOut = { state: 'known', value: 0, pm: 0, unit: 'mm', basis: { kind: 'survey' }, from: [] } as const

function halfWidth(size: Accessory['width'], bands: CableBands): number {
  return hasValue(size) ? size.value / 2 + bands.drillMargin.value : UNSIZED_HALF
}

function halfPm(size: Accessory['width']): number {
  return hasValue(size) ? size.pm / 2 : 0
}

/**
 * An accessory on the other face whose place is given as measured on this one: left and right change places between
 * the two, and a slip puts the band at the wrong end of the wall. It is drawn as given, and asked about.
 */
export function faceInDoubt(accessory: Accessory, wall: Wall): readonly InputId[] {
  if (accessory.face === accessory.along.face) return []
  return sortedIds([factId('walls', wall.id, 'accessories', accessory.id, 'along', 'face')])
}
