import type { Message } from '../message'
import type { Display } from './format'
import { sayWritten } from './say-written'
import { templateOf } from './template-of'

/** Words for a message out of the whole table of words; for one that is written beside its rule, its own. */
export function say(message: Message, display: Display = 'mm'): string {
  return sayWritten({ ...message, template: templateOf(message) }, display)
}
