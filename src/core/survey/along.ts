import { type Basis, type Figure, type InputId, restingOn } from '../figure'
import type { AlongPosition, Wall } from '../kitchen/schema'
import { sum } from './sum'

const fromTheLeft: Basis = {
  kind: 'geometry',
  why: 'brought to the left end of the wall, seen from the room',
}

/** The choices that say how `at` was measured; empty for a position that is not a fact of the file itself. */
function howMeasured(at: Figure): readonly InputId[] {
  const [id, ...others] = at.from
  if (id === undefined || others.length > 0 || !id.endsWith('.at')) return []
  const path = id.slice(0, -'.at'.length)
  return [`${path}.from`, `${path}.face`]
}

/**
 * A place along a wall as its distance from the left end, seen from the room: the one place where ends and faces swap.
 *
 * From the right end: the length less what was measured. On the other face left and right change over, so from its left
 * end, which lies past this face's right end by the wall's `otherFaceShift`, it is length + shift − what was measured;
 * from its right end it is what was measured, taking that end to be this face's left end, as its own shift is not asked.
 */
export function alongFromLeft(
  wall: Pick<Wall, 'length' | 'otherFaceShift'>,
  { from, face, at }: AlongPosition,
): Figure {
  return restingOn(fromLeftEnd(wall, from, face, at), howMeasured(at))
}

function fromLeftEnd(
  wall: Pick<Wall, 'length' | 'otherFaceShift'>,
  from: 'left' | 'right',
  face: 'room' | 'other',
  at: Figure,
): Figure {
  if (face === 'room') return from === 'left' ? at : sum('mm', fromTheLeft, [wall.length], [at])
  return from === 'right' ? at : sum('mm', fromTheLeft, [wall.length, wall.otherFaceShift], [at])
}
