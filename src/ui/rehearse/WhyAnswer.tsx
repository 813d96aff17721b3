import { useEffect } from 'react'
import { why, whyNotFirst } from '../../core/order/why'
import type { Operation, OrderReason, Plan } from '../../core/plan/types'
import { useActions, useApp } from '../app-context'
import { count, words } from '../words'
import { OrderVerdict } from './OrderVerdict'
import { ReasonChain } from './ReasonChain'
import { ReasonList } from './ReasonList'

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

/** The reason told at a step, what it had to wait for last of all, leading there; and why its stage comes after another. */
export function BecauseNow({ plan, operation }: Props) {
  const actions = useActions()
  const { because = null, stage = null } = why(plan, operation.id) ?? {}
  if (because === null) return <p className="because-now">Nothing has to come before this.</p>
  const index = plan.operations.findIndex((o) => o.id === because.before)
  return (
    <p className="because-now">
      <strong>Why now:</strong> {words(because.because)}{' '}
      <button type="button" className="link" onClick={() => actions.goToOperation(because.before)}>
        After step {index + 1}
      </button>
      {stage !== null && <> {words(stage.because)}</>}
    </p>
  )
}

/** What can be asked of the place of a step in the order. */
export type Asked = 'now' | 'chain' | 'first'

/** Why an operation stands where it does, how it came to that, or why it could not come first. */
export function WhyAnswer({ asked, ...about }: Props & { readonly asked: Asked }) {
  if (asked === 'chain') return <ReasonChain {...about} />
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
  if (blocking.length === 0) return <TriedFirst plan={plan} operation={operation} />
  const preferred = plan.reasons.filter((r) => r.after === operation.id && !r.hard)
  return (
    <div aria-live="polite">
      <p>
        No: {count(first.length, 'step')} must come before it. It could be step {first.length + 1} at the
        earliest.
      </p>
      <ReasonList title="What holds it" reasons={blocking} other="before" plan={plan} />
      {preferred.length > 0 && <p className="quiet">{alsoPreferred(preferred)}</p>}
    </div>
  )
}

function alsoPreferred(preferred: readonly OrderReason[]): string {
  const minutes = Math.round(preferred.reduce((sum, r) => sum + r.cost, 0))
  return `And ${count(preferred.length, 'reason')} of good practice, worth about ${minutes} minutes.`
}

/** Nothing that must be holds it: what it would cost is found by really planning it first of what is still to do. */
function TriedFirst({ plan, operation }: Props) {
  const actions = useActions()
  const trial = useApp((s) => s.trial)
  const first = plan.operations.find((o) => !o.done)
  const isFirst = operation.done || first === undefined || first.id === operation.id
  const forced = isFirst ? null : first.id
  useEffect(() => {
    if (forced !== null && plan.operations.length > 0)
      actions.tryOrder({ before: operation.id, after: forced })
    return () => actions.tryOrder(null)
  }, [actions, plan, operation.id, forced])
  const tried = trial?.forced.before === operation.id && trial.forced.after === forced ? trial.tried : null
  return (
    <div aria-live="polite">
      {isFirst && <p>{operation.done ? 'It is done.' : 'It is the first.'}</p>}
      {!isFirst && tried === null && <p>It is being planned first of all.</p>}
      {tried !== null && (
        <>
          {tried.kind === 'possible' && <p>Yes: nothing that has to be done holds it back.</p>}
          <OrderVerdict plan={plan} tried={tried} />
        </>
      )}
    </div>
  )
}
