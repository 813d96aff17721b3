import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { kitchenJsonSchema } from '../../../src/core/kitchen/json-schema'
import { ROOT } from '../../support/root'
import { leavesOf, readersIn } from './schema-leaves'

/** Pieces of work that are named for later, and no others. */
const LATER = ['rules of the trade', 'crew schedule', 'cutting', 'worktops']

const readers = [...new Set(leavesOf(kitchenJsonSchema()).flatMap(({ readBy }) => readBy))].sort()
const isLater = (reader: string) => reader.startsWith('later:')

/** A reader is a file or folder of the core, or of `src` itself where the core has none. */
function isThere(reader: string): boolean {
  const places = [`src/core/${reader}`, `src/core/${reader}.ts`, `src/${reader}`]
  return places.some((place) => existsSync(join(ROOT, place)))
}

test('readers are read from a description', () => {
  expect(
    readersIn('Centre. Read by: holes/bands (thin walls, both faces), words; later: cutting (F1, F2).'),
  ).toEqual(['holes/bands', 'words', 'later: cutting'])
  expect(readersIn('Centre.')).toEqual([])
})

test('what is left for later is one of the named pieces', () => {
  const later = readers.filter(isLater).map((reader) => reader.replace('later: ', ''))
  expect(later.length).toBeGreaterThan(0)
  expect(later.filter((piece) => !LATER.includes(piece))).toEqual([])
})

test('every other reader is a place in the code', () => {
  const named = readers.filter((reader) => !isLater(reader))
  expect(named).toContain('kitchen/stamp')
  expect(named.filter((reader) => !/^[a-z]+(\/[a-z]+(-[a-z]+)*)?$/.test(reader))).toEqual([])
  const pending = named.filter((reader) => !isThere(reader))
  if (pending.length > 0) console.info(`Readers still to be written: ${pending.join(', ')}`)
  expect(isThere('kitchen/stamp') && !isThere('kitchen/nowhere')).toBe(true)
})
