/**
 * Difference constraints: each says that one thing lies at most so far above (or after) another. Heights and waiting
 * times are both of this kind. Such a set can hold together just when no ring of them adds up to less than nothing.
 *
 * Numbers are taken to the nearest thousandth and added up as whole thousandths, so that equal sums are equal.
 */

/** x(to) − x(from) ≤ most. "At least" is the same turned round: x(from) − x(to) ≤ −least. */
export interface Constraint {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly most: number
}

/** Constraints that come and go together: a wish. */
export interface ConstraintGroup {
  readonly id: string
  readonly constraints: readonly Constraint[]
}

interface Edge {
  readonly id: string
  readonly from: number
  readonly to: number
  /** Whole thousandths. */
  readonly most: number
}

/** Constraints by number instead of name: the tightest of each pair only, in order of their ids. */
export interface Network {
  readonly nodes: readonly string[]
  readonly edges: readonly Edge[]
}

const THOUSANDTHS = 1000

export function toThousandths(value: number): number {
  return Math.round(value * THOUSANDTHS) + 0
}

export function fromThousandths(value: number): number {
  return value / THOUSANDTHS + 0
}

function byCodeUnit(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** Of several constraints from one thing to another only the tightest counts; of equal ones the first id. */
export function networkOf(constraints: readonly Constraint[], further: readonly string[] = []): Network {
  const names = new Set(further)
  for (const { from, to } of constraints) names.add(from).add(to)
  const nodes = [...names].sort(byCodeUnit)
  const numberOf = new Map(nodes.map((node, i) => [node, i]))
  const tightest = new Map<number, Edge>()
  for (const constraint of constraints) {
    const [from, to] = [numberOf.get(constraint.from) as number, numberOf.get(constraint.to) as number]
    const edge = { id: constraint.id, from, to, most: toThousandths(constraint.most) }
    const key = from * nodes.length + to
    const other = tightest.get(key)
    if (other === undefined || isTighter(edge, other)) tightest.set(key, edge)
  }
  return { nodes, edges: [...tightest.values()].sort((a, b) => byCodeUnit(a.id, b.id)) }
}

function isTighter(a: Edge, b: Edge): boolean {
  return a.most < b.most || (a.most === b.most && a.id < b.id)
}

/** Whether some values meet all constraints at once. */
export function isConsistent(constraints: readonly Constraint[]): boolean {
  const { nodes, edges } = networkOf(constraints)
  // Everything starts at 0 and is pulled down by what binds it; with n things n rounds settle it, or nothing does.
  const value = new Float64Array(nodes.length)
  for (let round = 0; round <= nodes.length; round++) {
    let moved = false
    for (const { from, to, most } of edges) {
      const pulled = (value[from] as number) + most
      if (pulled < (value[to] as number)) {
        value[to] = pulled
        moved = true
      }
    }
    if (!moved) return true
  }
  return false
}
