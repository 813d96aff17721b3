import type { Message } from '../core/message'
import type { Operation, Stage } from '../core/plan/types'
import { sayWritten } from '../core/words/say-written'

export const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  'check-delivery': 'Check delivery',
  'make-safe': 'Make safe',
  survey: 'Survey',
  'set-out': 'Set out',
  'walls-ready': 'Walls ready',
  assemble: 'Assemble',
  talls: 'Tall units',
  'wall-units': 'Wall units',
  'corner-base': 'Corner base',
  'base-units': 'Base units',
  'end-panels': 'End panels',
  'hold-point': 'Hold point',
  worktops: 'Worktops',
  'connect-and-test': 'Connect and test',
  'fronts-and-plinths': 'Fronts, plinths',
  snag: 'Snag',
}

/** The same, as short as they are lettered along the tape. */
export const STAGE_LETTERING: Readonly<Record<Stage, string>> = {
  ...STAGE_NAMES,
  'check-delivery': 'Check',
  'make-safe': 'Safe',
  'walls-ready': 'Walls',
  talls: 'Tall',
  'corner-base': 'Corner',
  'end-panels': 'Panels',
  'hold-point': 'Hold',
  worktops: 'Worktop',
  'connect-and-test': 'Connect, test',
}

export const TRADE_NAMES: Readonly<Record<NonNullable<Operation['trade']>, string>> = {
  electrician: 'a registered electrician',
  'gas-engineer': 'a registered gas engineer',
  plumber: 'a plumber',
  'asbestos-surveyor': 'a competent asbestos surveyor',
}

export const words = (message: Message): string => unitsWhole(sayWritten(message))

/** Keeps a figure and its unit on one line. */
const unitsWhole = (text: string): string => text.replace(/(\d) (?=(?:mm|m|kg|N|kN)\b)/g, '$1\u00a0')

/** For a title: the number of a thing stays beside its name where the line breaks. */
export const namesWhole = (text: string): string => text.replace(/(\p{L}) (?=\d+\b)/gu, '$1\u00a0')

/** A sentence's own key, for lists of sentences: the same words twice are told apart by what fills them. */
export const keyOf = (message: Message): string => message.key + JSON.stringify(message.values)

/** For a title that goes on after a colon; names in capitals stay as they are. */
export function lowerFirst(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text
}

export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`
}
