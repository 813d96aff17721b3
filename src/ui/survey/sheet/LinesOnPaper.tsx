import type { Line } from '../../../core/form/sheet/blocks'
import { DontKnow } from './DontKnow'

/** Questions, each on a line of its own; two beside each other where both are short. */
export function LinesOnPaper({ rows }: { readonly rows: readonly (readonly Line[])[] }) {
  return (
    <div className="lines">
      {rows.map((row) => (
        <div key={row[0]?.number} className="line-row" data-row data-many={isMany(row) ? '' : undefined}>
          {row.map((line) => (
            <div key={line.number} className="line">
              <span className="no">{line.number}</span>
              <span className="asked">{line.label}</span>
              <Answer line={line} />
              <DontKnow />
            </div>
          ))}
        </div>
      ))}
    </div>
  )
}

const isMany = (row: readonly Line[]): boolean => row.some(({ ticks }) => ticks.length > 3)

function Answer({ line: { ticks, text, unit, hasPm } }: { readonly line: Line }) {
  if (ticks.length > 0) {
    return (
      <span className="answer">
        {ticks.map(({ words, isChosen }) => (
          <span key={words} className="tick">
            <span className="tick-box">{isChosen ? '×' : ''}</span> {words}
          </span>
        ))}
      </span>
    )
  }
  return (
    <span className="answer write">
      <span className="figure">{text}</span>
      {unit !== '' && (
        <span className="unit">
          {unit}
          {hasPm && <span className="pm">±</span>}
        </span>
      )}
    </span>
  )
}
