import { type Figure, hasValue, type InputId } from '../figure'
import { factId } from '../kitchen/fact-id'
import { type Message, message } from '../message'
import type { UnitPosition } from '../units/positions'
import { withinUnit } from './side-fixings'
import type { DoubtfulStud } from './usable-studs'
import type { WallWork } from './wall-work'

interface Unproved {
  readonly at: Figure
  readonly missing: DoubtfulStud['missing']
}

/** The first stud behind a unit that is only supposed: proved, it could hold what finds no timber now. */
function unprovedBehind(work: WallWork, position: UnitPosition): Unproved | null {
  const { from, to } = withinUnit(position)
  if (!hasValue(from) || !hasValue(to)) return null
  const places = work.studs.doubtful
    .filter((stud) => stud.why === 'not-confirmed')
    .flatMap(({ centre, missing }) => (hasValue(centre) ? [{ at: centre, missing }] : []))
    .filter(({ at }) => at.value >= from.value && at.value <= to.value)
    .sort((a, b) => a.at.value - b.at.value)
  return places[0] ?? null
}

/** That nothing holds there, in other words where a stud stands behind the unit and has only not been proved. */
export function nothingHolds(
  work: WallWork,
  position: UnitPosition,
  key: string,
  values: Message['values'],
): {
  readonly say: Message
  readonly figures: readonly Figure[]
  /** The proof of that stud; else whatever timber is found or let in there. */
  readonly settledBy: readonly InputId[]
} {
  const unproved = unprovedBehind(work, position)
  if (unproved === null) {
    const settledBy = ['studs', 'noggings'].map((list) => factId('walls', work.wall.id, list))
    return { say: message(`fixings.${key}`, values), figures: [], settledBy }
  }
  const { at, missing } = unproved
  return { say: message(`fixings.${key}.unproved`, { ...values, at }), figures: [at], settledBy: missing }
}
