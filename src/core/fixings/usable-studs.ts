import { type Figure, hasValue, type InputId, restingOn, type ValueFigure } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Stud, Wall } from '../kitchen/schema'
import type { Survey } from '../survey/survey'

/** A screw nearer the edge of the timber than this splits it or misses. Common practice. */
export const EDGE_OF_TIMBER = 12

/** A stud a screw may be aimed at. */
export interface UsableStud {
  readonly id: string
  /** Centre, along the wall: where the hole goes. */
  readonly centre: ValueFigure
  /** The window either side of the centre: half the width, less the edge. */
  readonly half: number
  /** How well the place of the window is known, mm. */
  readonly known: number
  /** Within what the readings hold, does a hole at the centre land in the window? */
  readonly sure: boolean
  readonly material: 'timber-stud' | 'metal-stud'
}

/** A stud that may be there, and is not counted on. */
export interface DoubtfulStud {
  readonly id: string
  readonly why: 'not-confirmed' | 'not-measured' | 'too-narrow'
  readonly centre: Figure
  readonly missing: readonly InputId[]
}

export interface Studs {
  /** From left to right. */
  readonly usable: readonly UsableStud[]
  readonly doubtful: readonly DoubtfulStud[]
  /** Facts that decide how many studs can be counted on. */
  readonly from: readonly InputId[]
  readonly missing: readonly InputId[]
}

const FOUND: readonly Stud['confirmed'][] = ['both-edges', 'fixings-seen', 'seen-open']

/** Whether a stud was found for certain: one beep of a detector is no stud. */
export function isFound({ confirmed }: Pick<Stud, 'confirmed'>): boolean {
  return FOUND.includes(confirmed)
}

/**
 * Studs a screw may be aimed at, and those that are only supposed. A stud counts when both its edges were found, or its
 * fixings or the stud itself seen, and when its centre and width are known: one beep of a detector is no stud. The
 * screw goes to the centre, and the window is the stud's width less 12 mm at each edge: ± 7 on a 38 mm stud.
 *
 * Common practice; failure modes F20 and F21.
 */
export function studsOf(wall: Wall, survey: Pick<Survey, 'along'>): Studs {
  const studs = wall.studs.map((stud) => ({ stud, centre: survey.along(wall.id, stud.centre) }))
  const found = studs.filter(({ stud }) => isFound(stud))
  const facts = found.flatMap(({ stud, centre }) => [centre, stud.width])
  return {
    usable: studs.flatMap(({ stud, centre }) => usable(wall, stud, centre)).sort(leftToRight),
    doubtful: studs.flatMap(({ stud, centre }) => doubtful(wall, stud, centre)),
    from: facts.flatMap((f) => f.from),
    missing: facts.flatMap((f) => (f.state === 'unknown' ? f.missing : [])),
  }
}

function leftToRight(a: UsableStud, b: UsableStud): number {
  return a.centre.value - b.centre.value || (a.id < b.id ? -1 : 1)
}

const halfWindow = (width: ValueFigure): number => width.value / 2 - EDGE_OF_TIMBER

function usable(wall: Wall, stud: Stud, centre: Figure): readonly UsableStud[] {
  if (doubtful(wall, stud, centre).length > 0 || !hasValue(centre) || !hasValue(stud.width)) return []
  const half = halfWindow(stud.width)
  const known = centre.pm + stud.width.pm / 2
  return [
    {
      id: stud.id,
      centre: restingOn(centre, stud.width.from) as ValueFigure,
      half,
      known,
      sure: known <= half,
      material: materialOf(wall, stud),
    },
  ]
}

/** Where nobody has said, the wall's own name says what its studs are. */
function materialOf(wall: Wall, stud: Stud): UsableStud['material'] {
  if (stud.material !== null) return stud.material === 'steel' ? 'metal-stud' : 'timber-stud'
  return wall.construction === 'metal-stud' ? 'metal-stud' : 'timber-stud'
}

function doubtful(wall: Wall, stud: Stud, centre: Figure): readonly DoubtfulStud[] {
  const { id, width } = stud
  if (!isFound(stud)) {
    const missing = [factId('walls', wall.id, 'studs', id, 'confirmed')]
    return [{ id, why: 'not-confirmed', centre, missing }]
  }
  if (!hasValue(centre) || !hasValue(width)) {
    const missing = [centre, width].flatMap((f) => (f.state === 'unknown' ? f.missing : []))
    return [{ id, why: 'not-measured', centre, missing }]
  }
  return halfWindow(width) > 0 ? [] : [{ id, why: 'too-narrow', centre, missing: width.from }]
}
