/** The survey asks for everything the kitchen file can hold, and for nothing else; read off the schema of the file. */
import { describe, expect, test } from 'vitest'
import type { Field } from '../../../src/core/form/field'
import { PAGES } from '../../../src/core/form/pages'
import { kitchenSchema } from '../../../src/core/kitchen/schema'

/** As much of a zod schema as is looked at here. */
interface Schema {
  readonly def: {
    readonly type: string
    readonly innerType?: Schema
    readonly in?: Schema
    readonly shape?: Readonly<Record<string, Schema>>
    readonly element?: Schema
    readonly entries?: Readonly<Record<string, string>>
  }
}

const WRAPPED = ['default', 'prefault', 'nullable', 'optional', 'readonly', 'pipe']

function bare(schema: Schema): Schema {
  const { type, innerType, in: input } = schema.def
  const inner = WRAPPED.includes(type) ? (innerType ?? input) : undefined
  return inner === undefined ? schema : bare(inner)
}

/** Each field of the file with what it takes: a sort, or the words to choose from. */
function fieldsOf(schema: Schema, under = ''): ReadonlyMap<string, string> {
  const found = new Map<string, string>()
  for (const [key, wrapped] of Object.entries(bare(schema).def.shape ?? {})) {
    const path = `${under}${key}`
    const inner = bare(wrapped)
    const keys = Object.keys(inner.def.shape ?? {}).join(' ')
    const position = POSITIONS[keys]
    if (position !== undefined) found.set(path, position)
    else if (inner.def.type === 'object')
      for (const [name, sort] of fieldsOf(inner, `${path}.`)) found.set(name, sort)
    else if (inner.def.type === 'array') {
      const element = bare(inner.def.element as Schema)
      if (element.def.type === 'object')
        for (const [name, sort] of fieldsOf(element, `${path}[].`)) found.set(name, sort)
      else found.set(path, element.def.type === 'enum' ? `some of ${wordsOf(element)}` : 'refs')
    } else found.set(path, inner.def.type === 'enum' ? `one of ${wordsOf(inner)}` : inner.def.type)
  }
  return found
}

const wordsOf = (schema: Schema): string =>
  Object.values(schema.def.entries ?? {})
    .sort()
    .join(' ')

const POSITIONS: Readonly<Record<string, string>> = {
  'from face at': 'along',
  'line up down aboveFloor': 'height',
  'wall along out': 'place',
  'left rightOf leftOf gap': 'order',
  'left rightOf leftOf': 'order',
}

function askedOf(fields: readonly Field[], under = ''): readonly (readonly [string, string])[] {
  return fields.flatMap((field): readonly (readonly [string, string])[] => {
    const path = `${under}${field.key}`
    switch (field.kind) {
      case 'list':
        return [[`${path}[].id`, 'string'], ...askedOf(field.things.fields, `${path}[].`)]
      case 'choice':
        return [
          [
            path,
            `one of ${field.options
              .map(([value]) => value)
              .sort()
              .join(' ')}`,
          ],
        ]
      case 'choices':
        return [
          [
            path,
            `some of ${field.options
              .map(([value]) => value)
              .sort()
              .join(' ')}`,
          ],
        ]
      case 'yes-no':
        return [[path, 'boolean']]
      case 'length':
        return [[path, 'union']]
      case 'number':
        return [[path, path === 'survey.houseBuilt' ? 'number' : 'union']]
      case 'text':
      case 'ref':
        return [[path, 'string']]
      default:
        return [[path, field.kind]]
    }
  })
}

/** What nobody is asked: what the file is, and what the app itself writes into it. */
const NOT_ASKED = ['format', 'version', 'keptOrder']

const asked = PAGES.flatMap((page) => askedOf(page.fields))

describe('the survey', () => {
  test('asks for every field of the kitchen file, with the same choices, once', () => {
    const inFile = [...fieldsOf(kitchenSchema as unknown as Schema)].filter(
      ([path]) => !NOT_ASKED.includes(path),
    )
    expect(new Map(asked)).toEqual(new Map(inFile))
    expect(asked.length).toBe(new Set(asked.map(([path]) => path)).size)
  })

  test('has a label for each, and none twice on one thing', () => {
    const labels = (fields: readonly Field[]): readonly string[] => fields.map((f) => f.label)
    const lists = (fields: readonly Field[]): readonly (readonly Field[])[] => [
      fields,
      ...fields.flatMap((f) => (f.kind === 'list' ? lists(f.things.fields) : [])),
    ]
    for (const fields of PAGES.flatMap((page) => lists(page.fields))) {
      expect(labels(fields).filter((label) => label.trim() === '')).toEqual([])
      expect([...labels(fields)].sort()).toEqual([...new Set(labels(fields))].sort())
    }
  })

  test('takes over only fields that are asked', () => {
    const copied = (fields: readonly Field[]): readonly string[] =>
      fields.flatMap((f) => {
        if (f.kind !== 'list') return []
        const keys = f.things.fields.flatMap((field) => [field.key, field.key.split('.')[0] as string])
        const within = (f.things.copied ?? []).filter(
          (key) => !keys.includes(key) && !keys.includes(key.split('.')[0] as string),
        )
        return [...within, ...copied(f.things.fields)]
      })
    expect(PAGES.flatMap((page) => copied(page.fields))).toEqual([])
  })
})
