import type { Across } from '../../../core/form/sheet/blocks'
import { placed } from './placed'

interface Props {
  readonly walls: Across
  readonly from: number
  readonly to: number | undefined
}

/** The walls beside each other, a line for each question. */
export function AcrossOnPaper({ walls: { number, title, how, marks, rows }, from, to }: Props) {
  return (
    <table className="across">
      <caption>
        <span className="no">{number}</span> {title}
        {from > 0 && ', continued'} {from === 0 && <small>{how} The box in a corner: don’t know.</small>}
      </caption>
      <thead>
        <tr>
          <th scope="col">Mark of the wall</th>
          {placed(marks).map(({ item, place }) => (
            <th key={place} scope="col" className="wall figure">
              {item}
            </th>
          ))}
          <th scope="col" className="narrow">
            ±
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.slice(from, to).map(({ number, label, unit, how, words, cells }) => (
          <tr key={number} data-row>
            <th scope="row">
              <span className="no">{number}</span> {label}
              {unit !== '' && <span className="unit">, {unit}</span>}
              {how !== '' && <small>. {how}</small>}
              {words !== '' && <small>: {words}</small>}
            </th>
            {placed(cells).map(({ item, place }) => (
              <td key={place} className={unit === '' ? 'wall' : 'figure wall'}>
                {item}
                <span className="tick-box" />
              </td>
            ))}
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  )
}
