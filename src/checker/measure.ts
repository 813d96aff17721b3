import type { Figure } from '../core/figure'
import { at, isRecord, type Spot } from './json'
import { typedLength } from './length'

/**
 * A measure: a length, angle or the like as this checker reads or works it out, or the facts that are missing for it. It
 * is the checker's own reckoning, kept apart from the plan's figures so that the two can be laid side by side.
 */
export interface Measure {
  readonly value: number | null
  readonly assumed: boolean
  /** Facts that are not known; empty exactly when there is a value. */
  readonly missing: readonly string[]
}

export const nought: Measure = { value: 0, assumed: false, missing: [] }

export function exactly(value: number): Measure {
  return { ...nought, value }
}

export function notKnown(...missing: readonly string[]): Measure {
  return { value: null, assumed: false, missing }
}

/** A figure of the file as typed: bare, as text, or an object with its own precision; null or left out is not known. */
export function measureAt(spot: Spot, ...keys: readonly string[]): Measure {
  const fact = at(spot, ...keys)
  const full = isRecord(fact.json) ? fact.json : { value: fact.json }
  const value = numberFrom(full['value'])
  if (value === null) return notKnown(fact.id)
  return { value, assumed: full['assumed'] === true, missing: [] }
}

function numberFrom(typed: unknown): number | null {
  if (typeof typed === 'number' && Number.isFinite(typed)) return typed
  return typeof typed === 'string' ? (typedLength(typed) ?? null) : null
}

/** A measure worked out from others: unknown if any of them is. */
export function work(inputs: readonly Measure[], how: (...values: number[]) => number): Measure {
  if (inputs.some((m) => m.value === null)) {
    return { value: null, assumed: false, missing: inputs.flatMap((m) => m.missing) }
  }
  const value = how(...inputs.map((m) => m.value ?? 0))
  return { value, assumed: inputs.some((m) => m.assumed), missing: [] }
}

export function sum(...terms: readonly Measure[]): Measure {
  return work(terms, (...values) => values.reduce((total, v) => total + v, 0))
}

export function less(from: Measure, take: Measure): Measure {
  return work([from, take], (a, b) => a - b)
}

export function plus(measure: Measure, by: number): Measure {
  return work([measure], (v) => v + by)
}

/** The measure, or another when the file leaves it open and says what that means ("null: against the wall"). */
export function orElse(measure: Measure, other: Measure): Measure {
  return measure.value === null ? other : measure
}

export function isKnown(measure: Measure): boolean {
  return measure.value !== null
}

/** A figure of the plan, taken over as it is: a choice the plan makes, judged elsewhere. */
export function taken(figure: Figure): Measure {
  if (figure.state === 'unknown') return { value: null, assumed: false, missing: figure.missing }
  return { value: figure.value, assumed: figure.state === 'assumed', missing: [] }
}
