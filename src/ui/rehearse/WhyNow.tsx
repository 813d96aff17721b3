import { useState } from 'react'
import type { Basis } from '../../core/figure'
import type { Operation, OrderReason, Plan } from '../../core/plan/types'
import { useActions } from '../app-context'
import { words } from '../words'

/** Why this operation stands where it does, read off the same reasons that put it there. */
export function WhyNow({ plan, operation }: { readonly plan: Plan; readonly operation: Operation }) {
  const [open, setOpen] = useState(false)
  const actions = useActions()
  const into = plan.reasons.filter((r) => r.after === operation.id)
  const outOf = plan.reasons.filter((r) => r.before === operation.id)
  return (
    <section className="why" key={operation.id}>
      <button type="button" className="link" aria-expanded={open} onClick={() => setOpen(!open)}>
        {open ? 'Close the reasons' : 'Why now?'}
      </button>
      {open && (
        <>
          <ReasonList title="Comes after" reasons={into} other="before" plan={plan} go={actions.goToOperation} />
          <ReasonList title="Must be done before" reasons={outOf} other="after" plan={plan} go={actions.goToOperation} />
          {into.length === 0 && <p>Nothing has to come before it.</p>}
        </>
      )}
    </section>
  )
}

interface ListProps {
  readonly title: string
  readonly reasons: readonly OrderReason[]
  readonly other: 'before' | 'after'
  readonly plan: Plan
  readonly go: (id: string) => void
}

function ReasonList({ title, reasons, other, plan, go }: ListProps) {
  if (reasons.length === 0) return null
  const sorted = [...reasons].sort((a, b) => Number(b.hard) - Number(a.hard))
  return (
    <>
      <h2>{title}</h2>
      <ul>
        {sorted.slice(0, 12).map((r) => {
          const operation = plan.operations.find((o) => o.id === r[other])
          return (
            <li key={r.id} className={r.hard ? 'hard' : ''}>
              <button type="button" className="link" onClick={() => go(r[other])}>
                {operation === undefined ? r[other] : words(operation.title)}
              </button>
              <span className="because">{words(r.because)}</span>
              <span className="basis">
                {r.hard ? 'Must' : `Better so; the other way costs about ${r.cost} min`}. {basisText(r.basis)}
              </span>
            </li>
          )
        })}
      </ul>
    </>
  )
}

export function basisText(basis: Basis): string {
  switch (basis.kind) {
    case 'survey':
      return 'From your survey.'
    case 'maker':
      return "From the maker's sheet."
    case 'wish':
      return 'Your wish.'
    case 'achieved':
      return 'As read on the day.'
    case 'geometry':
      return `Geometry: ${basis.why}.`
    case 'standard':
      return `${basis.source}, ${basis.where}.`
    case 'common-practice':
      return `Common practice, no source: ${basis.why}.`
  }
}
