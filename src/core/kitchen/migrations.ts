import { err, ok, type Result } from '../result'
import type { Problem } from './problem'

type JsonObject = Readonly<Record<string, unknown>>

/** One step of the file format: how a file of version `from` is written in the next one. */
export interface Migration {
  readonly from: number
  /** What changed, for the person whose file it is. */
  readonly change: string
  readonly apply: (file: JsonObject) => JsonObject
}

/** Every step there is. Version 1 is the first, so there is none yet. */
export const MIGRATIONS: readonly Migration[] = []

/** A file of an older version rewritten step by step into the version asked for. The file given is not changed. */
export function migrate(
  file: JsonObject,
  from: number,
  to: number,
  migrations: readonly Migration[] = MIGRATIONS,
): Result<JsonObject, Problem> {
  let current = file
  for (let version = from; version < to; version++) {
    const step = migrations.find((migration) => migration.from === version)
    if (step === undefined) {
      const message = `This file is of version ${from}, and there is no way from version ${version} to ${version + 1}.`
      const mend = `Write the file anew in version ${to}, or look whether the number is right.`
      return err({ kind: 'older-version', path: 'version', message, mend })
    }
    current = { ...step.apply(current), version: version + 1 }
  }
  return ok(current)
}
