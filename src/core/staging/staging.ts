import type { Figure } from '../figure'
import type { Tool } from '../operations/tools'
import type { OperationId, PathSegment, RoomPoint, UnitId } from '../plan/types'

/**
 * How a piece of work looks while it is done: which tool meets what, where, which way, and how it moves. Everything that
 * moves is driven by figures of the plan; where one is not known the tool only shows where it would begin.
 */
export interface Staging {
  readonly operation: OperationId
  readonly kind: string
  /** In the order they are done. */
  readonly acts: readonly Act[]
}

/** What does it: a tool of the operation's own list, or bare hands. */
export type StagedTool = Tool | 'hands'

/** One movement of one tool. Room frame, mm; directions are unit vectors. */
export interface Act {
  readonly tool: StagedTool
  /** What it is done to, by the name its drawing goes by: `hole:<id>`, `line:<id>`, `leg:<unit>.<foot>`, `unit:<id>` … */
  readonly on: string
  /** Where the tool meets it. Null: what is worked on has no place in this room (a meter box, a telephone). */
  readonly contact: Contact | null
  readonly motion: Motion
}

export interface Contact {
  readonly at: RoomPoint
  /** The way the tool works: from the tool into what it meets. */
  readonly into: RoomPoint
  /** The way the tool's broad side lies, square to `into`. */
  readonly across: RoomPoint
}

export type Motion =
  /** Into what it meets: a bit, a screw, by so much. */
  | { readonly kind: 'bore' | 'drive'; readonly by: Figure }
  /** Touching all the way to another place: a pencil, a detector, a blade on its tape. `by`: the length read off, if one is. */
  | { readonly kind: 'draw' | 'measure'; readonly to: RoomPoint; readonly by: Figure | null }
  /** Turned about the way it works; null: nobody knows by how many turns before something is read. */
  | { readonly kind: 'turn'; readonly turns: Figure | null; readonly raises: Figure | null }
  /**
   * A unit on its way, in two hands half of `spread` to either side of the contact; `lift` is how far it is let down, or
   * hooked on, at the end.
   */
  | {
      readonly kind: 'carry'
      readonly unit: UnitId
      readonly segments: readonly PathSegment[]
      readonly lift: number
      readonly spread: number
    }
  /** A short stroke there and back: a knock, a tug, a tick. */
  | { readonly kind: 'knock' | 'tug' | 'tick' | 'press' }
  /** Lies or stands there to be read. */
  | { readonly kind: 'rest' }
  /** Where no picture can help: it is done somewhere else, or by word of mouth. */
  | { readonly kind: 'elsewhere' }

/** How many seconds each movement takes on the screen. */
const SECONDS: Readonly<Record<Motion['kind'], number>> = {
  bore: 1.1,
  drive: 0.8,
  draw: 1.2,
  measure: 1,
  turn: 1,
  carry: 2.6,
  knock: 0.5,
  tug: 0.8,
  tick: 0.5,
  press: 0.6,
  rest: 0.8,
  elsewhere: 0,
}
/** Nobody watches longer than this, s: many holes go by faster. */
const LONGEST = 8

/** Where a staging is at one moment: how far its unit has come, and which movement is under way. */
export interface Moment {
  /** 0..1 of the journey of the unit. */
  readonly carried: number
  readonly act: Act | null
  /** 0..1 through that act. */
  readonly progress: number
}

/** How long the whole of it takes on the screen, s; 0: nothing moves. */
export function secondsOf(staging: Staging): number {
  return Math.min(LONGEST, wholeOf(staging))
}

const wholeOf = ({ acts }: Staging): number => acts.reduce((sum, a) => sum + SECONDS[a.motion.kind], 0)

/** The moment at t, 0..1. At 1 all of it is done, and the tools are put down. */
export function momentAt(staging: Staging, t: number): Moment {
  const { acts } = staging
  const carriedBy = acts.findIndex((a) => a.motion.kind === 'carry')
  const whole = wholeOf(staging)
  if (t >= 1 || whole === 0) return { carried: t >= 1 ? 1 : Math.max(0, t), act: null, progress: 1 }
  let left = Math.max(0, t) * whole
  for (const [i, act] of acts.entries()) {
    const takes = SECONDS[act.motion.kind]
    if (left < takes) {
      const progress = left / takes
      const carried = carriedBy === -1 || i < carriedBy ? 0 : i > carriedBy ? 1 : progress
      return { carried, act, progress }
    }
    left -= takes
  }
  return { carried: 1, act: null, progress: 1 }
}
