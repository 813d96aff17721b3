import { type Basis, type Figure, known } from '../figure'
import type { Pose } from '../plan/types'
import { inUnit } from './solid'

const onTheWayIn: Basis = { kind: 'geometry', why: 'from its place to where its way in stands it up' }

/** How far a unit is from its place, as seen from in front of it: to one side of it, and out from it. */
export interface Beside {
  readonly way: 'left' | 'right' | 'straight'
  readonly aside: Figure
  readonly out: Figure
}

/** Where a unit at `there` is from its place; whole millimetres. */
export function besideItsPlace(place: Pose, there: Pose): Beside {
  const off = inUnit(place, there)
  const [aside, out] = [Math.round(off.x), Math.round(off.y)]
  const far = (mm: number): Figure => known(Math.abs(mm), 0, 'mm', [], onTheWayIn)
  return { way: aside < 0 ? 'left' : aside > 0 ? 'right' : 'straight', aside: far(aside), out: far(out) }
}
