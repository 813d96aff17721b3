import { type Basis, type Figure, hasValue, type InputId, restingOn } from '../figure'
import { mergedIds } from '../ids'
import type { HeightPosition, Kitchen } from '../kitchen/schema'
import { lineOffset } from './line-offset'
import { sum } from './sum'

const fromTheLine: Basis = { kind: 'geometry', why: 'brought to the first line' }
const fromTheFloor: Basis = { kind: 'geometry', why: 'the floor at that place, and the height above it' }

/** Whether a height is given above the floor and in no other way: only then is it asked where the floor is. */
export function isAboveFloor({ up, down, aboveFloor }: HeightPosition): boolean {
  return !hasValue(up) && !hasValue(down) && hasValue(aboveFloor)
}

/** The fact that says which line a height was read from; empty for a height that is no fact of the file itself. */
function whichLine(value: Figure, way: 'up' | 'down'): readonly InputId[] {
  const [id, ...others] = value.from
  if (id === undefined || others.length > 0 || !id.endsWith(`.${way}`)) return []
  return [`${id.slice(0, -way.length)}line`]
}

/**
 * A height re the first line: up from its own line, down from it, or above the floor at a place.
 *
 * Nothing given: unknown, and any of the three would settle it. Above the floor without a place: unknown.
 */
export function heightFromLine(
  kitchen: Pick<Kitchen, 'lines'>,
  { line, up, down, aboveFloor }: HeightPosition,
  floor: Figure | null,
): Figure {
  const offset = lineOffset(kitchen, line)
  if (hasValue(up)) return restingOn(sum('mm', fromTheLine, [offset, up]), whichLine(up, 'up'))
  if (hasValue(down)) return restingOn(sum('mm', fromTheLine, [offset], [down]), whichLine(down, 'down'))
  if (hasValue(aboveFloor)) return aboveTheFloor(aboveFloor, floor)
  const ways = mergedIds([up, down, aboveFloor].map((way) => way.from))
  return { state: 'unknown', unit: 'mm', basis: up.basis, from: ways, missing: ways }
}

function aboveTheFloor(aboveFloor: Figure, floor: Figure | null): Figure {
  if (floor !== null) return sum('mm', fromTheFloor, [floor, aboveFloor])
  return {
    state: 'unknown',
    unit: 'mm',
    basis: fromTheFloor,
    from: aboveFloor.from,
    missing: aboveFloor.from,
  }
}
