import { type Figure, hasValue } from '../figure'
import { type Message, message } from '../message'
import type { UnitPosition } from '../units/positions'
import { withinUnit } from './side-fixings'
import type { WallWork } from './wall-work'

/** The first stud behind a unit that is only supposed: proved, it could hold what finds no timber now. */
function unprovedBehind(work: WallWork, position: UnitPosition): Figure | null {
  const { from, to } = withinUnit(position)
  if (!hasValue(from) || !hasValue(to)) return null
  const places = work.studs.doubtful
    .filter((stud) => stud.why === 'not-confirmed')
    .flatMap(({ centre }) => (hasValue(centre) ? [centre] : []))
    .filter((centre) => centre.value >= from.value && centre.value <= to.value)
    .sort((a, b) => a.value - b.value)
  return places[0] ?? null
}

/** That nothing holds there, in other words where a stud stands behind the unit and has only not been proved. */
export function nothingHolds(
  work: WallWork,
  position: UnitPosition,
  key: string,
  values: Message['values'],
): { readonly say: Message; readonly figures: readonly Figure[] } {
  const at = unprovedBehind(work, position)
  return at === null
    ? { say: message(`fixings.${key}`, values), figures: [] }
    : { say: message(`fixings.${key}.unproved`, { ...values, at }), figures: [at] }
}
