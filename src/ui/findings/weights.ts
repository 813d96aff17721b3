import type { Weight } from '../../core/plan/types'

/** The weights of findings, the gravest first. */
export const WEIGHTS: readonly Weight[] = ['stop', 'ask', 'warn', 'note']

export const WEIGHT_WORDS: Readonly<Record<Weight, string>> = {
  stop: 'Stop',
  ask: 'Ask',
  warn: 'Mind',
  note: 'Note',
}
