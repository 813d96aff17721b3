import type { HeightLine, Plan } from '../../core/plan/types'
import { figureText } from '../../core/words/format'
import { upperFirst } from '../../core/words/upper-first'
import { lineName } from './wall/line-names'

/** The heights to strike on one wall; a line broken into stretches of one height is one row. */
export function LineTable({ plan, wall }: { readonly plan: Plan; readonly wall: string }) {
  const lines = plan.lines.filter((l) => l.wall === wall)
  const rows = new Map<string, { line: HeightLine; stretches: string[] }>()
  for (const line of lines) {
    const key = `${line.of} ${figureText(line.height)}`
    const row = rows.get(key) ?? { line, stretches: [] }
    row.stretches.push(stretchText(line))
    rows.set(key, row)
  }
  return (
    <table className="rows">
      <caption>Lines to strike</caption>
      <thead>
        <tr>
          <th scope="col">line</th>
          <th scope="col">from the line</th>
          <th scope="col">along the wall</th>
          <th scope="col" className="blank">
            measured
          </th>
        </tr>
      </thead>
      <tbody>
        {[...rows].map(([key, { line, stretches }]) => (
          <tr key={key}>
            <th scope="row">{upperFirst(lineName(line))}</th>
            <td className="figure">{figureText(line.height, { signed: true, withPm: true })}</td>
            <td className="figure">{stretches.join(', ')}</td>
            <td className="blank"> </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function stretchText({ from, to }: HeightLine): string {
  if (from === null && to === null) return 'whole'
  return `${from === null ? 'corner' : Math.round(from)} to ${to === null ? 'corner' : Math.round(to)}`
}
