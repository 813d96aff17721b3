import type { Figure } from './figure'

/**
 * Something to be said: a key and what fills it. Words are made in one place (`words/`), so that they can be
 * translated and every sentence can be tested.
 */
export type MessageValue = string | number | Figure

export interface Message {
  readonly key: string
  readonly values: Readonly<Record<string, MessageValue>>
  /** The English words of a sentence that is written beside its rule of the trade, not in the table of words. */
  readonly template?: string
}

/** Joins the keys of sentences that are said one after the other, as one. */
export const THEN = ' + '

/** One thing said right after another, as its reason is; a value of the same name in both is that of the first. */
export function followedBy(first: Message, then: Message): Message {
  return { key: first.key + THEN + then.key, values: { ...then.values, ...first.values } }
}

export function message(key: string, values: Readonly<Record<string, MessageValue>> = {}): Message {
  return { key, values }
}
