import type { Grid } from '../../../core/form/sheet/blocks'
import { DropPicture } from './DropPicture'
import { placed } from './placed'

const OUT = ['at the wall', '600 mm out'] as const

/** Readings of the floor along each wall, under the picture of what is read. */
export function GridOnPaper({ grid }: { readonly grid: Grid }) {
  const { number, title, how, place: where, down, marks, columns } = grid
  const blanks = Array.from({ length: columns }, (_, i) => i)
  return (
    <>
      <p className="caption">
        <span className="no">{number}</span> {title} <small>{how}</small>
      </p>
      <DropPicture />
      <div className="grids">
        {placed(marks).map(({ item, place }) => (
          <table key={place}>
            <thead>
              <tr>
                <th scope="row">
                  Wall <span className="write-on figure">{item}</span>
                </th>
                <td colSpan={columns} className="pm-line">
                  <span className="write-on">±</span>
                  <span>{down.unit}</span>
                  <span className="tick-box" /> don’t know
                </td>
              </tr>
            </thead>
            <tbody>
              <tr>
                <th scope="row">
                  <span className="no">{where.number}</span> along it
                </th>
                {blanks.map((b) => (
                  <td key={b} />
                ))}
              </tr>
              {OUT.map((out) => (
                <tr key={out}>
                  <th scope="row">
                    <span className="no">{down.number}</span> down, {out}
                  </th>
                  {blanks.map((b) => (
                    <td key={b} />
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      </div>
    </>
  )
}
