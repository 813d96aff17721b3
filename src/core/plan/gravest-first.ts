import type { Finding, Weight } from './types'

/** The weights of findings, the gravest first. */
export const WEIGHTS: readonly Weight[] = ['stop', 'ask', 'warn', 'note']

/** The order findings are told in: by weight, within a weight what can hurt someone first, ties by id. */
export function gravestFirst(a: Finding, b: Finding): number {
  return (
    WEIGHTS.indexOf(a.weight) - WEIGHTS.indexOf(b.weight) ||
    Number(b.dangerous) - Number(a.dangerous) ||
    (a.id < b.id ? -1 : 1)
  )
}
