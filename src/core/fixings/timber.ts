import { type Figure, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Wall } from '../kitchen/schema'
import { type Backing, noBacking, studBacking } from './base-material'
import { holdsAt, type LetIn } from './noggings'
import type { UsableStud } from './usable-studs'

/** What a hole in a stud wall ends in. */
export interface Timber {
  readonly backing: Backing
  readonly stud: string | null
  /** The stud, nogging or pattress, by id; null: only the cavity. */
  readonly id: string | null
  /** Within what the readings hold. */
  readonly sure: boolean
}

export function inStud(wall: Wall, stud: UsableStud): Timber {
  return { backing: studBacking(wall, stud.material), stud: stud.id, id: stud.id, sure: stud.sure }
}

export function inLetIn(wall: Wall, letIn: LetIn, sure: boolean): Timber {
  return { backing: studBacking(wall, letIn.material, letIn.accepts), stud: null, id: letIn.id, sure }
}

/**
 * What stands behind a hole whose place is given: a stud whose window it lands in, else timber or board let in there,
 * else nothing. Plasterboard, or lath and plaster, by itself never carries.
 */
export function timberAt(
  wall: Wall,
  studs: readonly UsableStud[],
  letIns: readonly LetIn[],
  along: Figure,
  height: Figure,
): Timber | 'place-unknown' {
  if (!hasValue(along) || !hasValue(height)) return 'place-unknown'
  for (const stud of studs) {
    const off = Math.abs(along.value - stud.centre.value)
    if (off <= stud.half) {
      const sure = stud.sure && off + along.pm + stud.centre.pm <= stud.half
      return { ...inStud(wall, stud), sure }
    }
  }
  for (const letIn of letIns) {
    const holds = holdsAt(letIn, along.value, height.value, Math.max(along.pm, height.pm))
    if (holds !== 'no') return inLetIn(wall, letIn, holds === 'sure')
  }
  return { backing: noBacking([factId('walls', wall.id, 'studs')]), stud: null, id: null, sure: true }
}
