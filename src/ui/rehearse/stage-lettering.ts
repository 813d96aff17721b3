import type { Stage } from '../../core/plan/types'
import { STAGE_LETTERING } from '../words'
import type { Stretch, TapeScale } from './tape-scale'

/** A stage's name on the tape: where it begins to be lettered, and where its stage begins. */
export interface StageLabel {
  readonly stage: Stage
  /** First operation of its stretch: a stage worked in two goes is lettered twice. */
  readonly from: number
  readonly name: string
  /** Left end of its stage on the tape; of one that began out of sight, the left end of what is seen. */
  readonly at: number
  readonly x: number
  readonly w: number
}

/** Shorter still, for a narrow tape. */
const SHORTER: Partial<Record<Stage, string>> = {
  'connect-and-test': 'Connect',
  'fronts-and-plinths': 'Fronts',
}

/** Room a name takes beside its letters: its line, and air to the next. */
const AIR = 13
const EDGE = 3

/**
 * The names of the stages in sight, in order in one row, none touching the next, each as near to its stage as the others
 * let it. Where there is no room for all, those of the shortest stages are left out; never that of the stage at the hook.
 */
export function stageLabels(
  stretches: readonly Stretch[],
  scale: TapeScale,
  index: number,
  width: number,
  letter: number,
): readonly StageLabel[] {
  const seen = stretches.flatMap((stretch) => {
    const left = scale.x(stretch.from) - scale.pitch / 2
    const right = scale.x(stretch.to) + scale.pitch / 2
    if (right < EDGE || left > width - EDGE) return []
    const isNow = index >= stretch.from && index <= stretch.to
    const at = Math.max(EDGE, left)
    return [{ stage: stretch.stage, from: stretch.from, at, seen: Math.min(right, width) - at, isNow }]
  })
  const named = (names: Partial<Record<Stage, string>>) =>
    seen.map((one) => {
      const name = names[one.stage] ?? STAGE_LETTERING[one.stage]
      return { ...one, name, w: name.length * letter + AIR }
    })
  const total = (all: readonly { readonly w: number }[]) => all.reduce((sum, { w }) => sum + w, 0)
  const room = width - 2 * EDGE
  let kept = named({})
  if (total(kept) > room) kept = named(SHORTER)
  while (total(kept) > room && kept.length > 1) {
    const out = kept.filter((k) => !k.isNow).reduce((a, b) => (b.seen < a.seen ? b : a))
    kept = kept.filter((k) => k !== out)
  }
  const places = inOneRow(
    kept.map((k) => k.at),
    kept.map((k) => k.w),
    EDGE,
    width - EDGE,
  )
  return kept.map(({ stage, from, name, at, w }, i) => ({ stage, from, name, at, w, x: places[i] as number }))
}

/** Places in one row as near as can be (least squares) to where each is wanted, in order, none over the next. */
export function inOneRow(
  wanted: readonly number[],
  widths: readonly number[],
  low: number,
  high: number,
): readonly number[] {
  const before: number[] = []
  let sum = 0
  for (const w of widths) {
    before.push(sum)
    sum += w
  }
  const pools: { mean: number; count: number }[] = []
  wanted.forEach((at, i) => {
    pools.push({ mean: at - (before[i] as number), count: 1 })
    for (let last = pools.at(-1), prior = pools.at(-2); last && prior && prior.mean > last.mean; ) {
      const count = last.count + prior.count
      pools.splice(-2, 2, { mean: (last.mean * last.count + prior.mean * prior.count) / count, count })
      last = pools.at(-1)
      prior = pools.at(-2)
    }
  })
  const even = pools.flatMap(({ mean, count }) => Array.from({ length: count }, () => mean))
  return even.map((mean, i) => Math.max(low, Math.min(high - sum, mean)) + (before[i] as number))
}
