import { longestRoundCorner } from './round-a-corner'

/** Sides of a box, mm, in any order. */
export type Sides = readonly [number, number, number]

/** One narrow place of the way in. Lengths mm; an opening is as high as its ceiling where it has no lintel. */
export interface Narrow {
  readonly kind: 'door' | 'corner' | 'car'
  /** Of a door or a lift car its clear width; of a corner, the width of the way to it. */
  readonly width: number
  /** Of a corner, the width of the way on; of a lift car, how deep it is. */
  readonly onward: number
  readonly height: number
}

/** The six ways of holding a box: along, across, up. */
function held([a, b, c]: Sides): readonly Sides[] {
  return [
    [a, b, c],
    [b, a, c],
    [a, c, b],
    [c, a, b],
    [b, c, a],
    [c, b, a],
  ]
}

/**
 * By how much a box passes a narrow place, held square to it, in the way that goes best: negative when it does not go.
 * Through a door two of its sides must clear width and height. Round a corner the side that is up must clear the height,
 * and the other two are turned on the plan. In a lift car all three sides go in square.
 * Tilting on the way through is not counted on.
 */
export function passesBy(sides: Sides, narrow: Narrow): number {
  const { kind, width, onward, height } = narrow
  const room = ([along, across, up]: Sides): number => {
    if (kind === 'door') return Math.min(width - across, height - up)
    if (kind === 'car') return Math.min(width - across, onward - along, height - up)
    const longest = longestRoundCorner(width, onward, across)
    return Math.min(longest === null ? Math.min(width, onward) - across : longest - along, height - up)
  }
  return Math.max(...held(sides).map(room))
}
