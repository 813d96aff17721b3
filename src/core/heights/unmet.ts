import { type Figure, hasValue, known } from '../figure'
import type { Demand, HeightVariable } from '../plan/types'
import type { Kept } from './keep'
import type { HeightOf } from './undersides'

const LINE: Figure = known(0, 0, 'mm', [], { kind: 'geometry', why: 'the line is height 0' })
/** Half a thousandth: heights are told to a thousandth. */
const ROUNDING = 0.0005

/** What was dropped or given up, and whatever else the heights turn out not to meet; never less than that. */
export function unmetOf(demands: readonly Demand[], kept: Kept, heightOf: HeightOf): readonly string[] {
  const lost = new Set([...kept.dropped, ...kept.givenUp].map(({ id }) => id))
  const at = (variable: HeightVariable) => (variable === 'line' ? LINE : heightOf(variable))
  return demands
    .filter((demand) => lost.has(demand.id) || isMissed(demand, at(demand.from), at(demand.to)))
    .map(({ id }) => id)
}

/** Whether two heights miss a demand by more than they are known to; not while one of them is not known. */
function isMissed({ min, max }: Demand, from: Figure | undefined, to: Figure | undefined): boolean {
  if (from === undefined || to === undefined || !hasValue(from) || !hasValue(to)) return false
  const lies = to.value - from.value
  const slack = to.pm + from.pm + ROUNDING
  const isLow = min !== null && hasValue(min) && lies < min.value - slack
  const isHigh = max !== null && hasValue(max) && lies > max.value + slack
  return isLow || isHigh
}
