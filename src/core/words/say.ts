import type { Message } from '../message'
import { english } from './en'
import type { Display } from './format'
import { sayWritten } from './say-written'

/** Words for a message out of the whole table of words; for one that is written beside its rule, its own. */
export function say(message: Message, display: Display = 'mm'): string {
  return sayWritten({ ...message, template: english[message.key] ?? message.template }, display)
}
