import type { Figure } from '../figure'
import { heightNamed } from '../heights/height-named'
import { HUNG_KINDS } from '../kitchen/kinds'
import type { FinishingPart, Unit } from '../kitchen/schema'
import { type PlinthEnd, plinthEndsOf } from '../placing/plinth-line'
import type { NamedFigure, UnitPlan } from '../plan/types'
import { backOut } from '../units/positions'
import { type Job, unitsAlong } from './job'
import { shown } from './make'

/** How high a plinth has to be at the two ends of one wall's run, to the finished floor. */
export interface PlinthEnds {
  readonly wall: string
  readonly left: Figure
  readonly right: Figure
  readonly figures: readonly NamedFigure[]
}

/** The ends of a plinth on each wall it runs along, walls in order. */
export function plinthEnds(job: Job, part: FinishingPart): readonly PlinthEnds[] {
  return job.walls.flatMap(({ id: wall }) => {
    const over = unitsAlong(job, wall).filter(
      ({ unit, kind }) => part.of.includes(unit) && !HUNG_KINDS.includes(kind),
    )
    const [first] = over
    const last = over.at(-1)
    if (first === undefined || last === undefined) return []
    const left = heightAt(job, part, first, 'left')
    const right = heightAt(job, part, last, 'right')
    return [
      {
        wall,
        left,
        right,
        figures: [
          shown(`left.${wall}`, left, 'plinth-at-left', { unit: first.name }),
          shown(`right.${wall}`, right, 'plinth-at-right', { unit: last.name }),
        ],
      },
    ]
  })
}

/** A space stands over nothing: its plinth runs on under the line of the base units beside it. */
function heightAt(job: Job, part: FinishingPart, plan: UnitPlan, side: 'left' | 'right'): Figure {
  const { context, kitchen } = job
  const underside =
    plan.kind === 'appliance-space' ? heightNamed(context.heights, 'base-underside') : plan.underside
  const stated = kitchen.units.find(({ id }) => id === plan.unit) as Unit
  const position = { out: backOut(stated), depth: plan.depth }
  const ends = plinthEndsOf(kitchen, context.survey, plan, position, underside, part.setBack)
  return (ends.find((end) => end.side === side) as PlinthEnd).height
}
