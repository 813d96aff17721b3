import { expect, test } from 'vitest'
import { known } from '../../../src/core/figure'
import type { HeightPosition } from '../../../src/core/kitchen/schema'
import { heightFromLine } from '../../../src/core/survey/height'
import { lineOffset } from '../../../src/core/survey/line-offset'
import { kitchenOf, sure } from '../../support/surveyed'

const LINES = [{ id: 'line', offset: sure(7) }, { id: 'high', offset: sure(150) }, { id: 'lost' }]
const floor = known(-1003, 1, 'mm', ['floor'])

const heightOf = (centre: object, at = floor as typeof floor | null) => {
  const accessories = [{ id: 's', kind: 'socket', along: { at: 0 }, height: centre }]
  const kitchen = kitchenOf({ lines: LINES, walls: [{ id: 'a', length: 3000, accessories }] })
  return heightFromLine(kitchen, kitchen.walls[0]?.accessories[0]?.height as HeightPosition, at)
}

test.each([
  ['up from the line', { up: sure(120) }, 120],
  ['down from the line', { down: sure(120) }, -120],
  ['up from a line 150 higher', { line: 'high', up: sure(100) }, 250],
  ['down from a line 150 higher', { line: 'high', down: sure(100) }, 50],
  ['above the floor at −1003', { aboveFloor: sure(900) }, -103],
])('%s', (_, centre, height) => {
  expect(heightOf(centre)).toMatchObject({ state: 'known', value: height })
})

test('the first line is 0, exactly, whatever was typed for it', () => {
  const kitchen = kitchenOf({ lines: LINES })
  expect(lineOffset(kitchen, 'line')).toMatchObject({ value: 0, pm: 0, from: [] })
  expect(lineOffset(kitchen, 'high')).toMatchObject({ value: 150 })
  expect(lineOffset(kitchen, 'nowhere')).toMatchObject({ missing: ['lines.nowhere.offset'] })
})

test('"line" means the first one where none is called that', () => {
  expect(lineOffset(kitchenOf({ lines: [{ id: 'red' }] }), 'line')).toMatchObject({ value: 0 })
  expect(lineOffset(kitchenOf({ lines: [] }), 'line')).toMatchObject({ value: 0 })
})

test('what is missing is named', () => {
  const path = 'walls.a.accessories.s.height'
  expect(heightOf({})).toMatchObject({
    state: 'unknown',
    missing: [`${path}.aboveFloor`, `${path}.down`, `${path}.up`],
  })
  expect(heightOf({ line: 'lost', up: 3 })).toMatchObject({ missing: ['lines.lost.offset'] })
  expect(heightOf({ aboveFloor: 900 }, null)).toMatchObject({ missing: [`${path}.aboveFloor`] })
  expect(heightOf({ up: 3 }).from).toEqual([`${path}.line`, `${path}.up`])
})
