/**
 * Strongly connected components of a graph of who waits for whom: a component of more than one is a knot, every member
 * of which waits for every other, so it is told whole. Tarjan's algorithm, without recursion.
 *
 * `arcs[i]` are the numbers that i points to. Components come out with what they point to first; inside, numbers rise.
 */
export function componentsOf(arcs: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const walk = newWalk(arcs)
  arcs.forEach((_, start) => {
    if (walk.order[start] === -1) visitFrom(start, walk)
  })
  return walk.components
}

/** Only the knots: components of more than one. */
export function knotsOf(arcs: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return componentsOf(arcs).filter((component) => component.length > 1)
}

interface Walk {
  readonly arcs: readonly (readonly number[])[]
  readonly order: number[]
  readonly low: number[]
  readonly open: number[]
  readonly isOpen: boolean[]
  readonly components: (readonly number[])[]
  count: number
}

function newWalk(arcs: readonly (readonly number[])[]): Walk {
  const all = <T>(value: T): T[] => arcs.map(() => value)
  return { arcs, order: all(-1), low: all(-1), open: [], isOpen: all(false), components: [], count: 0 }
}

interface Step {
  readonly node: number
  next: number
}

function visitFrom(start: number, walk: Walk): void {
  const steps: Step[] = [enter(start, walk)]
  for (let step = steps[steps.length - 1]; step !== undefined; step = steps[steps.length - 1]) {
    const to = walk.arcs[step.node]?.[step.next]
    step.next += 1
    if (to === undefined) leave(steps, walk)
    else if (walk.order[to] === -1) steps.push(enter(to, walk))
    else if (walk.isOpen[to]) lower(walk, step.node, walk.order[to])
  }
}

function enter(node: number, walk: Walk): Step {
  walk.order[node] = walk.count
  walk.low[node] = walk.count
  walk.count += 1
  walk.open.push(node)
  walk.isOpen[node] = true
  return { node, next: 0 }
}

function leave(steps: Step[], walk: Walk): void {
  const done = steps.pop()
  if (done === undefined) return
  const above = steps[steps.length - 1]
  if (above !== undefined) lower(walk, above.node, walk.low[done.node])
  if (walk.low[done.node] !== walk.order[done.node]) return
  const component = walk.open.splice(walk.open.lastIndexOf(done.node))
  for (const node of component) walk.isOpen[node] = false
  walk.components.push(component.sort((a, b) => a - b))
}

function lower(walk: Walk, node: number, to: number | undefined): void {
  walk.low[node] = Math.min(walk.low[node] ?? 0, to ?? 0)
}
