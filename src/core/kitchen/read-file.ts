import type { z } from 'zod'
import { err, ok, type Result } from '../result'
import { problemsFrom } from './issues'
import { type Migration, migrate } from './migrations'
import { capped, isRecord, type Problem, shown } from './problem'
import { readJson, unfit } from './read-json'

/** One of the tool's own kinds of file: its mark, its version, its shape and the way up from older versions. */
export interface FileFormat<S extends z.ZodType> {
  /** What people call it: "kitchen file". */
  readonly name: string
  readonly format: string
  readonly version: number
  readonly schema: S
  readonly migrations: readonly Migration[]
}

export interface ReadFile<T> {
  /** The JSON as typed, not touched unless it had to be brought up from an older version. */
  readonly file: unknown
  /** What the schema made of it. */
  readonly typed: T
}

type JsonObject = Readonly<Record<string, unknown>>

function own(file: JsonObject, key: string): unknown {
  return Object.hasOwn(file, key) ? file[key] : undefined
}

function notThisFormat(path: string, message: string, { format, version }: FileFormat<z.ZodType>): Problem {
  const mend = `Begin the file with "format": "${format}", "version": ${version}.`
  return { kind: 'not-this-format', path, message, mend }
}

/** The file in the version the schema knows; a file from a newer version of the tool is not guessed at. */
function inThisVersion(value: unknown, wanted: FileFormat<z.ZodType>): Result<JsonObject, Problem> {
  const { name, format, version } = wanted
  if (!isRecord(value)) {
    const message = `This is ${shown(value)}, not a ${name}: it must be an object in { }.`
    return err(notThisFormat('the file', message, wanted))
  }
  const [mark, number] = [own(value, 'format'), own(value, 'version')]
  if (mark !== format) {
    const said = mark === undefined ? 'it does not say what it is' : `it says it is ${shown(mark)}`
    return err(notThisFormat('format', `This is not a ${name}: ${said}.`, wanted))
  }
  if (typeof number !== 'number' || !Number.isInteger(number) || number < 0) {
    const said = number === undefined ? 'The version is missing' : `The version is ${shown(number)}`
    return err(notThisFormat('version', `${said}; it must be a whole number.`, wanted))
  }
  if (number <= version) return migrate(value, number, version, wanted.migrations)
  const message = `This file was made by a newer version (${number}; this one reads up to ${version}). Nothing was changed.`
  const mend = 'Open it with the newer version, or load this page anew to get it.'
  return err({ kind: 'newer-version', path: 'version', message, mend })
}

/** A value checked against one of the tool's formats: fit to be looked at, of this version, of the right shape. */
export function readValue<S extends z.ZodType>(
  value: unknown,
  format: FileFormat<S>,
): Result<ReadFile<z.output<S>>, readonly Problem[]> {
  const faults = unfit(value)
  if (faults.length > 0) return err(capped(faults))
  const current = inThisVersion(value, format)
  if (!current.ok) return err([current.error])
  const read = format.schema.safeParse(current.value)
  if (!read.success) return err(problemsFrom(read.error.issues, format.schema, current.value))
  return ok({ file: current.value, typed: read.data })
}

/** The same for a text, as it comes from a file, a link or a paste. */
export function readText<S extends z.ZodType>(
  text: string,
  format: FileFormat<S>,
): Result<ReadFile<z.output<S>>, readonly Problem[]> {
  const json = readJson(text)
  return json.ok ? readValue(json.value, format) : err([json.error])
}
