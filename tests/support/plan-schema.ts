import { join } from 'node:path'
import { createGenerator } from 'ts-json-schema-generator'
import { ROOT } from './root'

export const PLAN_SCHEMA = 'assets/plan.schema.json'

/** The JSON Schema of a plan and of the answer when there is none, made from their types. */
export function planSchema(): object {
  const generator = createGenerator({
    path: join(ROOT, 'src/core/plan/types.ts'),
    tsconfig: join(ROOT, 'src/core/tsconfig.json'),
    type: '*',
    skipTypeCheck: true,
    additionalProperties: false,
  })
  const definitions = listsByName(generator.createSchema('*').definitions) as Readonly<Record<string, Schema>>
  const of = (name: string) => ({ $ref: `#/definitions/${name}` })
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    title: 'Dry Run plan, or why there is none',
    anyOf: [of('Plan'), of('NoPlan')],
    definitions: {
      ...definitions,
      Plan: withLists(definitions['Plan']),
      NoPlan: withLists(definitions['NoPlan']),
    },
  }
}

type Schema = Readonly<Record<string, unknown>>

const LISTS = {
  type: 'object',
  description: 'The lists of inputs that are cited by name elsewhere.',
  additionalProperties: { type: 'array', items: { type: 'string' } },
}

function withLists(schema: Schema | undefined): Schema {
  const { properties, required } = schema as { properties: Schema; required: readonly string[] }
  return { ...schema, properties: { ...properties, lists: LISTS }, required: [...required, 'lists'] }
}

/** As a plan is written (see core/plan/plan-file.ts): a list of input ids is cited by its name. */
function listsByName(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(listsByName)
  if (schema === null || typeof schema !== 'object') return schema
  return Object.fromEntries(
    Object.entries(schema).map(([key, value]) => {
      const isList =
        ['from', 'missing', 'unknownBecause'].includes(key) && (value as Schema)['type'] === 'array'
      return [key, isList ? { type: 'string', pattern: '^L[0-9]+$' } : listsByName(value)]
    }),
  )
}
