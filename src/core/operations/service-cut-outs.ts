import type { Message } from '../message'
import type { NamedFigure, OperationCheck } from '../plan/types'
import { listed } from '../words/listed'
import { behindUnit } from './behind-unit'
import type { FittedUnit, Job } from './job'
import { check, shown, told } from './make'

/** What is said, shown and checked of the holes in a unit's back for what comes out of the wall behind it. */
export interface CutOuts {
  readonly count: number
  readonly does: readonly Message[]
  readonly figures: readonly NamedFigure[]
  readonly checks: readonly OperationCheck[]
}

/** The holes to cut in a unit's back before it goes to its place: pipes and outlets the survey has behind it. */
export function cutOutsOf(job: Job, unit: FittedUnit): CutOuts {
  const holes = unit.way === 'island' ? [] : behindUnit(job, unit.plan)
  const of = (what: string) => ({ what, unit: unit.name })
  return {
    count: holes.length,
    does:
      holes.length === 0
        ? []
        : [told('cut-outs', 'before', { count: holes.length, what: listed(holes.map((h) => h.what)) })],
    figures: holes.flatMap((h) => [
      shown(`cut-out.${h.id}.x`, h.x, 'cut-out-x', of(h.what)),
      shown(`cut-out.${h.id}.y`, h.y, 'cut-out-y', of(h.what)),
    ]),
    checks: holes.length === 0 ? [] : [check(`cut-outs.${unit.id}`, 'cut-outs-marked', { unit: unit.name })],
  }
}
