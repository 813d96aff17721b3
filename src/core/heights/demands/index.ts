import type { Demand } from '../../plan/types'
import type { HeightsContext } from '../context'
import { achieved } from './achieved'
import { bayIn } from './bay-in'
import { bayMax } from './bay-max'
import { bayOut } from './bay-out'
import { carcassHeight } from './carcass-height'
import { ceiling } from './ceiling'
import type { DemandRule } from './demand'
import { gapOverWorktop } from './gap-over-worktop'
import { hookOn, hookOnMid } from './hook-on'
import { legReach } from './leg-reach'
import { plinthCover } from './plinth-cover'
import { samePlinth } from './same-plinth'
import { shimFloor } from './shim-floor'
import { struck } from './struck'
import { topLine } from './top-line'
import { usualWorktop } from './usual-worktop'
import { windowBoard } from './window-board'
import { wish } from './wish'
import { worktopThickness } from './worktop-thickness'

/** Every rule that makes demands on heights. Of the preferred ones the latest is the first to be given up. */
export const DEMAND_RULES: readonly DemandRule[] = [
  legReach,
  shimFloor,
  carcassHeight,
  worktopThickness,
  bayIn,
  bayMax,
  bayOut,
  plinthCover,
  ceiling,
  hookOn,
  windowBoard,
  wish,
  achieved,
  struck,
  gapOverWorktop,
  topLine,
  samePlinth,
  hookOnMid,
  usualWorktop,
]

/**
 * Which of the demands in a contradiction is dropped to go on, the first to yield first. A unit that cannot be hooked on
 * where all others hang is a matter of that unit: it does not pull the height of the others down.
 */
export const YIELDS_FIRST: readonly string[] = [
  'hook-on',
  'wish',
  'window-board',
  'plinth-cover',
  'bay-out',
  'bay-max',
  'ceiling',
  'bay-in',
  'leg-reach',
  'shim-floor',
  'worktop-thickness',
  'carcass-height',
  'achieved',
]

/** Rules whose unknown demand leaves the heights it bears on unknown: without it nobody knows that the units can stand. */
export const MUST_BE_KNOWN: ReadonlySet<string> = new Set([
  'leg-reach',
  'shim-floor',
  'bay-in',
  'carcass-height',
  'worktop-thickness',
  'ceiling',
  'hook-on',
])

export function demandsOn(context: HeightsContext): readonly Demand[] {
  return DEMAND_RULES.flatMap((rule) => rule(context))
}
