import { type Basis, derive, type Figure } from '../figure'

/**
 * Length of a rail that hangs on each of its fixings: half the span to either neighbour, and the overhang at the ends.
 * Places and ends along the wall, from left to right.
 */
export function tributaryLengths(from: number, to: number, places: readonly number[]): readonly number[] {
  return parts(from, to, places).map(([start, end]) => end - start)
}

function parts(from: number, to: number, places: readonly number[]): readonly (readonly [number, number])[] {
  return places.map((place, i) => {
    const [before, after] = [places[i - 1], places[i + 1]]
    return [
      before === undefined ? from : (before + place) / 2,
      after === undefined ? to : (place + after) / 2,
    ]
  })
}

const basis: Basis = {
  kind: 'common-practice',
  why: 'the rail is taken to spread the load of all its units evenly along its length; each fixing carries the length of rail nearest to it',
}

/**
 * The share of the worst of the fixings that a unit hangs near: those whose length of rail lies behind the unit. The
 * whole load of the rail is spread evenly along it.
 */
export function worstShare(rail: {
  readonly loads: readonly Figure[]
  readonly from: Figure
  readonly to: Figure
  readonly places: readonly Figure[]
  readonly left: Figure
  readonly right: Figure
}): Figure {
  const { loads, from, to, places, left, right } = rail
  return derive('N', basis, [from, to, left, right, ...loads, ...places], (a, b, l, r, ...rest) => {
    const [start, end] = [a as number, b as number]
    const total = rest.slice(0, loads.length).reduce((sum, load) => sum + load, 0)
    const near = parts(start, end, rest.slice(loads.length)).filter(
      ([first, last]) => last > (l as number) && first < (r as number),
    )
    const longest = Math.max(0, ...near.map(([first, last]) => last - first))
    return end > start ? (total * longest) / (end - start) : total
  })
}
