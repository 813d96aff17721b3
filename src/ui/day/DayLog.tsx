import { useState } from 'react'
import type { Plan } from '../../core/plan/types'
import { useActions, useApp } from '../app-context'
import { OpenFile } from '../OpenFile'
import { fileStem, saveFile } from '../save-file'
import { count } from '../words'
import { clockText, entryWords, withdrawn } from './entry-words'

const FIRST_SHOWN = 8

/** What was written down so far, newest first; a wrong entry is set right by a new one, never taken out. */
export function DayLog({ plan }: { readonly plan: Plan }) {
  const log = useApp((s) => s.log)
  const actions = useActions()
  const gone = withdrawn(log.entries)
  const [isWhole, setWhole] = useState(false)
  const newest = log.entries.toReversed()
  const shown = isWhole ? newest : newest.slice(0, FIRST_SHOWN)
  return (
    <details className="day-log">
      <summary>
        Written down:{' '}
        {log.entries.length === 0 ? 'nothing yet' : count(log.entries.length, 'entry', 'entries')}
      </summary>
      <ol>
        {shown.map((entry) => (
          <li key={entry.id} className={gone.has(entry.id) ? 'gone' : undefined}>
            <p>
              <span className="quiet">
                {[entry.id, clockText(entry.at)].filter((t) => t !== '').join(', ')} ·{' '}
              </span>
              {gone.has(entry.id) ? <s>{entryWords(entry, plan)}</s> : entryWords(entry, plan)}
            </p>
            {!gone.has(entry.id) && entry.kind !== 'correct' && (
              <button
                type="button"
                className="link"
                onClick={() => actions.log({ kind: 'correct', entry: entry.id })}
                aria-label={`That entry was wrong: ${entryWords(entry, plan)}`}
              >
                That entry was wrong
              </button>
            )}
          </li>
        ))}
      </ol>
      {shown.length < newest.length && (
        <button type="button" className="link" onClick={() => setWhole(true)}>
          {count(newest.length - shown.length, 'earlier entry', 'earlier entries')}
        </button>
      )}
      <div className="pair">
        <button
          type="button"
          className="button"
          onClick={() => saveFile(`${fileStem(plan.name)}.daylog.json`, { ...log, kitchen: plan.name })}
        >
          Save the day log
        </button>
        <OpenFile label="Open a day log" onText={actions.openLog} />
      </div>
    </details>
  )
}
