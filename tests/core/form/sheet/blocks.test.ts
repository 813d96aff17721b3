/** The sheet to print asks what the pages of the survey ask, and leaves nothing out. */
import { describe, expect, test } from 'vitest'
import type { Field } from '../../../../src/core/form/field'
import { PAGES } from '../../../../src/core/form/pages'
import { type Block, sheetBlocks, sheetHead } from '../../../../src/core/form/sheet/blocks'
import { sceneFile } from '../../../support/kitchens'

const strings = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(strings) : []
}
const words = (blocks: readonly Block[]): readonly string[] =>
  blocks.flatMap(({ page: _, ...block }) => strings(block))

describe('the blank sheet', () => {
  const blank = sheetBlocks()
  const said = new Set([...words(blank), ...strings(sheetHead(null))])

  test('has the number of every field, but within lists that are only named or stand on sheets of their own', () => {
    const missing = (fields: readonly Field[]): readonly string[] =>
      fields.flatMap((field) => {
        const here = said.has(field.number ?? '') ? [] : [`${field.number} ${field.label}`]
        if (field.kind !== 'list') return here
        const { sheet } = field.things
        return sheet === undefined || sheet.hasOwnSheet ? here : [...here, ...missing(field.things.fields)]
      })
    expect(PAGES.flatMap((page) => missing(page.fields))).toEqual([])
  })

  test('gives columns and lines only to fields that there are', () => {
    const unknown = (fields: readonly Field[]): readonly string[] =>
      fields.flatMap((field) => {
        if (field.kind !== 'list') return []
        const keys = field.things.fields.map(({ key }) => key)
        const columns = field.things.sheet?.columns ?? []
        return [...columns.filter((key) => !keys.includes(key)), ...unknown(field.things.fields)]
      })
    expect(PAGES.flatMap((page) => unknown(page.fields))).toEqual([])
    for (const { fields, lines = [], head = [] } of PAGES) {
      expect([...lines, ...head].filter((key) => fields.every((field) => field.key !== key))).toEqual([])
    }
  })

  test('has nothing filled in', () => {
    for (const block of blank) {
      if (block.kind === 'table') expect(block.rows.flat().join('')).toBe('')
      if (block.kind === 'across') expect(block.rows.flatMap(({ cells }) => cells).join('')).toBe('')
      if (block.kind === 'lines') {
        const lines = block.rows.flat()
        expect(lines.map(({ text }) => text).join('')).toBe('')
        expect(lines.flatMap(({ ticks }) => ticks).some(({ isChosen }) => isChosen)).toBe(false)
      }
    }
  })
})

test('filled in, it says what is typed, as one writes it by hand', () => {
  const blocks = sheetBlocks(sceneFile('l-shape'))
  const tables = blocks.flatMap((block): readonly Block[] => (block.kind === 'pair' ? block.tables : [block]))
  const rowOf = (title: string, mark: string) =>
    tables
      .flatMap((block) => (block.kind === 'table' && block.title.startsWith(title) ? block.rows : []))
      .find(([first]) => first === mark)
  expect(rowOf('Sockets', 'a · socket-2')).toEqual([
    'a · socket-2',
    'socket',
    '',
    'R 700',
    '+80',
    '146',
    '86',
    'yes',
    '',
  ])
  expect(rowOf('Floor readings', 'floor-a-front-1')).toEqual(['floor-a-front-1', 'a', '20', '640', '1002'])
  expect(rowOf('Units', 'base-1')?.slice(1, 5)).toEqual(['base unit', 'a', 'right of tall-1', '600'])
  expect(tables.some(({ kind }) => kind === 'grid')).toBe(false)
})
