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

export function message(key: string, values: Readonly<Record<string, MessageValue>> = {}): Message {
  return { key, values }
}
