import { type Basis, hasValue, type ValueFigure } from '../figure'
import { finding } from '../holes/finding'
import { message } from '../message'
import type { Finding } from '../plan/types'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'
import type { UnitPosition } from '../units/positions'
import type { Drilled } from './drill'
import { bowsOn, hollowAt } from './hollows'
import type { WallWork } from './wall-work'

const packed: Basis = {
  kind: 'geometry',
  why: 'what stands over a hollow is packed out by it, and the screw goes through the packing',
}

interface Short {
  readonly drilled: Drilled
  readonly hollow: ValueFigure
  readonly short: ValueFigure
}

/**
 * Screws long enough where the wall is true, and too short for the packing where it is hollow (failure mode F29): told
 * for each unit, or row of units on one rail, at the hole where it is worst. What is too short anyway is told as that.
 */
export function hollowFindings(
  work: WallWork,
  survey: Pick<Survey, 'along' | 'height'>,
  holes: readonly Drilled[],
  positions: ReadonlyMap<string, UnitPosition>,
): readonly Finding[] {
  const bows = bowsOn(work.wall, survey)
  if (bows.length === 0) return []
  const worst = new Map<string, Short>()
  for (const drilled of holes) {
    const hollow = hollowAt(bows, drilled.hole.along, drilled.hole.height)
    if (hollow === null || !isLongEnough(drilled)) continue
    const short = sum('mm', packed, [hollow], [drilled.spare])
    if (!hasValue(hollow) || !hasValue(short) || short.value <= 0) continue
    const whose = drilled.hole.for.join('+')
    const sofar = worst.get(whose)
    if (sofar === undefined || short.value > sofar.short.value) worst.set(whose, { drilled, hollow, short })
  }
  return [...worst.values()].map((one) => said(work, one, positions))
}

function isLongEnough({ hole, troubles }: Drilled): boolean {
  return hole.verdict !== 'refused' && !troubles.includes('too-short')
}

function said(
  work: WallWork,
  { drilled, hollow, short }: Short,
  positions: ReadonlyMap<string, UnitPosition>,
): Finding {
  const { hole } = drilled
  const isSure = short.value > short.pm
  const needed = sum('mm', packed, [drilled.needed, hollow])
  return finding({
    rule: 'screw-over-hollow',
    subjects: hole.for,
    weight: isSure ? 'stop' : 'ask',
    where: { wall: hole.wall, along: hole.along, height: hole.height },
    say: message(isSure ? 'fixings.over-hollow' : 'fixings.over-hollow-near', {
      unit: positions.get(hole.for[0] ?? '')?.name ?? work.name,
      wall: work.name,
      along: hole.along,
      hollow,
      length: hole.screwLength,
      needed,
      short,
    }),
    figures: [hollow, needed, hole.screwLength, short],
    basis: packed,
    ask: message('fixings.longer-through-packing'),
  })
}
