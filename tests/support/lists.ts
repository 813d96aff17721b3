import type { Field, Things } from '../../src/core/form/field'
import { PAGES } from '../../src/core/form/pages'
import { listAt } from '../../src/core/form/things'

function listsOf(fields: readonly Field[], under: string): readonly (readonly [string, Things])[] {
  return fields.flatMap((field) => {
    if (field.kind !== 'list') return []
    const path = `${under}${field.key}`
    const own: readonly [string, Things] = [path, field.things]
    return [own, ...listsOf(field.things.fields, `${path}.*.`)]
  })
}

const FIELDS = PAGES.flatMap((page) => page.fields)

/** Every list the survey asks for; a star stands for any thing of the list it lies in. */
export const LISTS = listsOf(FIELDS, '')

/** The lists of one kitchen, by keys and ids, however deep. */
export function listPaths(file: unknown): readonly string[] {
  const within = (fields: readonly Field[], under: string): readonly string[] =>
    fields.flatMap((field) => {
      if (field.kind !== 'list') return []
      const path = `${under}${field.key}`
      const inner = listAt(file, path).flatMap((thing) =>
        within(field.things.fields, `${path}.${String(thing['id'])}.`),
      )
      return [path, ...inner]
    })
  return within(FIELDS, '')
}
