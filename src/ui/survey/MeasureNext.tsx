import type { Plan } from '../../core/plan/types'
import { inputName } from '../../core/words/plan-names'
import { upperFirst } from '../../core/words/upper-first'
import { count } from '../words'

const MOST_SHOWN = 20

/** What is still to be found out, the fact that holds up the most figures first. */
export function MeasureNext({ plan }: { readonly plan: Plan }) {
  const { measureNext } = plan
  if (measureNext.length === 0) return null
  return (
    <section className="sheet">
      <h2>To find out next</h2>
      <ol className="guide">
        {measureNext.slice(0, MOST_SHOWN).map((m) => (
          <li key={m.input}>
            {upperFirst(inputName(m.input, plan))}
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
