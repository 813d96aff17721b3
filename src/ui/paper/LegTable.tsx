import { hasValue } from '../../core/figure'
import { legName } from '../../core/operations/leg-name'
import type { LegPlan, Plan, UnitPlan } from '../../core/plan/types'
import { figureText } from '../../core/words/format'
import { unitsOn } from './wall/pen'

/** How far each leg is wound out, floor to underside of the carcass, before the unit is stood up. */
export function LegTable({ plan, wall }: { readonly plan: Plan; readonly wall: string }) {
  const units = unitsOn(plan, wall).filter((u) => u.legs.length > 0)
  if (units.length === 0) return null
  return (
    <table className="rows">
      <caption>Legs, floor to underside of the carcass</caption>
      <thead>
        <tr>
          <th scope="col">unit</th>
          <th scope="col">foot</th>
          <th scope="col">length</th>
          <th scope="col" className="blank">
            measured
          </th>
        </tr>
      </thead>
      {units.map((u) => (
        <UnitLegs key={u.unit} unit={u} />
      ))}
    </table>
  )
}

function UnitLegs({ unit }: { readonly unit: UnitPlan }) {
  return (
    <tbody className="keep">
      {unit.legs.map((leg, i) => (
        <tr key={leg.foot} className={isOut(leg) ? 'refused' : undefined}>
          {i === 0 && (
            <th scope="rowgroup" rowSpan={unit.legs.length}>
              {unit.name}
            </th>
          )}
          <td>{legName({ plan: unit }, leg)}</td>
          <td className="figure">
            {hasValue(leg.extension) ? figureText(leg.extension, { withPm: true }) : 'not known yet'}
            {isOut(leg) && ` (${reachText(leg)})`}
          </td>
          <td className="blank"> </td>
        </tr>
      ))}
    </tbody>
  )
}

const isOut = (leg: LegPlan) => leg.within === 'too-long' || leg.within === 'too-short'

function reachText({ within, min, max }: LegPlan): string {
  return within === 'too-long' ? `longer than its ${figureText(max)}` : `shorter than its ${figureText(min)}`
}
