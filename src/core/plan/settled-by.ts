import type { InputId } from '../figure'
import type { Finding } from './types'

/** A finding that rests on more facts than this is not settled by any one of them. */
const FEW = 4

/**
 * The facts of the kitchen file that settle a finding once they are entered, or entered anew: those its rule names; else
 * those its unknown figures wait for; else the few it rests on, and of many those of the things it is about, or the
 * things themselves: a wall, a unit, a reading.
 */
export function settledBy({ settledBy: named, figures, from, about }: Finding): readonly InputId[] {
  if (named !== undefined) return named
  const missing = figures.flatMap((figure) => (figure.state === 'unknown' ? figure.missing : []))
  if (missing.length > 0) return [...new Set(missing)]
  if (from.length <= FEW) return from
  const own = from.filter((fact) => thingOf(fact, about) !== null)
  if (own.length <= FEW) return own
  return [...new Set(own.map((fact) => thingOf(fact, about) as InputId))]
}

/** The outermost thing in a fact that is one of these: `units.base-1` in `units.base-1.order.left.at`. */
function thingOf(fact: InputId, about: readonly string[]): InputId | null {
  const parts = fact.split('.')
  const at = parts.findIndex((part) => about.includes(part))
  return at < 0 ? null : parts.slice(0, at + 1).join('.')
}
