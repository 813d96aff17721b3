/**
 * Pull of screws in timber against published formulas.
 *
 * Sources: NDS 12.2.2 by way of an engineering reference site (109 lb/in) and of a civil-engineering handbook, eq. 6.37
 * (135, 95.5); lag screws by NDS table 12.2A (2015/18, p. 77) and a solved problem in an open project for structural
 * analysis (E2.3: 4247.94 N). Eurocode 5: EN 1995-1-1:2004+A1:2008, 8.7.2, eqs 8.38 to 8.40, by way of three public
 * codes; no worked example with numbers has been seen, so its rows are own arithmetic on the formula.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import {
  americanPull,
  eurocodeLimit,
  eurocodePull,
  eurocodeStrength,
  lagScrewPounds,
  newtonsPerMm,
  woodScrewPounds,
} from '../../src/core/fixings/withdrawal'
import { withEdits } from '../../src/core/kitchen/edit'
import { workThrough } from '../../src/core/plan/entry'
import type { Edit, Finding, Plan, PublishedPull } from '../../src/core/plan/types'
import { say } from '../../src/core/words/say'
import { ROOT } from '../support/root'

/** Half a unit in the last printed digit. */
const print = (digits: number) => 0.5 * 10 ** -digits + 1e-9

describe('wood screws, NDS: W = 2850·G²·D pounds on an inch', () => {
  test.each([
    // Printed cut off, not rounded: 109 for 109.65.
    { source: 'reference site: D 0.190, G 0.45', gravity: 0.45, diameter: 0.19, printed: 109 },
    { source: 'handbook eq. 6.37: D 0.190, G 0.50', gravity: 0.5, diameter: 0.19, printed: 135 },
  ])('$source: $printed', ({ gravity, diameter, printed }) => {
    expect(Math.floor(woodScrewPounds(gravity, diameter))).toBe(printed)
  })

  test('handbook eq. 6.37: D 0.190, G 0.42: 95.5, and 16.73 N on a millimetre', () => {
    expect(Math.abs(woodScrewPounds(0.42, 0.19) - 95.5)).toBeLessThanOrEqual(print(1))
    expect(Math.abs(newtonsPerMm(woodScrewPounds(0.42, 0.19)) - 16.73)).toBeLessThanOrEqual(print(2))
  })

  // Own arithmetic on the formula: the five usual sizes, #6 to #14; some of the printed ones are cut off, not rounded.
  test.each([
    [0.42, [69.4, 82.4, 95.5, 108.6, 121.7]],
    [0.45, [79.6, 94.6, 109.65, 124.7, 139.7]],
    [0.5, [98.3, 116.8, 135.4, 153.9, 172.4]],
  ])('G %d: %j', (gravity, row) => {
    const sizes = [0.138, 0.164, 0.19, 0.216, 0.242]
    row.forEach((printed, i) => {
      expect(Math.abs(woodScrewPounds(gravity, sizes[i] ?? 0) - printed)).toBeLessThanOrEqual(0.06)
    })
  })
})

describe('lag screws, NDS: W = 1800·G^1.5·D^0.75 pounds on an inch', () => {
  test.each([
    ['table 12.2A: 1/4 in, G 0.42', 0.42, 0.25, 173],
    ['table 12.2A: 1/4 in, G 0.50', 0.5, 0.25, 225],
    ['table 12.2A: 1/2 in, G 0.55', 0.55, 0.5, 437],
  ])('%s', (_, gravity, diameter, printed) => {
    expect(Math.abs(lagScrewPounds(gravity, diameter) - printed)).toBeLessThanOrEqual(print(0))
  })

  test('E2.3: a 1/2 × 4 in lag through 1 1/2 in, tip 5/16 in, G 0.55: 2.1875 in of thread, 4247.94 N (955 lb)', () => {
    const thread = (4 - 1.5 - 0.3125) * 25.4
    expect(thread / 25.4).toBe(2.1875)
    const pull = americanPull('lag', 0.55, 12.7, thread)
    expect(Math.abs(pull - 4247.94)).toBeLessThanOrEqual(print(2))
    expect(Math.abs(pull / 4.4482216152605 - 955)).toBeLessThanOrEqual(print(0))
  })
})

describe('Eurocode 5, 8.7.2', () => {
  test.each([
    { d: 6, l: 40, rho: 350, f: 15.921, k: 0.75, pull: 2865.8, medium: 1763.6, permanent: 1322.7 },
    { d: 6, l: 50, rho: 350, f: 15.57, k: 0.75, pull: 3503.2, medium: 2155.8, permanent: 1616.9 },
    { d: 6, l: 40, rho: 310, f: 14.448, k: 0.75, pull: 2600.7, medium: 1600.4, permanent: 1200.3 },
    { d: 8, l: 60, rho: 350, f: 13.24, k: 1, pull: 6355.3, medium: 3911.0, permanent: 2933.2 },
    { d: 10, l: 80, rho: 350, f: 11.507, k: 1, pull: 9205.3, medium: 5664.8, permanent: 4248.6 },
  ])('d $d, l $l, ρ $rho: f $f, F $pull', ({ d, l, rho, f, k, pull, medium, permanent }) => {
    expect(Math.abs(eurocodeStrength(d, l, rho) - f)).toBeLessThanOrEqual(print(3))
    expect(Math.min(d / 8, 1)).toBe(k)
    const worked = eurocodePull(d, l, rho)
    expect(Math.abs(worked - pull)).toBeLessThanOrEqual(print(1))
    expect(Math.abs((worked * 0.8) / 1.3 - medium)).toBeLessThanOrEqual(print(1))
    expect(Math.abs((worked * 0.6) / 1.3 - permanent)).toBeLessThanOrEqual(print(1))
  })

  // 6 ≤ d ≤ 12; 0.6 ≤ d1/d ≤ 0.75; thread at least 6·d.
  test.each([
    ['6 thick', 6, 4, 36, null],
    ['5.99 thick', 5.99, 4, 36, 'diameter'],
    ['5 thick, as kitchen screws are', 5, 3.3, 60, 'diameter'],
    ['12 thick', 12, 8, 72, null],
    ['12.01 thick', 12.01, 8, 80, 'diameter'],
    ['core of 0.6', 8, 4.8, 60, null],
    ['core of 0.599', 8, 4.79, 60, 'core'],
    ['core of 0.75', 8, 6, 60, null],
    ['core of 0.751', 8, 6.01, 60, 'core'],
    ['thread of six diameters', 8, 5.3, 48, null],
    ['a hair less', 8, 5.3, 47.99, 'penetration'],
  ] as const)('%s', (_, d, core, thread, limit) => {
    expect(eurocodeLimit(d, core, thread)).toBe(limit)
  })

  test('exponent 0.08, a misprint of a public notebook, and its 949.58 N are not what is worked', () => {
    expect(eurocodePull(6, 40, 350)).not.toBeCloseTo(949.58, 0)
  })

  test('the mean density of C16 or C24 gives too much: by 15 % and more', () => {
    expect(eurocodePull(6, 40, 370) / eurocodePull(6, 40, 310)).toBeGreaterThan(1.15)
    expect(eurocodePull(6, 40, 420) / eurocodePull(6, 40, 350)).toBeGreaterThan(1.15)
  })
})

const scene = (name: string): unknown =>
  JSON.parse(readFileSync(join(ROOT, `scenes/${name}.dryrun.json`), 'utf8'))

function planned(name: string, edits: readonly Edit[]): Plan {
  const file = withEdits(scene(name), edits)
  const outcome = workThrough(file)
  if (outcome.kind !== 'plan') throw new Error(JSON.stringify(outcome).slice(0, 600))
  expect(checkPlan(file, outcome.plan)).toEqual({ ok: true, refusals: [] })
  return outcome.plan
}

const publishedIn = (plan: Plan): readonly PublishedPull[] =>
  plan.units.flatMap(({ holding }) => holding?.published ?? [])
const said = (findings: readonly Finding[]): readonly string[] =>
  findings
    .filter(({ rule }) => rule === 'published-pull')
    .map((f) => `${f.weight}: ${say(f.say)}`.replace(/[\u202f\u202f\u00a0]/g, ' '))
const newtons = ({ pull }: PublishedPull): number | null =>
  pull !== null && pull.state !== 'unknown' ? pull.value : null

/** The rail screw of the second demo kitchen as one that the formula covers: 6 mm, all thread, 36.5 mm or more in the stud. */
const COVERED: readonly Edit[] = [
  { set: 'fixings.rail-screw.diameter', to: 6 },
  { set: 'fixings.rail-screw.length', to: { value: 70, pm: 0 } },
  { set: 'fixings.rail-screw.thread', to: { value: 70, pm: 0 } },
  { set: 'fixings.rail-screw.core', to: 4 },
]
const timber = (more: object): Edit => ({ set: 'walls.a.studTimber', to: more })

describe('in a plan', () => {
  test('North America, a lag: E2.3 as the screw of a kitchen: 4247.94 N', () => {
    // 1 1/2 in of side member: 3/4 in of rail, and 3/4 in of board before the stud.
    const plan = planned('north-american', [
      timber({ specificGravity: 0.55 }),
      { set: 'walls.a.layers.board.thickness', to: { value: '3/4 in', pm: 0 } },
      { set: 'walls.a.thickness', to: null },
      { set: 'fixings.rail-screw.kind', to: 'lag-screw' },
      { set: 'fixings.rail-screw.diameter', to: '1/2 in' },
      { set: 'fixings.rail-screw.length', to: { value: '4 in', pm: 0 } },
      { set: 'fixings.rail-screw.thread', to: { value: '2 1/2 in', pm: 0 } },
      { set: 'fixings.rail-screw.tip', to: { value: '5/16 in', pm: 0 } },
    ])
    expect(publishedIn(plan).length).toBe(4)
    for (const one of publishedIn(plan)) expect(newtons(one)).toBeCloseTo(4247.94, 1)
    expect(said(plan.findings)).toEqual([
      expect.stringMatching(/^note: .*4 248 N .*not your screw maker’s figure/),
    ])
  })

  test('North America, #10 in G 0.42: 16.73 N on a millimetre of thread', () => {
    const plan = planned('north-american', [
      timber({ specificGravity: 0.42 }),
      { set: 'fixings.rail-screw.diameter', to: '0.19 in' },
      { set: 'fixings.rail-screw.thread', to: '1 3/4 in' },
    ])
    const [one] = publishedIn(plan)
    if (one === undefined || one.thread.state === 'unknown') throw new Error('nothing published')
    expect((newtons(one) ?? 0) / one.thread.value).toBeCloseTo(16.73, 2)
  })

  test('Britain, C24: what is worked is the formula with 350, and it rests on an assumed density', () => {
    const plan = planned('l-shape', [timber({ grade: 'C24' }), ...COVERED])
    const [one] = publishedIn(plan)
    if (one === undefined || one.thread.state === 'unknown') throw new Error('nothing published')
    expect(newtons(one)).toBeCloseTo(eurocodePull(6, one.thread.value, 350), 1)
    expect(one.timber).toMatchObject({ state: 'assumed', value: 350 })
    expect(one.pull?.state).toBe('assumed')
  })

  test('a density as entered counts, and C16 gives less than C24', () => {
    const pull = (more: object) =>
      newtons(publishedIn(planned('l-shape', [timber(more), ...COVERED]))[0] as PublishedPull)
    expect(pull({ density: 350 })).toBe(pull({ grade: 'C24' }))
    expect(pull({ grade: 'C16' })).toBeLessThan(pull({ grade: 'C24' }) ?? 0)
  })

  test.each([
    [
      'the screw as it is bought for that kitchen: too thin',
      [],
      'diameter',
      /5 mm thick, and the formula holds from 6 to 12 mm/,
    ],
    [
      'a core too thick',
      [...COVERED, { set: 'fixings.rail-screw.core', to: 5 }],
      'core',
      /0\.6 to 0\.75 of the diameter/,
    ],
    [
      'too little thread',
      [...COVERED, { set: 'fixings.rail-screw.thread', to: { value: 35, pm: 0 } }],
      'penetration',
      /six times its diameter of 6 mm/,
    ],
  ] as const)(
    'outside the formula no figure is given, and the limit is said: %s',
    (_, edits, outside, sentence) => {
      const plan = planned('l-shape', [timber({ grade: 'C24' }), ...edits])
      expect(publishedIn(plan).length).toBeGreaterThan(0)
      for (const one of publishedIn(plan)) expect([one.pull, one.outside]).toEqual([null, outside])
      expect(said(plan.findings)).toEqual([expect.stringMatching(sentence)])
    },
  )

  test('a mean density is refused beside its class, and without one no figure is worked from it', () => {
    for (const [grade, density] of [
      ['C24', 420],
      ['C16', 370],
    ] as const) {
      const outcome = workThrough(withEdits(scene('l-shape'), [timber({ grade, density }), ...COVERED]))
      expect(outcome.kind).toBe('refused')
      expect(JSON.stringify(outcome)).toContain('the average gives too much')
      const plan = planned('l-shape', [timber({ density }), ...COVERED])
      expect(publishedIn(plan).map(({ pull }) => pull?.state)).toEqual(publishedIn(plan).map(() => 'unknown'))
      expect(said(plan.findings)).toEqual([expect.stringMatching(new RegExp(`^ask: .*${density} kg/m³`))])
    }
    const other = planned('l-shape', [timber({ grade: 'other', density: 420 }), ...COVERED])
    expect(newtons(publishedIn(other)[0] as PublishedPull)).toBeGreaterThan(0)
  })

  test('without the facts of the screw the figure is unknown, and names them', () => {
    const plan = planned('north-american', [timber({ specificGravity: 0.42 })])
    for (const { pull } of publishedIn(plan))
      expect(pull).toMatchObject({ state: 'unknown', missing: ['fixings.rail-screw.thread'] })
    expect(said(plan.findings)).toEqual([])
  })

  test('nothing is said where nobody has entered the timber', () => {
    for (const name of ['l-shape', 'north-american']) {
      const plan = planned(name, [])
      expect(publishedIn(plan)).toEqual([])
      expect(said(plan.findings)).toEqual([])
    }
  })

  /** Wall unit 4 asks some 99 N of one screw; 3 mm of thread give some 49. */
  const SHORT: readonly Edit[] = [
    timber({ specificGravity: 0.42 }),
    { set: 'fixings.rail-screw.thread', to: { value: 3, pm: 0 } },
  ]

  test('more asked than the published figure stops, and where the figure entered is not passed it is told as a contradiction', () => {
    const within = planned('north-american', SHORT)
    const warned = within.findings.filter((f) => f.rule === 'published-pull' && f.weight === 'warn')
    expect(warned.length).toBeGreaterThan(0)
    const open = planned('north-american', [...SHORT, { set: 'fixings.rail-screw.pull', to: null }])
    const stopped = open.findings.filter((f) => f.rule === 'published-pull' && f.weight === 'stop')
    expect(stopped.map((f) => f.id)).toEqual(warned.map((f) => f.id))
    expect(stopped.every((f) => f.dangerous)).toBe(true)
    expect(said(stopped)[0]).toMatch(/That exceeds the published figure/)
  })

  test('no sentence of it promises anything', () => {
    const plan = planned('north-american', SHORT)
    for (const sentence of said(plan.findings)) expect(sentence).not.toMatch(/\b(safe|fine|holds|enough)\b/i)
  })
})
