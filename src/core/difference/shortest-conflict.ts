import { type Constraint, fromThousandths, type Network, networkOf } from './network'

/** A ring of constraints that cannot hold together, and by how much. */
export interface Conflict {
  /** Their ids, each once, in code-unit order. */
  readonly constraints: readonly string[]
  /** By how much they miss: with this much slack in one of them they would just hold. */
  readonly by: number
}

/**
 * The contradiction made of the fewest constraints; of several equally short ones the one that misses by most, then the
 * one through the first name. Undefined when all hold together.
 *
 * Ways of one, two, three … constraints are tried from every thing at once, until one comes back to where it began
 * below nothing: nothing shorter can, so it runs through no thing twice.
 */
export function shortestConflict(constraints: readonly Constraint[]): Conflict | undefined {
  const network = networkOf(constraints)
  const n = network.nodes.length
  let least = startOf(n)
  const lastEdges: Int32Array[] = []
  for (let steps = 1; steps <= n; steps++) {
    const next = oneStepOn(network, least)
    least = next.least
    lastEdges.push(next.lastEdge)
    const start = deepestReturn(least, n)
    if (start !== undefined) return ringFrom(network, lastEdges, start, -(least[start * n + start] as number))
  }
  return undefined
}

function startOf(n: number): Float64Array {
  const least = new Float64Array(n * n).fill(Infinity)
  for (let i = 0; i < n; i++) least[i * n + i] = 0
  return least
}

/** Row by row the least sums over ways of one constraint more, and the last constraint of each way. */
function oneStepOn({ nodes, edges }: Network, before: Float64Array) {
  const n = nodes.length
  const least = new Float64Array(n * n).fill(Infinity)
  const lastEdge = new Int32Array(n * n).fill(-1)
  edges.forEach(({ from, to, most }, edge) => {
    for (let row = 0; row < n * n; row += n) {
      const sum = (before[row + from] as number) + most
      if (sum < (least[row + to] as number)) {
        least[row + to] = sum
        lastEdge[row + to] = edge
      }
    }
  })
  return { least, lastEdge }
}

function deepestReturn(least: Float64Array, n: number): number | undefined {
  let deepest: number | undefined
  for (let i = 0; i < n; i++) {
    const back = least[i * n + i] as number
    if (back < 0 && (deepest === undefined || back < (least[deepest * n + deepest] as number))) deepest = i
  }
  return deepest
}

function ringFrom(
  { nodes, edges }: Network,
  lastEdges: readonly Int32Array[],
  start: number,
  by: number,
): Conflict {
  const ids = new Set<string>()
  let at = start
  for (let steps = lastEdges.length; steps > 0; steps--) {
    const edge = edges[(lastEdges[steps - 1] as Int32Array)[start * nodes.length + at] as number]
    if (edge === undefined) break
    ids.add(edge.id)
    at = edge.from
  }
  return { constraints: [...ids].sort((a, b) => (a < b ? -1 : 1)), by: fromThousandths(by) }
}
