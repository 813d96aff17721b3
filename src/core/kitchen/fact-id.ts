import type { InputId } from '../figure'

/**
 * The id of a fact: the way to it through the kitchen file, with the id of each listed thing in place of its position.
 * `factId('walls', 'b', 'studs', 's3', 'confirmed')` is `walls.b.studs.s3.confirmed`.
 */
export function factId(...path: readonly string[]): InputId {
  return path.join('.')
}
