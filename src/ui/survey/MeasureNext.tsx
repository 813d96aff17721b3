import { fieldAt } from '../../core/form/numbers'
import { PAGES } from '../../core/form/pages'
import type { Plan } from '../../core/plan/types'
import { inputName } from '../../core/words/plan-names'
import { upperFirst } from '../../core/words/upper-first'
import { useActions } from '../app-context'
import { count } from '../words'
import { FieldNumber } from './form/FieldNumber'
import { addressOfFact, goToFact } from './go-to-fact'

const MOST_SHOWN = 20

/** What is still to be found out, the fact that holds up the most figures first. */
export function MeasureNext({ plan }: { readonly plan: Plan }) {
  const { measureNext } = plan
  if (measureNext.length === 0) return null
  return (
    <section className="sheet">
      <h2>To find out next</h2>
      <p className="quiet">The numbers are those beside the fields, and on the sheet to print.</p>
      <ol className="guide">
        {measureNext.slice(0, MOST_SHOWN).map((m) => (
          <li key={m.input}>
            <FieldNumber number={fieldAt(PAGES, m.input)?.number} />
            <FactName fact={m.input} name={upperFirst(inputName(m.input, plan))} />
            <p className="quiet">{count(m.settles, 'figure waits', 'figures wait')} for it</p>
          </li>
        ))}
      </ol>
      {measureNext.length > MOST_SHOWN && (
        <p className="quiet">and {measureNext.length - MOST_SHOWN} more.</p>
      )}
    </section>
  )
}

/** What is asked for, leading to where it is typed. */
function FactName({ fact, name }: { readonly fact: string; readonly name: string }) {
  const actions = useActions()
  const address = addressOfFact(fact)
  if (address === undefined) return name
  return (
    <a href={address} onClick={() => goToFact(actions, fact)}>
      {name}
    </a>
  )
}
