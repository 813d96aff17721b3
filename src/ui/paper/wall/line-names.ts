import type { HeightLine } from '../../../core/plan/types'
import { numberText } from '../../../core/words/format'

export const LINE_NAMES: Readonly<Record<HeightLine['of'], string>> = {
  line: 'the line',
  'base-underside': 'base underside',
  'base-top': 'base top',
  'worktop-top': 'worktop top',
  'wall-underside': 'wall underside',
  'wall-top': 'wall top',
  'tall-underside': 'tall underside',
  'tall-top': 'tall top',
  plate: 'plate',
  rail: 'rail',
  bracket: 'bracket',
}

export const lineName = (line: HeightLine): string =>
  line.throughRail === true ? 'screws through back rail' : (LINE_NAMES[line.of] ?? line.of)

/** "wall underside +392", as it is lettered beside the wall. */
export function lineText(line: HeightLine): string {
  return `${lineName(line)} ${numberText(line.height, { signed: true })}`
}
