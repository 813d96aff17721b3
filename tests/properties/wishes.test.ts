/**
 * Wishes that clash: the contradictions and the repairs that are told are exactly those found by trying every subset of
 * the wishes with a plain solver of the test's own.
 */
import { beforeAll, expect, test } from 'vitest'
import type { KitchenFile } from '../../src/core/kitchen/schema'
import { type Outcome, workThrough } from '../../src/core/plan/entry'
import type { Operation } from '../../src/core/plan/types'
import { type Random, randomFrom } from '../support/prng'
import { sceneFile } from '../support/scene-sheets'
import { enumerate, type Wish, wishOracle } from '../support/wish-oracle'

const LONG = process.env['DRYRUN_LONG'] === '1'
const SEEDS = LONG ? 5000 : 300
const MOST_WISHES = 9

const FILE: KitchenFile = { ...sceneFile('no-order'), wishes: {} }

const plain = workThrough(FILE)
if (plain.kind !== 'plan') throw new Error(`without wishes there is a ${plain.kind}`)
const { operations, reasons } = plain.plan
const hard = reasons.filter((r) => r.hard)
const oracle = wishOracle(operations, hard)

type OrderWish = NonNullable<NonNullable<KitchenFile['wishes']>['order']>[number]
type Side = OrderWish['before']

function meant(side: Side): readonly Operation[] {
  return operations.filter(
    (o) =>
      (side.operation === undefined || o.id === side.operation) &&
      (side.kind === undefined || o.kind === side.kind) &&
      (side.on === undefined || o.on.includes(side.on)),
  )
}

function randomSide(random: Random): Side {
  const operation = random.pick(operations)
  const [on] = operation.on
  const hasName = ['base-1', 'base-2', 'wall-1', 'a'].includes(on ?? '')
  return random.weighted<Side>([
    [{ operation: operation.id }, 8],
    [{ kind: operation.kind, ...(hasName && on !== undefined ? { on } : {}) }, 3],
  ])
}

const LAGS = [5, 20, 60, 240, 1440]

function randomWish(random: Random, id: string): OrderWish {
  const [before, after] = [randomSide(random), randomSide(random)]
  const minLag = random.chance(0.35) ? random.pick(LAGS) : null
  const maxLag = random.chance(0.35) ? (minLag ?? 0) + random.pick([0, ...LAGS]) : null
  return {
    id,
    before,
    after,
    ...(minLag === null ? {} : { minLag }),
    ...(maxLag === null ? {} : { maxLag }),
    hard: random.chance(0.9),
  }
}

/** More often than not against the grain of some hard reason, or of another wish. */
function randomWishes(random: Random): readonly OrderWish[] {
  const wishes = Array.from({ length: random.int(2, MOST_WISHES) }, (_, i) => randomWish(random, `w${i + 1}`))
  return wishes.map((wish, i) => {
    const other = wishes[i - 1]
    if (other !== undefined && random.chance(0.3))
      return { ...wish, before: other.after, after: random.chance(0.5) ? other.before : wish.after }
    if (!random.chance(0.15)) return wish
    const reason = random.pick(hard)
    return { ...wish, before: { operation: reason.after }, after: { operation: reason.before } }
  })
}

function asWish({ id, before, after, minLag, maxLag }: OrderWish): Wish {
  const pairs = meant(before).flatMap((b) =>
    meant(after).flatMap((a) => (a.id === b.id ? [] : [[b.id, a.id] as const])),
  )
  return {
    id,
    pairs,
    minLag: typeof minLag === 'number' ? minLag : null,
    maxLag: typeof maxLag === 'number' ? maxLag : null,
  }
}

interface Told {
  readonly conflicts: readonly string[]
  readonly repairs: readonly string[]
}

function toldBy(outcome: Outcome): Told {
  if (outcome.kind === 'refused') throw new Error(outcome.problems.map((p) => p.message).join(' '))
  if (outcome.kind === 'plan') return { conflicts: [], repairs: [''] }
  const names = (ids: readonly string[]) => [...ids].sort().join(' + ')
  const { conflicts, repairs } = outcome.noPlan
  return {
    conflicts: conflicts.map((c) => names(c.wishes)).sort(),
    repairs: repairs.map((r) => names(r.drop)).sort(),
  }
}

interface ReasonFaults {
  /** Reasons that do not make a contradiction with the wishes they are told with. */
  readonly lacking: readonly string[]
  /** Reasons without which it would be one all the same. */
  readonly idle: readonly string[]
}

/** The hard reasons told with each contradiction, tried with its wishes and without any other. */
function reasonFaults(wishes: readonly Wish[], outcome: Outcome): ReasonFaults {
  const conflicts = outcome.kind === 'no-order' ? outcome.noPlan.conflicts : []
  const looked = conflicts.map((conflict) => {
    const its = wishes.filter((w) => conflict.wishes.includes(w.id))
    const told = hard.filter((r) => conflict.reasons.includes(r.id))
    const named = `${JSON.stringify(its)} with ${conflict.reasons.join(', ')}`
    if (told.length !== conflict.reasons.length || oracle.can(its, told))
      return { lacking: [named], idle: [] }
    const idle = told.filter(
      (r) =>
        r.maxLag !== 0 &&
        !oracle.can(
          its,
          told.filter((other) => other !== r),
        ),
    )
    return { lacking: [], idle: idle.map((r) => `${r.id} may be left out of ${named}`) }
  })
  return { lacking: looked.flatMap((l) => l.lacking), idle: looked.flatMap((l) => l.idle) }
}

test('the test has something to find', () => {
  expect(operations.length).toBeGreaterThan(20)
  expect(hard.length).toBeGreaterThan(40)
  expect(oracle.can([])).toBe(true)
  const against: Wish = { id: 'x', pairs: [['snag:room', 'strike:line']], minLag: null, maxLag: null }
  expect(oracle.can([against])).toBe(false)
})

const faults: string[] = []
const lacking: string[] = []
const idle: string[] = []
const counts = { clash: 0, none: 0, sets: 0, largest: 0, withLags: 0 }

function lookAt(seed: number): void {
  const wishes = randomWishes(randomFrom(seed))
  const musts = wishes.filter((w) => w.hard !== false).map(asWish)
  const outcome = workThrough({ ...FILE, wishes: { order: [...wishes] } })
  const [told, found] = [toldBy(outcome), enumerate(musts, oracle)]
  counts[found.conflicts.length > 0 ? 'clash' : 'none']++
  counts.sets += found.conflicts.length
  counts.largest = Math.max(counts.largest, ...found.conflicts.map((c) => c.split(' + ').length))
  if (musts.some((w) => w.minLag !== null || w.maxLag !== null)) counts.withLags++
  if (JSON.stringify(told) !== JSON.stringify(found)) {
    faults.push(
      `seed ${seed}: told ${JSON.stringify(told)}, found ${JSON.stringify(found)}, of ${JSON.stringify(wishes)}`,
    )
  }
  const its = reasonFaults(musts, outcome)
  lacking.push(...its.lacking.map((f) => `seed ${seed}: ${f}`))
  idle.push(...its.idle.map((f) => `seed ${seed}: ${f}`))
}

beforeAll(
  () => {
    for (let seed = 0; seed < SEEDS; seed++) lookAt(seed)
    console.log(
      `${SEEDS} sets of up to ${MOST_WISHES} wishes, ${counts.withLags} with waits: ${counts.clash} clash (${counts.sets} contradictions, the largest of ${counts.largest} wishes), ${counts.none} do not`,
    )
  },
  LONG ? 3_600_000 : 120_000,
)

test('wishes of every sort are among them', () => {
  expect(counts.clash).toBeGreaterThan(SEEDS / 4)
  expect(counts.none).toBeGreaterThan(0)
  expect(counts.largest).toBeGreaterThanOrEqual(2)
})

test('contradictions and repairs are those found by trying every subset', () => {
  expect(faults.slice(0, 6)).toEqual([])
})

test('the reasons told with a contradiction make it one', () => {
  expect(lacking.slice(0, 6)).toEqual([])
})

test('no reason told with a contradiction can be left out', () => {
  expect(idle.slice(0, 6)).toEqual([])
})
