import type { Finding } from '../../core/plan/types'
import type { Case } from '../case'

const canHurt = (f: Finding): boolean => f.dangerous && (f.weight === 'stop' || f.weight === 'ask')

/** What can hurt somebody and is still open stops the work once, at a hold point; a hold point names nothing else. */
export function checkHoldPoints(c: Case): void {
  const open = new Set(c.plan.findings.filter(canHurt).map((f) => f.id))
  const held = new Map<string, number>()
  for (const op of c.plan.operations) {
    if (op.stops.length > 0 && !op.holdPoint)
      c.refuse('hold point', op.id, 'it must stop and is no hold point')
    for (const id of op.stops) {
      held.set(id, (held.get(id) ?? 0) + 1)
      if (!open.has(id))
        c.refuse('hold point', op.id, `it waits for ${id}, which is no open danger of this plan`)
    }
  }
  if (c.plan.operations.length === 0) return
  for (const id of open) {
    if (held.get(id) !== 1)
      c.refuse('hold point', id, `it can hurt somebody and stops the work ${held.get(id) ?? 0} times`)
  }
}
