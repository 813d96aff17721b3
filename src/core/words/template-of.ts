import { type Message, THEN } from '../message'
import { english } from './en'

/** The English template of a message out of the whole table of words; of several said as one, theirs in turn. */
export function templateOf({ key, template }: Message): string | undefined {
  const parts = key.split(THEN).map((part) => english[part])
  return parts.some((part) => part === undefined) ? template : parts.join(' ')
}
