import { type Message, type MessageValue, message } from '../message'
import type { Demand } from '../plan/types'
import { say } from '../words/say'
import { ruleOf } from './demands/demand'
import { heightWords } from './height-words'

/** A demand named in a few words, by what it is about: "front right leg of base unit 2". Never its id. */
export function demandName(demand: Demand): string {
  const { values } = demand.because
  return say(message(`demand.${nameKey(demand)}`, { ...texts(values), height: heightWords(demand.to) }), 'mm')
}

/** Several as a list, each said once. */
export function demandNames(demands: readonly Demand[]): string {
  return [...new Set(demands.map(demandName))].join('; ')
}

function nameKey({ because, ...demand }: Demand): string {
  const rule = ruleOf(demand)
  if (/-not-known$/.test(because.key)) return 'stands'
  return rule === 'carcass-height' ? because.key.replace(/^heights\./, '') : rule
}

/** Only words: a figure would be told in one unit of length whatever the reader asked for. */
function texts(values: Message['values']): Readonly<Record<string, MessageValue>> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => typeof value === 'string'))
}
