import { useState } from 'react'
import type { OrderReason, Plan } from '../../core/plan/types'
import { useActions } from '../app-context'
import { basisText } from '../basis'
import { words } from '../words'

const FIRST_SHOWN = 5

interface Props {
  readonly title: string
  readonly reasons: readonly OrderReason[]
  /** The side of the reason that is the other operation. */
  readonly other: 'before' | 'after'
  readonly plan: Plan
}

/** Reasons of the order, those told first in front; each leads to the operation at its other end. */
export function ReasonList({ title, reasons, other, plan }: Props) {
  const [isWhole, setWhole] = useState(false)
  if (reasons.length === 0) return null
  const shown = isWhole ? reasons : reasons.slice(0, FIRST_SHOWN)
  return (
    <>
      <h2>{title}</h2>
      <ul>
        {shown.map((reason) => (
          <ReasonLine key={reason.id} reason={reason} other={reason[other]} plan={plan} />
        ))}
      </ul>
      {shown.length < reasons.length && (
        <button type="button" className="link" onClick={() => setWhole(true)}>
          {reasons.length - shown.length} more
        </button>
      )}
    </>
  )
}

interface LineProps {
  readonly reason: OrderReason
  readonly other: string
  readonly plan: Plan
}

function ReasonLine({ reason, other, plan }: LineProps) {
  const actions = useActions()
  const index = plan.operations.findIndex((o) => o.id === other)
  const operation = plan.operations[index]
  return (
    <li className={reason.hard ? 'hard' : undefined}>
      <button type="button" className="link" onClick={() => actions.goToOperation(other)}>
        {operation === undefined ? other : `${index + 1}. ${words(operation.title)}`}
      </button>
      <span className="because">{words(reason.because)}</span>
      <span className="basis">
        {strength(reason)} {basisText(reason.basis)}
      </span>
    </li>
  )
}

function strength({ hard, cost, minLag }: OrderReason): string {
  const wait = minLag > 0 ? ` Wait at least ${waitText(minLag)} between.` : ''
  if (hard) return `A must.${wait}`
  return `Better so: the other way costs about ${Math.round(cost)} min more.${wait}`
}

function waitText(minutes: number): string {
  if (minutes < 120) return `${minutes} minutes`
  return minutes < 2880 ? `${Math.round(minutes / 60)} hours` : `${Math.round(minutes / 1440)} days`
}
