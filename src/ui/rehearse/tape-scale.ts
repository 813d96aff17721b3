import type { Operation, Stage } from '../../core/plan/types'

/** Where the ticks of the tape stand. `x` of the first is the lead; all of it is shifted so that the hook is in sight. */
export interface TapeScale {
  readonly pitch: number
  readonly x: (index: number) => number
  readonly indexAt: (x: number) => number
}

const LEAD = 28

/** Spreads the ticks over the width; closer than `least` apart they run off both ends and the hook stays in sight. */
export function tapeScale(count: number, index: number, width: number, least: number): TapeScale {
  const pitch = Math.max((width - 2 * LEAD) / Math.max(count - 1, 1), least)
  const total = 2 * LEAD + pitch * Math.max(count - 1, 0)
  const shift = total <= width ? 0 : Math.min(Math.max(LEAD + pitch * index - width / 2, 0), total - width)
  const x = (i: number) => LEAD + pitch * i - shift
  return {
    pitch,
    x,
    indexAt: (at) => Math.min(count - 1, Math.max(0, Math.round((at + shift - LEAD) / pitch))),
  }
}

/** Every how many ticks a number is lettered. */
export function numberEvery(pitch: number): number {
  return pitch * 10 >= 34 ? 10 : pitch * 20 >= 34 ? 20 : 50
}

export interface Stretch {
  readonly stage: Stage
  readonly from: number
  readonly to: number
}

/** The operations as stretches of one stage each, in order; a stage worked in several goes has several. */
export function stretches(operations: readonly Pick<Operation, 'stage'>[]): readonly Stretch[] {
  const out: Stretch[] = []
  operations.forEach(({ stage }, i) => {
    const last = out.at(-1)
    if (last?.stage === stage) out[out.length - 1] = { ...last, to: i }
    else out.push({ stage, from: i, to: i })
  })
  return out
}
