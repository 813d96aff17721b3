import type { Figure, ValueFigure } from '../../core/figure'
import type { Case } from '../case'
import { isRecord } from '../json'

const UNITS = new Set(['mm', 'deg', 'kg', 'N', 'min', 'turn', 'mm/turn', 'count', 'ratio', 'kg/m³'])
/** What may stand by itself, without a fact of this kitchen: published and agreed figures, and plain geometry. */
const CONSTANTS = new Set(['standard', 'common-practice', 'geometry'])

/** Every figure in the plan has a unit, a precision and the facts it came from, and those facts are real. */
export function checkFigures(c: Case): void {
  const seen = new WeakSet<Figure>()
  const look = lookedUp(c)
  walk(c.plan, { key: 'plan', under: null }, (figure, way) => {
    if (seen.has(figure)) return
    seen.add(figure)
    for (const fault of figureFaults(c, look, figure)) c.refuse('figure', wayTo(way), fault)
  })
  checkCited(c, look)
}

/** Of a list of cited facts: those that are no facts of this kitchen, and those nobody has given. */
interface LookedUp {
  readonly none: readonly string[]
  readonly unread: readonly string[]
}
type Look = (ids: readonly string[]) => LookedUp

/** Looks lists of cited facts up, each once: thousands of figures rest on the same few long lists. */
function lookedUp(c: Case): Look {
  const known = new Map<readonly string[], LookedUp>()
  return (ids) => {
    const before = known.get(ids)
    if (before !== undefined) return before
    const found = {
      none: ids.filter((id) => c.facts(id) === 'no such fact'),
      unread: ids.filter((id) => c.facts(id) === 'not known'),
    }
    known.set(ids, found)
    return found
  }
}

/** The way to a figure through the plan, put into words only when it is wanted. */
interface Way {
  readonly key: string
  readonly under: Way | null
}

function wayTo({ key, under }: Way): string {
  return under === null ? key : `${wayTo(under)}.${key}`
}

function walk(node: unknown, way: Way, visit: (figure: Figure, way: Way) => void): void {
  if (Array.isArray(node)) {
    // Lists of ids hold no figures.
    if (typeof node[0] === 'string') return
    node.forEach((item: unknown, i) => {
      walk(item, { key: nameOf(item) ?? String(i), under: way }, visit)
    })
    return
  }
  if (!isRecord(node)) return
  if (isFigure(node)) {
    visit(node, way)
    return
  }
  for (const [key, inner] of Object.entries(node)) {
    if (typeof inner === 'object') walk(inner, { key, under: way }, visit)
  }
}

function nameOf(item: unknown): string | null {
  if (!isRecord(item)) return null
  const name = item['id'] ?? item['unit'] ?? item['wall'] ?? item['of'] ?? item['foot']
  return typeof name === 'string' ? name : null
}

function isFigure(node: object): node is Figure {
  return 'state' in node && 'basis' in node && 'from' in node
}

function figureFaults(c: Case, look: Look, figure: Figure): readonly string[] {
  const { none, unread } = look(figure.from)
  const faults = figure.state === 'unknown' ? missingFaults(c, figure.missing) : valueFaults(figure, unread)
  return [
    ...(UNITS.has(figure.unit) ? [] : ['it has no unit']),
    ...faults,
    ...none.map((id) => `it cites ${id}, which is no fact of this kitchen`),
  ]
}

function valueFaults(figure: ValueFigure, unread: readonly string[]): readonly string[] {
  const { value, pm, from, basis, state } = figure
  return [
    ...(Number.isFinite(value) ? [] : ['it has no value']),
    ...(pm >= 0 ? [] : ['its precision makes no sense']),
    ...(from.length > 0 || CONSTANTS.has(basis.kind) ? [] : ['it does not say which facts it came from']),
    ...(state === 'known' && unread.length > 0 && unread.length === from.length
      ? [`it is given as known and rests on ${unread[0]}, which is not`]
      : []),
  ]
}

/** What is called missing really is: a fact nobody has given. */
function missingFaults(c: Case, missing: readonly string[]): readonly string[] {
  return missing.flatMap((id) => {
    const state = c.facts(id)
    if (state === 'no such fact') return [`it misses ${id}, which is no fact of this kitchen`]
    return state === 'known' && !mayNeedMore(id) ? [`it misses ${id}, which is given`] : []
  })
}

/** Lists of readings, or of wishes for heights, can be there and still be too few. */
function mayNeedMore(id: string): boolean {
  // A face is given wrongly when the thing is on one side of the wall and was measured on the other.
  if (id.endsWith('.along.face')) return true
  return /^(units|walls|floor\.readings|ceiling|fixings|wishes\.heights|crew\.people|walls\.[^.]+\.(studs|layers|noggings))$/.test(
    id,
  )
}

/** Facts cited by reasons, operations, bands and findings. */
function checkCited(c: Case, look: Look): void {
  const cited = [
    ...c.plan.reasons.map((r) => [r.id, r.from] as const),
    ...c.plan.operations.map((o) => [o.id, o.from] as const),
    ...c.plan.bands.flatMap((b) => [b.from, b.unknownBecause].map((ids) => [b.id, ids] as const)),
    ...c.plan.findings.map((f) => [f.id, f.from] as const),
  ]
  for (const [where, ids] of cited) {
    for (const id of look(ids).none) {
      c.refuse('citation', where, `it cites ${id}, which is no fact of this kitchen`)
    }
  }
}
