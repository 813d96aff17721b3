/**
 * The day log: a reading moves what hangs on it and nothing else, what has been reached is never planned away again, and
 * a wrong entry set right is as if it had never been made.
 */
import { describe, expect, test } from 'vitest'
import type { DayLogFile } from '../../src/core/daylog/schema'
import { type Figure, hasValue } from '../../src/core/figure'
import type { KitchenFile } from '../../src/core/kitchen/schema'
import { workThrough } from '../../src/core/plan/entry'
import type { Plan } from '../../src/core/plan/types'
import { figuresOf } from '../support/blanking'
import { brokenDemands, brokenOrder } from '../support/plan-properties'
import { type Random, randomFrom } from '../support/prng'
import { sceneFile } from '../support/scene-sheets'

type Entry = NonNullable<DayLogFile['entries']>[number]

const FILE = sceneFile('one-wall')
const BASES = ['base-1', 'base-2', 'base-3'] as const

function logOf(entries: readonly Entry[]): DayLogFile {
  return { format: 'dryrun-daylog', version: 1, entries: [...entries] }
}

function planOf(entries: readonly Entry[], file: KitchenFile = FILE): Plan {
  const outcome = workThrough(file, entries.length === 0 ? null : logOf(entries))
  if (outcome.kind !== 'plan') throw new Error(`${outcome.kind}: ${JSON.stringify(outcome).slice(0, 400)}`)
  return outcome.plan
}

const BEFORE = planOf([])

function legOf(plan: Plan, unit: string, foot: string) {
  const leg = plan.units.find((u) => u.unit === unit)?.legs.find((l) => l.foot === foot)
  if (leg === undefined) throw new Error(`${unit} has no foot ${foot}`)
  return leg
}

function valueOf(figure: Figure | undefined): number {
  if (figure === undefined || !hasValue(figure)) throw new Error('the figure is not known')
  return figure.value
}

function undersideOf(plan: Plan, unit: string): number {
  return valueOf(plan.units.find((u) => u.unit === unit)?.underside)
}

function floorFound(unit: string, foot: string, lower: number, id = 'found'): Entry {
  const drop = -valueOf(legOf(BEFORE, unit, foot).floor) + lower
  return { id, kind: 'floor-at-foot', unit, foot, drop: Math.round(drop * 1000) / 1000 }
}

/** Names of the figures that are not what they were, or new, or gone. */
function movedFigures(before: Plan, after: Plan): readonly string[] {
  const [was, is] = [figuresOf(before), figuresOf(after)]
  const same = (a: Figure, b: Figure | undefined) =>
    b !== undefined &&
    hasValue(a) === hasValue(b) &&
    (!hasValue(a) || !hasValue(b) || (a.value === b.value && a.state === b.state))
  const names = [...was].filter(([name, figure]) => !same(figure, is.get(name))).map(([name]) => name)
  return [...names, ...[...is.keys()].filter((name) => !was.has(name))].sort()
}

describe('the floor under one foot is 4 mm lower than it was read', () => {
  const [unit, foot] = ['base-2', 'front-left'] as const
  const after = planOf([floorFound(unit, foot, 4)])
  const moved = movedFigures(BEFORE, after)
  /** The leg, its adjuster, the demand that it reaches, and what operations and reasons say of that leg. */
  const dependants = [
    /^units\/base-2\/legs\/front-left\/(floor|extension|turns)$/,
    /^units\/base-2\/adjusters\/[^/]*front-left[^/]*\/(upLeft|downLeft)$/,
    /^heights\/demands\/leg-reach:base-2\.front-left\/(min|max)$/,
    /^operations\/(set-legs|level):base-2\/figures\/[^/]*front-left[^/]*\/figure$/,
    /^operations\/set-legs:base-2\/checks\/[^/]*front-left[^/]*\/target$/,
    /^reasons\/.*\bset-legs:base-2\b.*\/figures\/\d+$/,
    /^changes\//,
  ]

  test('that leg winds out 4 mm further', () => {
    const [was, is] = [legOf(BEFORE, unit, foot), legOf(after, unit, foot)]
    expect(valueOf(is.floor) - valueOf(was.floor)).toBeCloseTo(-4, 6)
    expect(valueOf(is.extension) - valueOf(was.extension)).toBeCloseTo(4, 6)
    expect(valueOf(is.turns) - valueOf(was.turns)).toBeCloseTo(4 / 1.5, 2)
  })

  test('nothing moves but that leg and what hangs on it', () => {
    console.log(`4 mm under one foot move: ${moved.join(', ')}`)
    expect(moved.length).toBeGreaterThanOrEqual(3)
    expect(moved.filter((name) => !dependants.some((pattern) => pattern.test(name)))).toEqual([])
  })

  test('the changes told are those that were made', () => {
    const told = after.changes.map((c) => c.what)
    expect(told.length).toBeGreaterThan(0)
    expect(told.filter((what) => !moved.includes(what))).toEqual([])
    expect(told).toContain(`units/${unit}/legs/${foot}/extension`)
  })
})

describe('a leg that cannot reach', () => {
  test('the floor is out of its reach before anything is set: stop', () => {
    const after = planOf([floorFound('base-2', 'front-left', 60)])
    const stops = after.findings.filter((f) => f.weight === 'stop').map((f) => f.rule)
    expect(stops).toContain('leg-out-of-reach')
    expect(brokenDemands(after)).toEqual([])
  })

  test('the floor is out of its reach once the unit stands where it stands: stop', () => {
    const set: Entry = { id: 'set', kind: 'set', unit: 'base-2', edge: 'underside', down: 864 }
    const after = planOf([set, floorFound('base-2', 'front-left', 40)])
    expect(undersideOf(after, 'base-2')).toBe(-864)
    const found = after.findings.filter((f) => f.rule === 'leg-out-of-reach')
    expect(found.map((f) => f.weight)).toEqual(['stop'])
    expect(found[0]?.about).toContain('base-2')
    expect(legOf(after, 'base-2', 'front-left').within).toBe('too-long')
  })
})

describe('what has been reached is not planned away', () => {
  const done: Entry = { id: 'done-fix', kind: 'done', operation: 'fix:base-1' }

  test.each([-850, -858, -864, -866, -875, -890])('a secured unit at %i stays there', (underside) => {
    const set: Entry = { id: 'set', kind: 'set', unit: 'base-1', edge: 'underside', down: -underside }
    const after = planOf([set, done])
    expect(undersideOf(after, 'base-1')).toBe(underside)
    expect(after.heights.unmet).not.toContain('achieved:base-1')
    const value = after.heights.values.find((v) => v.of === 'base-underside')
    expect([
      value?.achieved,
      value !== undefined && hasValue(value.height) ? value.height.value : null,
    ]).toEqual([true, underside])
    expect(brokenDemands(after)).toEqual([])
    expect(after.units.find((u) => u.unit === 'base-1')?.achieved?.state).toBe('secured')
  })

  test('its top edge read says the same as its underside', () => {
    const byTop = planOf([{ id: 'set', kind: 'set', unit: 'base-1', edge: 'top', down: 146 }, done])
    expect(undersideOf(byTop, 'base-1')).toBe(-866)
  })

  test('two secured units at two heights both stay, and what that breaks is said', () => {
    const after = planOf([
      { id: 'set-1', kind: 'set', unit: 'base-1', edge: 'underside', down: 866 },
      { id: 'set-2', kind: 'set', unit: 'base-2', edge: 'underside', down: 860 },
      done,
      { id: 'done-fix-2', kind: 'done', operation: 'fix:base-2' },
    ])
    const unmet = after.heights.unmet.filter((id) => id.startsWith('achieved:'))
    const there = (unit: string, at: number) =>
      undersideOf(after, unit) === at || unmet.includes(`achieved:${unit}`)
    expect([there('base-1', -866), there('base-2', -860)]).toEqual([true, true])
    expect(brokenDemands(after)).toEqual([])
    expect(after.findings.filter((f) => f.rule === 'heights-clash').length).toBeGreaterThan(0)
  })

  test('operations that are done are marked, and the order still holds', () => {
    const after = planOf([{ id: 'd', kind: 'done', operation: 'strike:line' }, done])
    expect(
      after.operations
        .filter((o) => o.done)
        .map((o) => o.id)
        .sort(),
    ).toEqual(['fix:base-1', 'strike:line'])
    expect(brokenOrder(after)).toEqual([])
  })
})

describe('a turn of a screw that was tried', () => {
  const perTurn = (plan: Plan, unit: string) =>
    valueOf(plan.units.find((u) => u.unit === unit)?.adjusters[0]?.perTurn)
  const tried: Entry = { id: 'tried', kind: 'tried', unit: 'base-3', part: 'leg', perTurn: 1.25 }

  test('overrules no sheet of another unit', () => {
    expect(perTurn(BEFORE, 'base-1')).toBe(1.5)
    expect(perTurn(planOf([tried]), 'base-1')).toBe(1.5)
  })

  test('holds for units of its kind whose sheet does not say', () => {
    const silent = {
      ...FILE,
      units: (FILE.units ?? []).map((u) => ({ ...u, legs: { ...u.legs, perTurn: null } })),
    }
    const after = planOf([tried], silent)
    expect(BASES.map((unit) => perTurn(after, unit))).toEqual([1.25, 1.25, 1.25])
  })
})

// ------------------------------------------------------------------------------------------------ logs at random

const FEET = ['back-left', 'back-right', 'front-left', 'front-right'] as const
const ALL = [...BASES, 'wall-1', 'wall-2', 'wall-3'] as const

const MAKERS: readonly ((random: Random, id: string) => Entry)[] = [
  (random, id) => ({ id, kind: 'done', operation: random.pick(BEFORE.operations).id }),
  (random, id) => ({
    id,
    kind: 'set',
    unit: random.pick(BASES),
    edge: 'underside',
    down: random.int(852, 878),
  }),
  (random, id) => ({
    id,
    kind: 'set',
    unit: random.pick(['wall-1', 'wall-2']),
    edge: 'top',
    up: random.int(1080, 1096),
  }),
  (random, id) => floorFound(random.pick(BASES), random.pick(FEET), random.int(-8, 12), id),
  (random, id) => ({
    id,
    kind: 'level',
    unit: random.pick(ALL),
    axis: 'along',
    place: 'top',
    low: 'left',
    packer: 2,
    levelLength: 600,
  }),
  (random, id) => ({
    id,
    kind: 'tried',
    unit: random.pick(BASES),
    part: 'leg',
    perTurn: random.pick([1.25, 2]),
  }),
  (random, id) => ({
    id,
    kind: 'tried',
    unit: 'wall-1',
    part: 'height-screw',
    place: 'front',
    perTurn: 1,
    clockwise: random.pick(['raises', 'lowers']),
  }),
  (random, id) => ({
    id,
    kind: 'observed',
    fact: 'walls.a.layers.plaster.thickness',
    value: random.int(6, 12),
  }),
  (random, id) => ({
    id,
    kind: 'observed',
    fact: `floor.readings.floor-back-${random.int(1, 5)}.drop`,
    value: random.int(1000, 1012),
  }),
  (random, id) => ({
    id,
    kind: 'observed',
    fact: 'walls.a.accessories.socket-1.along.at',
    value: random.int(300, 500),
  }),
  (random, id) => ({
    id,
    kind: 'observed',
    fact: 'walls.a.traced',
    value: random.pick(['whole', 'part', 'not-yet']),
  }),
]

function randomLog(random: Random, count: number): readonly Entry[] {
  return Array.from({ length: count }, (_, i) => random.pick(MAKERS)(random, `e${i + 1}`))
}

/** The outcome without the stamp, which is over the log itself. */
function unstamped(entries: readonly Entry[]): string {
  const outcome = workThrough(FILE, logOf(entries))
  if (outcome.kind !== 'plan') return JSON.stringify(outcome)
  const { stamp: _, ...plan } = outcome.plan
  return JSON.stringify(plan)
}

function parting(a: string, b: string): string {
  if (a === b) return 'the same'
  let at = 0
  while (a[at] === b[at]) at++
  return `…${a.slice(Math.max(0, at - 120), at + 60)}… against …${b.slice(at, at + 60)}…`
}

test('a log played again gives the same bytes', () => {
  for (let seed = 0; seed < 8; seed++) {
    const log = logOf(randomLog(randomFrom(seed), 6))
    const [once, again] = [workThrough(FILE, log), workThrough(FILE, JSON.parse(JSON.stringify(log)))]
    expect(once.kind, JSON.stringify(once).slice(0, 300)).toBe('plan')
    expect(JSON.stringify(again), `seed ${seed}`).toBe(JSON.stringify(once))
  }
})

test('every kind of entry, set right, is as if it had not been made', () => {
  const faults: string[] = []
  MAKERS.forEach((make, i) => {
    const random = randomFrom(500 + i)
    const wrong = make(random, 'wrong')
    const first: Entry = { id: 'first', kind: 'done', operation: 'strike:line' }
    const last: Entry = { id: 'last', kind: 'done', operation: 'read-floor:room' }
    const right = unstamped([first, last])
    const corrected = unstamped([first, wrong, last, { id: 'mend', kind: 'correct', entry: 'wrong' }])
    if (right !== corrected) faults.push(`${JSON.stringify(wrong)}: ${parting(right, corrected)}`)
  })
  expect(faults).toEqual([])
})

test('a correction set right brings the entry back', () => {
  const wrong: Entry = { id: 'set', kind: 'set', unit: 'base-1', edge: 'underside', down: 866 }
  const mend: Entry = { id: 'mend', kind: 'correct', entry: 'set' }
  const back: Entry = { id: 'back', kind: 'correct', entry: 'mend' }
  expect(parting(unstamped([wrong]), unstamped([wrong, mend, back]))).toBe('the same')
})

test('logs at random: entries set right are as if they had not been made, and nothing reached is lost', () => {
  const faults: string[] = []
  for (let seed = 0; seed < 12; seed++) {
    const random = randomFrom(1000 + seed)
    const entries = randomLog(random, random.int(3, 8))
    const wrong = random.some(entries, random.int(1, 2)).map((e) => e.id)
    const mends = wrong.map((id, i): Entry => ({ id: `mend-${i}`, kind: 'correct', entry: id }))
    const right = entries.filter((e) => !wrong.includes(e.id))
    const [plain, corrected] = [unstamped(right), unstamped([...entries, ...mends])]
    if (plain !== corrected) faults.push(`seed ${seed}: ${parting(plain, corrected)}`)
    const outcome = workThrough(FILE, logOf(right))
    if (outcome.kind === 'plan') faults.push(...brokenDemands(outcome.plan).map((f) => `seed ${seed}: ${f}`))
  }
  expect(faults.slice(0, 10)).toEqual([])
})
