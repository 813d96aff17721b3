import { expect, test } from 'vitest'
import { FAILURE_MODES } from '../../../src/core/trade/failure-modes'
import { answerTo, rulesFor } from '../../support/modes-table'

test('every failure mode is met by a rule, a step, a later piece, or is out of scope for a reason', () => {
  expect(FAILURE_MODES).toHaveLength(112)
  expect(FAILURE_MODES.filter((mode) => answerTo(mode) === '').map((mode) => mode.id)).toEqual([])
})

test('all modes that hurt somebody, and sixty others, have a rule or a question', () => {
  const met = (mode: (typeof FAILURE_MODES)[number]) =>
    rulesFor(mode).length > 0 || answerTo(mode).startsWith('asks')
  const hurts = FAILURE_MODES.filter((mode) => mode.class.includes('X'))
  expect(hurts.filter((mode) => !met(mode)).map((mode) => mode.id)).toEqual([])
  expect(
    FAILURE_MODES.filter((mode) => !mode.class.includes('X') && met(mode)).length,
  ).toBeGreaterThanOrEqual(60)
})
