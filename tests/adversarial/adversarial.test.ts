/**
 * Kitchens made to mislead: each is planned, the independent checker looks at the plan, and every line of its sheet of
 * answers is asked of it: what must be said and of what weight, what must not, and the figures.
 */
import { beforeAll, describe, expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import { type Outcome, workThrough } from '../../src/core/plan/entry'
import { WEIGHTS } from '../../src/core/plan/gravest-first'
import type { Finding, NoPlan, Plan } from '../../src/core/plan/types'
import { withWaysOut } from '../../src/core/plan/ways-out'
import {
  heldAt,
  isOfMode,
  KITCHENS,
  kitchenOf,
  namedBy,
  type SheetFigure,
  type SheetSaying,
  sheetOf,
  valuesOf,
  wishesRefused,
} from '../support/adversarial-sheets'

const table: string[] = []

/** Nothing in it; what is goes into the table printed at the end. */
function expectNone(kitchen: string, lines: readonly string[]): void {
  for (const line of lines) table.push(`${kitchen} | ${line}`)
  expect(lines).toEqual([])
}

beforeAll(() => () => {
  if (table.length > 0) console.log(`Where plan and sheet disagree:\n${table.join('\n')}`)
})

function exitOf(outcome: Outcome): number {
  if (outcome.kind === 'refused') return 2
  if (outcome.kind === 'no-order') return 3
  return outcome.plan.findings.some((f) => f.weight === 'stop' || (f.weight === 'ask' && f.dangerous)) ? 1 : 0
}

function findingsOf(outcome: Outcome): readonly Finding[] {
  if (outcome.kind === 'refused') throw new Error(outcome.problems.map((p) => p.message).join('\n'))
  return outcome.kind === 'plan'
    ? outcome.plan.findings
    : [...outcome.noPlan.findings, ...outcome.noPlan.conflicts.map(wishesRefused)]
}

/** What figures are read in: the plan, or why there is none. */
function planOf(outcome: Outcome): Plan | NoPlan | null {
  if (outcome.kind === 'refused') return null
  return outcome.kind === 'plan' ? outcome.plan : outcome.noPlan
}

function isHeavyEnough(finding: Finding, { weight, orWeights = [] }: SheetSaying): boolean {
  if (weight === undefined) return finding.weight !== 'note'
  const least = WEIGHTS.indexOf(weight)
  return WEIGHTS.indexOf(finding.weight) <= least || orWeights.includes(finding.weight)
}

function isSaid(saying: SheetSaying, findings: readonly Finding[]): boolean {
  return findings.some((finding) => {
    if (!isOfMode(finding, saying) || !isHeavyEnough(finding, saying)) return false
    const named = namedBy(finding)
    return saying.naming === 'all'
      ? saying.about.every((id) => named.has(id))
      : saying.about.some((id) => named.has(id))
  })
}

function wrongly(saying: SheetSaying, findings: readonly Finding[]): readonly string[] {
  return findings
    .filter((f) => isOfMode(f, saying) && isHeavyEnough(f, saying))
    .filter((f) => saying.about.some((id) => f.about.includes(id)))
    .map((f) => `${f.weight} ${f.id}, though ${saying.why}`)
}

function disagreement(figure: SheetFigure, outcome: Outcome): readonly string[] {
  if (figure.read === null) return []
  const told = valuesOf(figure.read, planOf(outcome), findingsOf(outcome))
  const { what, value, tolerance } = figure
  const agrees =
    value === null ? told.length === 0 : told.some((v) => Math.abs(v - value) <= tolerance + 1e-9)
  return [
    ...(agrees ? [] : [`${what}: by hand ${value} ± ${tolerance}, told ${told.join(', ') || 'nothing'}`]),
    ...verdictDisagreement(figure, outcome),
    ...unknownDisagreement(figure, outcome),
  ]
}

/** Whether a hole is refused, where the sheet says so of it. */
function verdictDisagreement({ what, where, read }: SheetFigure, outcome: Outcome): readonly string[] {
  const said = /verdict (not )?refused/.exec(where)
  const id = /^holes\[(.+)\]/.exec(read ?? '')?.[1]
  if (said === null || id === undefined) return []
  const verdict =
    outcome.kind === 'plan' ? outcome.plan.holes.find((hole) => hole.id === id)?.verdict : undefined
  const isRefused = verdict === 'refused'
  return verdict !== undefined && isRefused === (said[1] === undefined)
    ? []
    : [`${what}: by hand ${said[0]}, the plan ${verdict}`]
}

/** Of what the plan must not know, the facts that are missing are named. */
function unknownDisagreement({ what, value, read }: SheetFigure, outcome: Outcome): readonly string[] {
  const held = heldAt(read ?? '', planOf(outcome)) as { readonly missing?: readonly string[] } | undefined
  if (value !== null || held === undefined || held.missing !== undefined) {
    return value === null && held?.missing?.length === 0
      ? [`${what}: unknown, and nothing is named as missing`]
      : []
  }
  return [`${what}: it should be unknown`]
}

describe.each(KITCHENS)('%s', (name) => {
  const sheet = sheetOf(name)
  let outcome: Outcome
  beforeAll(() => {
    outcome = workThrough(kitchenOf(name))
  })

  test('the command line would end as the sheet says', () => {
    expect(exitOf(outcome)).toBe(sheet.exit)
  })

  test('the checker accepts the plan', () => {
    if (outcome.kind !== 'plan') return expect(outcome.kind).toBe('no-order')
    const { refusals } = checkPlan(kitchenOf(name), outcome.plan)
    expectNone(
      name,
      refusals.map((r) => `the checker: ${r.rule} | ${r.what} | ${r.say}`),
    )
  })

  test('what must be said is said', () => {
    const findings = findingsOf(outcome)
    const missing = sheet.mustSay.filter((saying) => !isSaid(saying, findings))
    expectNone(
      name,
      missing.map((m) => `not said: ${m.mode} ${m.weight} ${m.about.join(' ')}: ${m.why}`),
    )
  })

  test('what must not be said is not', () => {
    expectNone(
      name,
      sheet.mustNotSay.flatMap((saying) => wrongly(saying, findingsOf(outcome))),
    )
  })

  test('the figures are as worked by hand', () => {
    expect(sheet.figures.some((figure) => figure.read !== null)).toBe(true)
    expectNone(
      name,
      sheet.figures.flatMap((figure) => disagreement(figure, outcome)),
    )
  })
})

const OFFERS = KITCHENS.flatMap((name) =>
  (sheetOf(name).mustNotOffer ?? []).map((offer) => ({ name, ...offer })),
)

test.each(OFFERS)('$name: no way out changes $edit', ({ name, about, edit }) => {
  const file = kitchenOf(name)
  const outcome = workThrough(file)
  if (outcome.kind !== 'plan') throw new Error('no plan')
  const its = withWaysOut(outcome.plan, file).findings.filter((f) => f.about.includes(about))
  const edits = its.flatMap((f) => f.waysOut.flatMap((way) => way.edits))
  expect(its.length).toBeGreaterThan(0)
  expect(
    edits.filter((e) => Object.values(e).some((v) => typeof v === 'string' && v.startsWith(edit))),
  ).toEqual([])
})
