import { parseKitchenText } from '../core/kitchen/parse-kitchen'
import { type Outcome, workThrough } from '../core/plan/entry'
import type { WayOut } from '../core/plan/types'
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
}

/** The ways out of one finding of an answer, each planned and found to hold; they come after it. */
export interface WaysAnswer {
  readonly id: number
  readonly finding: string
  readonly waysOut: readonly WayOut[]
}

/** One request worked through, under its own number. All that can be said of it carries its words with it. */
export function answer({ id, kitchen, log }: PlanRequest): PlanAnswer {
  if (typeof kitchen !== 'string') return { id, kitchen, outcome: withWords(workThrough(kitchen, log)) }
  const parsed = parseKitchenText(kitchen)
  if (!parsed.ok) return { id, kitchen: null, outcome: { kind: 'refused', problems: parsed.error } }
  return { id, kitchen: parsed.value.file, outcome: withWords(workThrough(parsed.value.file, log)) }
}
