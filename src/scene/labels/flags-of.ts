import type { Weight } from '../../core/plan/types'
import { sayWritten } from '../../core/words/say-written'
import type { FindingSpot } from '../parts/findings'

/** A lettered flag at a finding's place: a button over the picture that opens it. */
export interface Flag {
  readonly id: string
  readonly finding: string
  readonly letter: string
  /** A few words of what it is, shown at the flag while it is pointed at. */
  readonly words: string
  readonly weight: Weight
  readonly isGrave: boolean
  readonly isOpen: boolean
  /** The spot it stands at. */
  readonly spot: FindingSpot
}

/** One flag for each finding that has a place in the picture, at the first of its spots. */
export function flagsOf(spots: readonly FindingSpot[], open: string | null): readonly Flag[] {
  const seen = new Set<string>()
  return spots.flatMap((spot): readonly Flag[] => {
    const { finding, letter } = spot
    if (seen.has(finding.id)) return []
    seen.add(finding.id)
    return [
      {
        id: `flag:${finding.id}`,
        finding: finding.id,
        letter,
        words: sayWritten(finding.called),
        weight: finding.weight,
        isGrave: finding.weight === 'stop' || finding.dangerous,
        isOpen: finding.id === open,
        spot,
      },
    ]
  })
}
