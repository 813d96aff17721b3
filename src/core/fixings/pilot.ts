import { assumed, derive, type Figure, hasValue } from '../figure'
import type { Fixing } from '../kitchen/schema'

/** A pilot is about two thirds of the screw's diameter, to the half millimetre: 3 mm for a 5 mm screw. */
const PILOT_SHARE = 0.65
const HALVES = 2
/** A hole the screw passes through without biting is this much wider than it. */
const CLEAR = 0.5

/** Kinds that go straight into timber, with a pilot and no plug. */
export function isPlainScrew(kind: Fixing['kind']): boolean {
  return kind === 'wood-screw' || kind === 'bracket-screw' || kind === 'lag-screw'
}

/** A size by which a thing is bought, as it stands on the packet: a 4.5 mm screw is called that, however it measures. */
export function nominal(size: Figure): Figure {
  return hasValue(size) ? { ...size, pm: 0 } : size
}

/**
 * The bit for a fixing: as entered. For a plain screw into timber whose pilot nobody entered, about 0.65 of its diameter
 * (common practice: 0.6 to 0.7), marked as assumed. A plug's bit is never guessed: it is the plug's own size.
 */
export function bitFor(fixing: Pick<Fixing, 'kind' | 'diameter' | 'bit'>): Figure {
  if (hasValue(fixing.bit) || !isPlainScrew(fixing.kind) || !hasValue(fixing.diameter))
    return nominal(fixing.bit)
  // Half way between two bits the smaller: a pilot too wide holds nothing.
  const size = Math.ceil(fixing.diameter.value * PILOT_SHARE * HALVES - 0.5) / HALVES
  const why = 'a pilot of 0.6 to 0.7 of the diameter of the screw'
  return assumed(size, 0, 'mm', fixing.diameter.from, { kind: 'common-practice', why })
}

/** The hole in the rail of a unit through which a screw draws it back: half a millimetre wider than the screw. */
export function clearHole(fixing: Pick<Fixing, 'diameter'>): Figure {
  return derive(
    'mm',
    {
      kind: 'common-practice',
      why: 'half a millimetre wider than the screw, so that it draws the rail tight',
    },
    [nominal(fixing.diameter)],
    (diameter = 0) => diameter + CLEAR,
  )
}
