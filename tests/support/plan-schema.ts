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
  const { definitions } = generator.createSchema('*')
  const of = (name: string) => ({ $ref: `#/definitions/${name}` })
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    title: 'Dry Run plan, or why there is none',
    anyOf: [of('Plan'), of('NoPlan')],
    definitions,
  }
}
