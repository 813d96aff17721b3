import type { Figure } from '../../src/core/figure'
import { parseKitchen } from '../../src/core/kitchen/parse-kitchen'
import type { Kitchen, KitchenFile } from '../../src/core/kitchen/schema'

/** Facts of a kitchen file by their ids: finding them, reading them, and taking them away in a copy. */

type Json = unknown

function isRecord(value: Json): value is Readonly<Record<string, Json>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

export function kitchenOf(file: KitchenFile): Kitchen {
  const read = parseKitchen(file)
  if (!read.ok) throw new Error(read.error.map((p) => `${p.path}: ${p.message}`).join('\n'))
  return read.value.kitchen
}

function isFigure(value: Readonly<Record<string, Json>>): boolean {
  return typeof value['state'] === 'string' && Array.isArray(value['from']) && 'basis' in value
}

function collect(value: Json, found: Figure[]): void {
  if (Array.isArray(value)) for (const item of value) collect(item, found)
  else if (isRecord(value)) {
    if (isFigure(value)) found.push(value as unknown as Figure)
    else for (const inner of Object.values(value)) collect(inner, found)
  }
}

/** Parts of the file that hold what was measured in the room. */
export const SURVEYED = ['survey', 'lines', 'walls', 'ceiling', 'boxes', 'floor'] as const

/** Ids of every quantity with a value in some parts of the file. */
export function knownFacts(
  file: KitchenFile,
  parts: readonly (keyof Kitchen)[] = SURVEYED,
): readonly string[] {
  const kitchen = kitchenOf(file)
  const found: Figure[] = []
  for (const part of parts) collect(kitchen[part], found)
  return found.filter((f) => f.state !== 'unknown').map((f) => f.from[0] as string)
}

/** What is typed at the id of a fact; undefined when nothing is. */
export function typedAt(file: KitchenFile, id: string): Json {
  let here: Json = file
  for (const key of id.split('.')) {
    if (Array.isArray(here)) here = here.find((item) => isRecord(item) && item['id'] === key)
    else here = isRecord(here) && Object.hasOwn(here, key) ? here[key] : undefined
    if (here === undefined) return undefined
  }
  return here
}

/** A copy of the file with the fact replaced; undefined takes it out. */
export function withFact(file: KitchenFile, id: string, typed: Json): KitchenFile {
  const copy = structuredClone(file)
  const path = id.split('.')
  const last = path.pop() as string
  let here: Json = copy
  for (const key of path) here = stepInto(here, key, id)
  if (Array.isArray(here)) {
    const at = here.findIndex((item) => isRecord(item) && item['id'] === last)
    if (at < 0) throw new Error(`there is no ${id}`)
    here.splice(at, 1, ...(typed === undefined ? [] : [typed]))
  } else if (isRecord(here)) {
    const object = here as Record<string, Json>
    if (typed === undefined) delete object[last]
    else object[last] = typed
  } else throw new Error(`there is no ${id}`)
  return copy
}

function stepInto(here: Json, key: string, id: string): Json {
  if (Array.isArray(here)) {
    const item: Json = here.find((one) => isRecord(one) && one['id'] === key)
    if (item === undefined) throw new Error(`there is no ${id}`)
    return item
  }
  if (!isRecord(here)) throw new Error(`there is no ${id}`)
  const object = here as Record<string, Json>
  if (object[key] === undefined || object[key] === null) object[key] = {}
  return object[key]
}

/** A copy with one quantity no longer known. */
export function withoutFact(file: KitchenFile, id: string): KitchenFile {
  return withFact(file, id, null)
}
