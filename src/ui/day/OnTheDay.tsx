import { type ReactNode, useEffect, useRef, useState } from 'react'
import type { Operation, Plan } from '../../core/plan/types'
import { useActions, useApp } from '../app-context'
import { NothingOpen } from '../NothingOpen'
import { ProblemList } from '../ProblemList'
import { SlipFigures } from '../rehearse/SlipFigures'
import { CautionLine } from '../signs/CautionLine'
import { count, keyOf, STAGE_NAMES, TRADE_NAMES, words } from '../words'
import { Changes } from './Changes'
import { DayLog } from './DayLog'
import { clockText, doneEntry } from './entry-words'
import { LevelCard } from './LevelCard'
import { SetHeight } from './SetHeight'
import { Trouble } from './Trouble'
import { TryTurn } from './TryTurn'

/** The first operation that is not done yet: big, one thing at a time, hands full. */
export function OnTheDay() {
  const plan = useApp((s) => s.plan)
  const [chosen, setChosen] = useState<string | null>(null)
  const [hasTrouble, setTrouble] = useState(false)
  if (plan === null || plan.operations.length === 0) return <NothingOpen />
  if (hasTrouble) return <Trouble onBack={() => setTrouble(false)} />
  const now = plan.operations.findIndex((o) => !o.done)
  const current = now < 0 ? plan.operations.length - 1 : now
  const found = plan.operations.findIndex((o) => o.id === chosen)
  const at = found < 0 ? current : found
  const operation = plan.operations[at] as Operation
  const show = (index: number) => setChosen(index === current ? null : (plan.operations[index]?.id ?? null))
  return (
    <DayCard key={operation.id} plan={plan} operation={operation} at={at}>
      <Buttons operation={operation} onDone={() => setChosen(null)} />
      <div className="pair">
        <button type="button" className="button" disabled={at === 0} onClick={() => show(at - 1)}>
          Back
        </button>
        <button type="button" className="button" onClick={() => setTrouble(true)}>
          Something is wrong
        </button>
      </div>
      <p className="elsewhere">
        <a className="link" href={`#rehearse/${operation.id}`}>
          See it rehearsed
        </a>
        {at < current && (
          <button type="button" className="link" onClick={() => setChosen(null)}>
            To what comes now
          </button>
        )}
      </p>
    </DayCard>
  )
}

interface CardProps {
  readonly plan: Plan
  readonly operation: Operation
  readonly at: number
  readonly children: ReactNode
}

function DayCard({ plan, operation, at, children }: CardProps) {
  const problems = useApp((s) => s.problems)
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus({ preventScroll: true }), [])
  const unit = plan.units.find((u) => operation.on.includes(u.unit))
  const isLevelling = operation.kind === 'level' && unit !== undefined
  const { trade } = operation
  return (
    <section className="day" aria-labelledby="day-title">
      <p className="where">
        {STAGE_NAMES[operation.stage]} · step {at + 1} of {plan.operations.length}
      </p>
      <h1 id="day-title" tabIndex={-1} ref={heading}>
        {words(operation.title)}
      </h1>
      {trade !== null && <p className="hold-point">Not yours to do: only for {TRADE_NAMES[trade]}.</p>}
      {operation.holding.length > 0 && <p className="holding">Somebody holds it until this is done.</p>}
      {isLevelling && <LevelCard unit={unit} />}
      {!isLevelling && <SlipFigures figures={operation.figures} plan={plan} />}
      <Does operation={operation} isFolded={isLevelling} />
      {operation.cautions.map((c) => (
        <CautionLine key={c.sign + keyOf(c.say)} caution={c} />
      ))}
      {isLevelling && <SetHeight key={`${unit.unit} ${JSON.stringify(unit.top)}`} unit={unit} />}
      {isLevelling && <TryTurn unit={unit} />}
      <ProblemList title="That was not written down" problems={problems} />
      <Changes plan={plan} />
      <DayLog plan={plan} />
      <div className="end">{children}</div>
    </section>
  )
}

function Does({ operation, isFolded }: { readonly operation: Operation; readonly isFolded: boolean }) {
  const list = (
    <ol className="does">
      {operation.does.map((line) => (
        <li key={keyOf(line)}>{words(line)}</li>
      ))}
    </ol>
  )
  if (!isFolded) return list
  return (
    <details>
      <summary>The whole step in words</summary>
      {list}
    </details>
  )
}

/** Checks and Done: an operation is done when its checks are answered. One done already can only be called wrong. */
function Buttons({ operation, onDone }: { readonly operation: Operation; readonly onDone: () => void }) {
  const actions = useActions()
  const entries = useApp((s) => s.log.entries)
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set())
  const list = useRef<HTMLUListElement>(null)
  const entry = doneEntry(entries, operation.id)
  if (operation.done) {
    return (
      <>
        <p className="done-line">Done{entry?.at === undefined ? '' : ` at ${clockText(entry.at)}`}.</p>
        {entry !== undefined && (
          <button
            type="button"
            className="button"
            onClick={() => actions.log({ kind: 'correct', entry: entry.id })}
          >
            That entry was wrong: not done
          </button>
        )}
      </>
    )
  }
  const open = operation.checks.filter((c) => !ticked.has(c.id))
  const tick = (id: string) =>
    setTicked((t) => (t.has(id) ? new Set([...t].filter((x) => x !== id)) : new Set([...t, id])))
  return (
    <>
      {operation.checks.length > 0 && (
        <ul className="checks" aria-label="Checks" ref={list}>
          {operation.checks.map((c) => (
            <li key={c.id}>
              <label>
                <input type="checkbox" checked={ticked.has(c.id)} onChange={() => tick(c.id)} />
                <span>{words(c.ask)}</span>
              </label>
            </li>
          ))}
        </ul>
      )}
      <button
        type="button"
        className="button main"
        aria-disabled={open.length > 0}
        onClick={() => {
          if (open.length > 0) {
            list.current?.querySelector<HTMLInputElement>('input:not(:checked)')?.focus()
            return
          }
          actions.log({ kind: 'done', operation: operation.id })
          onDone()
        }}
      >
        {open.length > 0
          ? `${count(open.length, 'check')} to answer first`
          : operation.kind === 'level'
            ? 'It is level'
            : 'Done'}
      </button>
    </>
  )
}
