import { firstAnswer } from '../core/first/first-answer'
import type { FirstLine } from '../core/first/line'
import { parseKitchen, parseKitchenText } from '../core/kitchen/parse-kitchen'
import { type Tried, tryOrder } from '../core/order/try-order'
import type { Forced } from '../core/order/what-if'
import { type Outcome, workThrough } from '../core/plan/entry'
import type { Plan, WayOut } from '../core/plan/types'
import { withWords } from '../core/words/with-words'

export interface PlanRequest {
  readonly id: number
  /** A kitchen file as a value, or as the text of a file that has not been read yet. */
  readonly kitchen: unknown
  readonly log: unknown
}
export interface PlanAnswer {
  readonly id: number
  readonly outcome: Outcome
  /** The kitchen file that was planned, as a value; null when its text could not be read. */
  readonly kitchen: unknown
  /** What can be said of it before it is surveyed; left out when it was refused. */
  readonly first?: readonly FirstLine[]
}

/** One operation to be tried before another, in a kitchen that has been planned; latest wins among these too. */
export interface TrialRequest extends PlanRequest {
  readonly forced: Forced
  /** The answer that holds the plan it is tried against. */
  readonly of: number | null
}
export interface TrialAnswer {
  readonly id: number
  readonly forced: Forced
  readonly tried: Tried
}

/** The ways out of one finding of an answer, each planned and found to hold; they come after it. */
export interface WaysAnswer {
  readonly id: number
  readonly finding: string
  readonly waysOut: readonly WayOut[]
}

/** One request worked through, under its own number. All that can be said of it carries its words with it. */
export function answer({ id, kitchen, log }: PlanRequest): PlanAnswer {
  if (typeof kitchen !== 'string') return worked(id, kitchen, log)
  const parsed = parseKitchenText(kitchen)
  if (!parsed.ok) return { id, kitchen: null, outcome: { kind: 'refused', problems: parsed.error } }
  return worked(id, parsed.value.file, log)
}

/** One operation tried before another, its sentences with their words; `plan`: of the same kitchen, if it is at hand. */
export function tried({ id, kitchen, log, forced }: TrialRequest, plan?: Plan): TrialAnswer {
  const outcome = plan === undefined ? workThrough(kitchen, log) : ({ kind: 'plan', plan } as const)
  const told: Tried =
    outcome.kind === 'plan' ? tryOrder(kitchen, log, outcome.plan, forced) : { kind: 'refused' }
  return { id, forced, tried: withWords(told) }
}

function worked(id: number, kitchen: unknown, log: unknown): PlanAnswer {
  const parsed = parseKitchen(kitchen)
  const planned = { id, kitchen, outcome: withWords(workThrough(kitchen, log)) }
  return parsed.ok ? { ...planned, first: withWords(firstAnswer(parsed.value.kitchen)) } : planned
}
