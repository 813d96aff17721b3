import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { z } from 'zod'
import { MIGRATIONS, type Migration, migrate } from '../../../src/core/kitchen/migrations'
import { parseKitchenText } from '../../../src/core/kitchen/parse-kitchen'
import { type FileFormat, readValue } from '../../../src/core/kitchen/read-file'
import { VERSION } from '../../../src/core/kitchen/schema'
import { workThrough } from '../../../src/core/plan/entry'
import { ROOT } from '../../support/root'

/** An invented format whose third version calls "wide" what was "breadth", then "width". */
const steps: readonly Migration[] = [
  { from: 1, change: 'breadth is now width', apply: ({ breadth, ...rest }) => ({ ...rest, width: breadth }) },
  { from: 2, change: 'width is now wide', apply: ({ width, ...rest }) => ({ ...rest, wide: width }) },
]
const schema = z.strictObject({ format: z.literal('planted'), version: z.literal(3), wide: z.number() })
const planted: FileFormat<typeof schema> = {
  name: 'planted file',
  format: 'planted',
  version: 3,
  schema,
  migrations: steps,
}

test('every step of the kitchen file is there, one for each version but the last', () => {
  expect(MIGRATIONS.map(({ from }) => from)).toEqual(Array.from({ length: VERSION - 1 }, (_, i) => i + 1))
})

/** One whole kitchen of each version, as people have saved it: never written anew when the format changes. */
const oldFile = (version: number): string =>
  join(ROOT, `tests/core/kitchen/old-files/v${version}.dryrun.json`)

test.each(Array.from({ length: VERSION }, (_, i) => i + 1))(
  'a kitchen saved in version %i is read and planned, and holds what it held',
  (version) => {
    expect(existsSync(oldFile(version))).toBe(true)
    const text = readFileSync(oldFile(version), 'utf8')
    const saved = JSON.parse(text) as {
      readonly version: number
      readonly name: string
      readonly units: readonly object[]
    }
    expect(saved.version).toBe(version)
    const read = parseKitchenText(text)
    expect(read.ok ? [] : read.error).toEqual([])
    if (!read.ok) return
    expect(read.value.file).toMatchObject({ version: VERSION, name: saved.name })
    expect(read.value.kitchen.units.length).toBe(saved.units.length)
    expect(workThrough(read.value.file).kind).toBe('plan')
  },
)

test('a kitchen of a newer version is refused in plain words, however much of it could be read', () => {
  const newer = { ...(JSON.parse(readFileSync(oldFile(1), 'utf8')) as object), version: VERSION + 1 }
  const read = parseKitchenText(JSON.stringify(newer))
  expect(read).toMatchObject({ ok: false, error: [{ kind: 'newer-version', path: 'version' }] })
  if (read.ok) return
  expect(read.error[0]?.message).toBe(
    `This file was made by a newer version (${VERSION + 1}; this one reads up to ${VERSION}). Nothing was changed.`,
  )
})

test('a file is brought up step by step, and the one given stays as it was', () => {
  const old = Object.freeze({ format: 'planted', version: 1, breadth: 600 })
  expect(migrate(old, 1, 3, steps)).toEqual({
    ok: true,
    value: { format: 'planted', version: 3, wide: 600 },
  })
  expect(migrate({ version: 2, width: 1 }, 2, 3, steps)).toMatchObject({ value: { version: 3, wide: 1 } })
  expect(migrate(old, 3, 3, steps)).toEqual({ ok: true, value: old })
})

test('a gap in the steps is said', () => {
  const result = migrate({ version: 1 }, 1, 3, steps.slice(0, 1))
  expect(result).toMatchObject({
    ok: false,
    error: {
      kind: 'older-version',
      message: 'This file is of version 1, and there is no way from version 2 to 3.',
    },
  })
})

test('an older file is read by the newer schema, and what is kept is the new form', () => {
  const read = readValue({ format: 'planted', version: 1, breadth: 600 }, planted)
  const now = { format: 'planted', version: 3, wide: 600 }
  expect(read).toEqual({ ok: true, value: { file: now, typed: now } })
  expect(readValue({ format: 'planted', version: 4, wide: 600 }, planted)).toMatchObject({
    error: [{ kind: 'newer-version' }],
  })
})
