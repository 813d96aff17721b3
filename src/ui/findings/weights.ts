import type { Weight } from '../../core/plan/types'

/** What a finding of each weight is called. */
export const WEIGHT_WORDS: Readonly<Record<Weight, string>> = {
  stop: 'Stop',
  ask: 'Ask',
  warn: 'Mind',
  note: 'Note',
}
