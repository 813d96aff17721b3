import { type Basis, type Figure, hasValue } from '../figure'
import { message } from '../message'
import { finding } from '../plan/finding'
import type { Finding, WallId } from '../plan/types'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'

const pastTheEnd: Basis = { kind: 'geometry', why: 'the unit’s side against the end of its wall' }

interface Placed {
  readonly id: string
  readonly name: string
  readonly wall: WallId
  readonly left: Figure
  readonly right: Figure
}

/**
 * Whether a unit runs past an end of its wall: a stop when it does so by more than the precision of what was measured,
 * a note when it may.
 */
export function pastEnd(placed: Placed, survey: Survey): readonly Finding[] {
  const length = survey.frame(placed.wall)?.length
  const over = [
    { end: 'left', by: sum('mm', pastTheEnd, [], [placed.left]), at: placed.left },
    ...(length === undefined
      ? []
      : [{ end: 'right', by: sum('mm', pastTheEnd, [placed.right], [length]), at: placed.right }]),
  ]
  const worst = over
    .flatMap(({ end, by, at }) => (hasValue(by) && by.value > 0 ? [{ end, by, at }] : []))
    .sort((a, b) => b.by.value - b.by.pm - (a.by.value - a.by.pm))[0]
  if (worst === undefined) return []
  const { end, by, at } = worst
  const isSure = by.value > by.pm
  const key = isSure ? 'units.unit-past-end' : 'units.unit-past-end.marginal'
  return [
    finding({
      rule: 'unit-past-end',
      subjects: [placed.id],
      weight: isSure ? 'stop' : 'note',
      where: { wall: placed.wall, along: at },
      say: message(key, { unit: placed.name, end, by }),
      figures: [by],
      basis: pastTheEnd,
    }),
  ]
}
