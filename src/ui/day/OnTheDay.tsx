import { useState } from 'react'
import { type Figure, hasValue, known } from '../../core/figure'
import type { Operation, Plan, UnitPlan } from '../../core/plan/types'
import { type LevelReading, type TurnOrder, turnsFor } from '../../core/daylog/turns'
import { numberText, turnsText } from '../../core/words/format'
import { useActions, useApp } from '../app-context'
import { footName } from '../paper/OnPaper'
import { Sign } from '../signs/Sign'
import { STAGE_NAMES, words } from '../words'

/** The first operation that is not done yet: big, one thing at a time, hands full. */
export function OnTheDay() {
  const plan = useApp((s) => s.plan)
  const problems = useApp((s) => s.problems)
  const actions = useActions()
  const [back, setBack] = useState(0)
  const [trouble, setTrouble] = useState(false)
  if (plan === null) return <p className="page">No kitchen is open.</p>
  const now = plan.operations.findIndex((o) => !o.done)
  const at = Math.max(0, (now < 0 ? plan.operations.length - 1 : now) - back)
  const operation = plan.operations[at]
  if (operation === undefined) return <p className="page">There is nothing to do.</p>
  if (trouble) return <Trouble onBack={() => setTrouble(false)} />
  return (
    <section className="day" aria-labelledby="day-title">
      <p className="where">
        On the day · {STAGE_NAMES[operation.stage]} · {at + 1} of {plan.operations.length}
      </p>
      <h1 id="day-title">{words(operation.title)}</h1>
      {operation.trade !== null && <p className="hold-point">Not yours to do: this is for the licensed trade.</p>}
      {operation.kind === 'level' ? (
        <LevelCard plan={plan} operation={operation} key={operation.id} />
      ) : (
        <ol className="does">
          {operation.does.map((line) => (
            <li key={line.key + JSON.stringify(line.values)}>{words(line)}</li>
          ))}
        </ol>
      )}
      {operation.cautions.map((c) => (
        <div className="caution" key={c.sign + c.say.key}>
          <Sign code={c.sign} label={words(c.say)} />
          <p>{words(c.say)}</p>
        </div>
      ))}
      {problems.map((p) => (
        <p className="stop" role="alert" key={p.path + p.message}>
          {p.path}: {p.message} {p.mend}
        </p>
      ))}
      <Changes plan={plan} />
      <div className="end">
        <button
          type="button"
          className="button main"
          onClick={() => {
            setBack(0)
            actions.log({ kind: 'done', operation: operation.id })
          }}
        >
          {operation.kind === 'level' ? 'It is level' : 'Done'}
        </button>
        <div className="pair">
          <button type="button" className="button" disabled={at === 0} onClick={() => setBack(back + 1)}>
            Back
          </button>
          <button type="button" className="button" onClick={() => setTrouble(true)}>
            Something is wrong
          </button>
        </div>
        <button type="button" className="link" onClick={() => actions.goToOperation(operation.id)}>
          <a href="#rehearse">See it rehearsed</a>
        </button>
      </div>
    </section>
  )
}

function unitOf(plan: Plan, operation: Operation): UnitPlan | undefined {
  return plan.units.find((u) => operation.on.includes(u.unit))
}

/** A level, a packer under its low end, and the turns that follow. */
function LevelCard({ plan, operation }: { readonly plan: Plan; readonly operation: Operation }) {
  const actions = useActions()
  const unit = unitOf(plan, operation)
  const [axis, setAxis] = useState<'along' | 'out'>('along')
  const [low, setLow] = useState<LevelReading['low'] | null>(null)
  const [packer, setPacker] = useState(1)
  const [length, setLength] = useState(600)
  if (unit === undefined) return null
  const hung = unit.adjusters.some((a) => a.kind === 'height-screw')
  const ends = axis === 'along' ? (['left', 'right'] as const) : (['back', 'front'] as const)
  const reading: LevelReading | null =
    low === null ? null : { axis, low, packer: typed(packer, 0.5), levelLength: typed(length, 1) }
  const orders = reading === null ? [] : turnsFor(unit.adjusters, reading)
  return (
    <>
      <p>
        {hung
          ? 'Lay the level along the top of the unit, at its front edge.'
          : 'Lay the level on the top edges: along the front first, then from back to front at each side.'}{' '}
        Slip packers under its low end until the bubble sits between the lines.
      </p>
      {!hung && (
        <div className="pair">
          {(['along', 'out'] as const).map((a) => (
            <button
              key={a}
              type="button"
              className="button"
              aria-pressed={axis === a}
              onClick={() => {
                setAxis(a)
                setLow(null)
              }}
            >
              {a === 'along' ? 'Left to right' : 'Back to front'}
            </button>
          ))}
        </div>
      )}
      <div className="pair">
        {ends.map((end) => (
          <button key={end} type="button" className="button" aria-pressed={low === end} onClick={() => setLow(end)}>
            {end.charAt(0).toUpperCase() + end.slice(1)} end low
          </button>
        ))}
      </div>
      <Stepper label="Packer, mm" value={packer} step={0.5} min={0} max={30} onChange={setPacker} />
      <Stepper label="Length of level, mm" value={length} step={100} min={200} max={2000} onChange={setLength} />
      {reading !== null && (
        <Told orders={orders} />
      )}
      {reading !== null && (
        <button
          type="button"
          className="button"
          onClick={() =>
            actions.log({ kind: 'level', unit: unit.unit, axis, place: 'top', low: reading.low, packer, levelLength: length })
          }
        >
          Write this reading down
        </button>
      )}
      <SetHeight unit={unit} />
    </>
  )
}

function typed(value: number, pm: number): Figure {
  return known(value, pm, 'mm', ['this reading'])
}

/** The turns, largest first; what is not known is asked, never guessed. */
function Told({ orders }: { readonly orders: readonly TurnOrder[] }) {
  const moving = orders.filter((o) => o.way === 'up' || o.way === 'down' || o.way === 'not-known')
  if (moving.length === 0) return <p className="told">Leave it</p>
  return (
    <div aria-live="polite">
      {moving.map((o) => (
        <p className="told" key={o.adjuster.id}>
          {hasValue(o.turns) ? `${turnsText(o.turns.value)} ${o.turns.value > 1.125 ? 'turns' : 'turn'}` : 'Try one turn'}
          <small>
            {adjusterName(o)}
            {o.way === 'not-known' ? '' : `, ${o.way}`}
            {o.hand === null ? '' : ` (${o.hand})`}.{' '}
            {hasValue(o.rise) ? `${numberText({ ...o.rise, pm: 0.1 })} mm to go. ` : ''}
            {hasValue(o.adjuster.perTurn)
              ? `Yours moves ${numberText(o.adjuster.perTurn)} mm a turn.`
              : 'Nobody has said what one turn does: make one, measure it, and write it down.'}
            {o.reaches === false ? ' It has not that much travel left. Hold the unit, and look at its plate or legs again.' : ''}
          </small>
        </p>
      ))}
    </div>
  )
}

function adjusterName({ adjuster }: TurnOrder): string {
  if (adjuster.kind === 'leg') return `Leg ${footName(adjuster.id)}`
  return `${adjuster.id === 'left' ? 'Left' : 'Right'} hanger, height screw${adjuster.place === null ? '' : ` (the ${adjuster.place} one)`}`
}

interface StepperProps {
  readonly label: string
  readonly value: number
  readonly step: number
  readonly min: number
  readonly max: number
  readonly onChange: (value: number) => void
}
function Stepper({ label, value, step, min, max, onChange }: StepperProps) {
  const clamp = (v: number) => Math.min(max, Math.max(min, Math.round(v * 10) / 10))
  return (
    <div className="stepper">
      <span>{label}</span>
      <button type="button" className="button" aria-label={`Less: ${label}`} onClick={() => onChange(clamp(value - step))}>
        −
      </button>
      <input
        aria-label={label}
        inputMode="decimal"
        value={value}
        onChange={(e) => {
          const v = Number(e.target.value.replace(',', '.'))
          if (Number.isFinite(v)) onChange(clamp(v))
        }}
      />
      <button type="button" className="button" aria-label={`More: ${label}`} onClick={() => onChange(clamp(value + step))}>
        +
      </button>
    </div>
  )
}

/** Where the unit came to stand: what was reached replaces what was planned. */
function SetHeight({ unit }: { readonly unit: UnitPlan }) {
  const actions = useActions()
  const planned = hasValue(unit.top) ? unit.top.value : null
  const [value, setValue] = useState(planned === null ? '' : String(planned))
  const number = Number(value.replace(',', '.').replace('−', '-'))
  const good = value.trim() !== '' && Number.isFinite(number)
  return (
    <div className="stepper" style={{ gridTemplateColumns: 'minmax(0,1fr) 120px auto' }}>
      <label htmlFor="set-top">
        Top of {unit.name}, from the line
        <small>up +, down −. Planned {numberText(unit.top, { signed: true }) ?? 'not known yet'}</small>
      </label>
      <input id="set-top" inputMode="decimal" value={value} onChange={(e) => setValue(e.target.value)} />
      <button
        type="button"
        className="button"
        disabled={!good}
        onClick={() =>
          actions.log({
            kind: 'set',
            unit: unit.unit,
            edge: 'top',
            ...(number < 0 ? { down: { value: -number, pm: 1 } } : { up: { value: number, pm: 1 } }),
          })
        }
      >
        Read
      </button>
    </div>
  )
}

function Changes({ plan }: { readonly plan: Plan }) {
  const telling = plan.changes.filter((c) => !c.what.startsWith('heights/') && !c.what.startsWith('units/') === false || c.what.includes('/legs/'))
  if (telling.length === 0) return null
  return (
    <details>
      <summary>{telling.length} figures are not as first planned</summary>
      <ul>
        {telling.slice(0, 40).map((c) => (
          <li key={c.what}>{words(c.say)}</li>
        ))}
      </ul>
    </details>
  )
}

/** What to do first when something goes wrong; the first line is always the same. */
function Trouble({ onBack }: { readonly onBack: () => void }) {
  return (
    <section className="day" aria-labelledby="trouble-title">
      <h1 id="trouble-title">Put it down or hold it.</h1>
      <p>Nothing else comes first. Set the unit on the floor, or call your helper and keep hold of it.</p>
      <h2>A cable was hit</h2>
      <p>
        Let go of the drill, touch nothing metal. Switch the main switch off if you can reach it without passing the place.
        Nobody drills or touches the wall until an electrician has been.
      </p>
      <h2>A pipe was hit</h2>
      <p>Turn off the stop valve. Keep water away from sockets. Leave the screw in if it holds the leak. Call a plumber.</p>
      <h2>A smell of gas</h2>
      <p>
        No switch, no flame, no phone indoors. Open windows, shut the gas off at the meter if you know how, leave, and ring
        the gas emergency line from outside.
      </p>
      <h2>Someone is hurt</h2>
      <p>First aid, then the emergency number.</p>
      <div className="end">
        <button type="button" className="button" onClick={onBack}>
          Back to the work
        </button>
      </div>
    </section>
  )
}
