import { hasValue } from '../figure'
import type { Wall } from '../kitchen/schema'
import type { CableBands } from '../region/region'

/**
 * Is there another face near enough to matter that nobody has looked at? A socket on the far side of a thin wall makes
 * its bands on this side too. Outside air or a void behind has no accessories; a wall known to be thick hides them.
 *
 * Source: NHBC Standards 8.1.7 (walls to 100 mm).
 */
export function isOtherFaceUnseen(wall: Wall, bands: CableBands): boolean {
  if (wall.otherFaceChecked === true) return false
  if (wall.behind === 'outside' || wall.behind === 'void') return false
  return !(hasValue(wall.thickness) && wall.thickness.value - wall.thickness.pm > bands.thinWall)
}
