/**
 * A kitchen file without what says nothing: null, an empty list, an object with nothing in it. Left out, null and empty
 * are all "not known", so files that differ in them alone are the same input.
 */
export function whatIsSaid(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(whatIsSaid)
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value)
    .map(([key, inner]) => [key, whatIsSaid(inner)] as const)
    .filter(([, inner]) => !isNothing(inner))
  return Object.fromEntries(entries)
}

function isNothing(value: unknown): boolean {
  if (value === null || value === undefined) return true
  if (Array.isArray(value)) return value.length === 0
  return typeof value === 'object' && Object.keys(value).length === 0
}
