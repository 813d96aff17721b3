import { hasValue, type InputId } from '../figure'
import { message } from '../message'
import { type FactNames, factName } from '../words/fact-name'
import { tellingFigures } from './figures-in'
import type { Plan, WhatToMeasure } from './types'

/** What is still to be measured or asked, the fact that holds up the most figures first; ties by id. */
export function measureNext(
  plan: Omit<Plan, 'measureNext' | 'changes'>,
  names: FactNames,
): readonly WhatToMeasure[] {
  const worth = new Map<InputId, number>()
  for (const figure of tellingFigures(plan).values()) {
    if (hasValue(figure)) continue
    for (const id of figure.missing) worth.set(id, (worth.get(id) ?? 0) + 1)
  }
  return [...worth]
    .sort(([a, na], [b, nb]) => nb - na || (a < b ? -1 : 1))
    .map(([input, settles]) => ({
      input,
      settles,
      say: message(settles === 1 ? 'measure-this.one' : 'measure-this', {
        what: factName(input, names),
        settles,
      }),
    }))
}
