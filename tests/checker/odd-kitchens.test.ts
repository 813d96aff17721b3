import { expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import { type Outcome, workThrough } from '../../src/core/plan/entry'
import type { Plan } from '../../src/core/plan/types'
import { handBuiltPlan, kitchen } from './hand-built'

/** Files with a slip in them, or with something left out: the planner and the checker read them alike. */

type Json = Readonly<Record<string, unknown>>

const [wall, base, hung] = [kitchen.walls[0], kitchen.units[0], kitchen.units[1]]
const [plug] = kitchen.fixings
const withBase = (more: Json): Json => ({ ...kitchen, units: [{ ...base, ...more }, hung] })
const withWall = (more: Json): Json => ({ ...kitchen, walls: [{ ...wall, ...more }] })
const withReadings = (change: (reading: Json) => Json): Json => ({
  ...kitchen,
  floor: { readings: kitchen.floor.readings.map(change) },
})

function outcomeOf(file: Json): Outcome {
  const outcome = workThrough(file)
  if (outcome.kind === 'plan') expect(checkPlan(file, outcome.plan).refusals).toEqual([])
  return outcome
}
function planOf(file: Json): Plan {
  const outcome = outcomeOf(file)
  if (outcome.kind !== 'plan') throw new Error(`no plan: ${JSON.stringify(outcome).slice(0, 1000)}`)
  return outcome.plan
}
const rules = (plan: Plan): readonly string[] => plan.findings.map(({ id }) => id)
const refusedIn = (file: Json, plan: Plan = handBuiltPlan()): readonly string[] =>
  checkPlan(file, plan).refusals.map(({ rule, what }) => `${rule} | ${what}`)

test('how deep a screw must hold left out: its holes are as deep as before, and asked about', () => {
  const file = { ...kitchen, fixings: [{ ...plug, embedment: null }] }
  const plan = planOf(file)
  expect(plan.holes.map(({ depth }) => depth)).toEqual(planOf(kitchen).holes.map(({ depth }) => depth))
  expect(new Set(plan.holes.map(({ verdict }) => verdict))).toEqual(new Set(['ask']))
  expect(rules(plan)).toContain('screw-hold-not-known:a.plate')
  expect(refusedIn(file)).toContain('verdict | plate.w1.left.1')
})

test('the base of a wall left out of its layers: its name says what it is of', () => {
  const layers = [{ id: 'plaster', material: 'plaster', thickness: 12 }]
  const file = {
    ...withWall({ construction: 'old-brick', layers }),
    fixings: [{ ...plug, into: ['old-brick'] }],
  }
  expect(planOf(file).holes.map((hole) => hole.fixing)).toEqual(['plug', 'plug', 'plug', 'plug'])
})

test('the thickness of a panel left out: a bracket is moved by a usual one, and stays behind its unit', () => {
  const accessories = [
    { id: 'socket', kind: 'socket', along: { at: 350 }, height: { up: 60 }, width: 86, tall: 86 },
  ]
  const walls = [{ ...wall, accessories }]
  const file = { ...withBase({ board: null, order: { left: { at: 300 } } }), walls }
  const plan = planOf(file)
  expect(plan.holes.map(({ id }) => id)).toContain('base-bracket.b1.left.refused')
  const outside = plan.holes.map((hole) =>
    hole.id === 'base-bracket.b1.left' && hole.along.state !== 'unknown'
      ? { ...hole, along: { ...hole.along, value: 250 } }
      : hole,
  )
  expect(refusedIn(file, { ...plan, holes: outside })).toContain('hole | base-bracket.b1.left')
})

test('a unit past the end of its wall: nothing is drilled where there is no wall', () => {
  const file = { ...kitchen, units: [base, { ...hung, order: { left: { at: 2000 } } }] }
  const plan = planOf(file)
  const past = plan.holes.filter(({ along }) => along.state !== 'unknown' && along.value > 2400)
  expect(past.map(({ id, verdict }) => [id, verdict])).toEqual([['plate.w1.right.1', 'refused']])
  expect(refusedIn(withWall({ length: 800 }))).toContain('verdict | plate.w1.right.1')
})

test('a filler whose wall is left out: what stands beside it waits for that', () => {
  const filler = { id: 'f', kind: 'filler', order: { left: { at: 0 } }, width: 50 }
  const plan = planOf({ ...withBase({ order: { rightOf: 'f' } }), finishing: [filler] })
  expect(plan.units.find(({ unit }) => unit === 'b1')?.left).toMatchObject({ missing: ['finishing.f.wall'] })
})

test('the length of a wall left out: a bracket may have to give way to the strip at its end, wherever that is', () => {
  const plan = planOf(withWall({ length: null }))
  expect(plan.holes.find(({ id }) => id === 'base-bracket.b1.right')?.along).toMatchObject({
    missing: ['walls.a.length'],
  })
})

test('a leg that gets no longer by turning is refused, with its place', () => {
  const outcome = outcomeOf(withBase({ legs: { ...base.legs, perTurn: 0 } }))
  expect(outcome.kind === 'refused' && outcome.problems.map(({ path }) => path)).toEqual([
    'units "b1" › legs › perTurn',
  ])
})

test('a part of a hole in a plate is refused, with its place', () => {
  const hanging = { ...hung.hanging, plateHoles: 0.2 }
  const outcome = outcomeOf({ ...kitchen, units: [base, { ...hung, hanging }] })
  expect(outcome.kind === 'refused' && outcome.problems.map(({ path, message }) => [path, message])).toEqual([
    ['units "w1" › hanging › plateHoles', 'This is 0.2; it must be a whole number from 1 to 12.'],
  ])
})

test('past the readings of a wall that has no place the floor is not known while others are not placed', () => {
  const walls = [
    { ...wall, cornerRight: {} },
    { id: 'b', length: 2000 },
  ]
  const [first, ...rest] = kitchen.floor.readings
  const shifted = rest.map((r) => ({
    ...r,
    at: { ...r.at, wall: 'b', along: { at: r.at.along.at / 2 + 300 } },
  }))
  const units = [{ ...base, wall: 'b', order: { left: { at: 0 } } }]
  const plan = planOf({ ...kitchen, walls, units, worktops: [], floor: { readings: [first, ...shifted] } })
  expect(plan.units[0]?.legs.map((leg) => leg.floor.state)).toContain('unknown')
})

test('heights not known yet: a bracket gives way to the strip beside a corner all the same', () => {
  const walls = [
    { ...wall, cornerRight: { angle: 90 } },
    { ...wall, id: 'b', accessories: [] },
  ]
  const units = [{ ...base, wall: 'b', order: { left: { at: 0 } } }]
  const file = { ...kitchen, walls, units, worktops: [], floor: { readings: [] } }
  const plan = planOf(file)
  const bracket = (id: string) => plan.holes.find((hole) => hole.id === `base-bracket.b1.${id}`)
  expect(bracket('left.refused')).toMatchObject({ height: { state: 'unknown' }, along: { value: 48 } })
  // The strip is 150 wide: from 48 in steps of 10 the first place past it is 158.
  expect(bracket('left')?.along).toMatchObject({ value: 158 })
  const back = plan.holes.map((hole) =>
    hole.id === 'base-bracket.b1.left' && hole.along.state !== 'unknown'
      ? { ...hole, along: { ...hole.along, value: 188 } }
      : hole,
  )
  expect(refusedIn(file, { ...plan, holes: back })).toContain('hole | base-bracket.b1.left along')
})

test('an island alone: nothing is marked on the wall it is measured from, and its top is levelled to the line', () => {
  const island = { ...base, id: 'i1', kind: 'island', standOff: 900 }
  const plan = planOf({ ...kitchen, units: [island], worktops: [] })
  expect(plan.operations.map(({ id }) => id)).not.toContain('set-out-widths:a')
  expect(plan.reasons.map(({ id }) => id)).toContain('strike:line < level:i1: datum.line-before-marks')
})

test('a wish that cannot hold: another is missing, though the list of them is not empty', () => {
  const heights = [{ id: 'h', of: 'worktop-top', min: { up: 100 }, max: { up: -100 } }]
  const plan = planOf({ ...kitchen, units: [], worktops: [], wishes: { heights } })
  expect(plan.heights.values.map(({ height }) => height)).toMatchObject([{ missing: ['wishes.heights'] }])
})

test('two readings of one place: the floor goes on past them, and which of them is right is asked', () => {
  const extra = { ...kitchen.floor.readings[0], id: 'r1-again', drop: 1008 }
  const plan = planOf({ ...kitchen, floor: { readings: [...kitchen.floor.readings, extra] } })
  expect(plan.floor.plane).not.toBeNull()
  expect(rules(plan)).toContain('floor-step:r1+r1-again')
})

test('a foot left out so that the unit tips: it is held, and the foot is asked for', () => {
  const feet = base.feet.slice(0, 3).map((foot) => ({ ...foot, y: foot.y * 0.9 }))
  const file = withBase({ feet })
  const plan = planOf(file)
  expect(rules(plan)).toContain('unit-tips:b1')
  const letGo = plan.operations.map((op) => ({ ...op, holding: op.kind === 'place' ? [] : op.holding }))
  expect(refusedIn(file, { ...plan, operations: letGo })).toContain('standing | b1')
})

test('one drop typed wrong: a unit does not go into the floor that was read', () => {
  const outcome = outcomeOf(withReadings((r) => (r['id'] === 'r1' ? { ...r, drop: 0 } : r)))
  expect(outcome.kind === 'no-order' && outcome.noPlan.trapped.map(({ say }) => say.key)).toEqual([
    'placing.no-room-in-place',
  ])
})

test('past the readings, a unit in the floor guessed from them is asked about, and told by how much', () => {
  // The unit stands from 300 on; nothing nearer the corner than 310 was read.
  const file = withReadings((r) => ({
    ...r,
    ...(r['id'] === 'r1' || r['id'] === 'r3'
      ? { at: { wall: 'a', along: { at: 310 }, out: r['id'] === 'r1' ? 0 : 1600 } }
      : {}),
    ...(r['id'] === 'r4' ? { drop: 3000 } : {}),
  }))
  const plan = planOf(file)
  expect(rules(plan)).toContain('floor-not-read-under:b1')
  const untold = plan.findings.filter(({ rule }) => rule !== 'floor-not-read-under')
  expect(refusedIn(file, { ...plan, findings: untold })).toContain('path blocked | path of b1')
})

test('what a layer is made of left out: no hole has a fixing or a depth, and the checker allows it none', () => {
  const [, ...others] = wall?.layers ?? []
  const layers = [{ id: 'some', thickness: 12 }, ...others]
  const plan = planOf(withWall({ layers }))
  expect(plan.holes.map(({ fixing, depth }) => [fixing, depth.state])).toEqual(
    plan.holes.map(() => [null, 'unknown']),
  )
  expect(plan.holes.length).toBeGreaterThan(0)
  expect(refusedIn(withWall({ layers }), planOf(kitchen))).toEqual(
    expect.arrayContaining(plan.holes.map(({ id }) => `hole | ${id}`)),
  )
})
