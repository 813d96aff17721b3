import { hits, OPEN } from '../bands/band'
import type { Case } from '../case'
import type { Measure } from '../measure'

/** Where the rules of the trade put a hole, worked out from the kitchen alone. */
export interface ExpectedHole {
  readonly id: string
  readonly wall: string
  readonly purpose: string
  readonly along: Measure
  readonly height: Measure
  readonly stud: string | null
  /** It may be left out when the rule allows another: a refused first choice. */
  readonly optional: boolean
  /** Its place along may also be left open. */
  readonly alongOpen?: boolean
}

/**
 * Holes of one purpose on one unit or rail. Where the rules leave open whether a place lies in a band (an end of a wall
 * that may be a corner, a plate nobody measured, an edge that is only good to a few mm), there are several ways they may
 * come out; one of them must.
 */
export interface HoleGroup {
  /** What the ids of all its holes begin with. */
  readonly prefix: string
  readonly ways: readonly (() => readonly (readonly ExpectedHole[])[])[]
}

/**
 * Whether a hole gives way only to bands that are surely there or also to those that may be, and whether it keeps the
 * precision of a band's edges off it.
 */
export interface Refusing {
  /** Bands that may be there and count: none, those at the ends of the wall, or all. */
  readonly perhaps: 'none' | 'ends' | 'all'
  readonly margin: number
}

/** Only by what is surely known. */
export const SURELY: Refusing = { perhaps: 'none', margin: 0 }

/** A hole that may move out of a band does so in such steps, mm, and so many of them. */
export const STEP = 10
export const STEPS = 12

/** A place in a band no hole may lie in; while its height is not known, in one that runs from floor to ceiling. */
export function isRefused(
  c: Case,
  wall: string,
  along: Measure,
  height: Measure,
  how: Refusing = SURELY,
): boolean {
  if (along.value === null) return false
  const bands = (c.bands.get(wall)?.bands ?? []).filter(
    (band) =>
      band.weight === 'refuse' ||
      (band.weight === 'either' &&
        (how.perhaps === 'all' || (how.perhaps === 'ends' && band.kind === 'corner'))),
  )
  const counting = height.value === null ? bands.filter((b) => b.bottom === -OPEN && b.top === OPEN) : bands
  return hits(counting, along.value, height.value ?? 0, how.margin).length > 0
}
