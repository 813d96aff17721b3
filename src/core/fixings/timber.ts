import { type Figure, hasValue, type InputId, type ValueFigure } from '../figure'
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
  /** Facts that decide that it is this and not something else. */
  readonly from: readonly InputId[]
}

export function inStud(wall: Wall, stud: UsableStud): Timber {
  return { backing: studBacking(wall, stud.material), stud: stud.id, id: stud.id, sure: stud.sure, from: [] }
}

export function inLetIn(wall: Wall, letIn: LetIn, sure: boolean): Timber {
  return {
    backing: studBacking(wall, letIn.material, letIn.accepts),
    stud: null,
    id: letIn.id,
    sure,
    from: [],
  }
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
  if (!hasValue(along)) return 'place-unknown'
  const stud = studs.find((s) => Math.abs(along.value - s.centre.value) <= s.half)
  const letIn = hasValue(height) ? letInAt(wall, letIns, along, height) : undefined
  if (stud !== undefined) return { ...studAt(wall, stud, along), from: decidedBy(along, stud, letIn) }
  if (letIn !== undefined) return letIn
  if (!hasValue(height)) return 'place-unknown'
  return {
    backing: noBacking([factId('walls', wall.id, 'studs')]),
    stud: null,
    id: null,
    sure: true,
    from: [...along.from, ...height.from],
  }
}

function studAt(wall: Wall, stud: UsableStud, along: ValueFigure): Timber {
  const off = Math.abs(along.value - stud.centre.value)
  return { ...inStud(wall, stud), sure: stud.sure && off + along.pm + stud.centre.pm <= stud.half }
}

/** Where timber is let in over the stud as well, neither of the two decides: without the one there is the other. */
function decidedBy(along: Figure, stud: UsableStud, letIn: Timber | undefined): readonly InputId[] {
  const isSame = letIn?.backing.material === stud.material
  return isSame ? along.from : [...along.from, ...stud.centre.from]
}

function letInAt(
  wall: Wall,
  letIns: readonly LetIn[],
  along: ValueFigure,
  height: ValueFigure,
): Timber | undefined {
  for (const letIn of letIns) {
    const holds = holdsAt(letIn, along.value, height.value, Math.max(along.pm, height.pm))
    if (holds === 'no') continue
    const from = [...along.from, ...height.from, ...letIn.from]
    return { ...inLetIn(wall, letIn, holds === 'sure'), from }
  }
  return undefined
}
