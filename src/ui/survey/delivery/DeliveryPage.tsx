import './delivery.css'
import { useId, useState } from 'react'
import { useActions, useApp } from '../../app-context'
import { FindingList } from '../../findings/FindingList'
import { ProblemList } from '../../ProblemList'
import { usePageHeading } from '../../use-page-heading'
import { FieldOf } from '../form/FieldOf'
import { deliveryOf, type Row } from './delivery-list'

/** Findings that come of looking at what was delivered. */
const RULES: readonly string[] = ['not-delivered', 'wrong-hand']

/** Everything that was bought, to be ticked off box by box, with what to hold each against. */
export function DeliveryPage() {
  const kitchen = useApp((s) => s.kitchen)
  const plan = useApp((s) => s.plan)
  const heading = usePageHeading()
  const parts = deliveryOf(kitchen, plan)
  const rows = parts.flatMap((part) => part.rows)
  return (
    <div className="two page-form delivery">
      <section className="sheet">
        <h2 ref={heading} tabIndex={-1}>
          Delivery check
        </h2>
        <p>
          Box by box: is it here, and is it what was ordered? Hold it against the figures beside its name.
        </p>
        {rows.length === 0 ? (
          <p>
            Nothing is listed yet. <a href="#survey/units">List the units</a> first.
          </p>
        ) : (
          <Counted rows={rows} />
        )}
        {parts.map((part) => (
          <section key={part.title} className="delivery-part">
            <h3>{part.title}</h3>
            <ul className="delivery-rows">
              {part.rows.map((row) => (
                <OneRow key={row.path} row={row} />
              ))}
            </ul>
          </section>
        ))}
        <p className="onward">
          <a className="button main" href="#survey">
            To what was found
          </a>
        </p>
      </section>
      <Beside />
    </div>
  )
}

/** "7 of 12 seen." */
function Counted({ rows }: { readonly rows: readonly Row[] }) {
  const of = (come: boolean | undefined) => rows.filter((row) => row.come === come).length
  const [here, missing, open] = [of(true), of(false), of(undefined)]
  return (
    <p className="seen" role="status">
      <strong>
        {here} of {rows.length} seen
      </strong>
      {missing > 0 && <span className="stop">, {missing} not here</span>}
      {open > 0 && <span>, {open} still to look for</span>}.
    </p>
  )
}

const ANSWERS = [
  { come: true, words: 'Here' },
  { come: false, words: 'Not here' },
  { come: undefined, words: 'Don’t know yet' },
] as const

function OneRow({ row }: { readonly row: Row }) {
  const actions = useActions()
  const id = useId()
  const [isOpen, setOpen] = useState(false)
  const fact = `${row.path}.delivered`
  return (
    <li className="delivery-row" data-row={row.path} data-come={`${row.come}`}>
      <div className="against">
        <h4 id={id}>{row.name}</h4>
        <p className="size">{row.size}</p>
        {row.others.length > 0 && <p>{row.others.join('. ')}.</p>}
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would want a legend, and the row has a heading */}
      <div className="answers" role="group" aria-labelledby={id}>
        {ANSWERS.map(({ come, words }) => (
          <button
            key={words}
            type="button"
            className="button"
            aria-pressed={row.come === come}
            onClick={() => actions.edit([{ set: fact, to: come }])}
          >
            {words}
          </button>
        ))}
      </div>
      {row.fields.length > 0 && (
        <div className="otherwise">
          <button type="button" className="link" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            It measures otherwise<span className="visually-hidden">: {row.name}</span>
          </button>
          {isOpen && (
            <div className="fields">
              {row.fields.map((field) => (
                <FieldOf key={field.key} field={field} under={row.path} />
              ))}
            </div>
          )}
        </div>
      )}
    </li>
  )
}

/** What is missing or wrong, as the plan finds it. */
function Beside() {
  const plan = useApp((s) => s.plan)
  const noPlan = useApp((s) => s.noPlan)
  const problems = useApp((s) => s.problems)
  const isWorking = useApp((s) => s.working)
  const found = (plan ?? noPlan)?.findings.filter(({ rule }) => RULES.includes(rule)) ?? []
  return (
    <div className="beside">
      <ProblemList title="This does not go together yet." problems={problems} />
      <section className="sheet" aria-live="polite">
        <h2>Missing or wrong</h2>
        {isWorking && <p className="quiet">Working it out…</p>}
        {found.length === 0 ? (
          <p>Nothing so far. That is not a promise that all of it is here.</p>
        ) : (
          <FindingList findings={found} plan={plan ?? { walls: [], units: [] }} />
        )}
      </section>
    </div>
  )
}
