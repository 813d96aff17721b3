import { hasValue } from '../../core/figure'
import type { OperationCheck } from '../../core/plan/types'
import { asksForHeight, figureText, numberText } from '../../core/words/format'

/** What a check should come to, as it is lettered beside the line for its reading: "+392 mm ± 1"; null where nothing is read. */
export function targetOnPaper({ ask, target, tolerance }: OperationCheck): string | null {
  if (target === null) return null
  if (!hasValue(target)) return 'not known yet'
  const within = tolerance === null || !hasValue(tolerance) ? null : numberText({ ...tolerance, pm: 0.1 })
  // A height is signed, up or down from the line; a drop and a width are not.
  const bare = figureText({ ...target, state: 'known' }, { signed: asksForHeight(ask.key) })
  if (within === null) return bare
  return target.value === 0 ? `0 to ${within} ${target.unit}` : `${bare} ± ${within}`
}
