import { expect, test } from 'vitest'
import { nothingAchieved } from '../../../src/core/daylog/achieved'
import { known } from '../../../src/core/figure'
import type { Message } from '../../../src/core/message'
import { heightsWords } from '../../../src/core/words/en/heights'
import { surveyWords } from '../../../src/core/words/en/survey'
import {
  baseUnit,
  ceilingAt,
  rowKitchen,
  TWO_BASES,
  WORKTOP,
  wallUnit,
  withDishwasher,
} from '../../support/row-kitchen'
import { atLeft, kitchenOf, placeOn, readingOf, sure, wallsOf, workThrough } from '../../support/surveyed'

const words: Readonly<Record<string, string>> = { ...heightsWords, ...surveyWords }

function spoken(
  kitchen: ReturnType<typeof rowKitchen>,
  stands: readonly (readonly [string, number])[] = [],
  isStruck = true,
): readonly Message[] {
  const undersides = new Map(stands.map(([unit, z]) => [unit, known(z, 0, 'mm', ['log'])]))
  const struck = isStruck ? new Map([['worktop-top' as const, known(-100, 1, 'mm', ['log'])]]) : new Map()
  const { survey, positions, worked } = workThrough(kitchen, { ...nothingAchieved, undersides, struck })
  const findings = [...survey.findings, ...positions.findings, ...worked.findings]
  return [
    ...worked.heights.demands.map(({ because }) => because),
    ...findings.flatMap(({ say, ask }) => (ask === null ? [say] : [say, ask])),
  ]
}

const UNDER_A_WINDOW = {
  units: [baseUnit('b', { left: atLeft(0) })],
  worktops: [{ id: 'top', over: ['b'], thickness: sure(38) }],
  walls: wallsOf([6000]).map((wall) => ({
    ...wall,
    openings: [
      {
        id: 'window',
        kind: 'window',
        left: atLeft(100),
        right: atLeft(500),
        bottom: {},
        top: {},
        boardProjection: sure(40),
        boardLeft: { up: sure(-70) },
        boardRight: { up: sure(-72) },
      },
    ],
  })),
}

/** One unit at a height that leaves its legs, from 130 to 180 long, a millimetre to an end, over a floor read to 2. */
const nearAnEnd = (down: number) =>
  rowKitchen({
    floor: {
      readings: [
        readingOf('f1', 'a', 0, 0, 1000, 2),
        readingOf('f2', 'a', 3000, 0, 1000, 2),
        readingOf('f3', 'a', 0, 700, 1000, 2),
        readingOf('f4', 'a', 3000, 700, 1000, 2),
      ],
    },
    units: [baseUnit('u', { left: atLeft(300) })],
    wishes: {
      heights: [{ id: 'x', of: 'base-underside', min: { down: sure(down) }, max: { down: sure(down) } }],
    },
  })

const everything: readonly Message[] = [
  ...spoken(
    withDishwasher({
      floor: { finishToCome: sure(8), finishWhere: 'up-to-plinth' },
      ceiling: ceilingAt(1000),
      finishing: [{ id: 'p', kind: 'plinth', of: ['base-1'], height: sure(150), setBack: sure(50) }],
      units: [
        baseUnit('t', { rightOf: 'space' }, { kind: 'tall' }),
        baseUnit('box', { rightOf: 't' }, { stands: 'shims' }),
        baseUnit('bare', { rightOf: 'box' }, { feet: [] }),
        baseUnit('unsaid', { rightOf: 'bare' }, { stands: null }),
        baseUnit('off', { rightOf: 'unsaid' }, { standOff: sure(900) }),
        baseUnit('past', { left: { from: 'right', at: sure(300) } }, { height: sure(500) }),
        baseUnit('perhaps', { left: { from: 'right', at: { value: 599, pm: 2 } } }),
        wallUnit('w', { left: atLeft(0) }),
        wallUnit('w2', { rightOf: 'w' }, { stands: null }),
      ],
      wishes: {
        heights: [
          { id: 'x', of: 'worktop-top', max: { down: sure(120) } },
          { id: 'v', of: 'worktop-top', min: { aboveFloor: sure(800) }, place: placeOn('a', 300, 600) },
          { id: 'y', of: 'worktop-top', min: { down: sure(119) } },
          { id: 'z', of: 'wall-top', equals: 'tall-top' },
          { id: 'q', of: 'wall-top', min: { up: sure(900) }, max: {} },
        ],
      },
    }),
  ),
  ...spoken(rowKitchen({ units: [wallUnit('w', { left: atLeft(0) })], ceiling: ceilingAt(1100) }), [
    ['w', 360],
  ]),
  ...spoken(
    rowKitchen({
      units: [wallUnit('w', { left: atLeft(0) }, { hanging: { hookLift: sure(25), down: sure(8) } })],
      ceiling: ceilingAt(1100),
    }),
    [['w', 360]],
  ),
  ...spoken(nearAnEnd(869), [], false),
  ...spoken(nearAnEnd(821), [], false),
  ...spoken(rowKitchen(UNDER_A_WINDOW), [], false),
  ...spoken(withDishwasher({ floor: { finishWhere: 'none' } }), [], false),
  ...spoken(
    rowKitchen({ units: [baseUnit('u', { left: atLeft(0) })], floor: { finishWhere: 'none' } }),
    [],
    false,
  ),
  ...spoken(rowKitchen({ units: [baseUnit('u', { left: atLeft(0) })] }), [['u', -810]]),
  ...spoken(rowKitchen({ units: [baseUnit('u', { left: atLeft(0) })] }), [['u', -900]]),
  ...spoken(
    kitchenOf({
      closed: true,
      walls: wallsOf([3000, 90], [2000, 90], [3000, 90], [2050, 90]),
      floor: {
        readings: [
          readingOf('f1', 'a', 0, 0, 1000, 1),
          readingOf('f2', 'a', 600, 0, 1049, 1),
          readingOf('f3', 'a', 0, 700, 1000),
          { id: 'f4', at: placeOn('a', 3000, 0) },
        ],
      },
      units: [
        baseUnit(
          'u',
          { left: atLeft(0) },
          {
            feet: [
              { id: 'l', x: sure(0), y: sure(0) },
              { id: 'r', x: sure(600), y: sure(0) },
            ],
          },
        ),
        baseUnit('v', { left: atLeft(2000) }, { standOff: sure(1000) }),
      ],
    }),
  ),
  ...spoken(
    rowKitchen({
      floor: {
        readings: [
          readingOf('f1', 'a', 0, 0, 1000, 1),
          readingOf('f2', 'a', 600, 0, 1049, 1),
          readingOf('f3', 'a', 0, 700, 1000),
        ],
      },
      units: [
        baseUnit(
          'u',
          { left: atLeft(0) },
          {
            feet: [
              { id: 'l', x: sure(0), y: sure(0) },
              { id: 'r', x: sure(600), y: sure(0) },
            ],
          },
        ),
      ],
    }),
  ),
  ...spoken(
    rowKitchen({
      floor: {
        readings: [
          readingOf('f1', 'a', 0, 0, 1000, 2),
          readingOf('f1-again', 'a', 0, 0, 1020, 2),
          readingOf('f2', 'a', 3000, 0, 1000, 2),
          readingOf('f3', 'a', 0, 700, 1000, 2),
        ],
      },
      units: [baseUnit('u', { left: atLeft(300) })],
    }),
  ),
  // So high a carcass that its legs leave nothing usual for a worktop.
  ...spoken(
    rowKitchen({
      floor: { finishWhere: 'none' },
      units: TWO_BASES.map((unit) => ({ ...unit, height: sure(820) })),
      worktops: [{ ...WORKTOP, over: ['base-1', 'base-2'] }],
    }),
    [],
    false,
  ),
]

test('everything said has words, and every word in braces is filled', () => {
  expect(everything.length).toBeGreaterThan(60)
  for (const { key, values } of everything) {
    const template = words[key]
    expect([key, typeof template]).toEqual([key, 'string'])
    for (const [, name = ''] of (template ?? '').matchAll(/\{(\w+)(?::\w+)?\}/g)) {
      expect([key, Object.keys(values)]).toEqual([key, expect.arrayContaining([name])])
    }
  }
})

test('every sentence is said by something', () => {
  const said = new Set(everything.map(({ key }) => key))
  expect(Object.keys(words).filter((key) => !said.has(key))).toEqual([])
})
