import { DirectedGraph } from 'graphology'
import { hasCycle, topologicalSort } from 'graphology-dag'
import toposort from 'toposort'
import { type Figure, hasValue } from '../../src/core/figure'
import type { Message } from '../../src/core/message'
import type { HeightVariable, OrderReason, Plan } from '../../src/core/plan/types'
import { say } from '../../src/core/words/say'

/** What must hold of every plan, whatever kitchen it is for: each gives what does not hold, in words. */

/** Numbers that are none, anywhere in a value, each with the way to it. */
export function badNumbers(value: unknown): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [` is ${value}`]
  if (typeof value !== 'object' || value === null) return []
  const found: string[] = []
  for (const [key, inner] of Array.isArray(value) ? value.entries() : Object.entries(value)) {
    if (typeof inner === 'string') continue
    for (const fault of badNumbers(inner)) found.push(`/${key}${fault}`)
  }
  return found
}

/** Every operation once, every reason between two operations that are there, every path index good. */
export function brokenReferences(plan: Plan): string[] {
  const ids = plan.operations.map((o) => o.id)
  const known = new Set(ids)
  const holes = new Set(plan.holes.map((h) => h.id))
  return [
    ...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `operation ${id} stands twice`),
    ...repeated(plan.reasons.map((r) => r.id)).map((id) => `reason ${id} stands twice`),
    ...repeated(plan.findings.map((f) => f.id)).map((id) => `finding ${id} stands twice`),
    ...plan.reasons.flatMap((r) =>
      [r.before, r.after].filter((id) => !known.has(id)).map((id) => `${r.id}: there is no ${id}`),
    ),
    ...plan.order.setAside
      .filter((id) => !plan.reasons.some((r) => r.id === id))
      .map((id) => `set aside ${id} is no reason`),
    ...plan.operations.flatMap((o) =>
      o.holes.filter((h) => !holes.has(h)).map((h) => `${o.id}: there is no hole ${h}`),
    ),
    ...plan.operations.flatMap((o) =>
      o.path !== null && plan.paths[o.path] === undefined ? [`${o.id}: there is no path ${o.path}`] : [],
    ),
  ]
}

function repeated(ids: readonly string[]): readonly string[] {
  const seen = new Set<string>()
  return ids.filter((id) => seen.size === seen.add(id).size)
}

/** Two sorters from elsewhere take the hard reasons. */
export function refusedBySorters(plan: Plan): string[] {
  const nodes = plan.operations.map((o) => o.id)
  const known = new Set(nodes)
  const edges = plan.reasons
    .filter((r) => r.hard && known.has(r.before) && known.has(r.after))
    .map((r): [string, string] => [r.before, r.after])
  const faults: string[] = []
  try {
    if (toposort.array(nodes, edges).length !== nodes.length) faults.push('toposort loses operations')
  } catch (error) {
    faults.push(`toposort: ${String(error)}`)
  }
  const graph = new DirectedGraph()
  for (const id of nodes) graph.mergeNode(id)
  for (const [from, to] of edges) graph.mergeEdge(from, to)
  if (hasCycle(graph)) faults.push('graphology-dag: the hard reasons run in a ring')
  else if (topologicalSort(graph).length !== graph.order) faults.push('graphology-dag loses operations')
  return faults
}

/** The order of the plan against its own reasons: hard ones kept, preferred ones kept or set aside by name. */
export function brokenOrder(plan: Plan): string[] {
  const at = new Map(plan.operations.map((o, i) => [o.id, i]))
  const setAside = new Set(plan.order.setAside)
  return plan.reasons.flatMap((r) => {
    const [before, after] = [at.get(r.before), at.get(r.after)]
    if (before === undefined || after === undefined) return []
    if (r.hard) return before < after ? [...brokenHold(r, before, after)] : [`hard reason not kept: ${r.id}`]
    if (before < after) return setAside.has(r.id) ? [`kept and yet set aside: ${r.id}`] : []
    return setAside.has(r.id) ? [] : [`set aside without a word: ${r.id}`]
  })
}

/** Somebody holds the unit: nothing comes between. */
function brokenHold(r: OrderReason, before: number, after: number): string[] {
  const holds = r.maxLag === 0 && r.kind !== 'wish'
  return holds && after !== before + 1 ? [`${after - before - 1} operations come between: ${r.id}`] : []
}

/** Heights as they are in the end: the line, the named ones, and units with one of their own; ± as reached. */
export function heightOf(
  plan: Plan,
  of: HeightVariable,
): { readonly value: number; readonly pm: number } | null {
  if (of === 'line') return { value: 0, pm: 0 }
  const figure = of.startsWith('unit:')
    ? plan.units.find((u) => `unit:${u.unit}` === of)?.underside
    : plan.heights.values.find((v) => v.of === of)?.height
  return figure !== undefined && hasValue(figure) ? figure : null
}

const TOLERANCE = 0.0015

/** Hard demands that do not hold, to within what was read of heights already reached, and are not said to be unmet. */
export function brokenDemands(plan: Plan): string[] {
  const unmet = new Set(plan.heights.unmet)
  return plan.heights.demands.flatMap((d) => {
    const [from, to] = [heightOf(plan, d.from), heightOf(plan, d.to)]
    if (!d.hard || from === null || to === null || unmet.has(d.id)) return []
    const there = to.value - from.value
    const give = TOLERANCE + to.pm + from.pm
    const low = d.min !== null && hasValue(d.min) && there < d.min.value - give
    const high = d.max !== null && hasValue(d.max) && there > d.max.value + give
    return low || high
      ? [`${d.id}: ${d.to} − ${d.from} is ${there}, not ${limit(d.min)} to ${limit(d.max)}`]
      : []
  })
}

function limit(figure: Figure | null): string {
  return figure === null ? 'open' : hasValue(figure) ? String(figure.value) : 'unknown'
}

function isMessage(value: object): value is Message {
  return 'key' in value && 'values' in value && typeof value.key === 'string'
}

/** Every message in a part of a plan. */
export function messagesIn(value: unknown, found: Message[] = []): Message[] {
  if (typeof value !== 'object' || value === null) return found
  if (!Array.isArray(value) && isMessage(value)) found.push(value)
  else {
    for (const inner of Array.isArray(value) ? value : Object.values(value)) {
      if (typeof inner === 'object') messagesIn(inner, found)
    }
  }
  return found
}

/** Messages for which there are no words, or whose words have a gap. */
export function wordless(value: unknown): string[] {
  const told = new Set<string>()
  for (const message of messagesIn(value)) {
    const words = say(message)
    if (words.includes('[no ')) told.add(`${message.key}: ${words}`)
  }
  return [...told]
}
