/**
 * The demo kitchens against sheets worked by hand: the figures, the holes that may not be drilled, the findings, the
 * exit of the command line, the order and its contradictions.
 */
import { beforeAll, describe, expect, test } from 'vitest'
import { type Outcome, workThrough } from '../../src/core/plan/entry'
import type { Finding, OrderReason, Plan } from '../../src/core/plan/types'
import { expectedOf, SCENES, type Scene, sceneFile, type WorkedRow, workedOf } from '../support/scene-sheets'
import { planValue } from '../support/worked-values'

const outcomes = new Map<Scene, Outcome>()
const table: string[] = []

function outcomeOf(scene: Scene): Outcome {
  const ready = outcomes.get(scene)
  if (ready !== undefined) return ready
  const outcome = workThrough(sceneFile(scene))
  outcomes.set(scene, outcome)
  return outcome
}

/** The plan; of a kitchen whose wishes clash, that of the same kitchen without them. */
function planOf(scene: Scene): Plan {
  const outcome = outcomeOf(scene)
  if (outcome.kind === 'plan') return outcome.plan
  const without = workThrough({ ...sceneFile(scene), wishes: {} })
  if (without.kind !== 'plan') throw new Error(`${scene}: no plan even without its wishes`)
  return without.plan
}

function findingsOf(outcome: Outcome): readonly Finding[] {
  if (outcome.kind === 'refused') throw new Error(outcome.problems.map((p) => p.message).join('\n'))
  return outcome.kind === 'plan' ? outcome.plan.findings : outcome.noPlan.findings
}

/** As the command line ends. */
function exitOf(outcome: Outcome): number {
  if (outcome.kind === 'refused') return 2
  if (outcome.kind === 'no-order') return 3
  return outcome.plan.findings.some((f) => f.weight === 'stop' || (f.weight === 'ask' && f.dangerous)) ? 1 : 0
}

/** By how much three wishes on waits miss: two waits and the work between them, against what is allowed. */
function painterShort(scene: Scene): number {
  const wishes = sceneFile(scene).wishes?.order ?? []
  const lag = (id: string, which: 'minLag' | 'maxLag') => Number(wishes.find((w) => w.id === id)?.[which])
  const fronts = planOf(scene).operations.find((o) => o.id === 'hang-fronts:wall-1')
  const needed =
    lag('cornice-dries', 'minLag') + (fronts?.minutes.typical ?? Number.NaN) + lag('doors-settle', 'minLag')
  return needed - lag('painter-two-days', 'maxLag')
}

function disagreement(scene: Scene, row: WorkedRow): string[] {
  const there =
    row.what === 'conflict.painter.short' ? painterShort(scene) : planValue(planOf(scene), row.what)
  if (there !== null && Math.abs(there - row.mm) <= row.within + 1e-9) return []
  return [`${row.what}: by hand ${row.mm} ± ${row.within}, the plan ${there} (${row.working})`]
}

function setDifference(byHand: readonly string[], planned: readonly string[]): string[] {
  return [
    ...byHand.filter((id) => !planned.includes(id)).map((id) => `only by hand: ${id}`),
    ...planned.filter((id) => !byHand.includes(id)).map((id) => `only in the plan: ${id}`),
  ]
}

/**
 * Whether hard reasons lead from one operation to the other, by whatever way. Operations held together, with no time
 * at all allowed between them, leave no gap for a third: what is before the last of them is before the first. So a way
 * from one group to another counts; within one group only the reasons themselves do.
 */
function leads(reasons: readonly OrderReason[], from: string, to: string): boolean {
  const hard = reasons.filter((r) => r.hard)
  const group = heldTogether(hard)
  if (group(from) === group(to)) return reaches(hard, from, to, (id) => id)
  return reaches(hard, group(from), group(to), group)
}

function reaches(
  reasons: readonly OrderReason[],
  from: string,
  to: string,
  as: (id: string) => string,
): boolean {
  const seen = new Set([from])
  const open = [from]
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const r of reasons) {
      const next = as(r.after)
      if (as(r.before) !== at || seen.has(next)) continue
      if (next === to) return true
      seen.add(next)
      open.push(next)
    }
  }
  return false
}

/** The first by name of the operations that one is held together with; itself when it is with none. */
function heldTogether(hard: readonly OrderReason[]): (id: string) => string {
  const of = new Map<string, string>()
  const first = (id: string): string => {
    const up = of.get(id)
    return up === undefined ? id : first(up)
  }
  for (const { before, after, maxLag } of hard) {
    const [low, high] = [first(before), first(after)].sort()
    if (maxLag === 0 && low !== undefined && high !== undefined && low !== high) of.set(high, low)
  }
  return first
}

function brokenPairs(scene: Scene): string[] {
  const plan = planOf(scene)
  const at = new Map(plan.operations.map((o, i) => [o.id, i]))
  return workedOf(scene).order.flatMap((pair) => {
    const [before, after] = [at.get(pair.before), at.get(pair.after)]
    const words = `${pair.before} < ${pair.after} (${pair.kind}, ${pair.hard ? 'hard' : 'preferred'}: ${pair.because})`
    if (before === undefined || after === undefined) {
      return [`${words}: there is no ${before === undefined ? pair.before : pair.after}`]
    }
    if (pair.hard) {
      if (before > after) return [`${words}: the other way round`]
      return leads(plan.reasons, pair.before, pair.after) ? [] : [`${words}: no hard reason leads there`]
    }
    const its = plan.reasons.filter((r) => r.before === pair.before && r.after === pair.after)
    const isSetAside = its.some((r) => plan.order.setAside.includes(r.id))
    return before < after || isSetAside ? [] : [`${words}: the other way round, and not set aside`]
  })
}

function compare(scene: Scene, area: string, lines: readonly string[]): void {
  for (const line of lines) table.push(`${scene} | ${area} | ${line}`)
  expect(lines).toEqual([])
}

beforeAll(() => () => {
  if (table.length > 0) console.log(`Where plan and sheet disagree:\n${table.join('\n')}`)
})

describe.each(SCENES)('%s', (scene) => {
  test('the command line ends as expected', () => {
    expect(exitOf(outcomeOf(scene))).toBe(expectedOf(scene).exit)
  })

  test('the findings are exactly those expected', () => {
    const told = findingsOf(outcomeOf(scene)).filter((f) => f.weight !== 'note')
    compare(
      scene,
      'findings',
      setDifference(
        expectedOf(scene).findings,
        told.map((f) => f.id),
      ),
    )
  })

  test('the notes expected are there', () => {
    const notes = findingsOf(outcomeOf(scene)).map((f) => f.id)
    compare(
      scene,
      'notes',
      expectedOf(scene).notes.filter((id) => !notes.includes(id)),
    )
  })

  test('every figure is as worked by hand', () => {
    const { rows } = workedOf(scene)
    expect(rows.length).toBeGreaterThan(0)
    compare(
      scene,
      'figures',
      rows.flatMap((row) => disagreement(scene, row)),
    )
  })

  test('the same holes are refused, and the same asked about', () => {
    const { refused, asks } = workedOf(scene)
    const { holes } = planOf(scene)
    const of = (verdict: string) => holes.filter((h) => h.verdict === verdict).map((h) => h.id)
    compare(scene, 'holes', [
      ...setDifference(refused, of('refused')).map((line) => `refused, ${line}`),
      ...(asks === undefined ? [] : setDifference(asks, of('ask')).map((line) => `ask, ${line}`)),
    ])
  })

  test('the order has every pair', () => {
    expect(workedOf(scene).order.length).toBeGreaterThan(0)
    compare(scene, 'order', brokenPairs(scene))
  })

  test('the contradictions and the ways out of them are the same', () => {
    const outcome = outcomeOf(scene)
    const no = outcome.kind === 'no-order' ? outcome.noPlan : null
    const sets = (lists: readonly (readonly string[])[]) => lists.map((ids) => [...ids].sort().join(' + '))
    compare(scene, 'contradictions', [
      ...setDifference(sets(workedOf(scene).conflicts), sets(no?.conflicts.map((c) => c.wishes) ?? [])),
      ...setDifference(sets(workedOf(scene).repairs), sets(no?.repairs.map((r) => r.drop) ?? [])),
    ])
  })
})
