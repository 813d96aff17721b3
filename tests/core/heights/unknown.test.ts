import { expect, test } from 'vitest'
import { type Figure, hasValue } from '../../../src/core/figure'
import type { Kitchen } from '../../../src/core/kitchen/schema'
import { baseUnit, ceilingAt, rowKitchen, wallUnit, withDishwasher } from '../../support/row-kitchen'
import {
  atLeft,
  heightIn,
  knownFacts,
  placeOn,
  readingOf,
  sure,
  without,
  workThrough,
} from '../../support/surveyed'

test('one unknown drop under a foot leaves every height that rests on it unknown, and is asked for', () => {
  const { worked } = workThrough(without(withDishwasher(), 'floor.readings.f2.drop'))
  for (const { height } of worked.heights.values) {
    expect(height).toMatchObject({ state: 'unknown', missing: ['floor.readings.f2.drop'] })
  }
  const asked = worked.findings.filter(({ rule }) => rule === 'height-demand-unknown')
  expect(asked.map(({ id }) => id)).toContain('height-demand-unknown:leg-reach:base-2.br')
  expect(asked.every(({ weight }) => weight === 'ask')).toBe(true)
})

test('heights that nothing joins to it stay known', () => {
  const wishes = { heights: [{ id: 'w', of: 'tall-top', min: { up: sure(100) }, max: { up: sure(110) } }] }
  const kitchen = workThrough(without(withDishwasher({ wishes }), 'units.base-1.legs.max'))
  expect(heightIn(kitchen, 'base-underside')).toBe('unknown')
  expect(heightIn(kitchen, 'tall-top')).toBe(105)
})

test('a wish without its figure, and an appliance without its highest, only ask or say nothing', () => {
  const wishes = { heights: [{ id: 'w', of: 'worktop-top', min: {} }] }
  const kitchen = workThrough(without(withDishwasher({ wishes }), 'appliances.dw.heightMax'))
  // −867.4 … −822.3 without bay-max: middle −844.85.
  expect(heightIn(kitchen, 'base-underside')).toBe(-845)
  expect(kitchen.worked.findings.map(({ id }) => id)).toEqual(['height-demand-unknown:wish:w'])
})

test('a wish above a floor that was not read cannot be kept to, so that its height is not known', () => {
  const wishes = {
    heights: [
      { id: 'low', of: 'tall-top', min: { aboveFloor: sure(2000) }, place: placeOn('a', 5900, 350) },
      { id: 'high', of: 'tall-top', max: { up: sure(1300) } },
    ],
  }
  const whole = rowKitchen({ wishes })
  // −1011.8 + 2000 = 988.2 … 1300: 1144.1.
  expect(heightIn(workThrough(whole), 'tall-top')).toBe(1144)
  const { worked } = workThrough(without(whole, 'floor.readings.f2.drop'))
  expect(worked.heights.values[0]?.height).toMatchObject({ missing: ['floor.readings.f2.drop'] })
})

test('a missing working gap, carcass height, worktop thickness or hook lift leaves heights unknown', () => {
  const whole = withDishwasher({ units: [wallUnit('w', { left: atLeft(0) })], ceiling: ceilingAt(1400) })
  expect(heightIn(workThrough(whole), 'wall-top')).not.toBe('unknown')
  for (const fact of [
    'appliances.dw.workingGap',
    'units.base-2.height',
    'worktops.top.thickness',
    'units.w.hanging.hookLift',
    'ceiling.c1.height.up',
  ]) {
    const kitchen = workThrough(without(whole, fact))
    expect([fact, heightIn(kitchen, 'wall-top')]).toEqual([fact, 'unknown'])
  }
})

/** Two walls with all that heights speak of, everything read and nothing exact. */
function wholeKitchen(): Kitchen {
  const loose = (value: number, pm: number) => ({ value, pm })
  return withDishwasher({
    closed: null,
    walls: [
      { id: 'a', length: loose(3000, 2), cornerRight: { angle: loose(90.4, 0.1) } },
      { id: 'b', length: loose(2600, 2) },
    ],
    floor: {
      finishToCome: sure(8),
      finishWhere: 'up-to-plinth',
      readings: [
        ...[0, 900, 1800, 2900].flatMap((x, i) => [
          readingOf(`a-back-${i}`, 'a', x, 0, 1000 + 2 * i, 1),
          readingOf(`a-front-${i}`, 'a', x, 650, 1001 + 2 * i, 1),
        ]),
        ...[800, 1600, 2500].flatMap((x, i) => [
          readingOf(`b-back-${i}`, 'b', x, 0, 1007 + i, 1),
          readingOf(`b-front-${i}`, 'b', x, 650, 1006 + i, 1),
        ]),
      ],
    },
    units: [
      baseUnit('base-b', { left: atLeft(1000) }, { wall: 'b' }),
      baseUnit('tall', { rightOf: 'base-b' }, { wall: 'b', kind: 'tall', height: sure(1970) }),
      wallUnit('wall-1', { left: { from: 'right', at: loose(600, 1) } }, { wall: 'a' }),
      wallUnit('wall-2', { leftOf: 'wall-1' }, { height: sure(360) }),
    ],
    ceiling: [
      ...ceilingAt(1400).slice(0, 1),
      { id: 'c3', at: placeOn('a', 2900, 100), height: { up: loose(1396, 1) } },
      { id: 'c4', at: placeOn('b', 2400, 200), height: { up: loose(1398, 1) } },
      { id: 'c5', at: placeOn('b', 300, 2400), height: { up: loose(1402, 1) } },
    ],
    wishes: {
      heights: [
        {
          id: 'mine',
          of: 'worktop-top',
          min: { aboveFloor: sure(900) },
          max: { aboveFloor: sure(915) },
          place: placeOn('a', 900, 600),
        },
      ],
    },
  })
}

/** Every figure that is worked out, by a name of its own. */
function figuresOf(kitchen: Kitchen): ReadonlyMap<string, Figure> {
  const { survey, positions, worked } = workThrough(kitchen)
  const figures = new Map<string, Figure>()
  for (const { wall, ceiling } of survey.frames) figures.set(`ceiling over ${wall}`, ceiling)
  for (const { unit, left, right } of positions.units) {
    figures.set(`${unit.id} left`, left)
    figures.set(`${unit.id} right`, right)
  }
  for (const { of, height } of worked.heights.values) figures.set(of, height)
  for (const [unit, underside] of worked.undersides) figures.set(`under ${unit}`, underside)
  for (const [unit, legs] of worked.legs) {
    for (const { foot, floor, extension, turns } of legs) {
      figures.set(`floor under ${unit} ${foot}`, floor)
      figures.set(`extension ${unit} ${foot}`, extension)
      figures.set(`turns ${unit} ${foot}`, turns)
    }
  }
  for (const [unit, room] of worked.hookOn) if (room !== null) figures.set(`over ${unit}`, room.there)
  figures.set('high point', worked.highPoint.z)
  figures.set('fall', worked.fall)
  return figures
}

/**
 * Where readings lie on the plan says which triangles there are, and a fact on which no figure has to wait when it is
 * left out: a wish, a gap, the highest an appliance reaches, a plinth.
 */
const MAY_STAY_KNOWN = [
  /^floor\.readings\.[\w-]+\.at\./,
  /^ceiling\.[\w-]+\.at\./,
  /^wishes\./,
  /\.heightMax$/,
  /^finishing\./,
  /^floor\.finishToCome$/,
]

test('a fact left out makes just those figures unknown that cite it, and leaves the others as they were', () => {
  const whole = wholeKitchen()
  const before = figuresOf(whole)
  const names = [...before.keys()]
  expect([...before.values()].every(hasValue)).toBe(true)
  let judged = 0
  for (const fact of knownFacts(whole)) {
    const after = figuresOf(without(whole, fact))
    const stays = MAY_STAY_KNOWN.some((pattern) => pattern.test(fact))
    for (const name of names) {
      const [was, is] = [before.get(name) as Figure, after.get(name)]
      if (!was.from.includes(fact)) {
        // A reading that loses its place leaves the surface; the triangles it was no corner of stay.
        expect([fact, name, is]).toEqual([fact, name, was])
      } else if (!stays) {
        expect([fact, name, is?.state]).toEqual([fact, name, 'unknown'])
        expect(is?.state === 'unknown' && is.missing).toContain(fact)
      }
      judged++
    }
  }
  expect(judged).toBeGreaterThan(10_000)
})
