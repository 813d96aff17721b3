import { why, whyNotFirst } from '../../core/order/why'
import type { Operation, OrderReason, Plan } from '../../core/plan/types'
import { count } from '../words'
import { ReasonList } from './ReasonList'

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

/** Why an operation stands where it does, or why it could not come first. */
export function WhyAnswer({ asked, ...about }: Props & { readonly asked: 'now' | 'first' }) {
  return asked === 'now' ? <Now {...about} /> : <First {...about} />
}

function Now({ plan, operation }: Props) {
  const told = why(plan, operation.id)
  if (told === undefined) return null
  const setAside = new Set(plan.order.setAside)
  const kept = told.into.filter((r) => !setAside.has(r.id))
  const before = plan.reasons.filter((r) => r.before === operation.id && !setAside.has(r.id))
  const against = plan.reasons.filter(
    (r) => (r.before === operation.id || r.after === operation.id) && setAside.has(r.id),
  )
  return (
    <div aria-live="polite">
      {kept.length === 0 && <p>Nothing has to come before it.</p>}
      <ReasonList title="It comes after" reasons={kept} other="before" plan={plan} />
      <ReasonList title="It comes before" reasons={before} other="after" plan={plan} />
      <ReasonList title="Set aside here" reasons={against} other="before" plan={plan} />
    </div>
  )
}

function First({ plan, operation }: Props) {
  const answer = whyNotFirst(plan, operation.id)
  if (answer === undefined) return null
  const { blocking, first } = answer
  const preferred = plan.reasons.filter((r) => r.after === operation.id && !r.hard)
  return (
    <div aria-live="polite">
      <p>{verdict(blocking, first.length)}</p>
      <ReasonList title="What holds it" reasons={blocking} other="before" plan={plan} />
      {blocking.length === 0 && (
        <ReasonList title="What speaks against it" reasons={preferred} other="before" plan={plan} />
      )}
      {blocking.length > 0 && preferred.length > 0 && (
        <p className="quiet">
          And {count(preferred.length, 'reason')} of good practice, worth about{' '}
          {Math.round(preferred.reduce((sum, r) => sum + r.cost, 0))} minutes.
        </p>
      )}
    </div>
  )
}

function verdict(blocking: readonly OrderReason[], before: number): string {
  if (blocking.length === 0) return 'Yes: nothing that has to be done holds it back.'
  return `No: ${count(before, 'step')} must come before it.`
}
