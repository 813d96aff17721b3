import { expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { workThrough } from '../../../src/core/plan/entry'
import type { WayOut } from '../../../src/core/plan/types'
import { waysOutOf } from '../../../src/core/plan/ways-out'
import { soundKitchen } from '../../support/sound-kitchen'

const file = {
  ...(soundKitchen() as KitchenFile),
  access: [{ id: 'stop', kind: 'stopcock', wall: 'b', along: { at: 700 }, height: { down: 700 }, out: 60 }],
}
const outcome = workThrough(file)
if (outcome.kind !== 'plan') throw new Error('the kitchen of this test has no plan')
const { plan } = outcome
const finding = plan.findings.find(({ rule }) => rule === 'built-in')
if (finding === undefined) throw new Error('the stopcock of this test is not found behind a unit')

const held = (ways: readonly WayOut[]) => waysOutOf({ ...finding, waysOut: ways }, plan, file)
const [way] = finding.waysOut as [WayOut]

test('a way out that settles the finding holds', () => {
  expect(held([way]).map(({ planned }) => planned)).toEqual(['holds'])
})

test('one that changes nothing, and so was never planned, is not shown', () => {
  expect(held([{ ...way, edits: [] }])).toEqual([])
})

test('one under which the finding is still there is not shown', () => {
  expect(held([{ ...way, edits: [{ set: 'access.stop.out', to: 70 }] }])).toEqual([])
})
