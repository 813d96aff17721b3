import { knotsOf } from './components'
import { type Prism, prismOver, prismsMeet, sweptHull } from './solid'

/**
 * Directional blocking graphs: for one direction, who would be in whose way if each part alone were drawn off for ever
 * in it. An arc P → Q says that Q blocks P.
 *
 * For boxes square to the room that do not cut into each other each of the six graphs is free of loops: if Q blocks P
 * along +x their extents across overlap, so their x extents do not, and Q lies wholly beyond P; "wholly beyond" has no
 * loops. So boxes can always be drawn off one by one, those that reach furthest first. Parts at other angles, or made of
 * several boxes, can lock each other: `knots` names each such group whole.
 *
 * @source methods A.2, after directional blocking graphs of Wilson and Latombe, AAAI 1992
 */

export const SIX_WAYS = ['+x', '-x', '+y', '-y', '+z', '-z'] as const
export type SixWay = (typeof SIX_WAYS)[number]

/** A box square to the room. */
export interface RoomBox {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly z0: number
  readonly z1: number
}

/** `blockers[i]`: numbers of the parts in the way of part i. */
export type BlockingGraph = readonly (readonly number[])[]

/** All six graphs of boxes square to the room; overlaps up to `tolerance` are contact and block nothing. */
export function blockingGraphs(
  boxes: readonly RoomBox[],
  tolerance = 0.1,
): Readonly<Record<SixWay, BlockingGraph>> {
  const empty = (): number[][] => boxes.map(() => [])
  const graphs = { '+x': empty(), '-x': empty(), '+y': empty(), '-y': empty(), '+z': empty(), '-z': empty() }
  boxes.forEach((a, i) => {
    for (let j = i + 1; j < boxes.length; j += 1) {
      const b = boxes[j]
      if (b !== undefined) relate(a, b, i, j, tolerance, graphs)
    }
  })
  return graphs
}

/** Two boxes that do not cut into each other can be in line along one axis at most. */
function relate(
  a: RoomBox,
  b: RoomBox,
  i: number,
  j: number,
  tolerance: number,
  graphs: Readonly<Record<SixWay, number[][]>>,
): void {
  const x = Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0) > tolerance
  const y = Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0) > tolerance
  const z = Math.min(a.z1, b.z1) - Math.max(a.z0, b.z0) > tolerance
  if (y && z) link(graphs['+x'], graphs['-x'], i, j, a.x0 + a.x1 <= b.x0 + b.x1)
  if (x && z) link(graphs['+y'], graphs['-y'], i, j, a.y0 + a.y1 <= b.y0 + b.y1)
  if (x && y) link(graphs['+z'], graphs['-z'], i, j, a.z0 + a.z1 <= b.z0 + b.z1)
}

function link(plus: number[][], minus: number[][], i: number, j: number, iFirst: boolean): void {
  const [near, far] = iFirst ? [i, j] : [j, i]
  plus[near]?.push(far)
  minus[far]?.push(near)
}

/**
 * The graph of parts of any yaw, each one or more prisms moved together, drawn off in a level direction (degrees
 * anticlockwise from +x) or straight up or down.
 */
export function blockingGraph(
  parts: readonly (readonly Prism[])[],
  way: { readonly yaw: number } | 'up' | 'down',
): BlockingGraph {
  const far = reachOf(parts)
  const swept = parts.map((part) => part.map((prism) => drawnOff(prism, way, far)))
  return swept.map((mine, i) =>
    parts.flatMap((other, j) =>
      i !== j && other.some((prism) => mine.some((path) => prismsMeet(path, prism))) ? [j] : [],
    ),
  )
}

/** Groups of parts that lock each other in one direction, each whole, numbers rising; none: there is an order. */
export function knots(graph: BlockingGraph): readonly (readonly number[])[] {
  return knotsOf(graph)
}

/** Further than any part is from any other. */
function reachOf(parts: readonly (readonly Prism[])[]): number {
  const all = parts.flat()
  const span = (low: (p: Prism) => number, high: (p: Prism) => number): number =>
    all.reduce((most, p) => Math.max(most, high(p)), Number.NEGATIVE_INFINITY) -
    all.reduce((least, p) => Math.min(least, low(p)), Number.POSITIVE_INFINITY)
  if (all.length === 0) return 0
  return (
    1 +
    span(
      (p) => p.x0,
      (p) => p.x1,
    ) +
    span(
      (p) => p.y0,
      (p) => p.y1,
    ) +
    span(
      (p) => p.bottom,
      (p) => p.top,
    )
  )
}

function drawnOff(prism: Prism, way: { readonly yaw: number } | 'up' | 'down', far: number): Prism {
  if (way === 'up') return { ...prism, top: prism.top + far }
  if (way === 'down') return { ...prism, bottom: prism.bottom - far }
  const radians = (way.yaw * Math.PI) / 180
  const hull = sweptHull(prism.polygon, far * Math.cos(radians), far * Math.sin(radians))
  return prismOver(hull, prism.bottom, prism.top)
}
