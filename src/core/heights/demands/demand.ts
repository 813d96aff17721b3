import type { Basis, Figure, InputId } from '../../figure'
import { known, unknown } from '../../figure'
import type { Message } from '../../message'
import type { Demand, HeightVariable } from '../../plan/types'
import type { HeightsContext } from '../context'

/** One rule of the trade: the demands it makes on the heights of this kitchen. */
export type DemandRule = (context: HeightsContext) => readonly Demand[]

export const geometry = (why: string): Basis => ({ kind: 'geometry', why })

/** 0 as an exact figure that rests on what makes the demand. */
export function exactly(value: number, basis: Basis, from: readonly InputId[] = []): Figure {
  return known(value, 0, 'mm', from, basis)
}

/** A limit that is not known because a fact is not. */
export function notKnown(missing: readonly InputId[], basis: Basis): Figure {
  return unknown('mm', missing, missing, basis)
}

interface Wanted {
  /** What the rule is applied to: a unit, a foot, an appliance, a wish. */
  readonly subject: string
  readonly of: HeightVariable
  /** Measured from: the line, unless said. */
  readonly from?: HeightVariable
  readonly min?: Figure | null
  readonly max?: Figure | null
  readonly because: Message
  readonly basis: Basis
  readonly about: readonly string[]
  /** Hard unless said. */
  readonly hard?: boolean
}

export function demand(rule: string, wanted: Wanted): Demand {
  const { subject, of, from = 'line', min = null, max = null, because, basis, about, hard = true } = wanted
  return { id: `${rule}:${subject}`, from, to: of, min, max, because, basis, hard, about }
}

/** The rule a demand was made by. */
export function ruleOf({ id }: Pick<Demand, 'id'>): string {
  return id.slice(0, id.indexOf(':'))
}
