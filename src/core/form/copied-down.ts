import type { Edit } from '../plan/types'
import { copiedValue } from './copied-value'
import type { Things } from './field'
import { askedOf, listAt, thingAt } from './things'

/**
 * A listed thing filled from the one before it: units of a kitchen are mostly alike, and who measured one has measured the
 * next but for its width. Only what is still open is filled, and only what is asked of such a thing.
 */
export interface CopiedDown {
  /** Mark of the one it is filled from. */
  readonly from: string
  readonly edits: readonly Edit[]
}

/** @returns undefined where nothing before it has what it lacks */
export function copiedDown(
  things: Things,
  file: unknown,
  path: string,
  mark: string,
): CopiedDown | undefined {
  const list = listAt(file, path)
  const at = list.findIndex(({ id }) => id === mark)
  const thing = list[at]
  if (thing === undefined) return undefined
  for (const before of list.slice(0, at).reverse()) {
    if (before['kind'] !== thing['kind']) continue
    const asked = new Set(askedOf(things.fields, { ...before, ...thing }).map(({ key }) => key.split('.')[0]))
    const edits = (things.copied ?? []).flatMap((key): readonly Edit[] => {
      const value = copiedValue(key, thingAt(before, key), before, thing)
      const isOpen = isNothing(thingAt(thing, key))
      if (!isOpen || isNothing(value) || !asked.has(key.split('.')[0] as string)) return []
      return [{ set: `${path}.${mark}.${key}`, to: value }]
    })
    if (edits.length > 0) return { from: String(before['id']), edits }
  }
  return undefined
}

const isNothing = (value: unknown): boolean =>
  value === undefined || value === null || value === '' || (Array.isArray(value) && value.length === 0)
