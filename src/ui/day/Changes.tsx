import { useState } from 'react'
import type { Plan } from '../../core/plan/types'
import { count } from '../words'
import { tellingChanges } from './change-words'

const MOST_SHOWN = 60

/** What is not as first planned; what the last entry changed stands open, so that it is read. */
export function Changes({ plan }: { readonly plan: Plan }) {
  const changes = tellingChanges(plan)
  const fresh = useFresh(plan, changes)
  if (changes.length === 0) return null
  return (
    <>
      {fresh.length > 0 && (
        <div className="fresh" role="status">
          <h2>That changed {count(fresh.length, 'figure')}</h2>
          <ul>
            {fresh.slice(0, MOST_SHOWN).map((c) => (
              <li key={c.id}>{c.say}</li>
            ))}
          </ul>
        </div>
      )}
      <details>
        <summary>{count(changes.length, 'figure is', 'figures are')} not as first planned</summary>
        <ul className="plain">
          {changes.slice(0, MOST_SHOWN).map((c) => (
            <li key={c.id}>{c.say}</li>
          ))}
        </ul>
        {changes.length > MOST_SHOWN && <p>and {changes.length - MOST_SHOWN} more: see the sheets.</p>}
      </details>
    </>
  )
}

type Telling = ReturnType<typeof tellingChanges>

/** Those that came with the plan now shown, against the plan shown before it. */
function useFresh(plan: Plan, changes: Telling): Telling {
  const [seen, setSeen] = useState({ plan, changes, fresh: [] as Telling })
  if (seen.plan === plan) return seen.fresh
  const was = new Set(seen.changes.map((c) => c.say))
  const fresh = changes.filter((c) => !was.has(c.say))
  setSeen({ plan, changes, fresh })
  return fresh
}
