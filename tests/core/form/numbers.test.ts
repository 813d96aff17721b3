/** The numbers of the fields stand on sheets that were printed: each is one field's alone, and it keeps it. */
import { describe, expect, test } from 'vitest'
import { type Field, length, list } from '../../../src/core/form/field'
import { fieldAt, numbered } from '../../../src/core/form/numbers'
import { PAGES } from '../../../src/core/form/pages'

type Row = readonly [number: string, path: string, label: string]

const rowsOf = (fields: readonly Field[], under = ''): readonly Row[] =>
  fields.flatMap((field): readonly Row[] => [
    [field.number ?? '', `${under}${field.key}`, field.label],
    ...(field.kind === 'list' ? rowsOf(field.things.fields, `${under}${field.key}.`) : []),
  ])
const rows = PAGES.flatMap((page) => rowsOf(page.fields))

describe('the numbers', () => {
  test('are one to a field, in the order of the pages, from one upwards', () => {
    expect(new Set(rows.map(([number]) => number)).size).toBe(rows.length)
    PAGES.forEach(({ fields }, page) => {
      const onPage = rowsOf(fields).map(([number]) => number)
      expect(onPage).toEqual(onPage.map((_, place) => `${page + 1}.${place + 1}`))
    })
  })

  test('are those that printed sheets carry: one that moves is a sheet typed into the wrong field', async () => {
    const text = rows.map(([number, path, label]) => `${number}  ${path}  ${label}\n`).join('')
    await expect(text).toMatchFileSnapshot('numbers.txt')
  })

  test('stay when a field comes in between: it takes the next that is free', () => {
    const late: Field = { ...length('b', 'B'), late: 5 }
    const things = { one: 'c', many: 'Cs', mark: 'c', fields: [length('d', 'D')] }
    const [page] = numbered([
      {
        id: 'one',
        title: 'One',
        how: '',
        fields: [length('a', 'A'), late, list('c', things), length('e', 'E')],
      },
    ])
    expect(rowsOf(page?.fields ?? []).map(([number, path]) => `${number} ${path}`)).toEqual([
      '1.1 a',
      '1.5 b',
      '1.2 c',
      '1.3 c.d',
      '1.4 e',
    ])
  })
})

test('a fact of a kitchen file has the number of the field it is typed into', () => {
  const numberOf = (path: string) => {
    const found = fieldAt(PAGES, path)
    return found === undefined ? undefined : rows.find(([number]) => number === found.number)?.[1]
  }
  expect(numberOf('walls.a.studs.a-s4.centre.at')).toBe('walls.studs.centre')
  expect(numberOf('walls.a')).toBe('walls')
  expect(numberOf('walls.a.cornerRight')).toBe('walls.cornerRight.thisLeg')
  expect(numberOf('units.base-1.order.rightOf')).toBe('units.order')
  expect(numberOf('units.base-1.feet.fl.x')).toBe('units.feet.x')
  expect(numberOf('wishes.order.first.before.kind')).toBe('wishes.order.before.kind')
  expect(numberOf('floor.readings.r1.drop')).toBe('floor.readings.drop')
  expect(numberOf('survey.gas')).toBe('survey.gas')
  expect(numberOf('log.e1')).toBeUndefined()
})
