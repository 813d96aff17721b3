import { type ReactNode, useId, useState } from 'react'
import { hasValue } from '../../core/figure'
import type { NamedFigure, Plan } from '../../core/plan/types'
import { standsOn } from '../basis'
import { shownFigure } from '../shown-figure'
import { words } from '../words'
import { type HoleRow, holeRows } from './hole-rows'

interface Props {
  readonly figures: readonly NamedFigure[]
  readonly plan: Plan
}

interface Asking {
  readonly asked: string | null
  readonly onAsk: (name: string) => void
  readonly answerId: string
}

/** The figures of an operation, large, holes in a table; each tells on a tap what it stands on. */
export function SlipFigures({ figures, plan }: Props) {
  const [asked, setAsked] = useState<string | null>(null)
  const answerId = useId()
  if (figures.length === 0) return null
  const { rows, others } = holeRows(figures)
  const told = figures.find((f) => f.name === asked)
  const asking = { asked, answerId, onAsk: (name: string) => setAsked(name === asked ? null : name) }
  return (
    <div className="slip-figures">
      {others.length > 0 && (
        <ul aria-label="Figures">
          {others.map((named) => (
            <li key={named.name}>
              <FigureButton named={named} asking={asking} isLarge>
                <span className="label">{words(named.label)}</span>
              </FigureButton>
            </li>
          ))}
        </ul>
      )}
      {rows.length > 0 && <HoleFigures rows={rows} asking={asking} />}
      <div id={answerId} className="stands-on" aria-live="polite">
        {told !== undefined && (
          <>
            <p className="about">{words(told.label)}</p>
            {standsOn(told.figure, plan).map((line) => (
              <p key={line}>{line}</p>
            ))}
          </>
        )}
      </div>
    </div>
  )
}

function HoleFigures({ rows, asking }: { readonly rows: readonly HoleRow[]; readonly asking: Asking }) {
  return (
    <table className="hole-figures">
      <thead>
        <tr>
          <th scope="col">hole</th>
          <th scope="col">from the left corner</th>
          <th scope="col">from the line</th>
          <th scope="col">depth from the face</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ hole, along, height, depth }) => (
          <tr key={hole}>
            <th scope="row">{hole}</th>
            {[along, height, depth].map((named, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: three columns that never change places
              <td key={i}>{named === undefined ? null : <FigureButton named={named} asking={asking} />}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

interface ButtonProps {
  readonly named: NamedFigure
  readonly asking: Asking
  readonly isLarge?: boolean
  readonly children?: ReactNode
}

function FigureButton({ named, asking, isLarge = false, children }: ButtonProps) {
  return (
    <button
      type="button"
      aria-expanded={named.name === asking.asked}
      aria-controls={asking.answerId}
      onClick={() => asking.onAsk(named.name)}
    >
      <FigureLine named={named} withUnit={isLarge} />
      {children ?? <span className="visually-hidden">{words(named.label)}</span>}
    </button>
  )
}

function FigureLine({
  named: { label, figure },
  withUnit,
}: {
  readonly named: NamedFigure
  readonly withUnit: boolean
}) {
  if (!hasValue(figure)) return <span className="not-known">not known yet</span>
  const { number, unit } = shownFigure(label.key, figure)
  return (
    <span className={figure.state === 'assumed' ? 'number assumed' : 'number'}>
      {number}
      {withUnit && unit !== '' && <small> {unit}</small>}
      {figure.state === 'assumed' && <span className="visually-hidden"> (assumed)</span>}
    </span>
  )
}
