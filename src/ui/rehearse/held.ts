import { toSettle } from '../../core/plan/findings-at'
import type { Operation, Plan } from '../../core/plan/types'
import { count } from '../words'

/** What still holds the work at a hold point. */
export interface Held {
  /** "4 things to settle first", "2 checks to answer first". */
  readonly say: string
  /** Ids of the findings to be settled; none: only checks hold it. */
  readonly findings: readonly string[]
}

/** What holds the work at an operation: findings that are not settled, or else checks not answered yet. */
export function heldBy(plan: Plan, operation: Operation, ticked: ReadonlySet<string>): Held | null {
  if (!operation.holdPoint || operation.done) return null
  const findings = toSettle(plan, operation).map((f) => f.id)
  if (findings.length > 0) return { say: `${count(findings.length, 'thing')} to settle first`, findings }
  const open = operation.checks.filter((c) => !ticked.has(c.id)).length
  return open === 0 ? null : { say: `${count(open, 'check')} to answer first`, findings }
}
