import { assumed, type Figure, hasValue, restingOn, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Wall } from '../kitchen/schema'
import { STRENGTH_CLASSES } from '../trade/strength-classes'

/** Above this a density without a strength class is likely to be what timber weighs on average: both means are. */
export const MOST_WITHOUT_CLASS = STRENGTH_CLASSES.C24.characteristic

/** Which formula a region goes by: it decides which fact of the timber is asked for. */
export type Formula = 'eurocode' | 'american'

/** Whether anybody has entered what the studs of a wall are graded as, for this formula. */
export function isTimberEntered({ studTimber }: Wall, formula: Formula): boolean {
  if (formula === 'american') return hasValue(studTimber.specificGravity)
  return studTimber.grade !== null || hasValue(studTimber.density)
}

/** A density that may be the mean of its timber, which the formula may not be given: nobody has said of which class. */
export function mayBeMean({ studTimber }: Wall): boolean {
  const { grade, density } = studTimber
  return grade === null && hasValue(density) && density.value > MOST_WITHOUT_CLASS
}

/** Characteristic density of the studs: as entered, else that of their class, marked as assumed. */
export function characteristicDensity(wall: Wall): Figure {
  const { grade, density } = wall.studTimber
  const fact = (key: string) => factId('walls', wall.id, 'studTimber', key)
  if (mayBeMean(wall)) return unknown('kg/m³', [fact('grade')], [fact('grade'), fact('density')])
  if (hasValue(density)) return restingOn(density, [fact('grade')])
  if (grade === null || grade === 'other') return density
  const where = `Table 1, characteristic density of ${grade}; from memory`
  return assumed(STRENGTH_CLASSES[grade].characteristic, 0, 'kg/m³', [fact('grade'), fact('density')], {
    kind: 'standard',
    source: 'EN 338',
    where,
  })
}
