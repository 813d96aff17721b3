import { byPlace, byPlaceFromEnd } from './construct'
import { improve } from './improve'
import type { Problem } from './problem'

/**
 * The order last accepted, changed only where it must be: blocks keep their places as far as hard reasons let them, and
 * of two ways of mending (putting off what must wait, bringing forward what is waited for) the one that moves fewer is
 * taken. New blocks are put in where they cost least.
 *
 * @param kept by block, its place in the accepted order; −1: new
 * @param fresh an order made without regard to the accepted one, for a first place of the new ones
 */
export function keepOrder(problem: Problem, kept: Int32Array, fresh: Int32Array): Int32Array {
  const place = withNewOnes(problem, kept, fresh)
  const ways = [byPlace(problem, place), byPlaceFromEnd(problem, place)] as const
  const [putOff, broughtForward] = ways
  const order = movedFrom(kept, broughtForward) < movedFrom(kept, putOff) ? broughtForward : putOff
  improve(problem, order, (block) => kept[block] === -1)
  return order
}

/**
 * New blocks come straight after the kept one before them in the fresh order, or sooner where a kept block waits for
 * them: then they come just before that one, and it keeps its place.
 */
function withNewOnes({ n, hard }: Problem, kept: Int32Array, fresh: Int32Array): Float64Array {
  const place = Float64Array.from(kept)
  let last = -1
  fresh.forEach((block, i) => {
    if (kept[block] === -1) place[block] = last + (i + 1) / (fresh.length + 2)
    else last = kept[block] as number
  })
  // The fresh order keeps the hard reasons, so from its end what waits for a block has its place before the block has.
  for (const block of [...fresh].reverse()) {
    if (kept[block] !== -1) continue
    for (let waiting = 0; waiting < n; waiting++) {
      if (hard[block * n + waiting] !== 1) continue
      place[block] = Math.min(place[block] as number, place[waiting] as number)
    }
  }
  return place
}

/** How many kept blocks are no longer in their old order: all but the longest run of them that still is. */
export function movedFrom(kept: Int32Array, order: Int32Array): number {
  const ends: number[] = []
  let count = 0
  for (const block of order) {
    const place = kept[block] as number
    if (place === -1) continue
    count++
    let low = 0
    let high = ends.length
    while (low < high) {
      const middle = (low + high) >> 1
      if ((ends[middle] as number) < place) low = middle + 1
      else high = middle
    }
    ends[low] = place
  }
  return count - ends.length
}
