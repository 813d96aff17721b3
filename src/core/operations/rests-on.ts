import { type Figure, type InputId, mergedIds, sortedIds } from '../figure'

/** All inputs that facts and figures rest on, once each, in order. */
export function restsOn(facts: readonly InputId[], figures: readonly Figure[]): readonly InputId[] {
  return mergedIds([sortedIds(facts), ...figures.map((figure) => figure.from)])
}
