/**
 * Whether the units of a kitchen can be brought in at all: the plan's answer against a search of the test's own through
 * every set of units that may stand already, over the ways into the room that the placing has found.
 */
import { beforeAll, expect, test, vi } from 'vitest'
import type { CandidatePaths } from '../../src/core/placing/paths'
import { type Outcome, workThrough } from '../../src/core/plan/entry'
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
function canAllComeIn({ units, blockers }: Ways): boolean {
  const bit = new Map(units.map((unit, i) => [unit, 1 << i]))
  const ways = units.map((unit) =>
    (blockers.get(unit) ?? []).map((others) =>
      others.reduce((bits, other) => bits | (other === unit ? 0 : (bit.get(other) ?? 0)), 0),
    ),
  )
  const full = 2 ** units.length
  const reached = new Uint8Array(full)
  reached[0] = 1
  for (let standing = 0; standing < full; standing++) {
    if (reached[standing] === 0) continue
    ways.forEach((its, i) => {
      if ((standing & (1 << i)) === 0 && its.some((blocking) => (blocking & standing) === 0))
        reached[standing | (1 << i)] = 1
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
const counts = { units: 0, can: 0, cannot: 0, blocked: 0, choice: 0, loops: 0 }

function lookAt(seed: number): void {
  const { file } = randomKitchen(seed, { most: MOST_UNITS, tight: true, plain: true })
  const crowdedFile = seed % 2 === 0 ? file : crowded(seed, file)
  const { outcome, ways } = worked(crowdedFile)
  const [mine, plans] = [canAllComeIn(ways), isBroughtIn(outcome)]
  counts.units += ways.units.length
  counts[mine ? 'can' : 'cannot']++
  if ([...ways.blockers.values()].some((its) => its.length > 0 && its.every((others) => others.length > 0)))
    counts.blocked++
  if ([...ways.blockers.values()].some((its) => its.length > 1)) counts.choice++
  if (outcome.kind === 'no-order' && outcome.noPlan.loops.length > 0) counts.loops++
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
    `${ROOMS} narrow rooms, ${counts.units} units: ${counts.can} can be filled, ${counts.cannot} cannot; in ${counts.blocked} some unit has others in every way, in ${counts.choice} some unit has ways to choose from`,
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
