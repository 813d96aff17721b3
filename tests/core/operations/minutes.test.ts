import { expect, test } from 'vitest'
import { inTurn, minutesFor, WORK } from '../../../src/core/operations/minutes'

/** Rows of the trade's own table (common practice): minutes of one experienced fitter, and a first-timer's factor. */
test.each([
  ['strike the line, whole', WORK.strikeLine, 1, { low: 30, typical: 40, high: 60 }],
  ['a tall, whole', WORK.tall, 1, { low: 51, typical: 77, high: 128 }],
  ['hang a wall unit', WORK.hang, 1, { low: 20, typical: 40, high: 70 }],
  ['a rail of 2 m', WORK.rail, 2, { low: 34, typical: 51, high: 85 }],
  ['a corner base', WORK.cornerBase, 1, { low: 50, typical: 80, high: 120 }],
  ['the hold point', WORK.prove, 1, { low: 15, typical: 20, high: 30 }],
  ['next to nothing is one minute', WORK.plates, 0.01, { low: 1, typical: 1, high: 1 }],
])('%s', (_, row, times, minutes) => {
  expect(minutesFor(row, times)).toEqual(minutes)
})

test('work in turn adds up', () => {
  expect(inTurn(minutesFor(WORK.prove), minutesFor(WORK.prove))).toEqual({ low: 30, typical: 40, high: 60 })
})
