import { hasValue } from '../../core/figure'
import { legName } from '../../core/operations/leg-name'
import type { Plan, UnitPlan } from '../../core/plan/types'
import { figureText } from '../../core/words/format'
import { unitsOn } from './wall/pen'

/** What goes under each corner of the boxes that stand without legs, floor to underside. */
export function ShimTable({ plan, wall }: { readonly plan: Plan; readonly wall: string }) {
  const units = unitsOn(plan, wall).filter((u) => (u.shims ?? []).length > 0)
  if (units.length === 0) return null
  const shimmed = units.every((u) => u.stands === 'shims' || u.stands === 'nothing')
  return (
    <table className="rows">
      <caption>{shimmed ? 'Shims' : 'Shims, with frame or cleat'}, floor to underside of the carcass</caption>
      <thead>
        <tr>
          <th scope="col">unit</th>
          <th scope="col">corner</th>
          <th scope="col">height</th>
          <th scope="col" className="blank">
            measured
          </th>
        </tr>
      </thead>
      {units.map((u) => (
        <UnitShims key={u.unit} unit={u} />
      ))}
    </table>
  )
}

function UnitShims({ unit }: { readonly unit: UnitPlan }) {
  const shims = unit.shims ?? []
  return (
    <tbody className="keep">
      {shims.map((shim, i) => (
        <tr key={shim.foot}>
          {i === 0 && (
            <th scope="rowgroup" rowSpan={shims.length}>
              {unit.name}
            </th>
          )}
          <td>{legName({ plan: unit }, shim)}</td>
          <td className="figure">
            {hasValue(shim.height) ? figureText(shim.height, { withPm: true }) : 'not known yet'}
          </td>
          <td className="blank"> </td>
        </tr>
      ))}
    </tbody>
  )
}
