import type { Plan } from '../../core/plan/types'
import { inputName } from '../../core/words/plan-names'
import { useApp } from '../app-context'
import { FindingList } from '../findings/FindingList'
import { count, keyOf, words } from '../words'
import { assumedFacts, assumedFigures } from './assumed'
import { SheetHead } from './SheetHead'

/** What to know before the first tool is picked up: what stops the work, what was assumed, who and how long. */
export function FirstSheet({ plan }: { readonly plan: Plan }) {
  const grave = plan.findings.filter((f) => f.weight === 'stop' || f.weight === 'ask')
  const first = useApp((s) => s.first)
  const bookings = first.filter(({ kind }) => kind === 'book')
  const held = plan.operations.filter((o) => o.people > 1)
  return (
    <section className="sheet" aria-label="First sheet">
      <SheetHead
        plan={plan}
        id="first"
        title="Before the first hole"
        about="what to settle, whom to book, what was assumed"
      />
      <div className="columns">
        <section>
          <h2>To settle first</h2>
          {grave.length === 0 ? (
            <p>Nothing found that stops the work, in what has been measured so far. That is not a promise.</p>
          ) : (
            <FindingList findings={grave} plan={plan} />
          )}
        </section>
        <section>
          <h2>Who and how long</h2>
          <p>{workLine(plan)}</p>
          {held.length > 0 && (
            <p>A second pair of hands for {count(held.length, 'step')}: see the order of work.</p>
          )}
          {bookings.length > 0 && (
            <>
              <h3>Whom to book</h3>
              <ul className="plain" data-bookings>
                {bookings.map(({ say }) => (
                  <li key={keyOf(say)}>{words(say)}</li>
                ))}
              </ul>
            </>
          )}
          <table className="rows">
            <caption>To fill in before the day</caption>
            <tbody>
              {[
                'Stop valve is at',
                'Main switch is at',
                'Gas emergency line, if there is gas',
                'Second pair of hands, telephone',
              ].map((line) => (
                <tr key={line}>
                  <th scope="row">{line}</th>
                  <td className="blank"> </td>
                </tr>
              ))}
            </tbody>
          </table>
          <Assumed plan={plan} />
          {plan.measureNext.length > 0 && (
            <>
              <h2>Not known yet</h2>
              <ol className="plain">
                {plan.measureNext.slice(0, 12).map((m) => (
                  <li key={m.input}>
                    {inputName(m.input, plan)}: <span className="blank-inline" />
                  </li>
                ))}
              </ol>
            </>
          )}
        </section>
      </div>
    </section>
  )
}

function Assumed({ plan }: { readonly plan: Plan }) {
  const facts = assumedFacts(plan)
  const figures = assumedFigures(plan)
  return (
    <>
      <h2>Assumed, until you confirm it</h2>
      {facts.length === 0 && figures.length === 0 && <p>Nothing was assumed.</p>}
      {facts.length > 0 && <p>Usual sizes stand in for: {facts.join('; ')}.</p>}
      {figures.length > 0 && (
        <p>
          Figures that rest on a usual value are marked wherever they stand:{' '}
          {figures.map(({ what, count: number }) => `${what} (${number})`).join('; ')}.
        </p>
      )}
    </>
  )
}

/** How much work there is. Minutes stand at each step as common practice has them; nothing published makes a day of them. */
function workLine({ operations }: Plan): string {
  const stops = operations.filter((o) => o.holdPoint).length
  const points = stops === 0 ? '' : ` with ${count(stops, 'hold point')}`
  return `${count(operations.length, 'step')}${points}. The minutes at each step are common practice, no source: they are not added up to a whole.`
}
