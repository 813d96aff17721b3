import type { Basis, InputId } from '../figure'
import type { Wall } from '../kitchen/schema'
import type { Message } from '../message'

/** What a first answer is about, in the order it is read; `measured` is said at its question instead. */
export type FirstKind = 'measured' | 'fits' | 'do-not-drill' | 'book' | 'borrow' | 'strike' | 'measure'

/** One line of the first answer: a sentence, the facts it rests on or asks for, and what it stands on. */
export interface FirstLine {
  readonly kind: FirstKind
  readonly say: Message
  readonly facts: readonly InputId[]
  readonly basis: Basis
}

/** What a comparison of two lengths comes to when both may be out by their precision. */
export type Verdict = 'yes' | 'no' | 'near' | 'open'

/** Said within a sentence: the user's own name of a wall, or its mark. */
export function wallSaid({ id, name }: Pick<Wall, 'id' | 'name'>): string {
  const own = name ?? id
  return /\bwall\b|partition/i.test(own) ? own : `wall ${own}`
}

/** Usual ways of working, with no published source. */
export const usual = (why: string): Basis => ({ kind: 'common-practice', why })
