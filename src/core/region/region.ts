import type { Basis } from '../figure'
import type { Region } from '../kitchen/schema'
import { continental } from './continental'
import { northAmerica } from './north-america'
import { uk } from './uk'

/** A limit with what it stands on. Lengths mm, masses kg. */
export interface RegionFigure {
  readonly value: number
  readonly basis: Basis
}

/** Bands in which cables are to be expected from an accessory, a corner, the ceiling. Null: the region has none. */
export interface CableBands {
  readonly basis: Basis
  /** Either side of a corner and below the ceiling; 0: none. */
  readonly cornerStrip: number
  readonly ceilingStrip: number
  /** Added to each side of an accessory's plate for a drill that wanders. */
  readonly drillMargin: RegionFigure
  /** Bits or tips deeper than this, from either face, are an `ask`. */
  readonly depth: number
  /** A wall no thicker than this shows the bands of accessories on its other face. */
  readonly thinWall: number
  /** Further horizontal bands, as [from, to] above the floor, and vertical ones beside openings and corners. */
  readonly fixedHorizontal: readonly {
    readonly from: number
    readonly to: number
    readonly above: 'floor' | 'ceiling'
  }[]
  readonly besideOpenings: { readonly from: number; readonly to: number } | null
}

/** Cables through stud centres, kept back from the stud's face. Null: the region goes by bands. */
export interface StudSetback {
  readonly depth: number
  readonly basis: Basis
}

export interface LiftingFilter {
  readonly basis: Basis
  /** kg close to the body, per zone of the hands. */
  readonly man: Readonly<Record<HandZone, number>>
  readonly woman: Readonly<Record<HandZone, number>>
  /** Share of the sum of single capabilities that a team of 2 and of 3 has. */
  readonly team: { readonly two: number; readonly three: number }
}

/**
 * The published guidance a lift is held against: a filter for one person and for teams; or a weight recommended for one
 * person by where a lift begins and ends, which says nothing of teams, and another country's filter for those.
 */
export type LiftingGuidance =
  | { readonly kind: 'filter'; readonly filter: LiftingFilter }
  | { readonly kind: 'recommended-weight'; readonly basis: Basis; readonly team: LiftingFilter }

export type HandZone =
  | 'above-shoulder'
  | 'shoulder-elbow'
  | 'elbow-knuckle'
  | 'knuckle-lower-leg'
  | 'below-lower-leg'

/** What differs from country to country, as data with a date. */
export interface RegionPack {
  readonly id: Region
  readonly asOf: string
  readonly display: 'mm' | 'inch'
  readonly bands: CableBands | null
  readonly setback: StudSetback | null
  readonly lifting: LiftingGuidance
  readonly gapOverWorktop: { readonly min: number; readonly max: number; readonly basis: Basis }
  /** Homes built before this year may hold asbestos. */
  readonly asbestosBefore: RegionFigure
  /** Who must be called, as data: the work and the trade. */
  readonly trades: Readonly<Record<'gas' | 'circuit', Basis>>
}

const PACKS: Readonly<Record<Region, RegionPack>> = {
  uk,
  'north-america': northAmerica,
  continental,
}

/** The pack of a region; null when the user has not said where they are, which is never guessed. */
export function regionPack(region: Region | null): RegionPack | null {
  return region === null ? null : PACKS[region]
}
