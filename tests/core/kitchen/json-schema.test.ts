import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { SCHEMA_FILES, schemaText } from '../../../src/cli/schema-files'
import { kitchenJsonSchema } from '../../../src/core/kitchen/json-schema'
import { ROOT } from '../../support/root'
import { type Leaf, leavesOf } from './schema-leaves'

test.each(SCHEMA_FILES.map((file) => [file.path, file] as const))(
  '%s is as its schema says',
  (path, file) => {
    const target = join(ROOT, path)
    expect(existsSync(target), 'missing: run npm run schema').toBe(true)
    expect(
      readFileSync(target, 'utf8') === schemaText(file.schema()),
      'out of date: run npm run schema',
    ).toBe(true)
  },
)

const isNamed = ({ path }: Leaf) => /\b(id|format|version)$/.test(path)

test('every field of the kitchen file says who reads it', () => {
  const leaves = leavesOf(kitchenJsonSchema())
  expect(leaves.length).toBeGreaterThan(250)
  expect(leaves.filter((leaf) => leaf.readBy.length === 0 && !isNamed(leaf)).map(({ path }) => path)).toEqual(
    [],
  )
})

test('a field that says nothing is found, and one within a described whole is not', () => {
  const described = {
    type: 'object',
    description: 'A place. Read by: survey.',
    properties: { at: { type: 'number' } },
  }
  const planted = {
    properties: {
      silent: { type: 'number' },
      place: described,
      list: {
        type: 'array',
        description: 'Read by: units.',
        items: { properties: { silent: { type: 'number' } } },
      },
      words: { type: 'array', description: 'Read by: words.', items: { type: 'string' } },
    },
  }
  expect(leavesOf(planted).map(({ path, readBy }) => [path, readBy])).toEqual([
    ['silent', []],
    ['place.at', ['survey']],
    ['list[].silent', []],
    ['words', ['words']],
  ])
})
