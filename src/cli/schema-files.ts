import { kitchenJsonSchema } from '../core/kitchen/json-schema'

interface SchemaFile {
  /** From the root of the repository. */
  readonly path: string
  readonly schema: () => object
}

/** The JSON Schemas that are kept beside the code, for editors and other tools. */
export const SCHEMA_FILES: readonly SchemaFile[] = [
  { path: 'assets/kitchen.schema.json', schema: kitchenJsonSchema },
]

/** The text of a schema file as it is written. */
export function schemaText({ schema }: SchemaFile): string {
  return `${JSON.stringify(schema(), null, 2)}\n`
}
