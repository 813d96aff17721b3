import type { Matrix4 } from 'three'
import type { Act, Moment } from '../core/staging/staging'

/** One showing of an operation from its start to its end, by the picture's own clock; each showing is a thing of its own. */
export interface Run {
  readonly seconds: number
}

/** Where everything is in the frame that is about to be drawn, while something is shown being done. */
export interface Now {
  /** The frame of the unit on its way, in the room; null: none moves. */
  readonly unit: Matrix4 | null
  readonly act: Act | null
  /** 0..1 through that act. */
  readonly progress: number
}

/** In which order a frame is made ready: first what moves, then the camera, then the texts over both. */
export const FRAME = { now: -4, things: -3, camera: -2, texts: -1 } as const

/** At the end of its way a unit is there, but the operation is not done before its last movement is. */
const NOT_YET = 0.9999

/** 0..1 of the way of the unit, at t of the operation. */
export function wayAt(moment: Moment | null, t: number): number {
  return t >= 1 ? 1 : (moment?.carried ?? t) * NOT_YET
}
