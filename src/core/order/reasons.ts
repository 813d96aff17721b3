import { readJob } from '../operations/job'
import type { OperationContext } from '../operations/operation-context'
import type { Operation, OrderReason } from '../plan/types'
import { ORDER_RULES } from './reasons/index'
import { readWork } from './work'

/**
 * Every reason why one operation of this kitchen comes before another, hard and preferred. Wishes are not among them:
 * they are read by `wishes.ts`.
 */
export function workOutReasons(
  context: OperationContext,
  operations: readonly Operation[],
): readonly OrderReason[] {
  const job = readJob(context)
  const work = readWork(job, operations)
  const found = new Map<string, OrderReason>()
  for (const rule of ORDER_RULES) {
    for (const reason of rule(job, work)) if (!found.has(reason.id)) found.set(reason.id, reason)
  }
  return [...found.values()]
}
