import { useState } from 'react'
import { why, whyNotFirst } from '../../core/order/why'
import type { Operation, OrderReason, Plan } from '../../core/plan/types'
import { count } from '../words'
import { ReasonList } from './ReasonList'

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

type Asked = 'now' | 'first' | null

/** Why this operation stands where it does, read off the same reasons that put it there. */
export function WhyNow({ plan, operation }: Props) {
  const [asked, setAsked] = useState<Asked>(null)
  const ask = (what: Asked) => setAsked(asked === what ? null : what)
  return (
    <section className="why" aria-label="Why now">
      <button type="button" className="link" aria-expanded={asked === 'now'} onClick={() => ask('now')}>
        Why now?
      </button>
      <button type="button" className="link" aria-expanded={asked === 'first'} onClick={() => ask('first')}>
        Could this come first?
      </button>
      {asked === 'now' && <Now plan={plan} operation={operation} />}
      {asked === 'first' && <First plan={plan} operation={operation} />}
    </section>
  )
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
