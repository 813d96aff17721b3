import { type Figure, hasValue } from '../figure'
import { message } from '../message'
import { tellingFigures } from './figures-in'
import type { Change, Plan } from './types'

/**
 * What is not as it was: figures that moved by more than the last place they are kept to, and operations that came or
 * went. Named by the ids of the things themselves, in the plan's own order.
 */
export function changesBetween(before: Plan, after: Plan): readonly Change[] {
  return [...figureChanges(before, after), ...operationChanges(before, after)]
}

function figureChanges(before: Plan, after: Plan): Change[] {
  const was = tellingFigures(before)
  const is = tellingFigures(after)
  const out: Change[] = []
  for (const [what, figure] of is) {
    const old = was.get(what)
    if (old === undefined || !sameValue(old, figure)) {
      out.push({
        what,
        say: message('change-figure', { what, was: old ?? '', is: figure }),
        was: old ?? null,
        is: figure,
      })
    }
  }
  for (const [what, old] of was) {
    if (!is.has(what)) out.push({ what, say: message('change-gone', { what, was: old }), was: old, is: null })
  }
  return out
}

function sameValue(a: Figure, b: Figure): boolean {
  if (!hasValue(a) || !hasValue(b)) return hasValue(a) === hasValue(b)
  return a.value === b.value && a.unit === b.unit
}

function operationChanges(before: Plan, after: Plan): Change[] {
  const was = new Set(before.operations.map((o) => o.id))
  const is = new Set(after.operations.map((o) => o.id))
  const come = after.operations.filter((o) => !was.has(o.id))
  const gone = before.operations.filter((o) => !is.has(o.id))
  return [
    ...come.map((o) => ({
      what: o.id,
      say: message('change-operation-new', { operation: o.id }),
      was: null,
      is: null,
    })),
    ...gone.map((o) => ({
      what: o.id,
      say: message('change-operation-gone', { operation: o.id }),
      was: null,
      is: null,
    })),
  ]
}
