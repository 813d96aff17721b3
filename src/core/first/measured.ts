import { type Figure, hasValue, type InputId } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import { type Message, message } from '../message'
import { floorFall, lowestCeilingRead } from './heights'
import { type FirstLine, wallSaid } from './line'
import { roomAlong } from './run'

/**
 * What the survey holds already of a first question that its own line leaves open: a width measured from corner to corner,
 * a ceiling and a floor read at several places. The question must not look unanswered then.
 */
export function measuredLines(kitchen: Kitchen): readonly FirstLine[] {
  const wall = kitchen.walls[0]
  return [
    ...(wall === undefined ? [] : measured('width', roomAlong(wall), { wall: wallSaid(wall) })),
    ...measured('ceiling', lowestCeilingRead(kitchen)),
    ...measured('fall', floorFall(kitchen)),
  ]
}

function measured(
  of: 'width' | 'ceiling' | 'fall',
  value: Figure,
  more: Message['values'] = {},
): readonly FirstLine[] {
  if (!hasValue(value)) return []
  const facts: readonly InputId[] = value.from
  return [
    { kind: 'measured', say: message(`first.measured.${of}`, { value, ...more }), facts, basis: value.basis },
  ]
}
