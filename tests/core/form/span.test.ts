/** An edge and a width give the other edge; the file holds edges alone, with the ± of both readings. */
import { describe, expect, test } from 'vitest'
import { valueOf } from '../../../src/core/figure'
import type { Field, Span } from '../../../src/core/form/field'
import { thingsAt } from '../../../src/core/form/rename'
import { across, edgeFromWidth, edgesFromMiddle, hasMiddle } from '../../../src/core/form/span'
import { thingAt } from '../../../src/core/form/things'
import type { Entered } from '../../../src/core/form/typed'
import { withEdits } from '../../../src/core/kitchen/edit'
import type { KitchenFile, Wall } from '../../../src/core/kitchen/schema'
import { alongFromLeft } from '../../../src/core/survey/along'
import { kitchenOf } from '../../support/facts'

const spanOf = (list: string, key: string): readonly [Field, Span] => {
  const field = thingsAt(list)?.fields.find((f) => f.key === key)
  if (field?.span === undefined) throw new Error(`${list} ${key} has nothing across from it`)
  return [field, field.span]
}

const WINDOW = 'walls.a.openings.window-1'
const kitchen = (left: unknown, bottom: unknown = { aboveFloor: 900 }): unknown => ({
  format: 'dryrun-kitchen',
  version: 1,
  name: 'One window',
  lines: [{ id: 'line' }],
  walls: [
    {
      id: 'a',
      length: 3900,
      openings: [{ id: 'window-1', kind: 'window', left, right: {}, bottom, top: {} }],
    },
  ],
})

const widened = (file: unknown, key: string, width: Entered): unknown => {
  const edits = edgeFromWidth(file, WINDOW, ...spanOf('walls.a.openings', key), width)
  return edits && withEdits(file, edits)
}

describe('a window of 1200', () => {
  test.each([
    [{ at: 900 }, { at: { value: 2100, pm: 4 } }],
    [
      { from: 'right', at: 3000 },
      { from: 'right', at: { value: 1800, pm: 4 } },
    ],
    [{ at: { value: 900, pm: 0.5 } }, { at: { value: 2100, pm: 2.5 } }],
  ])('whose left edge is at %j has its right one at %j, and the core reads it 1200 wide', (left, right) => {
    const file = widened(kitchen(left), 'left', 1200)
    expect(thingAt(file, `${WINDOW}.right`)).toEqual(right)
    const [wall] = kitchenOf(file as KitchenFile).walls as readonly [Wall]
    const [opening] = wall.openings
    const at = (edge: 'left' | 'right') =>
      valueOf(alongFromLeft(wall, (opening as never)[edge])) ?? Number.NaN
    expect(at('right') - at('left')).toBe(1200)
    expect(across(file, WINDOW, ...spanOf('walls.a.openings', 'left')).width).toBe('1200')
  })

  test.each([
    [{ aboveFloor: 900 }, { aboveFloor: { value: 2100, pm: 4 } }],
    [{ down: 100 }, { up: { value: 1100, pm: 3 } }],
    [
      { down: 1500, line: 'two' },
      { line: 'two', down: { value: 300, pm: 3 } },
    ],
    [{ up: 20 }, { up: { value: 1220, pm: 3 } }],
  ])('over a sill at %j has its top at %j', (bottom, top) => {
    const file = widened(kitchen({}, bottom), 'bottom', 1200)
    expect(thingAt(file, `${WINDOW}.top`)).toEqual(top)
    expect(across(file, WINDOW, ...spanOf('walls.a.openings', 'bottom')).width).toBe('1200')
  })

  test('is given no edge while the other is open, and then no width is made up', () => {
    expect(widened(kitchen({}), 'left', 1200)).toBeUndefined()
    expect(across(kitchen({}), WINDOW, ...spanOf('walls.a.openings', 'left'))).toEqual({
      isNearKnown: false,
      way: 'left',
      width: '',
      middle: '',
    })
  })
})

test('edges measured from two ends are taken from each other where the wall has a length, heights of two sorts are not', () => {
  const file = kitchen({ at: 900 }) as { walls: { openings: Record<string, unknown>[]; length?: number }[] }
  const [wall] = file.walls
  const [window] = wall?.openings ?? []
  Object.assign(window as object, { right: { from: 'right', at: 1800 }, top: { up: 1100 } })
  const seen = (key: string) => across(file, WINDOW, ...spanOf('walls.a.openings', key))
  expect(seen('left')).toMatchObject({ width: '1200', middle: '' })
  expect(seen('bottom')).toMatchObject({ width: '', middle: '' })
  delete wall?.length
  expect(seen('left').width).toBe('')
})

test('inches stay inches, with a ± that cannot be taken for inches', () => {
  const file = widened(kitchen({ at: '34 1/2 in' }), 'left', '24 1/4 in')
  expect(thingAt(file, `${WINDOW}.right`)).toEqual({ at: { value: '58 3/4 in', pm: '4 mm' } })
  expect(across(file, WINDOW, ...spanOf('walls.a.openings', 'left')).width).toBe('24 1/4 in')
})

describe('a pipe', () => {
  const PIPE = 'boxes.pipe-1'
  const [left, span] = spanOf('boxes', 'left')
  const piped = (way: string, edge: unknown = {}): unknown => {
    const file = {
      lines: [{ id: 'line' }],
      walls: [{ id: 'a', length: 3900 }],
      boxes: [{ id: 'pipe-1', kind: 'pipe', wall: 'a', left: edge, right: {} }],
    }
    const edits = edgesFromMiddle(file, PIPE, left, span, 2000, 22, way)
    return edits && withEdits(file, edits)
  }

  test('is typed by its middle and its diameter, from either end', () => {
    const file = piped('left')
    expect(thingAt(file, `${PIPE}.left`)).toEqual({ at: { value: 1989, pm: 3 } })
    expect(thingAt(file, `${PIPE}.right`)).toEqual({ at: { value: 2011, pm: 3 } })
    const other = piped('right', { at: 5 })
    expect(thingAt(other, `${PIPE}.left`)).toEqual({ from: 'right', at: { value: 2011, pm: 3 } })
    expect(thingAt(other, `${PIPE}.right`)).toEqual({ from: 'right', at: { value: 1989, pm: 3 } })
    for (const each of [file, other]) {
      expect(across(each, PIPE, left, span)).toMatchObject({ width: '22', middle: '2000' })
    }
  })

  test('and nothing else is measured so', () => {
    expect(hasMiddle(span, { kind: 'pipe' })).toBe(true)
    expect(hasMiddle(span, { kind: 'radiator' })).toBe(false)
    expect(hasMiddle(spanOf('walls.a.openings', 'left')[1], { kind: 'window' })).toBe(false)
  })
})
