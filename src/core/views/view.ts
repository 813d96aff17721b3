import type { PlanPoint, RoomPoint } from '../plan/types'
import type { Direction, Framing } from './frame-view'
import type { Blocker, Screen } from './rays'

/** A flat spot to be seen, and which way it faces; null: it counts from every side. */
export interface Spot {
  readonly at: RoomPoint
  readonly faces: RoomPoint | null
  /** The wall it is on: left out with that wall. */
  readonly wall: string | null
  /** Surface it stands for, mm²; left out: all the same. */
  readonly area?: number
}

/** The part in hand at one moment: its own spots, and itself as something that may hide a fixing. */
export interface Moment {
  readonly part: readonly Spot[]
  readonly blocker: Blocker | null
}

/** What the view of one operation is to show. Plain data; nothing of it is decided here. */
export interface ViewSubject {
  /** The wall it is about, by id, and the way that faces; null: the whole room. */
  readonly wall: string | null
  readonly facing: PlanPoint | null
  readonly moments: readonly Moment[]
  /** Every one of these must be seen at every moment: holes, fixings, the level. */
  readonly fixings: readonly Spot[]
  /** The place it goes to, lines struck: the more of it the better. */
  readonly place: readonly Spot[]
  /** What the picture must hold, from wide to close: the first in which the part in hand is large enough is taken. */
  readonly frames: readonly (readonly RoomPoint[])[]
  /** Corners of the part in hand, for each moment: how much of the picture it takes. */
  readonly bodies: readonly (readonly RoomPoint[])[]
  readonly blockers: readonly Blocker[]
  readonly screens: readonly Screen[]
  /** The eye is nobody's that lies on the floor: lower than this only if nothing else shows the fixings. */
  readonly lowestEye: number
}

export interface View extends Direction, Framing {
  /** Walls between the eye and the room, by id: not drawn. */
  readonly hidden: readonly string[]
  /** By what share of its height the picture is raised, as one shifts a film: the eye and its line stay; left out: not. */
  readonly raised?: number
  /** Units on those walls that are not in the way, and stay; left out: none. */
  readonly kept?: readonly string[]
  readonly score: number
  /** Shares seen, 0..1. */
  readonly seen: {
    readonly part: number
    readonly fixings: number
    /** Of the round marks drawn at the fixings: how much of them. */
    readonly marks: number
    readonly place: number
  }
}
