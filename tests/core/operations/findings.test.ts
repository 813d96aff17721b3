import { expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { operationFindings } from '../../../src/core/operations/findings'
import { say } from '../../../src/core/words/say'
import { contextOf, workKitchen } from '../../support/work-kitchen'

const findingsOf = (survey: KitchenFile['survey']) =>
  operationFindings(contextOf({ ...workKitchen(), survey }).context)

test('an old house, a gas hob, and isolation are spoken of', () => {
  const found = findingsOf({ houseBuilt: 1985, gas: true })
  expect(found.map((f) => [f.id, f.weight, f.dangerous])).toEqual([
    ['asbestos-age:room', 'ask', true],
    ['isolate-first:room', 'note', false],
    ['gas-trade:gas', 'note', false],
    // Its worktop weighs 60 kg; two men carry 33.3 between knuckle and elbow, and one end of it, 30.
    ['lift-over-filter:top', 'warn', false],
  ])
  for (const finding of found) {
    expect(say(finding.say)).not.toContain('[no ')
    expect(finding.ask === null ? '' : say(finding.ask)).not.toContain('[no ')
    expect(finding.from.length).toBeGreaterThan(0)
  }
})

test('nothing is said of asbestos in a new house, or of gas where there is none', () => {
  expect(findingsOf({ houseBuilt: 2015, gas: false }).map((f) => f.rule)).toEqual([
    'isolate-first',
    'lift-over-filter',
  ])
})

test('the year not known is asked, not guessed', () => {
  const [first] = findingsOf({ houseBuilt: null, gas: false })
  expect(first?.say.key).toBe('finding.asbestos-age.year-not-known')
})
