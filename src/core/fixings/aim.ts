import { type Basis, derive, type Figure, hasValue, quantise } from '../figure'
import type { UsableStud } from './usable-studs'

/** A pilot is struck to 2 mm of its mark either way: less of a window than this cannot be aimed at, mm. Common practice. */
const LEAST_TO_AIM_AT = 4
const inTheShare: Basis = {
  kind: 'geometry',
  why: 'the middle of what the window of the stud and the inside of the unit share',
}

/** A stud, and where along the wall a screw goes into it. */
export interface Aimed {
  readonly stud: UsableStud
  readonly along: Figure
}

/** Studs whose centre lies within a stretch: a screw driven from within it goes to the centre. */
export function centredWithin(studs: readonly UsableStud[], from: Figure, to: Figure): readonly Aimed[] {
  if (!hasValue(from) || !hasValue(to)) return []
  return studs
    .filter(({ centre }) => centre.value >= from.value && centre.value <= to.value)
    .map((stud) => ({ stud, along: stud.centre }))
}

/**
 * Studs whose centre lies outside a stretch, of whose window enough to aim at lies within: the screw goes to the middle
 * of what the two share. However much of a stud the stretch overlaps, with less than that it does not count (failure
 * modes F20, F21). Sure within what the readings hold, or it is asked about.
 */
export function besideWithin(studs: readonly UsableStud[], from: Figure, to: Figure): readonly Aimed[] {
  if (!hasValue(from) || !hasValue(to)) return []
  return studs.flatMap((stud): readonly Aimed[] => {
    const { centre, half, known } = stud
    if (centre.value >= from.value && centre.value <= to.value) return []
    const shared = Math.min(to.value, centre.value + half) - Math.max(from.value, centre.value - half)
    if (quantise(shared) < LEAST_TO_AIM_AT) return []
    const along = derive('mm', inTheShare, [centre, from, to], (at, low, high) => {
      const [left, right] = [(at as number) - half, (at as number) + half]
      return (Math.max(low as number, left) + Math.min(high as number, right)) / 2
    })
    const sure = stud.sure && shared / 2 >= Math.max(known, from.pm, to.pm)
    return [{ stud: { ...stud, sure }, along }]
  })
}
