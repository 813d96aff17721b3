/** Lists as tables: what is read of one, what is told of it, and that what is written is read again. */
import { describe, expect, test } from 'vitest'
import { thingsAt } from '../../../../src/core/form/rename'
import { columnsOf, plainName } from '../../../../src/core/form/table/columns'
import { csvOf, fromCsv } from '../../../../src/core/form/table/csv'
import { tableRead } from '../../../../src/core/form/table/read-rows'
import { hasTable, tableOf } from '../../../../src/core/form/table/write-rows'
import { listAt, thingAt } from '../../../../src/core/form/things'
import { withEdits } from '../../../../src/core/kitchen/edit'
import { parseKitchen } from '../../../../src/core/kitchen/parse-kitchen'
import { SCENES, sceneFile } from '../../../support/kitchens'
import { LISTS, listPaths } from '../../../support/lists'

const bare = {
  format: 'dryrun-kitchen',
  version: 1,
  name: 'Bare',
  walls: [{ id: 'a' }, { id: 'b', name: 'Window wall' }],
}

const things = (path: string) => {
  const found = thingsAt(path)
  if (found === undefined) throw new Error(path)
  return found
}

/** Cells as somebody sees them in a spreadsheet, one line for each line. */
const cells = (text: string): readonly (readonly string[])[] =>
  text
    .trim()
    .split('\n')
    .map((line) => line.split('|').map((cell) => cell.trim()))

const read = (text: string, path = 'units', file: unknown = bare) =>
  tableRead(cells(text), things(path), file, path)

const madeOf = (text: string, path = 'units', file: unknown = bare): unknown => {
  const { edits, notUnderstood, cells, lines } = read(text, path, file)
  expect([notUnderstood, cells, lines]).toEqual([[], [], []])
  const made = withEdits(file, edits)
  const parsed = parseKitchen(made)
  expect(parsed.ok ? [] : parsed.error).toEqual([])
  return made
}

describe('units from a delivery list', () => {
  test('columns go by labels or keys, in any order, with decimal commas and inches as typed', () => {
    const text = `
      Depth | massEmpty | What      | Back to wall | WIDTH (in) | height   | legs.perTurn (mm) | Came
      560   | 18,5      | base unit | a            | 23 5/8     | 28.35 in | 1,5               | built
      560   | 21 ± 1    | tall      | Window wall  | 24         | 2.1 m    |                   | flat, to be put together`
    const kitchen = madeOf(text)
    expect(listAt(kitchen, 'units')).toEqual([
      {
        id: 'base-1',
        kind: 'base',
        wall: 'a',
        order: { left: {} },
        depth: 560,
        massEmpty: 18.5,
        width: '23 5/8 in',
        height: '28.35 in',
        legs: { perTurn: 1.5 },
        assembled: 'built',
      },
      {
        id: 'tall-1',
        kind: 'tall',
        wall: 'b',
        order: { left: {} },
        depth: 560,
        massEmpty: { value: 21, pm: 1 },
        width: '24 in',
        height: '2.1 m',
        assembled: 'flat-packed',
      },
    ])
  })

  test('follow each other along their wall where nothing is said of it, those that hang after those that hang', () => {
    const kitchen = madeOf(`
      Mark | What | Back to wall | It stands: to the right of
      b1   | base | a            |
      b2   | base | a            |
      w1   | wall | a            |
      b3   | base | b            |
      w2   | wall | a            |
      b4   | base | a            |
      b5   | base | b            | b6
      b6   | base | b            |`)
    const orders = listAt(kitchen, 'units').map((unit) => [unit['id'], unit['order']])
    expect(orders).toEqual([
      ['b1', { left: {} }],
      ['b2', { rightOf: 'b1' }],
      ['w1', { left: {} }],
      ['b3', { left: {} }],
      ['w2', { rightOf: 'w1' }],
      ['b4', { rightOf: 'b2' }],
      ['b5', { rightOf: 'b6' }],
      ['b6', { rightOf: 'b3' }],
    ])
  })

  test('with a mark that is there already change it in what the line says, and in nothing else', () => {
    const file = sceneFile('l-shape')
    const [first] = listAt(file, 'units')
    const mark = String(first?.['id'])
    const text = `mark | width | shelves\n${mark} | 612 |`
    expect(read(text, 'units', file)).toMatchObject({ added: [], changed: [mark], cells: [], lines: [] })
    const made = madeOf(text, 'units', file)
    expect(thingAt(made, `units.${mark}`)).toEqual({ ...first, width: 612 })
    expect(read(`mark | width\n${mark} | 612`, 'units', made).refused).toBe('There is nothing new in it.')
  })

  test('the code of a maker on several lines stands for several units', () => {
    const table = read('mark|what|wall\nB60 L|base|a\nB60 L|base|a\nb60-l-2|base|a')
    expect(table.added).toEqual(['b60-l', 'b60-l-2', 'b60-l-2-2'])
  })
})

describe('floor and ceiling readings', () => {
  test('have their place and their height in columns of their own', () => {
    const kitchen = madeOf(
      `
      Where: wall | Where: along the wall | Where: from which end | Where: out from the wall | Down from the line
      a           | 600                   |                       | 0                        | 1002
      a           | 600                   | right                 | 600                      | 1 004,5
      b           | 2 ft                  | right end             | 600                      | -3`,
      'floor.readings',
    )
    expect(listAt(kitchen, 'floor.readings')).toEqual([
      { id: 'floor-1', at: { wall: 'a', along: { at: 600 }, out: 0 }, drop: 1002 },
      { id: 'floor-2', at: { wall: 'a', along: { at: 600, from: 'right' }, out: 600 }, drop: '1 004,5' },
      { id: 'floor-3', at: { wall: 'b', along: { at: '2 ft', from: 'right' }, out: 600 }, drop: -3 },
    ])
  })

  test('a height is given in one way; the second is told and left', () => {
    const table = read(
      'wall|along|out|how high|How high: above the floor\na|100|0|1400|2400\na|200|0||2400',
      'ceiling',
    )
    expect(table.edits).toEqual([
      {
        add: 'ceiling',
        item: { id: 'ceiling-1', at: { wall: 'a', along: { at: 100 }, out: 0 }, height: { up: 1400 } },
      },
      {
        add: 'ceiling',
        item: {
          id: 'ceiling-2',
          at: { wall: 'a', along: { at: 200 }, out: 0 },
          height: { aboveFloor: 2400 },
        },
      },
    ])
    expect(table.cells).toEqual([
      {
        row: 2,
        column: 5,
        head: 'How high: above the floor',
        typed: '"2400"',
        why: 'It is given in another column already.',
      },
    ])
  })
})

describe('what cannot be understood', () => {
  test('is told by line and column, and the rest is taken', () => {
    const table = read(`
      Price | What | Back to wall | Width | Width | Seen and counted | Shelves (lb) | Loose shelves
      100   | base | a            | 1.200 | 600   | perhaps          | 2            | two
      100   | bass | a            | 600   |       | yes              |              | 2
      100   | base | q            | 600   |       | no               |              | 1`)
    expect(table.added).toEqual(['base-1'])
    expect(table.notUnderstood.map(({ column, head }) => [column, head])).toEqual([
      [1, 'Price'],
      [5, 'Width'],
      [7, 'Shelves (lb)'],
    ])
    expect(table.cells.map(({ row, column, typed }) => [row, column, typed])).toEqual([
      [2, 4, '"1.200"'],
      [2, 6, '"perhaps"'],
      [2, 8, '"two"'],
      [3, 2, '"bass"'],
      [4, 3, '"q"'],
    ])
    expect(table.cells[0]?.why).toContain('two ways')
    expect(table.lines).toEqual([
      { row: 3, why: 'It does not say: what.' },
      { row: 4, why: 'It does not say: back to wall.' },
    ])
  })

  test('nothing named at the head, no wall yet, too many lines, nothing at all: nothing is taken', () => {
    expect(read('a|b\n1|2').refused).toContain('name the columns')
    expect(read('What\nbase', 'units', { walls: [] }).refused).toBe('First the walls have to be listed.')
    expect(read(`what|wall\n${'base|a\n'.repeat(501)}`).refused).toContain('at most 500')
    expect(read('').refused).toBe('There is nothing in it.')
  })

  test('what is not asked of such a unit is not put into it', () => {
    const table = read('legs.min|what|wall|stands\n100|wall|a|on a rail\n100|base|a|on legs')
    expect(table.edits.map((edit) => ('add' in edit ? edit.item['legs'] : null))).toEqual([
      undefined,
      { min: 100 },
    ])
    expect(table.cells).toMatchObject([{ row: 2, column: 1, why: 'It is not asked of one like this.' }])
  })

  test('words of the language itself are neither marks nor names of columns', () => {
    const table = read('__proto__|constructor|mark|what|wall\n1|2|__proto__|base|a\n1|2|constructor|base|a')
    expect(table.notUnderstood.map(({ head }) => head)).toEqual(['__proto__', 'constructor'])
    expect(table.added).toEqual(['proto', 'base-1'])
    expect(Object.hasOwn({}, 'polluted')).toBe(false)
  })
})

describe('written and read again', () => {
  const kitchens = SCENES.map((name) => [name, sceneFile(name)] as const)

  test.each(kitchens)('every list of %s says the same when it comes back', (_, file) => {
    const paths = listPaths(file).filter((path) => hasTable(things(path)) && listAt(file, path).length > 0)
    expect(paths.length).toBeGreaterThan(3)
    for (const path of paths) {
      const list = listAt(file, path)
      const table = tableOf(things(path), list)
      // Onto what stands there: nothing changes.
      expect([path, tableRead(table, things(path), file, path)]).toMatchObject([
        path,
        { edits: [], cells: [], lines: [], notUnderstood: [] },
      ])
      // Into the same kitchen without them: all of them come, in the same words.
      const without = withEdits(file, [{ set: path, to: [] }])
      const back = tableRead(table, things(path), without, path)
      expect([path, back.cells, back.lines, back.notUnderstood]).toEqual([path, [], [], []])
      expect([path, tableOf(things(path), listAt(withEdits(without, back.edits), path))]).toEqual([
        path,
        table,
      ])
    }
  })

  test('assumed figures, three places after the point, and what looks like a formula', () => {
    const units = [
      {
        id: 'b',
        name: '=1+1',
        kind: 'base',
        wall: 'a',
        order: { left: { at: -5 } },
        width: { value: 600, assumed: true, because: 'usual, "width"; (so) far' },
        height: 12.345,
        depth: { value: '22 in', pm: 2 },
      },
    ]
    const table = tableOf(things('units'), units)
    const back = tableRead(table, things('units'), bare, 'units')
    expect(back.edits).toEqual([{ add: 'units', item: units[0] }])
  })
})

describe('a table as a file', () => {
  test('quotes, line ends and apostrophes are as spreadsheets want them', () => {
    expect(
      csvOf([
        ['a', 'b, c'],
        ['say "x"', 'two\nlines'],
        ['-3', '=SUM(A1)'],
        ['+1', '@x'],
        ['-3 mm', "'=1"],
      ]),
    ).toBe('\ufeffa,"b, c"\r\n"say ""x""","two\nlines"\r\n-3,\'=SUM(A1)\r\n\'+1,\'@x\r\n\'-3 mm,\'\'=1\r\n')
  })

  test('the apostrophe comes off again, and no other', () => {
    for (const cell of ['=1', '+1', '-x', '@a', '\tb', "'=1", "''-1", "'tis", "don't", '', '-3', 'a=1']) {
      const [line = ''] = csvOf([[cell]])
        .slice(1)
        .split('\r\n')
      expect(fromCsv(line.replace(/^"|"$/g, ''))).toBe(cell)
    }
  })
})

test('every column of every table has a name of its own', () => {
  for (const [path, list] of LISTS.filter(([, one]) => hasTable(one))) {
    for (const names of [(c: { key: string }) => c.key, (c: { label: string }) => c.label] as const) {
      const all = columnsOf(list).map((column) => plainName(names(column)))
      expect([path, all.filter((name, at) => all.indexOf(name) !== at)]).toEqual([path, []])
    }
  }
})
