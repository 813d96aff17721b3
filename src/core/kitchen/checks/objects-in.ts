import { isRecord, type JsonPath } from '../problem'

export interface Found {
  readonly value: object
  /** The way to it; written out only where something is to be said about it. */
  readonly path: () => JsonPath
}

function isFigure(value: Readonly<Record<string, unknown>>): boolean {
  return 'state' in value && 'basis' in value
}

function collect(value: unknown, path: () => JsonPath, found: Found[]): void {
  if (typeof value !== 'object' || value === null) return
  if (Array.isArray(value)) {
    found.push({ value, path })
    value.forEach((item, index) => {
      if (typeof item === 'object') collect(item, () => [...path(), index], found)
    })
  } else if (isRecord(value) && !isFigure(value)) {
    found.push({ value, path })
    for (const key of Object.keys(value)) {
      const inner = value[key]
      if (typeof inner === 'object' && inner !== null) collect(inner, () => [...path(), key], found)
    }
  }
}

/** Walks already made: several checks go through the same kitchen. */
const walked = new WeakMap<object, readonly Found[]>()

/** Every object and list within a value, itself included, with the way to it; figures are taken as one thing. */
export function objectsIn(root: object): readonly Found[] {
  const before = walked.get(root)
  if (before !== undefined) return before
  const found: Found[] = []
  collect(root, () => [], found)
  walked.set(root, found)
  return found
}
