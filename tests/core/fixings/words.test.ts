import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { liftOf } from '../../../src/core/lifting/lifting'
import type { Message } from '../../../src/core/message'
import { figuresIn } from '../../../src/core/plan/figures-in'
import type { Finding, Hole } from '../../../src/core/plan/types'
import { fixingsWords } from '../../../src/core/words/en/fixings'
import { holesWords } from '../../../src/core/words/en/holes'
import { liftingWords } from '../../../src/core/words/en/lifting'
import {
  at,
  baseUnit,
  brickWall,
  exact,
  type Json,
  plug,
  stud,
  studWall,
  tallUnit,
  up,
  wallFile,
  wallUnit,
  woodScrew,
  worked,
} from '../../support/fixed-wall'
import { ROOT } from '../../support/root'

const words: Readonly<Record<string, string>> = { ...fixingsWords, ...holesWords, ...liftingWords }

/** Keys made of a union: everything a template literal in the source can become. */
const TROUBLES = [
  'too-short',
  'maybe-short',
  'out-of-back',
  'none-entered',
  'no-stand-off',
  'base-not-known',
  'hold-not-known',
]
const PURPOSES = ['rail', 'plate', 'second-fixing', 'base-bracket', 'tall-restraint', 'back-rail', 'cleat']
const COMPOSED = [
  ...TROUBLES.flatMap((t) => [
    ...PURPOSES.map((p) => `fixings.${t}.${p}`),
    ...(t === 'maybe-short' ? [] : [`holes.${t}`]),
  ]),
  ...['second-fixing', 'back-rail'].flatMap((p) => [
    `fixings.${p}-needs-timber`,
    `fixings.${p}-needs-timber.unproved`,
  ]),
  ...['bracket-needs-timber', 'rail-screw-needs-timber', 'tall-not-restrained'].flatMap((k) => [
    `fixings.${k}`,
    `fixings.${k}.unproved`,
  ]),
  ...['plateBelowTop', 'plateHoleBelow', 'hangerIn'].map((key) => `fixings.hardware-open.${key}`),
  ...['blown', 'solid', 'hollow'].map((d) => `fixings.knock-${d}`),
  ...['not-confirmed', 'not-measured', 'too-narrow'].flatMap((w) => [
    `fixings.stud-${w}`,
    `fixings.stud-${w}.no-place`,
  ]),
  ...['hole-past-50', 'hole-past-setback'].map((r) => `holes.${r}`),
  ...['accessory', 'ceiling', 'corner', 'service', 'lintel'].map((k) => `holes.band-unknown-${k}`),
  ...['accessory-vertical', 'accessory-horizontal', 'corner', 'ceiling', 'service', 'lintel'].map(
    (k) => `holes.in-${k}`,
  ),
  ...['lifter', 'batten-or-prop', 'lighten-it', 'stop'].map((a) => `lifting.over-filter-${a}`),
  ...['near-filter', 'over-filter-batten-or-prop', 'over-filter-lighten-it', 'over-filter-stop'].map(
    (end) => `lifting.end-${end}`,
  ),
  'lifting.near-filter',
  ...['never-alone-stop', 'never-alone-lighten-it', 'end-never-alone-stop', 'end-never-alone-lighten-it'].map(
    (key) => `lifting.${key}`,
  ),
  ...['over-recommended-lighten-it', 'over-recommended-stop', 'never-alone', 'guidance.over'].map(
    (key) => `lifting.${key}`,
  ),
  'lifting.appliance-over-recommended-stop',
  ...['worktop-over-filter-end-by-end', 'worktop-over-filter-stop'].map((key) => `lifting.${key}`),
  ...['appliance-over-filter-prop', 'appliance-over-filter-stop'].map((key) => `lifting.${key}`),
]

function writtenOut(): readonly string[] {
  const sources = ['fixings', 'holes', 'lifting'].flatMap((folder) => {
    const path = join(ROOT, 'src/core', folder)
    return readdirSync(path).map((file) => readFileSync(join(path, file), 'utf8'))
  })
  return sources.flatMap((source) =>
    [...source.matchAll(/'((?:fixings|holes|lifting)\.[a-z0-9-]*[a-z0-9])'/g)].map((m) => m[1] as string),
  )
}

test('every message has words, and there are no words without a message', () => {
  const used = new Set([...writtenOut(), ...COMPOSED])
  expect([...used].filter((key) => words[key] === undefined)).toEqual([])
  expect(Object.keys(words).filter((key) => !used.has(key))).toEqual([])
})

test('nothing is ever called what the tool cannot know', () => {
  const said = Object.entries(words).filter(([, text]) =>
    /\b(safe|safely|clear|secure|sound to|will hold|ok)\b/i.test(text),
  )
  expect(said).toEqual([])
})

/** Walls on which as much as possible goes wrong. */
const socket = { id: 's', kind: 'socket', along: at(630), height: up(0), width: exact(86), tall: null }
const troubled: readonly Json[] = [
  wallFile({
    wall: {
      ...brickWall,
      accessories: [socket],
      services: [{ id: 'p', kind: 'gas', points: [] }],
      lintels: [
        { id: 'l', kind: null, left: at(1100), right: { at: null }, bottom: up(1000), top: up(1200) },
      ],
      traced: null,
      behind: 'room',
      thickness: { value: 112, pm: 0 },
      knock: 'blown',
    },
    units: [{ ...wallUnit, contents: null }, tallUnit, baseUnit],
    rest: { fixings: [{ ...plug, length: exact(45) }], ceiling: [] },
  }),
  wallFile({
    wall: {
      ...studWall,
      studs: [
        stud('s1', 700, { confirmed: null }),
        stud('s2', 900, { width: null }),
        stud('s3', 1100, { width: exact(22) }),
      ],
      knock: 'solid',
    },
    units: [
      { ...wallUnit, stands: 'rail' },
      { ...wallUnit, id: 'w2', order: { left: at(1300) }, stands: 'cleat' },
      { ...wallUnit, id: 'w3', order: { left: at(1900) }, stands: 'back-rail-screws', hanging: {} },
      { ...wallUnit, id: 'w4', order: { left: at(2500) }, width: exact(400), hanging: {} },
      tallUnit,
      baseUnit,
    ],
    rest: { rails: [{ id: 'r', wall: 'a', units: ['w'] }] },
  }),
  wallFile({ wall: { ...brickWall, construction: null }, units: [wallUnit], rest: { region: null } }),
  wallFile({
    wall: { ...brickWall, construction: 'chimney-breast', knock: 'hollow' },
    units: [wallUnit],
    rest: { fixings: [{ ...plug, pull: 1, shear: 1 }, woodScrew] },
  }),
]

function saidIn(file: Json): readonly Message[] {
  const { fixings, bands, positions, kitchen, region } = worked(file)
  const lifts = positions.flatMap((p) => liftOf(p, kitchen, region).findings)
  const findings: readonly Finding[] = [...fixings.findings, ...bands.findings, ...lifts]
  const holes: readonly Hole[] = fixings.holes
  return [
    ...findings.flatMap((f) => [f.say, ...(f.ask === null ? [] : [f.ask])]),
    ...holes.flatMap((h) => h.against),
  ]
}

test('every place in the words is filled', () => {
  const said = troubled.flatMap(saidIn)
  expect(new Set(said.map((m) => m.key)).size).toBeGreaterThan(25)
  const empty = said.flatMap(({ key, values }) =>
    [...(words[key] ?? '').matchAll(/\{(\w+)(?::\w+)?\}/g)]
      .map((m) => m[1] as string)
      .filter((name) => values[name] === undefined)
      .map((name) => `${key}: ${name}`),
  )
  expect([...new Set(empty)]).toEqual([])
})

test('every finding has an id of its rule and its subjects, and no two are the same', () => {
  for (const file of troubled) {
    const { fixings, bands } = worked(file)
    const ids = [...fixings.findings, ...bands.findings].map((f) => f.id)
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([])
  }
})

test('the same file gives the same bytes', () => {
  for (const file of troubled) {
    const print = () => JSON.stringify([worked(file).fixings.holes, worked(file).fixings.findings])
    expect(print()).toBe(print())
  }
})

test('nothing of the plan holds a number that is none', () => {
  for (const file of troubled) {
    const figures = [...figuresIn(worked(file).fixings.holes).values()]
    expect(figures.every((f) => f.state === 'unknown' || Number.isFinite(f.value + f.pm))).toBe(true)
  }
})
