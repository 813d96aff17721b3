import { useId, useState } from 'react'
import { hasValue } from '../../core/figure'
import type { NamedFigure, Plan } from '../../core/plan/types'
import { standsOn } from '../basis'
import { shownFigure } from '../shown-figure'
import { words } from '../words'

/** The figures of an operation, large; each tells on a tap what it stands on. */
export function SlipFigures({
  figures,
  plan,
}: {
  readonly figures: readonly NamedFigure[]
  readonly plan: Plan
}) {
  const [asked, setAsked] = useState<string | null>(null)
  const id = useId()
  if (figures.length === 0) return null
  const told = figures.find((f) => f.name === asked)
  return (
    <div className="slip-figures">
      <ul aria-label="Figures">
        {figures.map((named) => (
          <li key={named.name}>
            <button
              type="button"
              aria-expanded={named.name === asked}
              aria-controls={id}
              onClick={() => setAsked(named.name === asked ? null : named.name)}
            >
              <FigureLine {...named} />
              <span className="label">{words(named.label)}</span>
            </button>
          </li>
        ))}
      </ul>
      <div id={id} className="stands-on" aria-live="polite">
        {told !== undefined && standsOn(told.figure, plan).map((line) => <p key={line}>{line}</p>)}
      </div>
    </div>
  )
}

function FigureLine({ label, figure }: NamedFigure) {
  if (!hasValue(figure)) return <span className="not-known">not known yet</span>
  const { number, unit } = shownFigure(label.key, figure)
  return (
    <span className={figure.state === 'assumed' ? 'number assumed' : 'number'}>
      {number}
      {unit !== '' && <small> {unit}</small>}
      {figure.state === 'assumed' && <span className="visually-hidden"> (assumed)</span>}
    </span>
  )
}
