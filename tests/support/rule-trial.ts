import { expect, test } from 'vitest'
import { withEdits } from '../../src/core/kitchen/edit'
import type { Message } from '../../src/core/message'
import { workThrough } from '../../src/core/plan/entry'
import type { Edit, Finding, Plan, Weight } from '../../src/core/plan/types'
import { withWaysOut } from '../../src/core/plan/ways-out'
import { say } from '../../src/core/words/say'
import { soundKitchen } from './sound-kitchen'

/** One trial of a rule: primitive facts just inside its limit, and just outside. */
export interface Trial {
  readonly what: string
  /** Facts the trial wants beside the sound kitchen's; the rule is silent with them and so are all others. */
  readonly given?: readonly Edit[]
  /** The last facts at which it is silent; left out: the given facts as they are. */
  readonly inside?: readonly Edit[]
  /** The first facts at which it fires. */
  readonly outside: readonly Edit[]
  readonly weight: Weight
  /** Things the finding must be about. */
  readonly about?: readonly string[]
  /** Rules that the given facts raise on either side of the limit: they ask for facts the trial is not about. */
  readonly beside?: readonly string[]
  /** Rules that rightly fire with it: nothing else may. */
  readonly with?: readonly string[]
  /** Rules whose findings rightly go away with it. */
  readonly without?: readonly string[]
  /** Pieces of the sentence as it is said, figures among them. */
  readonly says?: readonly string[]
  /** How many ways out hold once they are planned; left out: not looked at. */
  readonly waysOut?: number
}

/** What is looked at: the findings of a plan, or those told where none can be given. */
type Told = Pick<Plan, 'findings'>

function planned(edits: readonly Edit[]): {
  readonly file: unknown
  readonly plan: Told
  readonly whole?: Plan
} {
  const file = withEdits(soundKitchen(), edits)
  if (file === undefined) throw new Error(`an edit names what is not there: ${JSON.stringify(edits)}`)
  const outcome = workThrough(file)
  if (outcome.kind === 'no-order') return { file, plan: outcome.noPlan }
  if (outcome.kind !== 'plan') throw new Error(JSON.stringify(outcome).slice(0, 800))
  return { file, plan: outcome.plan, whole: outcome.plan }
}

/** A sentence with plain spaces, as a test is typed. */
const said = (message: Message): string => say(message).replace(/[\u202f\u202f\u00a0]/g, ' ')

/** Findings that are not notes, by id: notes tell, they hold nobody up. */
const raised = (plan: Told): ReadonlyMap<string, Finding> =>
  new Map(plan.findings.filter(({ weight }) => weight !== 'note').map((finding) => [finding.id, finding]))

const rulesOf = (findings: Iterable<Finding>): readonly string[] =>
  [...new Set([...findings].map(({ rule }) => rule))].sort()

/** What is raised in `after` and not in `before`, less the rule itself. */
function neighbours(before: Told, after: Told, rule: string): readonly string[] {
  const there = raised(before)
  return rulesOf([...raised(after).values()].filter((f) => !there.has(f.id) && f.rule !== rule))
}

let sound: Told | undefined

/** Tries a rule at its limit on a kitchen built from plain survey facts. */
export function tryRule(rule: string, trials: readonly Trial[]): void {
  test.each(trials.map((trial) => [trial.what, trial] as const))(`${rule}: %s`, (_, trial) => {
    const given = trial.given ?? []
    sound ??= planned([]).plan
    const inside = planned([...given, ...(trial.inside ?? [])]).plan
    expect(
      inside.findings.filter((f) => f.rule === rule && f.weight !== 'note').map((f) => said(f.say)),
    ).toEqual([])
    const beside = new Set(trial.beside ?? [])
    const unlisted = (names: readonly string[]) => names.filter((name) => !beside.has(name))
    expect(unlisted(neighbours(sound, inside, rule)), 'raised just inside').toEqual([])

    const { file, plan, whole } = planned([...given, ...trial.outside])
    const fired = plan.findings.filter((f) => f.rule === rule && f.weight === trial.weight)
    expect(fired.length, `${rule} fires just outside`).toBeGreaterThan(0)
    const found = fired.find((f) => (trial.about ?? []).every((id) => f.about.includes(id)))
    expect(
      found,
      `about ${trial.about?.join(', ')}; is about ${fired.map((f) => f.about.join(', ')).join(' | ')}`,
    ).toBeDefined()
    for (const piece of trial.says ?? []) expect(fired.map((f) => said(f.say)).join('\n')).toContain(piece)
    expect(unlisted(neighbours(inside, plan, rule)), 'what else is raised').toEqual(
      [...(trial.with ?? [])].sort(),
    )
    const gone = [...raised(inside).values()].filter((f) => !raised(plan).has(f.id))
    expect(rulesOf(gone), 'what is no longer raised').toEqual([...(trial.without ?? [])].sort())
    if (trial.waysOut !== undefined) {
      if (whole === undefined) throw new Error('no plan, so no ways out')
      const proved = withWaysOut(whole, file).findings.find((f) => f.id === found?.id)
      expect(proved?.waysOut.length, 'ways out that hold').toBe(trial.waysOut)
    }
  })
}
