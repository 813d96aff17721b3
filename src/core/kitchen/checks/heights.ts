import { type Figure, hasValue } from '../../figure'
import { listed, type Problem, placeIn } from '../problem'
import type { Kitchen } from '../schema'
import { objectsIn } from './objects-in'

const WAYS = ['up', 'down', 'aboveFloor'] as const

/** Heights given in more than one way at once. None of the three is well: the height is not known. */
export function heights(kitchen: Kitchen): readonly Problem[] {
  return objectsIn(kitchen).flatMap(({ value, path }): Problem[] => {
    if (!WAYS.every((way) => way in value)) return []
    const height = value as Readonly<Record<(typeof WAYS)[number], Figure>>
    const given = WAYS.filter((way) => hasValue(height[way]))
    if (given.length < 2) return []
    const message = `This height is given in ${given.length} ways: ${listed(given)}.`
    const mend = 'Keep the one that was read and take the others out, or write null for them.'
    const onScreen = 'Choose the way it was measured, and type it once more.'
    return [{ kind: 'contradiction', path: placeIn(kitchen, path()), message, mend, onScreen }]
  })
}
