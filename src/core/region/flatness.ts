import type { Basis } from '../figure'
import type { Region } from '../kitchen/schema'

/** Gap allowed under a straightedge, by the distance between the two points it lies on: [distance, gap], in mm. */
export type GapTable = readonly (readonly [distance: number, gap: number])[]

/** How far out of flat a builder may leave a surface. Null: nothing is published for it. */
export interface Flatness {
  readonly basis: Basis
  /** Only homes built in this year or later are held to it; null: all. */
  readonly builtFrom: number | null
  readonly floors: { readonly bare: GapTable | null; readonly finished: GapTable }
  readonly walls: { readonly bare: GapTable | null; readonly finished: GapTable }
}

/**
 * Rows 1, 3, 5 and 6 of the table: rough floors, finished floors, rough walls, finished walls. Two secondary copies; one
 * of them prints 20 and 25 for the last two of row 5, which the published values in between do not bear out.
 */
const DIN_18202: Flatness = {
  basis: {
    kind: 'standard',
    source: 'DIN 18202',
    where:
      'Table 3, gap under a straightedge between two points, in between straight and to whole mm; secondary copies',
  },
  builtFrom: null,
  floors: {
    bare: [
      [100, 10],
      [1000, 15],
      [4000, 20],
      [10_000, 25],
      [15_000, 30],
    ],
    finished: [
      [100, 2],
      [1000, 4],
      [4000, 10],
      [10_000, 12],
      [15_000, 15],
    ],
  },
  walls: {
    bare: [
      [100, 5],
      [1000, 10],
      [4000, 15],
      [10_000, 25],
      [15_000, 30],
    ],
    finished: [
      [100, 3],
      [1000, 5],
      [4000, 10],
      [10_000, 20],
      [15_000, 25],
    ],
  },
}

/** Of new homes, finished surfaces, under a straightedge of 2 m; nothing is said of longer ones. */
const NHBC: Flatness = {
  basis: {
    kind: 'standard',
    source: 'NHBC Standards 2020',
    where: '9.1.5 floors ± 5 mm, 9.1.3 walls ± 3 mm, under a 2 m straightedge with equal offsets; new homes',
  },
  builtFrom: 2020,
  floors: {
    bare: null,
    finished: [
      [0, 5],
      [2000, 5],
    ],
  },
  walls: {
    bare: null,
    finished: [
      [0, 3],
      [2000, 3],
    ],
  },
}

const FLATNESS: Readonly<Record<Region, Flatness | null>> = {
  uk: NHBC,
  continental: DIN_18202,
  'north-america': null,
}

/** None where nothing is published, or where the region is not known. */
export function flatnessOf(region: Region | null): Flatness | null {
  return region === null ? null : FLATNESS[region]
}
