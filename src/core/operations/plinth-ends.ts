import { type Basis, type Figure, hasValue, known, restingOn, unknown } from '../figure'
import type { FinishingPart, Unit } from '../kitchen/schema'
import type { NamedFigure, UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import { type Job, unitsAlong } from './job'
import { shown } from './make'

const toTheFinish: Basis = {
  kind: 'geometry',
  why: 'from the underside of the unit to the finished floor at the face of the plinth',
}
const nothing: Figure = known(0, 0, 'mm', [], toTheFinish)
const HANGING: readonly UnitPlan['kind'][] = ['wall', 'corner-wall', 'bridging']

/** How high a plinth has to be at the two ends of one wall's run, to the finished floor. */
export interface PlinthEnds {
  readonly wall: string
  readonly left: Figure
  readonly right: Figure
  readonly figures: readonly NamedFigure[]
}

/** What is still to come on the floor where the plinth stands: nothing, so much, or not known. */
export function finishAtPlinth({ kitchen: { floor } }: Job): Figure {
  if (floor.finishWhere === 'none') return restingOn(nothing, ['floor.finishWhere'])
  if (floor.finishWhere === null) return unknown('mm', ['floor.finishWhere'])
  return restingOn(floor.finishToCome, ['floor.finishWhere'])
}

/** The ends of a plinth on each wall it runs along, walls in order. */
export function plinthEnds(job: Job, part: FinishingPart): readonly PlinthEnds[] {
  const stated = new Map(job.kitchen.units.map((unit) => [unit.id, unit]))
  return job.walls.flatMap(({ id: wall }) => {
    const over = unitsAlong(job, wall).filter(
      ({ unit, kind }) => part.of.includes(unit) && !HANGING.includes(kind),
    )
    const [first] = over
    const last = over.at(-1)
    if (first === undefined || last === undefined) return []
    const left = heightAt(job, part, first, first.left, stated.get(first.unit))
    const right = heightAt(job, part, last, last.right, stated.get(last.unit))
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

function heightAt(
  job: Job,
  part: FinishingPart,
  plan: UnitPlan,
  along: Figure,
  stated: Unit | undefined,
): Figure {
  const standOff = stated !== undefined && hasValue(stated.standOff) ? stated.standOff : nothing
  const out = sum('mm', toTheFinish, [standOff, plan.depth], [part.setBack])
  const floor = job.context.survey.floorAt(plan.wall, along, out)
  return sum('mm', toTheFinish, [plan.underside], [floor, finishAtPlinth(job)])
}
