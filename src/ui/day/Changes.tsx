import { useState } from 'react'
import type { Plan } from '../../core/plan/types'
import { count } from '../words'
import { type TellingChange, tellingChanges } from './change-words'

const MOST_SHOWN = 60
const FRESH_SHOWN = 6

/** What is not as first planned; what the last entry changed stands open, so that it is read. */
export function Changes({ plan }: { readonly plan: Plan }) {
  const changes = tellingChanges(plan)
  const fresh = useFresh(plan, changes).filter((c) => !c.isDone)
  const ahead = changes.filter((c) => !c.isDone)
  const done = changes.filter((c) => c.isDone)
  return (
    <>
      {fresh.length > 0 && (
        <div className="fresh" role="status">
          <h2>{count(fresh.length, 'figure ahead has', 'figures ahead have')} changed</h2>
          <ul>
            {fresh.slice(0, FRESH_SHOWN).map((c) => (
              <li key={c.id}>{c.say}</li>
            ))}
          </ul>
          {fresh.length > FRESH_SHOWN && (
            <p className="quiet">and {fresh.length - FRESH_SHOWN} more, below.</p>
          )}
        </div>
      )}
      <ChangeList
        title={`${count(ahead.length, 'figure is', 'figures are')} not as first planned`}
        changes={ahead}
      />
      <ChangeList
        title={`${count(done.length, 'figure', 'figures')} of work done before ${done.length === 1 ? 'is' : 'are'} not as it was done`}
        changes={done}
      />
    </>
  )
}

function ChangeList({
  title,
  changes,
}: {
  readonly title: string
  readonly changes: readonly TellingChange[]
}) {
  if (changes.length === 0) return null
  return (
    <details>
      <summary>{title}</summary>
      <ul className="plain">
        {changes.slice(0, MOST_SHOWN).map((c) => (
          <li key={c.id}>{c.say}</li>
        ))}
      </ul>
      {changes.length > MOST_SHOWN && <p>and {changes.length - MOST_SHOWN} more: see the sheets.</p>}
    </details>
  )
}

/** Those that came with the plan now shown, against the plan shown before it. */
function useFresh(plan: Plan, changes: readonly TellingChange[]): readonly TellingChange[] {
  const [seen, setSeen] = useState({ plan, changes, fresh: [] as readonly TellingChange[] })
  if (seen.plan === plan) return seen.fresh
  const was = new Set(seen.changes.map((c) => c.say))
  const fresh = changes.filter((c) => !was.has(c.say))
  setSeen({ plan, changes, fresh })
  return fresh
}
