import { type ReactNode, useEffect, useRef, useState } from 'react'
import type { Operation, Plan } from '../../core/plan/types'
import { useActions, useApp } from '../app-context'
import { Checks, toFirstOpenCheck } from '../Checks'
import { ProblemList } from '../ProblemList'
import { SlipFigures } from '../rehearse/SlipFigures'
import { Cautions } from '../signs/Cautions'
import { HurtLine } from '../signs/HurtLine'
import { count, keyOf, namesWhole, STAGE_NAMES, TRADE_NAMES, words } from '../words'
import { Changes } from './Changes'
import { DayLog } from './DayLog'
import { clockText, doneEntry } from './entry-words'
import { LevelCard } from './LevelCard'
import { SetHeight } from './SetHeight'
import { TryTurn } from './TryTurn'

interface Props {
  readonly plan: Plan
  readonly at: number
  readonly operation: Operation
  readonly onDone: () => void
  /** The buttons that lead elsewhere. */
  readonly children: ReactNode
}

/** One operation in hand: what to do, what to read, what to answer, and Done always within reach. */
export function DayCard({ plan, at, operation, onDone, children }: Props) {
  const problems = useApp((s) => s.problems)
  const working = useApp((s) => s.working)
  const broken = useApp((s) => s.broken)
  const heading = useRef<HTMLHeadingElement>(null)
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set())
  useEffect(() => heading.current?.focus({ preventScroll: true }), [])
  const unit = plan.units.find((u) => operation.on.includes(u.unit))
  const isLevelling = operation.kind === 'level' && unit !== undefined
  const { trade } = operation
  const open = operation.checks.filter((c) => !ticked.has(c.id))
  return (
    <section className="day" aria-labelledby="day-title">
      <p className="where">
        <span>
          {STAGE_NAMES[operation.stage]} · step {at + 1} of {plan.operations.length}
        </span>
        <a href={`#rehearse/${operation.id}`}>See it rehearsed</a>
      </p>
      <h1 id="day-title" tabIndex={-1} ref={heading}>
        {namesWhole(words(operation.title))}
      </h1>
      {trade !== null && <p className="hold-point">Not yours to do: only for {TRADE_NAMES[trade]}.</p>}
      <HurtLine cautions={operation.cautions} />
      {operation.holding.length > 0 && <p className="holding">Somebody holds it until this is done.</p>}
      {isLevelling ? (
        <>
          <LevelCard unit={unit} />
          <SetHeight key={JSON.stringify(unit.top)} unit={unit} />
        </>
      ) : (
        <>
          <SlipFigures figures={operation.figures} plan={plan} />
          <Does operation={operation} />
        </>
      )}
      <p className="working" role="status">
        {working && 'Working it out.'}
      </p>
      {broken !== null && (
        <p className="stop" role="alert">
          That was not written down: the planner stopped ({broken}). Try it again, or load the page anew.
        </p>
      )}
      <ProblemList title="That was not written down" problems={problems} />
      <Cautions cautions={operation.cautions} />
      <Checks operation={operation} ticked={operation.done ? null : ticked} onTick={setTicked} />
      <div className="more">
        <Changes plan={plan} />
        {isLevelling && (
          <details>
            <summary>The whole step in words</summary>
            <Does operation={operation} />
          </details>
        )}
        {isLevelling && <TryTurn unit={unit} />}
        <DayLog plan={plan} />
      </div>
      <div className="end">
        {operation.done ? (
          <DoneLine operation={operation} />
        ) : (
          <DoneButton operation={operation} open={open.length} onDone={onDone} />
        )}
        {children}
      </div>
    </section>
  )
}

function Does({ operation }: { readonly operation: Operation }) {
  return (
    <ol className="does">
      {operation.does.map((line) => (
        <li key={keyOf(line)}>{words(line)}</li>
      ))}
    </ol>
  )
}

/** An operation done already: when, and that it can be called wrong. */
function DoneLine({ operation }: { readonly operation: Operation }) {
  const actions = useActions()
  const entries = useApp((s) => s.log.entries)
  const entry = doneEntry(entries, operation.id)
  const time = clockText(entry?.at)
  return (
    <>
      <p className="done-line">Done{time === '' ? '' : ` at ${time}`}.</p>
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

interface DoneProps {
  readonly operation: Operation
  /** Checks not answered yet. */
  readonly open: number
  readonly onDone: () => void
}

/** Done, once every check is answered; until then it leads to the first that is not. */
function DoneButton({ operation, open, onDone }: DoneProps) {
  const actions = useActions()
  const done = () => {
    actions.log({ kind: 'done', operation: operation.id })
    onDone()
  }
  if (open > 0) {
    return (
      <button type="button" className="button main waits" onClick={toFirstOpenCheck}>
        {count(open, 'check')} to answer first
      </button>
    )
  }
  return (
    <button type="button" className="button main" onClick={done}>
      {operation.kind === 'level' ? 'It is level' : 'Done'}
    </button>
  )
}
