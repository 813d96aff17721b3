import { expect, test } from 'vitest'
import { nothingAchieved } from '../../../src/core/daylog/achieved'
import { known } from '../../../src/core/figure'
import { say } from '../../../src/core/words/say'
import { baseUnit, LEGS, rowKitchen, TWO_BASES, WORKTOP, withDishwasher } from '../../support/row-kitchen'
import { atLeft, heightIn, placeOn, sure, workThrough } from '../../support/surveyed'

/** Long legs, so that the middle of their reach is far from what is usual. */
const longLegs = { ...LEGS, max: sure(260) }
const units = [
  baseUnit('base-1', { left: atLeft(0) }, { legs: longLegs }),
  baseUnit('base-2', { rightOf: 'base-1' }, { legs: longLegs }),
]
const worktops = [{ ...WORKTOP, over: ['base-1', 'base-2'] }]
const bare = { finishWhere: 'none' }
const rules = (kitchen: ReturnType<typeof workThrough>) =>
  kitchen.worked.heights.demands.map(({ id }) => id).filter((id) => id.startsWith('usual-'))

test('no wish: the worktop comes about 900 over the floor under the bases', () => {
  const kitchen = workThrough(rowKitchen({ units, worktops, floor: bare }))
  // Feet: −1000.1 to −1002.3, half-way −1001.2. Legs: −870.1 … −742.3. Worktop 758 over the underside.
  // 890 … 910 over −1001.2 is −111.2 … −91.2, underside −869.2 … −849.2: all of it in reach. Middle −859.2: −859.
  expect(heightIn(kitchen, 'base-underside')).toBe(-859)
  // −859 + 720 + 38: 900.2 over the floor half-way.
  expect(heightIn(kitchen, 'worktop-top')).toBe(-101)
  expect(kitchen.worked.heights.unmet).toEqual([])
})

test('counted from the finished floor: a finish of 12 still to come lifts it by 12', () => {
  const floor = { finishWhere: 'up-to-plinth', finishToCome: sure(12) }
  // Middle −859.2 + 12 = −847.2.
  expect(heightIn(workThrough(rowKitchen({ units, worktops, floor })), 'base-underside')).toBe(-847)
  // Laid everywhere, the feet stand on it: −1001.2 + 12 too, and the legs reach from there.
  const everywhere = { finishWhere: 'everywhere', finishToCome: sure(12) }
  expect(heightIn(workThrough(rowKitchen({ units, worktops, floor: everywhere })), 'base-underside')).toBe(
    -847,
  )
})

test('without a worktop the plinth comes about 150', () => {
  // −1001.2 + 150 = −851.2.
  expect(heightIn(workThrough(rowKitchen({ units, floor: bare })), 'base-underside')).toBe(-851)
})

test('any wish for the base units is stronger than what is usual', () => {
  const wishes = {
    heights: [{ id: 'w', of: 'worktop-top', min: { down: sure(60) }, max: { down: sure(40) } }],
  }
  const kitchen = workThrough(rowKitchen({ units, worktops, floor: bare, wishes }))
  expect(rules(kitchen)).toEqual([])
  expect(heightIn(kitchen, 'worktop-top')).toBe(-50)
})

test('what must be is never pushed to its end: where 900 itself cannot be, the usual is given up, as a note', () => {
  // Legs of 130 to 180 that must reach: −870.1 … −822.3, and 900 over −1001.2 wants a carcass of 820 at −959.2.
  const high = TWO_BASES.map((unit) => ({ ...unit, height: sure(820) }))
  const kitchen = workThrough(rowKitchen({ units: high, worktops, floor: bare }))
  expect(heightIn(kitchen, 'base-underside')).toBe(-846)
  expect(kitchen.worked.heights.unmet).toEqual(['usual-worktop:base'])
  const told = kitchen.worked.findings.filter(({ rule }) => rule === 'preferred-height-given-up')
  expect(told.map(({ weight, say: words }) => `${weight}: ${say(words)}`)).toEqual([
    'note: Not kept here: the usual worktop height. What must be leaves no room for it, or less than the readings are good for. Nobody wished it; it is what most kitchens have.',
  ])
})

test('nothing is asked for while the floor finish is not known, and nothing once a line is on the wall', () => {
  expect(rules(workThrough(rowKitchen({ units, worktops })))).toEqual([])
  expect(rules(workThrough(rowKitchen({ units, worktops, floor: { finishWhere: 'up-to-plinth' } })))).toEqual(
    [],
  )
  const struck = new Map([['worktop-top' as const, known(-80, 0, 'mm', ['log'])]])
  const kitchen = workThrough(rowKitchen({ units, worktops, floor: bare }), { ...nothingAchieved, struck })
  expect(rules(kitchen)).toEqual([])
  expect(heightIn(kitchen, 'worktop-top')).toBe(-80)
})

test('a wish counted from the floor as read says so while a finish is to come', () => {
  const wishes = {
    heights: [
      {
        id: 'w',
        of: 'worktop-top',
        min: { aboveFloor: sure(900) },
        max: { aboveFloor: sure(910) },
        place: placeOn('a', 0, 600),
      },
    ],
  }
  const notes = (floor: object) =>
    workThrough(rowKitchen({ units, worktops, floor, wishes })).worked.findings.filter(
      ({ rule }) => rule === 'wish-from-bare-floor',
    )
  const [note] = notes({ finishWhere: 'up-to-plinth', finishToCome: sure(6) })
  expect(note && say(note.say)).toBe(
    'Your wish for the top of the worktop counts from the floor as it was read. A finish of 6 mm comes on it, so that it will stand that much less over the finished floor.',
  )
  expect(notes(bare)).toEqual([])
})

test('findings name feet, appliances and wishes, never ids', () => {
  const clash = workThrough(
    withDishwasher({ wishes: { heights: [{ id: 'low-1', of: 'worktop-top', max: { down: sure(120) } }] } }),
  ).worked.findings.find(({ rule }) => rule === 'heights-clash')
  expect(clash && say(clash.say)).toBe(
    'These 3 cannot all be met. They miss by 10.6 mm: the thickness of the worktop; the dishwasher going in; your wish for the top of the worktop.',
  )
  const unknown = workThrough(
    rowKitchen({ units: [baseUnit('base-1', { left: atLeft(0) }, { legs: { max: sure(180) } })] }),
  ).worked.findings.find(({ rule }) => rule === 'height-demand-unknown')
  expect(unknown && say(unknown.say)).toBe(
    'What depends on the back left leg of base unit 1 cannot be worked out yet. Not known: shortest length of the legs of base unit 1.',
  )
})
