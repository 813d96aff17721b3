import { isRecord, type JsonPath } from '../problem'

export interface Found<T> {
  readonly value: T
  readonly path: JsonPath
}

function isFigure(value: Readonly<Record<string, unknown>>): boolean {
  return 'state' in value && 'basis' in value
}

function collect(value: unknown, path: JsonPath, found: Found<object>[]): void {
  if (typeof value !== 'object' || value === null) return
  if (Array.isArray(value)) {
    found.push({ value, path })
    value.forEach((item, index) => {
      if (typeof item === 'object') collect(item, [...path, index], found)
    })
  } else if (isRecord(value) && !isFigure(value)) {
    found.push({ value, path })
    for (const [key, inner] of Object.entries(value)) {
      if (typeof inner === 'object' && inner !== null) collect(inner, [...path, key], found)
    }
  }
}

/** Every object and list within a value, itself included, with the way to it; figures are taken as one thing. */
export function objectsIn(root: unknown): readonly Found<object>[] {
  const found: Found<object>[] = []
  collect(root, [], found)
  return found
}
