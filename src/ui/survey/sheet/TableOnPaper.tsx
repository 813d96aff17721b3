import { Fragment } from 'react'
import type { Column, Table } from '../../../core/form/sheet/blocks'
import { placed } from './placed'

interface Props {
  readonly table: Table
  readonly from?: number
  readonly to?: number | undefined
  /** Stays whole: its rows are not cut from it. */
  readonly isWhole?: boolean
}

/** A list as a table to fill in, a line for each thing. */
export function TableOnPaper({ table, from = 0, to, isWhole = false }: Props) {
  const { number, title, how, columns, words } = table
  const shown = table.rows.slice(from, to)
  const isLast = from + shown.length === table.rows.length
  const hasPm = columns.some(({ unit }) => unit !== '')
  return (
    <div className="table">
      <table>
        <caption>
          <span className="no">{number}</span> {title}
          {from > 0 && ', continued'} {from === 0 && how !== '' && <small>{how}</small>}
        </caption>
        <thead>
          <tr>
            {placed(columns).map(({ item, place }) => (
              <Head key={place} column={item} />
            ))}
            {hasPm && (
              <th scope="col" className="narrow">
                ±
              </th>
            )}
            <th scope="col" className="narrow">
              don’t know
            </th>
          </tr>
        </thead>
        <tbody>
          {placed(shown).map(({ item: cells, place }) => (
            <tr key={from + place} data-row={isWhole ? undefined : ''}>
              {placed(cells).map(({ item, place }) => (
                <td key={place} className={columns[place]?.unit === '' ? undefined : 'figure'}>
                  {item}
                </td>
              ))}
              {hasPm && <td />}
              <td className="box-cell">
                <span className="tick-box" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {isLast && words.length > 0 && (
        <p className="words" data-foot={isWhole ? undefined : ''}>
          {words.map(([number, of]) => (
            <Fragment key={number}>
              <span className="no">{number}</span> {of}.{' '}
            </Fragment>
          ))}
        </p>
      )}
    </div>
  )
}

function Head({ column: { number, label, unit, isWide } }: { readonly column: Column }) {
  return (
    <th scope="col" className={isWide ? 'wide' : undefined}>
      {number !== '' && <span className="no">{number}</span>} {label}
      {unit !== '' && <span className="unit">, {unit}</span>}
    </th>
  )
}
