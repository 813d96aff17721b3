/**
 * Whether the units of a kitchen can be brought in at all: the plan's answer against a search of the test's own through
 * every set of units that may stand already, over the ways into the room that the placing has found.
 */
import { beforeAll, expect, test, vi } from 'vitest'
import { choosePaths } from '../../src/core/placing/eliminate'
import type { CandidatePaths } from '../../src/core/placing/paths'
import { type Outcome, workThrough } from '../../src/core/plan/entry'
import type { PlacingPath } from '../../src/core/plan/types'
import { randomFrom } from '../support/prng'
import { randomKitchen } from '../support/random-kitchen'
import { crowded } from '../support/random-troubles'

/** What the placing gave the planner for the kitchen it is at: listened to, and passed on as it is. */
const heard = vi.hoisted(() => ({ ways: [] as CandidatePaths[] }))
vi.mock('../../src/core/placing/paths', async (original) => {
  const real = await original<typeof import('../../src/core/placing/paths')>()
  const candidatePaths: typeof real.candidatePaths = (...asked) => {
    const ways = real.candidatePaths(...asked)
    heard.ways.push(ways)
    return ways
  }
  return { ...real, candidatePaths }
})

const ROOMS = process.env['DRYRUN_LONG'] === '1' ? 5000 : 200
const MOST_UNITS = 7

interface Ways {
  readonly units: readonly string[]
  /** By unit: for each of its ways, the units that would be in it. */
  readonly blockers: ReadonlyMap<string, readonly (readonly string[])[]>
}

/** Every way into the room for every unit whose place is known, as the placing found them for this outcome. */
function worked(file: unknown): { readonly outcome: Outcome; readonly ways: Ways } {
  heard.ways = []
  const outcome = workThrough(file)
  const [found, ...others] = heard.ways
  if (found === undefined || others.length > 0)
    throw new Error(`the placing was asked ${heard.ways.length} times`)
  const blockers = new Map(
    [...found.candidates].map(([unit, paths]) => [unit, paths.map((p) => p.blockedBy)]),
  )
  return { outcome, ways: { units: [...blockers.keys()], blockers } }
}

/** Whether some order brings all of them in: by every set of units that may stand already. */
function canAllComeIn(
  { units, blockers }: Ways,
  before: readonly (readonly [string, string])[] = [],
): boolean {
  const bit = new Map(units.map((unit, i) => [unit, 1 << i]))
  const ways = units.map((unit) =>
    (blockers.get(unit) ?? []).map((others) =>
      others.reduce((bits, other) => bits | (other === unit ? 0 : (bit.get(other) ?? 0)), 0),
    ),
  )
  const first = units.map((unit) =>
    before.reduce((bits, [a, b]) => (b === unit ? bits | (bit.get(a) ?? 0) : bits), 0),
  )
  const full = 2 ** units.length
  const reached = new Uint8Array(full)
  reached[0] = 1
  for (let standing = 0; standing < full; standing++) {
    if (reached[standing] === 0) continue
    ways.forEach((its, i) => {
      const isNext = (standing & (1 << i)) === 0 && ((first[i] as number) & ~standing) === 0
      if (isNext && its.some((blocking) => (blocking & standing) === 0)) reached[standing | (1 << i)] = 1
    })
  }
  return reached[full - 1] === 1
}

function isBroughtIn(outcome: Outcome): boolean {
  if (outcome.kind === 'refused')
    throw new Error(outcome.problems.map((p) => `${p.path}: ${p.message}`).join('\n'))
  return outcome.kind === 'plan'
}

const disagreements: string[] = []
const counts = { units: 0, can: 0, cannot: 0, blocked: 0, choice: 0, knots: 0 }

function lookAt(seed: number): void {
  const { file } = randomKitchen(seed, { most: MOST_UNITS, full: true, tight: true, plain: true })
  const crowdedFile = seed % 2 === 0 ? file : crowded(seed, file)
  const { outcome, ways } = worked(crowdedFile)
  const [mine, plans] = [canAllComeIn(ways), isBroughtIn(outcome)]
  counts.units += ways.units.length
  counts[mine ? 'can' : 'cannot']++
  if ([...ways.blockers.values()].some((its) => its.length > 0 && its.every((others) => others.length > 0)))
    counts.blocked++
  if ([...ways.blockers.values()].some((its) => its.length > 1)) counts.choice++
  if (!mine && [...ways.blockers.values()].every((its) => its.length > 0)) counts.knots++
  if (mine !== plans) {
    const why =
      outcome.kind === 'no-order'
        ? JSON.stringify({
            trapped: outcome.noPlan.trapped,
            loops: outcome.noPlan.loops.map((l) => l.map((r) => r.id)),
          })
        : ''
    disagreements.push(
      `seed ${seed}: by every order ${mine ? 'possible' : 'impossible'}, the plan says ${outcome.kind} ${why} ${JSON.stringify([...ways.blockers])}`,
    )
  }
}

beforeAll(() => {
  for (let seed = 0; seed < ROOMS; seed++) lookAt(seed)
  console.log(
    `${ROOMS} narrow rooms, ${counts.units} units: ${counts.can} can be filled, ${counts.cannot} cannot (${counts.knots} of them because of each other); in ${counts.blocked} some unit has others in every way, in ${counts.choice} some unit has ways to choose from`,
  )
}, 600_000)

test('the rooms are hard enough to tell', () => {
  expect(counts.can).toBeGreaterThan(ROOMS / 4)
  expect(counts.cannot).toBeGreaterThan(ROOMS / 20)
  expect(counts.blocked).toBeGreaterThan(ROOMS / 20)
})

test('the plan finds a way in exactly where some order has one', () => {
  expect(disagreements.slice(0, 8)).toEqual([])
})

/** The choosing by itself, where knots are common: invented ways, invented units in them, and pairs that must follow. */
test('the choosing of ways answers as trying every order does', () => {
  const wrong: string[] = []
  let impossible = 0
  for (let seed = 0; seed < 4000; seed++) {
    const random = randomFrom(seed)
    const units = Array.from({ length: random.int(2, MOST_UNITS) }, (_, i) => `u${i}`)
    const others = (unit: string) => units.filter((u) => u !== unit)
    const blockers = new Map(
      units.map((unit) => [
        unit,
        Array.from({ length: random.int(1, 3) }, () =>
          random.some(others(unit), random.int(0, Math.min(3, units.length - 1))),
        ),
      ]),
    )
    const before = Array.from({ length: random.int(0, 2) }, (): readonly [string, string] => {
      const [a, b] = random.shuffled(units)
      return [a as string, b as string]
    })
    const paths = new Map(
      [...blockers].map(([unit, ways]) => [
        unit,
        ways.map(
          (blockedBy): PlacingPath => ({ unit, approach: 'front', segments: [], blockedBy, clearance: 0 }),
        ),
      ]),
    )
    const chosen = choosePaths(units, paths, before)
    const mine = canAllComeIn({ units, blockers }, before)
    if (!mine) impossible++
    if (chosen.ok !== mine)
      wrong.push(`seed ${seed}: ${JSON.stringify([...blockers])} with ${JSON.stringify(before)}`)
    else if (chosen.ok && !isAnOrder(units, [...chosen.arcs, ...before]))
      wrong.push(`seed ${seed}: its arcs run in a ring`)
  }
  expect(impossible).toBeGreaterThan(400)
  expect(wrong.slice(0, 5)).toEqual([])
})

function isAnOrder(units: readonly string[], arcs: readonly (readonly [string, string])[]): boolean {
  const left = new Set(units)
  for (;;) {
    const free = [...left].filter((unit) => !arcs.some(([a, b]) => b === unit && left.has(a)))
    if (free.length === 0) return left.size === 0
    for (const unit of free) left.delete(unit)
  }
}
