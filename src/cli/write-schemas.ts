import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { SCHEMA_FILES, schemaText } from './schema-files'

/** Writes the JSON Schemas of the tool's files into `assets/`: run after any change of a schema. */
const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..')

for (const file of SCHEMA_FILES) {
  const target = join(root, file.path)
  mkdirSync(dirname(target), { recursive: true })
  writeFileSync(target, schemaText(file.schema()))
  console.log(`Wrote ${file.path}.`)
}
