import type { LocalBox } from '../plan/types'

/** One side of a carcass seen from above, inside on its left hand. */
export interface Side {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
  /** Nothing closes it: the front, or both fronts of an inner corner. */
  readonly isOpen: boolean
}

/**
 * The outline of a carcass of one box or more, seen from above, inside on the left hand. One box is open at its front;
 * a corner unit at the two sides that meet in its inner corner.
 */
export function planOutline(solid: readonly LocalBox[]): readonly Side[] {
  const sides = chain(boundary(solid))
  if (sides.length <= 4) {
    const front = Math.max(...solid.map((b) => b.y1))
    return sides.map((s) => ({ ...s, isOpen: s.y0 === front && s.y1 === front }))
  }
  return sides.map((s, i) => {
    const before = sides[(i + sides.length - 1) % sides.length] ?? s
    const after = sides[(i + 1) % sides.length] ?? s
    return { ...s, isOpen: turnsRight(before, s) || turnsRight(s, after) }
  })
}

type Edge = Omit<Side, 'isOpen'>

const turnsRight = (a: Edge, b: Edge) => (a.x1 - a.x0) * (b.y1 - b.y0) - (a.y1 - a.y0) * (b.x1 - b.x0) < 0

const sorted = (values: readonly number[]) => [...new Set(values)].sort((a, b) => a - b)

/** Edges between a filled cell and an empty one, on the grid of all the boxes' own edges. */
function boundary(solid: readonly LocalBox[]): readonly Edge[] {
  const xs = sorted(solid.flatMap((b) => [b.x0, b.x1]))
  const ys = sorted(solid.flatMap((b) => [b.y0, b.y1]))
  const isFilled = (i: number, j: number) => {
    const x = ((xs[i] ?? Number.NaN) + (xs[i + 1] ?? Number.NaN)) / 2
    const y = ((ys[j] ?? Number.NaN) + (ys[j + 1] ?? Number.NaN)) / 2
    return solid.some((b) => b.x0 < x && x < b.x1 && b.y0 < y && y < b.y1)
  }
  const edges: Edge[] = []
  for (let i = 0; i + 1 < xs.length; i += 1) {
    for (let j = 0; j + 1 < ys.length; j += 1) {
      if (!isFilled(i, j)) continue
      const [xa = 0, xb = 0, ya = 0, yb = 0] = [xs[i], xs[i + 1], ys[j], ys[j + 1]]
      if (!isFilled(i, j - 1)) edges.push({ x0: xa, y0: ya, x1: xb, y1: ya })
      if (!isFilled(i + 1, j)) edges.push({ x0: xb, y0: ya, x1: xb, y1: yb })
      if (!isFilled(i, j + 1)) edges.push({ x0: xb, y0: yb, x1: xa, y1: yb })
      if (!isFilled(i - 1, j)) edges.push({ x0: xa, y0: yb, x1: xa, y1: ya })
    }
  }
  return edges
}

/** Puts edges end to end and joins those that run straight on. */
function chain(edges: readonly Edge[]): readonly Edge[] {
  const left = [...edges]
  const round: Edge[] = []
  let next = left.shift()
  while (next !== undefined) {
    round.push(next)
    const { x1, y1 } = next
    const at = left.findIndex((e) => e.x0 === x1 && e.y0 === y1)
    next = at < 0 ? undefined : left.splice(at, 1)[0]
  }
  const straight = (a: Edge, b: Edge) => (a.x1 - a.x0) * (b.y1 - b.y0) === (a.y1 - a.y0) * (b.x1 - b.x0)
  const joined: Edge[] = []
  for (const edge of round) {
    const last = joined[joined.length - 1]
    if (last !== undefined && straight(last, edge))
      joined[joined.length - 1] = { ...last, x1: edge.x1, y1: edge.y1 }
    else joined.push(edge)
  }
  const [first] = joined
  const last = joined[joined.length - 1]
  if (first !== undefined && last !== undefined && joined.length > 1 && straight(last, first)) {
    return [{ ...first, x0: last.x0, y0: last.y0 }, ...joined.slice(1, -1)]
  }
  return joined
}

/** The corner where a side begins, with every side moved in by its own amount. */
export function insetCorners(
  sides: readonly Side[],
  by: (side: Side) => number,
): readonly { readonly x: number; readonly y: number }[] {
  return sides.map((side, i) => {
    const before = sides[(i + sides.length - 1) % sides.length] ?? side
    const [a, b] = [moved(before, by(before)), moved(side, by(side))]
    return side.y0 === side.y1 ? { x: a.x0, y: b.y0 } : { x: b.x0, y: a.y0 }
  })
}

/** A side moved to its left, which is inwards. */
export function moved(side: Edge, by: number): Edge {
  const length = Math.hypot(side.x1 - side.x0, side.y1 - side.y0)
  const nx = (-(side.y1 - side.y0) / length) * by
  const ny = ((side.x1 - side.x0) / length) * by
  return { x0: side.x0 + nx, y0: side.y0 + ny, x1: side.x1 + nx, y1: side.y1 + ny }
}
