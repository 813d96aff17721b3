import { type ChangeEvent, useRef } from 'react'
import type { NoPlan } from '../../core/plan/types'
import { useActions, useApp } from '../app-context'
import { FindingList } from '../findings/FindingList'
import { words } from '../words'

export interface DemoKitchen {
  readonly name: string
  readonly text: string
}

/** What was measured and what arrived: open a kitchen, see what is found and what to measure next. */
export function SurveyPlace({ demos }: { readonly demos: readonly DemoKitchen[] }) {
  const plan = useApp((s) => s.plan)
  const noPlan = useApp((s) => s.noPlan)
  const problems = useApp((s) => s.problems)
  const actions = useActions()
  return (
    <div className="page">
      <section className="sheet">
        <h1>Survey and delivery</h1>
        <OpenFile />
        <p>Or look at an invented kitchen:</p>
        <div className="steps" style={{ gridTemplateColumns: 'repeat(auto-fit, minmax(140px, max-content))' }}>
          {demos.map((d) => (
            <button key={d.name} type="button" className="button" onClick={() => actions.open(d.text)}>
              {d.name}
            </button>
          ))}
        </div>
        {problems.length > 0 && (
          <div role="alert">
            <h2 className="stop">That file was refused; what was open is still open.</h2>
            <ul className="findings">
              {problems.slice(0, 30).map((p) => (
                <li key={p.path + p.message}>
                  <span className="weight stop">Mend</span>
                  <div>
                    <p>
                      {p.path}: {p.message}
                    </p>
                    <p className="basis">{p.mend}</p>
                  </div>
                </li>
              ))}
            </ul>
          </div>
        )}
      </section>
      {noPlan !== null && <NoOrder noPlan={noPlan} />}
      {plan !== null && (
        <>
          <section className="sheet">
            <h2>Found in {plan.name}</h2>
            <FindingList findings={plan.findings} />
          </section>
          {plan.measureNext.length > 0 && (
            <section className="sheet">
              <h2>What to measure next</h2>
              <ol>
                {plan.measureNext.slice(0, 20).map((m) => (
                  <li key={m.input}>{words(m.say)}</li>
                ))}
              </ol>
            </section>
          )}
        </>
      )}
    </div>
  )
}

function OpenFile() {
  const actions = useActions()
  const input = useRef<HTMLInputElement>(null)
  const onChange = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0]
    if (file === undefined) return
    actions.open(await file.text())
    if (input.current !== null) input.current.value = ''
  }
  return (
    <p>
      <label>
        Open a kitchen file: <input ref={input} type="file" accept=".json,application/json" onChange={onChange} />
      </label>
    </p>
  )
}

function NoOrder({ noPlan }: { readonly noPlan: NoPlan }) {
  return (
    <section className="sheet">
      <h2 className="stop">No order is possible</h2>
      {noPlan.conflicts.map((c) => (
        <p key={c.wishes.join()}>These cannot all hold: {c.wishes.join(', ')}.</p>
      ))}
      {noPlan.repairs.map((r) => (
        <p key={r.drop.join()}>A way out: give up {r.drop.join(' and ')}.</p>
      ))}
      {noPlan.trapped.map((t) => (
        <p key={t.unit}>{words(t.say)}</p>
      ))}
    </section>
  )
}
