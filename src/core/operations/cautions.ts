import type { Wall } from '../kitchen/schema'
import type { Caution } from '../plan/types'
import { caution } from './make'
import type { Tool } from './tools'

/** Walls that are drilled with a hammer, and give off silica dust. */
const HARD: readonly (string | null)[] = [
  'masonry',
  'old-brick',
  'concrete',
  'over-opening',
  'chimney-breast',
  'dot-and-dab',
  'insulated-lining',
]

export function isHard(wall: Wall | undefined): boolean {
  return HARD.includes(wall?.construction ?? null)
}

/** What is said at every hole in a wall: what may lie in it, eyes, hands, dust, noise. */
export function drillingCautions(wall: Wall | undefined): readonly Caution[] {
  return [
    caution('W012', 'drill-cable'),
    caution('M004', 'eyes'),
    caution('P001', 'no-gloves-at-drill'),
    isHard(wall) ? caution('M017', 'silica-dust') : caution('M016', 'dust'),
    ...(isHard(wall) ? [caution('M003', 'hammer-noise')] : []),
  ]
}

/** Work above the shoulder: what one stands on, and where the telephone is read. */
export function stepsCautions(): readonly Caution[] {
  return [caution('W008', 'stepladder'), caution('P001', 'phone-off-the-steps')]
}

/** While a unit hangs over somebody and is not secured. */
export function overheadCautions(): readonly Caution[] {
  return [caution('W035', 'falling-unit'), caution('W024', 'hands-behind-unit')]
}

export function drillFor(wall: Wall | undefined): readonly Tool[] {
  return [isHard(wall) ? 'hammer-drill' : 'drill-driver', 'vacuum', 'detector']
}
