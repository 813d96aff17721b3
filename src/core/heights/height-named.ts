import { type Figure, unknown } from '../figure'
import type { HeightName } from '../kitchen/kinds'
import type { Heights } from '../plan/types'

/** A height of the kitchen by its name, from the line; unknown where there is no such height in this kitchen. */
export function heightNamed({ values }: Pick<Heights, 'values'>, of: HeightName): Figure {
  return values.find((value) => value.of === of)?.height ?? unknown('mm', ['units'])
}
