import type { Field, Page } from './field'

/**
 * The number of every field: its page, and the place it has there, counted through all that is on the page. Sheets that
 * were printed are typed in later, so a number that was given stays: a field that comes in between is `late` and
 * takes the next free number of its page.
 */
export const numbered = (pages: readonly Page[]): readonly Page[] => pages.map(numberedPage)

function numberedPage(page: Page, index: number): Page {
  const number = String(index + 1)
  let count = 0
  const withNumbers = (fields: readonly Field[]): readonly Field[] =>
    fields.map((field) => {
      const place = field.late ?? ++count
      const own = { ...field, number: `${number}.${place}` }
      if (own.kind !== 'list') return own
      return { ...own, things: { ...own.things, fields: withNumbers(own.things.fields) } }
    })
  return { ...page, number, fields: withNumbers(page.fields) }
}

/**
 * The field that a fact of a kitchen file is typed into: `walls.a.studs.s1.centre.at` is the middle of a stud. Of a
 * whole thing or list it is the list, of what has several fields the first of them.
 *
 * @param path by keys and ids
 * @returns undefined where it is no fact that is asked for
 */
export function fieldAt(pages: readonly Page[], path: string): Field | undefined {
  return within(
    pages.flatMap(({ fields }) => fields),
    path,
  )
}

function within(fields: readonly Field[], path: string): Field | undefined {
  const field =
    fields.find(({ key }) => path === key || path.startsWith(`${key}.`)) ??
    fields.find(({ key }) => key.startsWith(`${path}.`))
  if (field?.kind !== 'list') return field
  const [, , rest] = /^([^.]+)\.(.+)$/.exec(path.slice(field.key.length + 1)) ?? []
  return rest === undefined ? field : (within(field.things.fields, rest) ?? field)
}
