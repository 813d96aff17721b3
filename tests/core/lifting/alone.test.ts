/** Lifts by one person where the guidance recommends a weight for one, against figures worked by hand. */
import { expect, test } from 'vitest'
import { known } from '../../../src/core/figure'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { liftOf, type SetDown } from '../../../src/core/lifting/lifting'
import { applianceLift, partLiftFindings } from '../../../src/core/lifting/part-lifts'
import { regionPack } from '../../../src/core/region/region'
import { say } from '../../../src/core/words/say'
import {
  baseUnit,
  exact,
  type Json,
  plain,
  tallUnit,
  wallFile,
  wallUnit,
  worked,
} from '../../support/fixed-wall'
import { base, contextOf, workKitchen } from '../../support/work-kitchen'

const REGION = 'north-america'
const men = (...ids: readonly string[]) => ids.map((id) => ({ id, filter: 'man' as const }))
const mm = (value: number) => known(value, 0, 'mm', [])
const SET_DOWN = { underside: mm(-850), floor: mm(-1000) }

function lift(unit: Json, people: readonly Json[], setDown?: SetDown, lifter: number | null = null) {
  const crew = { people, lifter: lifter === null ? null : { rated: lifter } }
  const { kitchen, positions } = worked(wallFile({ units: [unit], rest: { crew } }))
  const position = positions[0]
  if (position === undefined) throw new Error('no unit')
  return liftOf(position, kitchen, regionPack(REGION), setDown)
}
const said = ({ lift: plan, findings }: ReturnType<typeof lift>) => [
  plan.people,
  plan.aid,
  findings.map((f) => `${f.id} ${f.weight}`),
]
const weighing = (unit: Json, massStripped: number, more: Json = {}): Json => ({
  ...unit,
  massStripped: exact(massStripped),
  ...more,
})

// A base 560 deep on legs of 150: lifted at V 0, H 25 + 28 = 53: 25/53 × .775 × 1 × .9 × 23 = 7.567. Set down at V 15, which
// is still below the knees: .82 for V: 25/53 × .82 × .9 × 23 = 8.007. D is 15, and counts as 25, where nothing is taken off.
test('a base unit: off the floor, and set down on its legs', () => {
  const { alone } = lift(baseUnit, men('a'), SET_DOWN).lift
  expect(alone && [alone.lifting, alone.placing, alone.lower].map(plain)).toEqual([7.567, 8.007, 7.567])
})

test.each([
  ['one man, 7.5 kg', 7.5, men('a'), {}, [1, 'none', []]],
  [
    'one man, 7.6 kg, built',
    7.6,
    men('a'),
    { assembled: 'built' },
    [null, 'stop', ['lift-over-filter:b stop']],
  ],
  [
    'one man, 7.6 kg, in a flat box',
    7.6,
    men('a'),
    { assembled: 'flat-packed' },
    [null, 'lighten-it', ['lift-over-filter:b warn']],
  ],
  ['two men, 7.5 kg', 7.5, men('a', 'b'), {}, [1, 'none', []]],
  ['two men, 7.6 kg', 7.6, men('a', 'b'), {}, [2, 'none', []]],
  ['two men, 26.6 kg: the British filter', 26.6, men('a', 'b'), {}, [2, 'none', []]],
  [
    'two men, 26.7 kg',
    26.7,
    men('a', 'b'),
    { assembled: 'built' },
    [null, 'stop', ['lift-over-filter:b stop']],
  ],
])('who lifts a base unit: %s', (_, mass, crew, more, expected) => {
  expect(said(lift(weighing(baseUnit, mass, more), crew, SET_DOWN))).toEqual(expected)
})

test('close to it, and nobody to help: told', () => {
  const { findings } = lift({ ...baseUnit, massStripped: { value: 7.5, pm: 0.5 } }, men('a'), SET_DOWN)
  expect(findings.map((f) => say(f.say))).toEqual([
    'Lifting base unit 1, 7.5 ± 0.5 kg, comes close to the weight recommended for one person, 7.6 kg. Weigh it before you lift it.',
  ])
})

test('where it is set down is not known: one is asked about it, two go by their filter', () => {
  expect(said(lift(weighing(baseUnit, 5), men('a')))).toEqual([null, 'none', ['lift-not-known:b ask']])
  expect(said(lift(weighing(baseUnit, 5), men('a', 'b')))).toEqual([2, 'none', []])
})

test('a wall unit is never for one, whatever is recommended, and the lifter may still take it', () => {
  const alone = lift(weighing(wallUnit, 3), men('a'), SET_DOWN)
  expect(said(alone)).toEqual([null, 'stop', ['lift-over-filter:w stop']])
  expect(say(alone.findings[0]?.say ?? { key: '', values: {} })).toContain(
    'not for one person, and not from steps',
  )
  expect(lift(weighing(wallUnit, 30), men('a'), undefined, 30).lift).toMatchObject({
    people: 1,
    aid: 'lifter',
  })
})

test('one end of a tall is no lift of the equation', () => {
  const { lift: plan } = lift(weighing(tallUnit, 26), men('a', 'b'), SET_DOWN)
  expect([plan.people, plan.alone]).toEqual([2, undefined])
})

function appliance(people: KitchenFile['crew'], one: NonNullable<KitchenFile['appliances']>[number]) {
  const file: KitchenFile = {
    ...workKitchen(),
    region: REGION,
    units: [base('b1', 'a', 0, 600)],
    rails: [],
    finishing: [],
    worktops: [
      {
        id: 'top',
        over: ['b1'],
        thickness: 38,
        depth: 600,
        mass: 10,
        cutouts:
          one.kind === 'sink'
            ? [
                {
                  id: 'hole',
                  for: 'x',
                  wall: 'a',
                  left: { at: 50 },
                  width: 500,
                  depth: { value: 460, pm: 0 },
                },
              ]
            : [],
      },
    ],
    appliances: [one],
    ...(people === undefined ? {} : { crew: people }),
  }
  const { context } = contextOf(file)
  const [it] = context.kitchen.appliances
  if (it === undefined) throw new Error('no appliance')
  return { lift: applianceLift(it, context), findings: partLiftFindings(context), context }
}

// A cut-out 460 from front to back: off the floor H 25 + 23 = 48: 25/48 × .775 × .9 × 23 = 8.355, less for how far it goes up.
test('a sink is as deep as its cut-out, and goes up to the worktop', () => {
  const { lift: plan, context } = appliance({ people: men('a', 'b') }, { id: 'x', kind: 'sink', mass: 8 })
  const top = context.heights.values.find((v) => v.of === 'worktop-top')?.height
  const floor = context.floor.highPoint.z
  if (top?.state !== 'known' || floor.state === 'unknown') throw new Error('no worktop height')
  const up = (top.value - floor.value) / 10
  expect(plain(plan.alone?.lifting ?? top)).toBeCloseTo(8.355 * (0.82 + 4.5 / up), 2)
  expect(plan).toMatchObject({ people: 2, aid: 'none' })
})

test('an oven is held against it too, and its depth is asked of its sheet', () => {
  const oven = { id: 'o', kind: 'oven' as const, mass: 30, over: 'b1' }
  const open = appliance({ people: men('a') }, oven)
  expect(open.lift).toMatchObject({ aid: 'weight-not-known', people: 2 })
  expect(open.findings.map((f) => `${f.id} ${f.weight}`)).toContain('lift-not-known:o ask')
  const { lift: plan, findings } = appliance({ people: men('a') }, { ...oven, depthNeeded: 560 })
  expect(plan.aid).toBe('stop')
  expect(findings.map((f) => say(f.say)).join(' ')).toContain('over the weight recommended for one person')
})
