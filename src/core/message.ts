import type { Figure } from './figure'

/**
 * Something to be said: a key and what fills it. Words are made in one place (`words/`), so that they can be
 * translated and every sentence can be tested.
 */
export type MessageValue = string | number | Figure

export interface Message {
  readonly key: string
  readonly values: Readonly<Record<string, MessageValue>>
}

export function message(key: string, values: Readonly<Record<string, MessageValue>> = {}): Message {
  return { key, values }
}
