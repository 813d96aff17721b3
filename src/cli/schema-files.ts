import { dayLogJsonSchema } from '../core/daylog/json-schema'
import { kitchenJsonSchema } from '../core/kitchen/json-schema'

interface SchemaFile {
  /** From the root of the repository. */
  readonly path: string
  readonly schema: () => object
}

/**
 * The JSON Schemas of the files people type, kept beside the code for editors and other tools. That of the plan is made
 * from its types and stands beside them; see `write-schemas.ts`.
 */
export const SCHEMA_FILES: readonly SchemaFile[] = [
  { path: 'assets/kitchen.schema.json', schema: kitchenJsonSchema },
  { path: 'assets/day-log.schema.json', schema: dayLogJsonSchema },
]

/** The text of a schema file as it is written. */
export function schemaText(schema: object): string {
  return `${JSON.stringify(schema, null, 2)}\n`
}
