/** Lifts of worktops and appliances, against figures worked by hand. */
import { describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { applianceLift, partLiftFindings, worktopLift } from '../../../src/core/lifting/part-lifts'
import { massOfWorktop } from '../../../src/core/lifting/worktop-mass'
import { say } from '../../../src/core/words/say'
import { plain } from '../../support/fixed-wall'
import { base, contextOf, workKitchen } from '../../support/work-kitchen'

type FileTop = NonNullable<KitchenFile['worktops']>[number]
type FileAppliance = NonNullable<KitchenFile['appliances']>[number]
type Crew = NonNullable<KitchenFile['crew']>['people']

const men = (...ids: readonly string[]): Crew => ids.map((id) => ({ id, filter: 'man' as const }))
const manAndWoman: Crew = [
  { id: 'a', filter: 'man' },
  { id: 'b', filter: 'woman' },
]

/** Three bases of 600, 600 and 800 side by side: 2 m. */
function kitchenWith(people: Crew, worktops: FileTop[], appliances: FileAppliance[]): KitchenFile {
  return {
    ...workKitchen(),
    units: [base('b1', 'a', 0, 600), base('b2', 'a', 600, 600), base('b3', 'a', 1200, 800)],
    rails: [],
    finishing: [],
    worktops,
    appliances,
    crew: { people },
  }
}

const laminate: FileTop = {
  id: 'top',
  over: ['b1', 'b2', 'b3'],
  thickness: 38,
  depth: 600,
  material: 'laminate',
}

function top(people: Crew, more: Partial<FileTop> = {}) {
  const { context } = contextOf(kitchenWith(people, [{ ...laminate, ...more }], []))
  const [worktop] = context.kitchen.worktops
  if (worktop === undefined) throw new Error('no worktop')
  return {
    mass: massOfWorktop(worktop, context),
    lift: worktopLift(worktop, context),
    findings: partLiftFindings(context).map((f) => `${f.id} ${f.weight}${f.dangerous ? ' dangerous' : ''}`),
    words: partLiftFindings(context).map((f) => say(f.say)),
  }
}

describe('what a worktop weighs', () => {
  // 38 mm board of 600 kg/m³ is 22.8 kg/m²; two faces of 0.8 mm laminate at 1.45 kg/m² a mm are 2.32: 25.12. On 0.6 × 2.0 m
  // 30.144. Compact of 12 mm at 1450 is 17.4 kg/m²: 20.88. Granite of 20 mm at 2700 is 54 kg/m²: 64.8.
  test.each([
    ['laminate', 38, 30.144],
    ['compact', 12, 20.88],
    ['stone', 20, 64.8],
    ['solid-timber', 40, 33.6],
    ['solid-surface', 12, 24.48],
  ] as const)('%s, %d mm', (material, thickness, kg) => {
    const { mass } = top(men('a', 'b'), { material, thickness })
    expect(mass.whole).toMatchObject({ state: 'assumed', value: kg })
    expect(mass.whole.from).toEqual(
      expect.arrayContaining(['worktops.top.depth', 'worktops.top.material', 'worktops.top.thickness']),
    )
  })

  test('its sheet comes first; what it is made of and what it lies on are not guessed', () => {
    expect(plain(top(men('a', 'b'), { mass: 41 }).mass.whole)).toBe(41)
    for (const more of [{ material: null }, { material: 'steel' as const }, { over: [] }]) {
      expect(plain(top(men('a', 'b'), more).mass.whole)).toBe('lacks worktops.top.mass')
    }
  })

  // A joint at 500 leaves 1500 of 2000: three quarters of 60 kg. One at its end is the joint to the next run.
  test('it is carried piece by piece', () => {
    const at = (place: number) => [{ id: 'j', wall: 'a', along: { at: place } }]
    expect(plain(top(men('a', 'b'), { mass: 60, joints: at(500) }).mass.heaviestPiece)).toBe(45)
    expect(plain(top(men('a', 'b'), { mass: 60, joints: at(1990) }).mass.heaviestPiece)).toBe(60)
    expect(
      plain(top(men('a', 'b'), { mass: 60, joints: [{ id: 'j', wall: 'a', along: {} }] }).mass.heaviestPiece),
    ).toBe(60)
  })
})

describe('who lifts a worktop', () => {
  // Knuckle to elbow: a man 25, a woman 16. Two men 33.333, man and woman 27.333, three men 37.5.
  test.each([
    ['two men, 33.3 kg', men('a', 'b'), 33.3, 2, 'none', []],
    ['two men, 33.4 kg', men('a', 'b'), 33.4, 2, 'end-by-end', ['lift-over-filter:top warn']],
    ['three men, 37.5 kg', men('a', 'b', 'c'), 37.5, 3, 'none', []],
    ['man and woman, 27.4 kg', manAndWoman, 27.4, 2, 'end-by-end', ['lift-over-filter:top warn']],
    ['man and woman, one end 27.3', manAndWoman, 54.6, 2, 'end-by-end', ['lift-over-filter:top warn']],
    ['man and woman, one end 27.4', manAndWoman, 54.8, 2, 'stop', ['lift-over-filter:top stop dangerous']],
    ['one man: never alone', men('a'), 10, 2, 'stop', ['lift-over-filter:top stop dangerous']],
    ['nobody', [], 10, 2, 'not-known', ['lift-not-known:top ask']],
  ] as const)('%s', (_, people, mass, hands, aid, findings) => {
    const found = top(people as Crew, { mass })
    expect(found.lift).toMatchObject({ people: hands, aid })
    expect(found.findings).toEqual(findings)
    expect(found.words.filter((words) => words.includes('[no '))).toEqual([])
  })

  test('nobody knows what it weighs: asked', () => {
    expect(top(men('a', 'b'), { material: null }).findings).toEqual(['lift-not-known:top ask'])
  })

  test('stone is left to its fitters', () => {
    const found = top(manAndWoman, { material: 'stone', mass: 110 })
    expect(found.lift.aid).toBe('fitters')
    expect(found.findings).toEqual([])
  })
})

describe('who lifts an appliance', () => {
  // A hood over the head: a man 10, a woman 7; two men 13.333; on a prop, 20 and 13: two men 26.667. A hob at the worktop: a
  // man 25, a woman 16. Anything else from the floor: 20 and 13; two men 26.667, man and woman 22.
  test.each([
    ['hood', 13.3, men('a', 'b'), 2, 'none'],
    ['hood', 13.4, men('a', 'b'), 2, 'prop'],
    ['hood', 8, men('a'), 2, 'stop'],
    ['hob', 12, men('a', 'b'), 1, 'none'],
    ['hob', 16, manAndWoman, 1, 'none'],
    ['hob', 16.5, manAndWoman, 2, 'none'],
    ['oven', 21, men('a', 'b'), 2, 'none'],
    ['oven', 27, men('a', 'b'), 2, 'stop'],
    ['oven', null, men('a', 'b'), 2, 'not-known'],
    ['dishwasher', 35, men('a', 'b'), 2, 'rolled'],
    ['dishwasher', null, men('a', 'b'), 2, 'rolled'],
    ['boiler', 40, men('a', 'b'), 1, 'fitters'],
  ] as const)('%s, %s kg', (kind, mass, people, hands, aid) => {
    const { context } = contextOf(kitchenWith(people as Crew, [], [{ id: 'x', kind, mass }]))
    const [appliance] = context.kitchen.appliances
    if (appliance === undefined) throw new Error('no appliance')
    expect(applianceLift(appliance, context)).toMatchObject({ people: hands, aid })
    const told = partLiftFindings(context).map((f) => `${f.id} ${f.weight}`)
    expect(told).toEqual(aid === 'prop' || aid === 'stop' ? ['lift-over-filter:x warn'] : [])
  })
})
