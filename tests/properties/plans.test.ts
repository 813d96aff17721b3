/**
 * What holds of every plan, whatever the kitchen: proved over invented kitchens, 500 by default, 20 000 with
 * DRYRUN_LONG=1. A failure names its seed: `randomKitchen(seed)` makes the same kitchen again.
 */
import { beforeAll, expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import { type Outcome, workThrough } from '../../src/core/plan/entry'
import { readWrittenPlan, writtenPlan } from '../../src/core/plan/plan-file'
import type { NoPlan, Plan } from '../../src/core/plan/types'
import {
  badNumbers,
  brokenDemands,
  brokenOrder,
  brokenReferences,
  refusedBySorters,
  wordless,
} from '../support/plan-properties'
import { randomFrom } from '../support/prng'
import { type RandomKitchen, randomKitchen, shuffledSets } from '../support/random-kitchen'
import type { Tag } from '../support/random-room'
import { shutInUnit } from '../support/random-troubles'

const LONG = process.env['DRYRUN_LONG'] === '1'
const SEEDS = LONG ? 20_000 : 500
const TIME_LIMIT = LONG ? 3_600_000 : 240_000

const PROPERTIES = [
  'comes to an answer',
  'is read',
  'is refused with reasons',
  'is told when it cannot be',
  'lists everything once',
  'is sorted by others too',
  'keeps its own reasons',
  'has only numbers that are numbers',
  'keeps its heights',
  'has words for everything',
  'gives the same bytes again',
  'gives the same bytes for shuffled sets',
  'is accepted by the checker',
] as const
type Property = (typeof PROPERTIES)[number]

/** Faults by property: the seed, and what it was. */
const faults = new Map<Property, string[]>(PROPERTIES.map((p) => [p, []]))
const counts = { plan: 0, 'no-order': 0, refused: 0, threw: 0 }
const tagCounts = new Map<Tag, number>()
let checked = 0
let moved = 0

function note(property: Property, seed: number, what: readonly string[]): void {
  if (what.length > 0)
    faults
      .get(property)
      ?.push(`seed ${seed}: ${what.slice(0, 3).join(' | ')}${what.length > 3 ? ` (${what.length})` : ''}`)
}

function outcomeOf(value: unknown): Outcome | Error {
  try {
    return workThrough(value)
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error))
  }
}

function lookAt(kitchen: RandomKitchen): void {
  const { seed, file, tags } = kitchen
  for (const tag of tags) tagCounts.set(tag, (tagCounts.get(tag) ?? 0) + 1)
  const outcome = outcomeOf(file)
  if (outcome instanceof Error) {
    counts.threw++
    note('comes to an answer', seed, [outcome.stack?.split('\n').slice(0, 3).join(' ') ?? outcome.message])
    return
  }
  counts[outcome.kind]++
  note(
    'is read',
    seed,
    outcome.kind === 'refused' ? outcome.problems.map((p) => `${p.path}: ${p.message}`) : [],
  )
  note('is told when it cannot be', seed, untold(kitchen, outcome))
  note('has only numbers that are numbers', seed, badNumbers(outcome))
  note('has words for everything', seed, wordless(outcome))
  const bytes = bytesOf(outcome)
  lookAgain(kitchen, bytes)
  if (outcome.kind === 'no-order') note('is refused with reasons', seed, unreasoned(outcome.noPlan))
  if (outcome.kind === 'plan') lookAtPlan(kitchen, outcome.plan, bytes)
}

/** An outcome as it is written into a file: the bytes that must not differ. */
function bytesOf(outcome: Outcome): string {
  return JSON.stringify(writtenPlan(outcome))
}

/** Every shuffled run is a second run too; the plain repeat is made for one in so many. */
const REPEAT_EVERY = 10
/** One in so many is shuffled; all of them with DRYRUN_LONG=1. */
const SHUFFLE_EVERY = LONG ? 1 : 10

function lookAgain({ seed, file }: RandomKitchen, bytes: string): void {
  if (seed % SHUFFLE_EVERY > 0) return
  const shuffled = shuffledSets(randomFrom(seed + 1_000_000), file)
  if (JSON.stringify(shuffled) !== JSON.stringify(file)) moved++
  note('gives the same bytes for shuffled sets', seed, parting(bytes, outcomeOf(shuffled)))
  if (seed % REPEAT_EVERY > 0) return
  note('gives the same bytes again', seed, parting(bytes, outcomeOf(structuredClone(file))))
}

/** Where two outcomes part, with what stands about it. */
function parting(bytes: string, again: Outcome | Error): string[] {
  const other = again instanceof Error ? again.message : bytesOf(again)
  if (other === bytes) return []
  let at = 0
  while (bytes[at] === other[at]) at++
  return [`…${bytes.slice(Math.max(0, at - 90), at + 50)}… against …${other.slice(at, at + 50)}…`]
}

function lookAtPlan({ seed, file }: RandomKitchen, plan: Plan, bytes: string): void {
  note('lists everything once', seed, brokenReferences(plan))
  note('is sorted by others too', seed, refusedBySorters(plan))
  note('keeps its own reasons', seed, brokenOrder(plan))
  note('keeps its heights', seed, brokenDemands(plan))
  note('is accepted by the checker', seed, refusals(file, bytes))
}

/** What the checker says of the plan as it is read back from its bytes. */
function refusals(file: unknown, bytes: string): string[] {
  checked++
  try {
    const read = readWrittenPlan(JSON.parse(bytes)) as { readonly plan: unknown } | undefined
    const report = checkPlan(file, read?.plan)
    return report.refusals.map((r) => `${r.rule} ${r.what}: ${r.say}`)
  } catch (error) {
    return [
      `the checker broke: ${error instanceof Error ? (error.stack?.split('\n').slice(0, 3).join(' ') ?? '') : String(error)}`,
    ]
  }
}

/** No order, and no reason given for it. */
function unreasoned(no: NoPlan): string[] {
  const why = no.conflicts.length + no.loops.length + no.trapped.length
  return [
    ...(why === 0 ? ['no order, without a conflict, a loop or a trapped unit'] : []),
    ...(no.conflicts.length > 0 && no.repairs.length === 0 ? ['conflicts without a repair'] : []),
    ...no.conflicts.filter((c) => c.wishes.length === 0).map(() => 'a conflict of no wishes'),
  ]
}

/** A kitchen made so that it cannot be, and nothing said of it. */
function untold({ tags, file }: RandomKitchen, outcome: Outcome): string[] {
  // A fact taken away may have taken the trouble with it.
  if (!tags.has('infeasible') || tags.has('unknown') || outcome.kind === 'refused') return []
  if (tags.has('clash-order')) {
    const isSaid = outcome.kind === 'no-order' && outcome.noPlan.conflicts.length > 0
    return isSaid
      ? []
      : [`wishes that clash (${JSON.stringify(file.wishes?.order)}), and the outcome is ${outcome.kind}`]
  }
  const findings = outcome.kind === 'plan' ? outcome.plan.findings : outcome.noPlan.findings
  if (tags.has('clash-heights')) {
    const isSaid = findings.some((f) => f.rule === 'heights-clash' && f.weight === 'stop')
    const isListed =
      outcome.kind !== 'plan' ||
      (outcome.plan.heights.unmet.length > 0 && outcome.plan.heights.conflicts.length > 0)
    return isSaid && isListed
      ? []
      : [`heights that clash, and the findings are ${findings.map((f) => f.id).join(' ')}`]
  }
  if (outcome.kind === 'no-order')
    return outcome.noPlan.trapped.length > 0 ? [] : ['no unit is said to be shut in']
  // Of a unit whose height is not known nothing can be said.
  const shut = outcome.plan.units.find((u) => u.unit === shutInUnit(file))
  return shut?.pose === null ? [] : [`${shut?.unit} cannot come in, and there is a plan`]
}

beforeAll(() => {
  const started = performance.now()
  for (let seed = 0; seed < SEEDS; seed++) lookAt(randomKitchen(seed))
  const took = ((performance.now() - started) / 1000).toFixed(1)
  const tags = [...tagCounts]
    .sort((a, b) => b[1] - a[1])
    .map(([tag, n]) => `${tag} ${((100 * n) / SEEDS).toFixed(0)} %`)
  console.log(
    [
      `${SEEDS} invented kitchens in ${took} s: ${Object.entries(counts)
        .map(([kind, n]) => `${n} ${kind}`)
        .join(', ')}; ${checked} plans checked, ${moved} files really shuffled`,
      `of them: ${tags.join(', ')}`,
      ...PROPERTIES.flatMap((p) => {
        const its = faults.get(p) ?? []
        return its.length === 0 ? [] : [`${its.length} × not: ${p}`]
      }),
    ].join('\n'),
  )
}, TIME_LIMIT)

test('the invented kitchens are as various as they are meant to be', () => {
  const share = (tag: Tag) => (tagCounts.get(tag) ?? 0) / SEEDS
  expect(share('not-square')).toBeGreaterThanOrEqual(0.4)
  expect(share('tall')).toBeGreaterThanOrEqual(0.3)
  expect(share('unknown')).toBeGreaterThanOrEqual(0.3)
  expect(share('infeasible')).toBeGreaterThanOrEqual(0.2)
  for (const tag of [
    'clash-order',
    'clash-heights',
    'shut-in',
    'closed',
    'island',
    'arm',
    'studs',
    'other-face',
  ] as const) {
    expect(share(tag), tag).toBeGreaterThan(0)
  }
})

test('both plans and refusals are among them', () => {
  expect(counts.plan).toBeGreaterThan(SEEDS / 3)
  expect(counts['no-order']).toBeGreaterThan(SEEDS / 20)
  expect(checked).toBe(counts.plan)
  expect(moved).toBeGreaterThan((SEEDS / SHUFFLE_EVERY) * 0.9)
})

test.each(PROPERTIES)('every kitchen %s', (property) => {
  expect((faults.get(property) ?? []).slice(0, 12)).toEqual([])
})
