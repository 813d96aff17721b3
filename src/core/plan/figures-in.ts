import type { Figure } from '../figure'
import type { Plan } from './types'

/** The id under which a listed thing of the plan is known. */
function nameOf(item: unknown, index: number): string {
  if (item !== null && typeof item === 'object' && !isFigure(item)) {
    const o = item as Readonly<Record<string, unknown>>
    for (const key of ['id', 'unit', 'foot', 'rail', 'of', 'wall', 'name'] as const) {
      if (typeof o[key] === 'string') return o[key]
    }
  }
  return String(index)
}

function isFigure(value: object): value is Figure {
  const o = value as Partial<Record<'state' | 'unit' | 'from', unknown>>
  return typeof o.state === 'string' && typeof o.unit === 'string' && Array.isArray(o.from)
}

/**
 * Every figure in a part of the plan, under a name made of ids: `units/base-2/legs/fl/extension`. The same thing has
 * the same name in two plans of the same kitchen, which is how "what changed" and "what would this settle" are read off.
 */
export function figuresIn(
  part: unknown,
  into: Map<string, Figure> = new Map(),
  path = '',
): Map<string, Figure> {
  if (part === null || typeof part !== 'object') return into
  if (Array.isArray(part)) {
    part.forEach((item, i) => {
      if (typeof item === 'object') figuresIn(item, into, `${path}/${nameOf(item, i)}`)
    })
    return into
  }
  if (isFigure(part)) {
    into.set(path.slice(1), part)
    return into
  }
  for (const key of Object.keys(part)) {
    const value = (part as Readonly<Record<string, unknown>>)[key]
    if (typeof value === 'object') figuresIn(value, into, `${path}/${key}`)
  }
  return into
}

/** The parts of a plan whose figures people act on; operations and reasons repeat them, findings speak of them. */
const TELLING = ['floor', 'lines', 'marks', 'units', 'rails', 'holes'] as const

/** Every figure people act on, under its name. */
export function tellingFigures(plan: Pick<Plan, (typeof TELLING)[number] | 'heights'>): Map<string, Figure> {
  const out = figuresIn(plan.heights.values, new Map(), '/heights/values')
  for (const key of TELLING) figuresIn(plan[key], out, `/${key}`)
  return out
}
