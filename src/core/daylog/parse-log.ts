import { capped, type Problem } from '../kitchen/problem'
import { type FileFormat, readValue } from '../kitchen/read-file'
import { stampFigures } from '../kitchen/stamp'
import { err, ok, type Result } from '../result'
import { type DayLog, dayLogSchema, LOG_FORMAT, LOG_VERSION } from './schema'

const DAY_LOG: FileFormat<typeof dayLogSchema> = {
  name: 'day log',
  format: LOG_FORMAT,
  version: LOG_VERSION,
  schema: dayLogSchema,
  migrations: [],
}

/** A day log from a value that is already JSON: all of it, or every problem with its place and its mend. */
export function parseDayLog(value: unknown): Result<DayLog, readonly Problem[]> {
  const read = readValue(value, DAY_LOG)
  if (!read.ok) return read
  const problems = crossCheck(read.value.typed.entries)
  if (problems.length > 0) return err(capped(problems))
  return ok(stampFigures(read.value.typed, 'log', { kind: 'achieved' }) as DayLog)
}

interface Entry {
  readonly id: string
  readonly kind: string
  readonly entry?: string
}

/** Ids once each, and corrections that name an entry made before them. */
function crossCheck(entries: readonly Entry[]): readonly Problem[] {
  const seen = new Set<string>()
  const problems: Problem[] = []
  for (const e of entries) {
    const path = `entries "${e.id}"`
    if (seen.has(e.id)) {
      problems.push({
        kind: 'repeated-id',
        path,
        message: 'This id stands twice in the log.',
        mend: 'Give the later entry an id of its own.',
      })
    }
    if (e.kind === 'correct' && e.entry !== undefined && !seen.has(e.entry)) {
      const message = `It corrects "${e.entry}", which is no earlier entry.`
      problems.push({
        kind: 'missing-reference',
        path,
        message,
        mend: 'Name the id of an entry made before it.',
      })
    }
    seen.add(e.id)
  }
  return problems
}
