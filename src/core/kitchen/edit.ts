import type { Edit } from '../plan/types'

/** A copy of `value` with the fact at `path` replaced, or left out: undefined when there is no such listed thing. */
export function put(value: unknown, path: readonly string[], fact: unknown): unknown {
  const [head, ...rest] = path
  if (head === undefined) return fact
  if (Array.isArray(value)) {
    const at = value.findIndex((item) => (item as { id?: unknown } | null)?.id === head)
    if (at < 0) return undefined
    const next = put(value[at], rest, fact)
    return next === undefined ? undefined : value.map((item, i) => (i === at ? next : item))
  }
  if (typeof value === 'number' || typeof value === 'string' || Array.isArray(value)) return undefined
  const object = (value ?? {}) as Readonly<Record<string, unknown>>
  if (fact === undefined && rest.length === 0) {
    return Object.fromEntries(Object.entries(object).filter(([key]) => key !== head))
  }
  const next = put(Object.hasOwn(object, head) ? object[head] : undefined, rest, fact)
  return next === undefined ? undefined : { ...object, [head]: next }
}

/** A copy of `value` with the list at `path` changed; undefined when there is no list there. */
function atList(
  value: unknown,
  path: readonly string[],
  change: (list: readonly unknown[]) => readonly unknown[] | undefined,
): unknown {
  const list = path.reduce<unknown>(
    (here, key) =>
      Array.isArray(here)
        ? here.find((item) => (item as { id?: unknown } | null)?.id === key)
        : (here as Readonly<Record<string, unknown>> | undefined)?.[key],
    value,
  )
  const next = change(Array.isArray(list) ? list : [])
  return next === undefined ? undefined : put(value, path, next)
}

function edited(file: unknown, edit: Edit): unknown {
  if ('set' in edit) return put(file, edit.set.split('.'), edit.to)
  if ('add' in edit) return atList(file, edit.add.split('.'), (list) => [...list, edit.item])
  const path = edit.remove.split('.')
  const id = path.pop()
  return atList(file, path, (list) => {
    const left = list.filter((item) => (item as { id?: unknown } | null)?.id !== id)
    return left.length === list.length ? undefined : left
  })
}

/**
 * The kitchen file with edits made, as a new value; undefined when one of them names what is not there.
 *
 * @param file a kitchen file, as parsed JSON; a fact set to undefined is left out of it
 */
export function withEdits(file: unknown, edits: readonly Edit[]): unknown {
  return edits.reduce<unknown>((now, edit) => (now === undefined ? undefined : edited(now, edit)), file)
}
