import type { PlanPoint } from '../plan/types'
import { fitPlane, heightOn, worstOff } from './plane'

interface Sample {
  readonly at: PlanPoint
  readonly z: number
}

/** How one height lies to the plane through all the others. */
interface OutOfPlane {
  /** What the others would have there. */
  readonly expected: number
  /** How far the others themselves lie from their plane at most. */
  readonly worst: number
  /** The highest of the others. */
  readonly highest: number
}

/** One of several heights against the plane through the others; null with fewer than four others, or no plane. */
export function outOfPlane(samples: readonly Sample[], index: number): OutOfPlane | null {
  const one = samples[index]
  const others = samples.filter((_, i) => i !== index)
  const plane = others.length < 4 ? null : fitPlane(others)
  if (one === undefined || plane === null) return null
  return {
    expected: heightOn(plane, one.at),
    worst: worstOff(plane, others),
    highest: Math.max(...others.map(({ z }) => z)),
  }
}
