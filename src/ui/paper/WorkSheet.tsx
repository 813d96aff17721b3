import type { Operation, OperationCheck, Plan } from '../../core/plan/types'
import { asksForName } from '../../core/words/format'
import { stretches } from '../rehearse/tape-scale'
import { keyOf, STAGE_NAMES, TRADE_NAMES, words } from '../words'
import { SheetHead } from './SheetHead'
import { targetOnPaper } from './target'

/** The order of work with boxes to tick, who is needed and how long each step takes. */
export function WorkSheet({ plan }: { readonly plan: Plan }) {
  return (
    <section className="sheet" aria-label="Order of work">
      <SheetHead
        plan={plan}
        id="work"
        title="Order of work"
        about="work stops at a hold point until every check is answered"
      />
      <p className="small-screen-only quiet">
        What to look at in each step stands on the printed sheet, and at the step itself.
      </p>
      <div className="work-columns">
        <table className="rows work">
          <thead>
            <tr>
              <th scope="col">done</th>
              <th scope="col">step</th>
              <th scope="col">what, and how to know it is right</th>
              <th scope="col">people</th>
              <th scope="col">minutes</th>
            </tr>
          </thead>
          {stretches(plan.operations).map(({ stage, from, to }) => (
            <tbody key={from}>
              <tr className="stage-row">
                <th scope="rowgroup" colSpan={5}>
                  {STAGE_NAMES[stage]}
                </th>
              </tr>
              {plan.operations.slice(from, to + 1).map((o, i) => (
                <WorkRow key={o.id} operation={o} number={from + i + 1} />
              ))}
            </tbody>
          ))}
        </table>
      </div>
    </section>
  )
}

function WorkRow({ operation: o, number }: { readonly operation: Operation; readonly number: number }) {
  return (
    <tr>
      <td>
        <span className="box">{o.done ? '×' : ''}</span>
        {o.done && <span className="visually-hidden">done</span>}
      </td>
      <td className="figure">{number}</td>
      <td>
        <a href={`#rehearse/${o.id}`}>{words(o.title)}</a>
        {o.holdPoint && <strong> Hold point.</strong>}
        {o.trade !== null && <strong> Only for {TRADE_NAMES[o.trade]}.</strong>}
        {o.checks.length > 0 && (
          <ul className="to-check">
            {o.checks.map((c) => (
              <CheckLine key={`${c.id} ${keyOf(c.ask)}`} check={c} />
            ))}
          </ul>
        )}
      </td>
      <td className="figure">{o.people}</td>
      <td className="figure">
        {o.minutes.low} to {o.minutes.high}
      </td>
    </tr>
  )
}

/** One check: what to ask, what it should be, and a line to write the reading on, or a box where there is none to read. */
function CheckLine({ check }: { readonly check: OperationCheck }) {
  const target = targetOnPaper(check)
  return (
    <li>
      <span>{words(check.ask)}</span>
      {target === null ? (
        <span className="answer">
          {asksForName(check.ask.key) && <span className="write" />}
          <span className="box" />
        </span>
      ) : (
        <span className="answer">
          <span className="figure">{target}</span>
          <span className="write" />
        </span>
      )}
    </li>
  )
}
