import { err, ok, type Result } from '../result'
import { crossCheck } from './cross-checks'
import { MIGRATIONS } from './migrations'
import { capped, type Problem } from './problem'
import { type FileFormat, type ReadFile, readText, readValue } from './read-file'
import { FORMAT, type Kitchen, kitchenSchema, VERSION } from './schema'
import { stampKitchen, type TypedKitchen } from './stamp'

/** A kitchen file that has been read: what was typed, and what the rest of the core works with. */
export interface Parsed {
  /** The JSON as typed, not touched unless it had to be brought up from an older version: what is edited and saved. */
  readonly file: unknown
  readonly kitchen: Kitchen
}

const KITCHEN_FILE: FileFormat<typeof kitchenSchema> = {
  name: 'kitchen file',
  format: FORMAT,
  version: VERSION,
  schema: kitchenSchema,
  migrations: MIGRATIONS,
}

function stampedAndChecked(
  read: Result<ReadFile<TypedKitchen>, readonly Problem[]>,
): Result<Parsed, readonly Problem[]> {
  if (!read.ok) return read
  const kitchen = stampKitchen(read.value.typed)
  const problems = crossCheck(kitchen)
  return problems.length > 0 ? err(capped(problems)) : ok({ file: read.value.file, kitchen })
}

/**
 * A kitchen from the text of its file. Either everything in it can be used, or nothing is, and every problem is told
 * with its place and how to mend it (the first hundred, and how many more).
 *
 * Checks go from the outside in, each needing the one before: size and JSON, version, shape, then what one part says
 * about another. Problems are those of the first that finds any.
 */
export function parseKitchenText(text: string): Result<Parsed, readonly Problem[]> {
  return stampedAndChecked(readText(text, KITCHEN_FILE))
}

/** A kitchen from a value that is already JSON, such as a file edited in the app. */
export function parseKitchen(value: unknown): Result<Parsed, readonly Problem[]> {
  return stampedAndChecked(readValue(value, KITCHEN_FILE))
}
