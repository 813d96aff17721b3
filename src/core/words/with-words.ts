import type { Message } from '../message'
import { templateOf } from './template-of'

/**
 * A value with every message in it carrying its words, so that whoever gets it can say all of it without the table of
 * words. Nothing else is changed; what holds no message is given back as it is.
 */
export function withWords<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value
  if (Array.isArray(value)) return withWordsInList(value) as T
  // Figures hold no messages, and most of a plan is figures.
  if ('state' in value && 'from' in value) return value
  if (isMessage(value)) return { ...value, template: templateOf(value) }
  const entries = Object.entries(value)
  const written = entries.map(([key, inner]) => [key, withWords(inner)] as const)
  return written.some(([, inner], i) => inner !== entries[i]?.[1])
    ? (Object.fromEntries(written) as T)
    : value
}

function withWordsInList(list: readonly unknown[]): readonly unknown[] {
  if (typeof list[0] !== 'object') return list
  const written = list.map(withWords)
  return written.some((one, i) => one !== list[i]) ? written : list
}

function isMessage(value: object): value is Message {
  return 'key' in value && 'values' in value && typeof value.key === 'string'
}
