import { expect, test } from 'vitest'
import { z } from 'zod'
import { MIGRATIONS, type Migration, migrate } from '../../../src/core/kitchen/migrations'
import { type FileFormat, readValue } from '../../../src/core/kitchen/read-file'
import { VERSION } from '../../../src/core/kitchen/schema'

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
