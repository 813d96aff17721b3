import { expect, test } from 'vitest'
import { holdingEntries } from '../../../src/core/daylog/achieved'
import type { DayLog } from '../../../src/core/daylog/schema'
import type { KeptEntry } from '../../../src/state/store'
import { doneEntry, entryWords, withdrawn } from '../../../src/ui/day/entry-words'
import { readNumber } from '../../../src/ui/day/Stepper'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')

test.each<readonly [Omit<KeptEntry, 'id'> & { kind: string }, string]>([
  [{ kind: 'done', operation: 'hang:wall-3' }, 'Done: Hang wall unit 3'],
  [
    { kind: 'set', unit: 'base-2', edge: 'top', down: { value: 134 } },
    'Top of base unit 2 read at −134 from the line',
  ],
  [
    { kind: 'set', unit: 'wall-3', edge: 'underside', up: 396 },
    'Underside of wall unit 3 read at +396 from the line',
  ],
  [
    { kind: 'level', unit: 'wall-3', low: 'right', packer: 1.5, levelLength: 600 },
    'Level on wall unit 3: right end low, packer 1.5 under a level of 600',
  ],
  [
    { kind: 'tried', unit: 'wall-1', part: 'height-screw', perTurn: 1.25 },
    'Tried on wall unit 1: one turn of the height screw moves 1.25 mm',
  ],
  [{ kind: 'correct', entry: 'e4' }, 'Entry e4 does not hold'],
])('%o in words', (entry, text) => {
  expect(entryWords({ id: 'e1', ...entry }, plan)).toBe(text)
})

test('which entries no longer hold is the same here as in the planner', () => {
  const entries = [
    { id: 'e1', kind: 'done', operation: 'a' },
    { id: 'e2', kind: 'done', operation: 'b' },
    { id: 'e3', kind: 'correct', entry: 'e1' },
    { id: 'e4', kind: 'correct', entry: 'e3' },
    { id: 'e5', kind: 'correct', entry: 'e2' },
  ]
  const gone = withdrawn(entries)
  const holding = holdingEntries({ entries } as unknown as DayLog).map((e) => e.id)
  expect(entries.filter((e) => e.kind !== 'correct' && !gone.has(e.id)).map((e) => e.id)).toEqual(holding)
  expect(doneEntry(entries, 'a')?.id).toBe('e1')
  expect(doneEntry(entries, 'b')).toBeUndefined()
})

test.each([
  ['1,5', 1.5],
  ['−134', -134],
  [' +396 ', 396],
  ['1 062', 1062],
  ['', null],
  ['3 mm', null],
  ['1.2.3', null],
  ['Infinity', null],
])('“%s” typed is %s', (text, number) => {
  expect(readNumber(text)).toBe(number)
})
