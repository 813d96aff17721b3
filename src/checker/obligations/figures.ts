import type { Figure } from '../../core/figure'
import type { Case } from '../case'
import { isRecord } from '../json'

const UNITS = new Set(['mm', 'deg', 'kg', 'N', 'min', 'turn', 'mm/turn', 'count', 'ratio'])
/** What may stand by itself, without a fact of this kitchen: published and agreed figures, and plain geometry. */
const CONSTANTS = new Set(['standard', 'common-practice', 'geometry'])

/** Every figure in the plan has a unit, a precision and the facts it came from, and those facts are real. */
export function checkFigures(c: Case): void {
  walk(c.plan, 'plan', (figure, where) => {
    checkFigure(c, figure, where)
  })
  checkCited(c)
}

function walk(node: unknown, where: string, visit: (figure: Figure, where: string) => void): void {
  if (Array.isArray(node)) {
    node.forEach((item: unknown, i) => {
      walk(item, `${where}.${nameOf(item) ?? i}`, visit)
    })
    return
  }
  if (!isRecord(node)) return
  if (isFigure(node)) visit(node, where)
  for (const [key, inner] of Object.entries(node)) walk(inner, `${where}.${key}`, visit)
}

function nameOf(item: unknown): string | null {
  if (!isRecord(item)) return null
  const name = item['id'] ?? item['unit'] ?? item['wall'] ?? item['of'] ?? item['foot']
  return typeof name === 'string' ? name : null
}

function isFigure(node: object): node is Figure {
  return 'state' in node && 'basis' in node && 'from' in node
}

function checkFigure(c: Case, figure: Figure, where: string): void {
  if (!UNITS.has(figure.unit)) c.refuse('figure', where, 'it has no unit')
  if (figure.state === 'unknown') {
    checkMissing(c, figure.missing, where)
  } else {
    if (!Number.isFinite(figure.value)) c.refuse('figure', where, 'it has no value')
    if (!(figure.pm >= 0)) c.refuse('figure', where, 'its precision makes no sense')
    if (figure.from.length === 0 && !CONSTANTS.has(figure.basis.kind)) {
      c.refuse('figure', where, 'it does not say which facts it came from')
    }
    const unread = figure.from.filter((id) => c.facts(id) === 'not known')
    if (figure.state === 'known' && unread.length > 0 && unread.length === figure.from.length) {
      c.refuse('figure', where, `it is given as known and rests on ${unread[0]}, which is not`)
    }
  }
  for (const id of figure.from) {
    if (c.facts(id) === 'no such fact')
      c.refuse('figure', where, `it cites ${id}, which is no fact of this kitchen`)
  }
}

/** What is called missing really is: a fact nobody has given. */
function checkMissing(c: Case, missing: readonly string[], where: string): void {
  for (const id of missing) {
    const state = c.facts(id)
    if (state === 'no such fact')
      c.refuse('figure', where, `it misses ${id}, which is no fact of this kitchen`)
    if (state === 'known' && !mayNeedMore(id)) c.refuse('figure', where, `it misses ${id}, which is given`)
  }
}

/** Lists of readings can be there and still be too few. */
function mayNeedMore(id: string): boolean {
  return /^(floor\.readings|ceiling|fixings|crew\.people|walls\.[^.]+\.(studs|layers|noggings))$/.test(id)
}

/** Facts cited by reasons, operations, bands and findings. */
function checkCited(c: Case): void {
  const cited = [
    ...c.plan.reasons.map((r) => [r.id, r.from] as const),
    ...c.plan.operations.map((o) => [o.id, o.from] as const),
    ...c.plan.bands.map((b) => [b.id, [...b.from, ...b.unknownBecause]] as const),
    ...c.plan.findings.map((f) => [f.id, f.from] as const),
  ]
  for (const [where, ids] of cited) {
    for (const id of ids) {
      if (c.facts(id) === 'no such fact')
        c.refuse('citation', where, `it cites ${id}, which is no fact of this kitchen`)
    }
  }
}
