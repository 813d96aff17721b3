import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { schemaText } from '../../src/cli/schema-files'
import { PLAN_SCHEMA, planSchema } from './plan-schema'
import { ROOT } from './root'

/** Writes the JSON Schema of the plan from its types: run after any change of them (`npm run schema` does). */
writeFileSync(join(ROOT, PLAN_SCHEMA), schemaText(planSchema()))
console.log(`Wrote ${PLAN_SCHEMA}.`)
