/**
 * Reading of a file nobody has parsed for us: a cursor that knows the id of the fact it stands on (the way to it through
 * the file, with the ids of listed things in place of positions).
 */

export interface Spot {
  readonly json: unknown
  readonly id: string
  /** Facts found to be otherwise on the day, by fact id: they overrule what stands in the file. */
  readonly observed: ReadonlyMap<string, unknown>
}

export function rootSpot(json: unknown, observed: ReadonlyMap<string, unknown> = new Map()): Spot {
  return { json, id: '', observed }
}

export function isRecord(json: unknown): json is Readonly<Record<string, unknown>> {
  return typeof json === 'object' && json !== null && !Array.isArray(json)
}

function idUnder(spot: Spot, key: string): string {
  return spot.id === '' ? key : `${spot.id}.${key}`
}

/** One field of the thing the cursor stands on; undefined inside when it is not there. */
export function at(spot: Spot, ...keys: readonly string[]): Spot {
  return keys.reduce<Spot>((here, key) => {
    const id = idUnder(here, key)
    const typed = isRecord(here.json) && Object.hasOwn(here.json, key) ? here.json[key] : undefined
    return { json: here.observed.has(id) ? here.observed.get(id) : typed, id, observed: here.observed }
  }, spot)
}

/** The listed things under a key, each with its own id in the way to it. Things without an id are left out. */
export function itemsAt(spot: Spot, key: string): readonly Spot[] {
  const list = at(spot, key)
  if (!Array.isArray(list.json)) return []
  return list.json.flatMap((json: unknown): readonly Spot[] =>
    isRecord(json) && typeof json['id'] === 'string'
      ? [{ json, id: `${list.id}.${json['id']}`, observed: spot.observed }]
      : [],
  )
}

export function textAt(spot: Spot, key: string): string | null {
  const { json } = at(spot, key)
  return typeof json === 'string' ? json : null
}

/** The bare id of a listed thing. */
export function ownId(spot: Spot): string {
  return textAt(spot, 'id') ?? ''
}

export function flagAt(spot: Spot, key: string): boolean | null {
  const { json } = at(spot, key)
  return typeof json === 'boolean' ? json : null
}

export function numberAt(spot: Spot, key: string): number | null {
  const { json } = at(spot, key)
  return typeof json === 'number' ? json : null
}

/** A list of plain words, such as the ids of the units a worktop lies on. */
export function wordsAt(spot: Spot, key: string): readonly string[] {
  const { json } = at(spot, key)
  return Array.isArray(json) ? json.filter((word: unknown): word is string => typeof word === 'string') : []
}
