import { expect, test } from 'vitest'
import { withEdits } from '../../../src/core/kitchen/edit'
import { workThrough } from '../../../src/core/plan/entry'
import type { Edit } from '../../../src/core/plan/types'
import { tryRule } from '../../support/rule-trial'
import { soundKitchen } from '../../support/sound-kitchen'

// Hand-worked, for all of these: the worktop is wished from 900 to 910 over a floor at −1005, from −105 to −95; it is 38
// thick on carcasses of 720, so that the base units end from −143 to −133 and begin from −863 to −853.
const boardB = (mm: number): Edit => ({ set: 'finishing.plinth-b.height', to: mm })
const finish = (mm: number): Edit => ({ set: 'floor.finishToCome', to: mm })
const laid = (where: string): Edit => ({ set: 'floor.finishWhere', to: where })
const dishwasher = (mm: number): Edit => ({ set: 'appliances.dishwasher-1.heightMin', to: mm })

tryRule('heights-clash', [
  {
    // F13: the floor at the right end of the dishwasher, in front, is at −1012.3: 149.3 below −863, the lowest that is
    // wished. A board of 157 reaches it up to −855.3; one of 140 is some 9 too low.
    what: 'a plinth board too low where the floor is lowest, which is in front of the dishwasher',
    inside: [boardB(157)],
    outside: [boardB(140)],
    weight: 'stop',
    about: ['plinth-b', 'dishwasher-space'],
    says: ['plinth along Garden wall'],
  },
  {
    // F60: the floor in the space is at −1010.2 at its highest: with 5 of working gap 872 is the most that goes in under −133.
    what: 'a dishwasher too high for its space',
    given: [laid('none')],
    inside: [dishwasher(868)],
    outside: [dishwasher(880)],
    weight: 'stop',
    about: ['dishwasher-1', 'dishwasher-space'],
    with: ['height-marginal'],
    says: ['dishwasher going in'],
  },
  {
    // F60 over a finish laid under it: −1010.3 + 820 + 5 up to −133 leaves 52.
    what: 'a finish laid in the space that lifts the dishwasher into the worktop',
    given: [laid('bays-and-front')],
    inside: [finish(47)],
    outside: [finish(60)],
    weight: 'stop',
    about: ['dishwasher-1'],
    says: ['dishwasher going in'],
  },
  {
    // F15: the same finish stops at the plinth: it goes in on the bare floor, and does not come out over the edge.
    what: 'a finish laid later, up to the plinth, that traps the dishwasher',
    given: [laid('up-to-plinth')],
    inside: [finish(47)],
    outside: [finish(60)],
    weight: 'stop',
    about: ['dishwasher-1'],
    with: ['height-marginal'],
    says: ['dishwasher coming out again'],
  },
  {
    // F58: the tall unit ends no lower than −1000.1 + 130 + 1970 = 1099.9, and the wall units in line with it; under a ceiling
    // at 1391 a lift of 300 and 10, wound down by 8, leave 1089.
    what: 'tops wished so high that a unit cannot be hooked on',
    given: [{ add: 'wishes.heights', item: { id: 'one-line', of: 'wall-top', equals: 'tall-top' } }],
    inside: [{ set: 'units.wall-4.hanging.hookLift', to: 262 }],
    outside: [{ set: 'units.wall-4.hanging.hookLift', to: 300 }],
    weight: 'stop',
    about: ['wall-4'],
    with: ['cannot-hook-on'],
    says: ['the room to hook on wall unit 4'],
  },
  {
    // F95: a board at −120 all along wants a worktop no higher; the lowest that is wished is −105.
    what: 'a window board that no worktop as high as was wished goes under',
    inside: [{ set: 'walls.b.openings.window-1.boardRight', to: { up: -90 } }],
    outside: [{ set: 'walls.b.openings.window-1.boardRight', to: { up: -120 } }],
    weight: 'stop',
    about: ['window-1', 'b'],
    says: ['15 mm', 'the window board over the worktop'],
  },
])

tryRule('preferred-height-given-up', [
  {
    // F58: 1391 − 268 − 10 leaves 1113 as it is; a lift of 276 leaves 1105, lower than the 1107 that all else asks for, and
    // wound down by 8 it leaves 1113 again.
    what: 'a unit that is hooked on with its height screws wound down',
    inside: [{ set: 'units.wall-4.hanging.hookLift', to: 262 }],
    outside: [{ set: 'units.wall-4.hanging.hookLift', to: 276 }],
    weight: 'warn',
    about: ['wall-4'],
    with: [],
    says: ['without winding its height screws down'],
  },
])

tryRule('leg-out-of-reach', [
  {
    // F11: the highest foot of a base unit stands at −1001.0, with a leg of 130 at least −871.0; the lowest foot of the sink
    // unit at −1010.7, with one of 135 at most −875.7.
    what: 'legs too short where the floor is low',
    inside: [{ set: 'units.base-5.legs.max', to: 158 }],
    outside: [{ set: 'units.base-5.legs.max', to: 135 }],
    weight: 'stop',
    about: ['base-1'],
    with: ['height-marginal', 'heights-clash', 'preferred-height-given-up'],
  },
])

tryRule('floor-step', [
  {
    // F16: the readings at the right end of the wall, back and front, lie 640.3 apart: 15 in a metre are 9.6 between them. The
    // front one reads 1012.
    what: 'a change of floor between two readings that is more than a slope',
    inside: [{ set: 'floor.readings.floor-b-back-4.drop', to: 1021 }],
    outside: [{ set: 'floor.readings.floor-b-back-4.drop', to: 1022 }],
    weight: 'ask',
    about: ['floor-b-back-4', 'floor-b-front-4'],
    says: ['10 mm', '640 mm apart'],
  },
])

tryRule('height-marginal', [
  {
    // The wish leaves −863 to −853, its lower end good to 2 (the wish and the floor). The lowest foot of the sink unit stands
    // at −1010.7, good to 1: with legs of 156 at most there are 8.3 above −863, with 149 there is 1.3.
    what: 'a room narrower than the readings at its two ends are good for',
    inside: [{ set: 'units.base-5.legs.max', to: 156 }],
    outside: [{ set: 'units.base-5.legs.max', to: 149 }],
    weight: 'ask',
    about: ['base-5'],
    says: ['leg of sink unit', 'your wish for the top of the worktop'],
  },
])

/** F12: heights are counted from the floor under units, and from no other. */
test('a hump where nothing stands moves no height, and the same hump under a foot does', () => {
  const heightsWith = (along: number, out: number) => {
    const at = { wall: 'b', along: { at: along }, out }
    const hump: Edit = { add: 'floor.readings', item: { id: 'hump', at, drop: 998 } }
    const outcome = workThrough(withEdits(soundKitchen(), [hump]))
    if (outcome.kind !== 'plan') throw new Error('no plan')
    const { highPoint } = outcome.plan.floor
    return { highest: highPoint.where, values: outcome.plan.heights.values.map(({ height }) => height) }
  }
  const sound = workThrough(soundKitchen())
  if (sound.kind !== 'plan') throw new Error('no plan')
  const inTheMiddle = heightsWith(1500, 1500)
  expect(inTheMiddle.highest).toBe(sound.plan.floor.highPoint.where)
  expect(inTheMiddle.values.map((figure) => ({ ...figure, from: [] }))).toEqual(
    sound.plan.heights.values.map(({ height }) => ({ ...height, from: [] })),
  )
  // The front right foot of the sink unit, 35 in from its right side at 1890.
  expect(heightsWith(1855, 500).highest).toBe('base-5.front-right')
})

test('the work says to wind the screws down first, and up again', () => {
  const lift: Edit = { set: 'units.wall-4.hanging.hookLift', to: 276 }
  const outcome = workThrough(withEdits(soundKitchen(), [lift]))
  if (outcome.kind !== 'plan') throw new Error('no plan')
  const does = (id: string) => outcome.plan.operations.find((one) => one.id === id)?.does ?? []
  const [down] = does('hang:wall-4').filter(({ key }) => key === 'operation.hang.wind-down')
  expect(down?.values['down']).toMatchObject({ value: 8 })
  expect(does('hang:wall-4').map(({ key }) => key)).toContain('operation.hang.wind-up')
  expect(does('hang:wall-3').map(({ key }) => key)).not.toContain('operation.hang.wind-down')
})
