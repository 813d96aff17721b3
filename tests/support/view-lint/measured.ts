import type { RoomPoint } from '../../../src/core/plan/types'
import type { StandsOut } from './contrast'

/** What was found in the real pictures of one operation. Shares are 0..1. */
export interface Measured {
  readonly index: number
  readonly views: readonly MeasuredView[]
}
export interface MeasuredView {
  readonly eye: RoomPoint
  /** From the eye to what it looks at, of length 1. */
  readonly looks: RoomPoint
  /** Units and boards that stand in the room and are left out of the picture, so that it shows. */
  readonly cutAway: readonly string[]
  readonly moments: readonly MeasuredMoment[]
  /** Of the disc round each fixing point: the share that nothing covers. */
  readonly fixings: Readonly<Record<string, number>>
  readonly contacts: Readonly<Record<string, number>>
  /** What the way of the part takes of the picture, px; null: nothing is in hand. */
  readonly way: Extent | null
  readonly standsOut: StandsOut | null
  /** Pixels of the level that lies on what is levelled. */
  readonly level: number
  /** New arrows, dimensions and cautions. */
  readonly newMarks: readonly string[]
}
export interface MeasuredMoment {
  readonly t: number
  /** Pixels of the part in hand drawn alone, and of these seen. */
  readonly alone: number
  readonly seen: number
  /** Of the whole picture. */
  readonly pixels: number
  readonly labels: number
  /** Texts that lie on another text, on a fixing mark or across an edge of the part in hand, and on which. */
  readonly touching: readonly string[]
}
/** Shares of the picture, from its left and from its bottom. */
export interface Extent {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}
