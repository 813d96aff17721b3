import { type Basis, derive, type Figure, hasValue, type InputId, quantise, sortedIds } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Fixing } from '../kitchen/schema'
import type { Verdict } from '../plan/types'

const interaction: Basis = {
  kind: 'common-practice',
  why: 'pull and shear together: the part used of one and the part used of the other may not come to more than the whole; makers who state another rule are to be followed',
}

/** A figure of nothing entered as capacity is used up many times over by any load. */
const NOTHING_LEFT = 1e6

function part(load: number, most: number): number {
  if (most > 0) return load / most
  return load > 0 ? NOTHING_LEFT : 0
}

/** How much of the entered figures a fixing uses, pull and shear together: 1 is all of it. */
export function partUsed(pull: Figure, shear: Figure, fixing: Pick<Fixing, 'pull' | 'shear'>): Figure {
  return derive(
    'ratio',
    interaction,
    [pull, fixing.pull, shear, fixing.shear],
    (p, pMost, s, sMost) => part(p as number, pMost as number) + part(s as number, sMost as number),
  )
}

export interface Capacity {
  readonly verdict: Verdict
  /** Part of the entered figures that is used; unknown with anything it rests on. */
  readonly used: Figure | null
  /** What would settle an unknown. */
  readonly lacking: readonly InputId[]
  /** Known, but too near the figures to say: within its own precision of them. */
  readonly marginal: boolean
}

/**
 * The only things said about capacity: the load exceeds the figures that were entered for this fixing in this material,
 * or it is below them, or it cannot be said. What is stated for one hanger counts too, when it was entered. Within the
 * precision of the load it cannot be said.
 */
export function capacityVerdict(
  pull: Figure,
  shear: Figure,
  fixing: Fixing | null,
  hanger: { readonly load: Figure; readonly rated: Figure } | null,
): Capacity {
  if (hanger !== null && isOver(hanger.load, hanger.rated)) {
    return { verdict: 'exceeds', used: null, lacking: [], marginal: false }
  }
  if (fixing === null) {
    return {
      verdict: 'unknown',
      used: null,
      lacking: sortedIds([...lackingOf(pull, shear), 'fixings']),
      marginal: false,
    }
  }
  const used = partUsed(pull, shear, fixing)
  if (!hasValue(used)) return { verdict: 'unknown', used, lacking: used.missing, marginal: false }
  if (quantise(used.value - used.pm) > 1) return { verdict: 'exceeds', used, lacking: [], marginal: false }
  if (quantise(used.value + used.pm) <= 1)
    return { verdict: 'below the figure you entered', used, lacking: [], marginal: false }
  const figures = [fixing.pull, fixing.shear].flatMap((f) => f.from)
  return {
    verdict: 'unknown',
    used,
    lacking: sortedIds(used.from.filter((id) => !figures.includes(id))),
    marginal: true,
  }
}

function isOver(load: Figure, rated: Figure): boolean {
  return hasValue(load) && hasValue(rated) && load.value - load.pm > rated.value
}

const lackingOf = (...figures: readonly Figure[]): readonly InputId[] =>
  figures.flatMap((f) => (f.state === 'unknown' ? f.missing : []))

/** Ids of the two figures a fixing's capacity is entered as. */
export function capacityFacts(fixing: string): readonly InputId[] {
  return [factId('fixings', fixing, 'pull'), factId('fixings', fixing, 'shear')]
}
