/** A rectangle on a wall that holes keep out of, as this checker draws it. Open ends are infinite. */
export interface OwnBand {
  readonly wall: string
  readonly kind:
    | 'accessory-vertical'
    | 'accessory-horizontal'
    | 'corner'
    | 'ceiling'
    | 'service'
    | 'lintel'
    | 'fixed'
  readonly about: string
  readonly face: 'room' | 'other'
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
  /** `refuse`: no hole in it; `ask`: a hole in it needs settling first; `either`: the rules leave it open. */
  readonly weight: 'refuse' | 'ask' | 'either'
}

export interface WallBands {
  readonly bands: readonly OwnBand[]
  /** Things whose place or size is not known: every hole on the wall is then at least an `ask`. */
  readonly unknown: readonly string[]
  /** Something in or on the wall has no sure place, so that where a hole gives way to may be left open. */
  readonly unsure?: boolean
}

/** An end that is open. */
export const OPEN = Number.POSITIVE_INFINITY

export interface RegionBands {
  readonly cornerStrip: number
  readonly ceilingStrip: number
  /** Level bands above the floor, and how far upright bands stand off openings. */
  readonly aboveFloor: readonly (readonly [number, number])[]
  readonly besideOpenings: readonly [number, number] | null
}

/**
 * BS 7671 522.6.202(i) in Britain; German practice on the continent; none in North America, where cables run through stud
 * centres.
 */
export function regionBands(region: string | null): RegionBands | null {
  if (region === 'uk') return { cornerStrip: 150, ceilingStrip: 150, aboveFloor: [], besideOpenings: null }
  if (region !== 'continental') return null
  const aboveFloor = [
    [150, 450],
    [1000, 1300],
  ] as const
  return { cornerStrip: 300, ceilingStrip: 450, aboveFloor, besideOpenings: [100, 300] }
}

/** The bands a point lies in, drawn in or out by a margin. */
export function hits(
  bands: readonly OwnBand[],
  along: number,
  height: number,
  margin: number,
): readonly OwnBand[] {
  return bands.filter(
    (b) =>
      along > b.left - margin &&
      along < b.right + margin &&
      height > b.bottom - margin &&
      height < b.top + margin,
  )
}
