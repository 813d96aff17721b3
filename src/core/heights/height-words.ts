import { message } from '../message'
import type { HeightVariable } from '../plan/types'
import { say } from '../words/say'

/** What a height is called in a sentence: "top of the worktop". A unit's own underside is told by its unit elsewhere. */
export function heightWords(of: HeightVariable): string {
  if (of === 'line' || of.startsWith('unit:')) return of === 'line' ? 'line' : 'underside of one unit'
  return say(message(`height-name.${of}`))
}
