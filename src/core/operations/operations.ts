import type { Operation } from '../plan/types'
import { OPERATION_MAKERS } from './index'
import { readJob } from './job'
import type { OperationContext } from './operation-context'

/**
 * All the work this kitchen calls for, not yet in order. Every operation follows from facts of this kitchen and names
 * them; what nothing calls for is not there.
 */
export function workOutOperations(context: OperationContext): readonly Operation[] {
  const job = readJob(context)
  return OPERATION_MAKERS.flatMap((make) => make(job))
}
