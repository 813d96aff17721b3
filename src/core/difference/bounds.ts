import { type Constraint, fromThousandths, isConsistent, type Network, networkOf } from './network'

/** One end of the room a thing has, and the constraints that set it, from the origin on. */
export interface Bound {
  readonly value: number
  readonly by: readonly string[]
}

/** How far below and above the origin a thing may lie; null where nothing holds it. */
export interface Room {
  readonly lowest: Bound | null
  readonly highest: Bound | null
}

interface Reached {
  /** Whole thousandths. */
  far: number
  steps: number
  edge: number
}

/**
 * The tightest room that the constraints leave each thing, measured from the origin. Any value within a thing's room
 * can be completed to values for all. Of several equally tight ways to an end the one of fewest constraints is named.
 *
 * The constraints must hold together, those that nothing ties to the origin too: when they do not, there is no answer and
 * this gives undefined.
 */
export function tightestRoom(
  constraints: readonly Constraint[],
  origin: string,
): ReadonlyMap<string, Room> | undefined {
  if (!isConsistent(constraints)) return undefined
  const forwards = networkOf(constraints, [origin])
  const backwards: Network = {
    nodes: forwards.nodes,
    edges: forwards.edges.map(({ id, from, to, most }) => ({ id, from: to, to: from, most })),
  }
  const start = forwards.nodes.indexOf(origin)
  const [above, below] = [reachFrom(forwards, start), reachFrom(backwards, start)]
  if (above === undefined || below === undefined) return undefined
  return new Map(
    forwards.nodes.map((node, i): [string, Room] => {
      const low = boundAt(backwards, below, i)
      const lowest = low === null ? null : { value: -low.value + 0, by: low.by }
      return [node, { lowest, highest: boundAt(forwards, above, i) }]
    }),
  )
}

/** Least sums of constraints from one thing to all it binds; undefined when they pull each other down for ever. */
function reachFrom({ nodes, edges }: Network, start: number): readonly Reached[] | undefined {
  const reached = nodes.map((): Reached => ({ far: Infinity, steps: 0, edge: -1 }))
  const origin = reached[start] as Reached
  origin.far = 0
  for (let round = 0; round <= nodes.length; round++) {
    let moved = false
    edges.forEach(({ from, to, most }, edge) => {
      const [here, there] = [reached[from] as Reached, reached[to] as Reached]
      const far = here.far + most
      if (far > there.far || (far === there.far && here.steps + 1 >= there.steps)) return
      if (far === Infinity) return
      there.far = far
      there.steps = here.steps + 1
      there.edge = edge
      moved = true
    })
    if (!moved) return reached
  }
  return undefined
}

function boundAt({ edges }: Network, reached: readonly Reached[], node: number): Bound | null {
  const { far } = reached[node] as Reached
  if (far === Infinity) return null
  const by: string[] = []
  let at = node
  for (let edge = (reached[at] as Reached).edge; edge >= 0; edge = (reached[at] as Reached).edge) {
    const { id, from } = edges[edge] as Network['edges'][number]
    by.unshift(id)
    at = from
  }
  return { value: fromThousandths(far), by }
}
