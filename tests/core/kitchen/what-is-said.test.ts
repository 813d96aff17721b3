import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { whatIsSaid } from '../../../src/core/kitchen/what-is-said'
import { workThrough } from '../../../src/core/plan/entry'
import { ROOT } from '../../support/root'

test('null, empty lists and empty objects say nothing', () => {
  expect(whatIsSaid({ a: null, b: [], c: {}, d: { e: { f: null } }, g: 0, h: false, i: '' })).toEqual({
    g: 0,
    h: false,
    i: '',
  })
  expect(whatIsSaid([{ id: 'x', y: null }, { id: 'z' }])).toEqual([{ id: 'x' }, { id: 'z' }])
})

test('a file that says nothing more gives the same plan to the byte; one that says more does not', () => {
  const file = JSON.parse(readFileSync(join(ROOT, 'scenes/one-wall.dryrun.json'), 'utf8')) as {
    walls: readonly Record<string, unknown>[]
  }
  const with_ = (more: Readonly<Record<string, unknown>>): string =>
    JSON.stringify(
      workThrough({ ...file, walls: file.walls.map((w, i) => (i === 0 ? { ...w, ...more } : w)) }),
    )
  const plain = JSON.stringify(workThrough(file))
  expect(with_({ lintels: [], tracedDepth: null, studTimber: {} }) === plain).toBe(true)
  expect(with_({ tracedDepth: 60 }) === plain).toBe(false)
})
