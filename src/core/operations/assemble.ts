import { derive } from '../figure'
import type { Operation } from '../plan/types'
import type { FittedUnit, Job } from './job'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { inTurn, minutesFor, WORK } from './minutes'
import { TOLERANCE, usual } from './tolerances'

/** Whether a unit has to be put together: it came flat, or nobody has said how it came. */
export function wantsAssembly(unit: FittedUnit): boolean {
  return unit.unit.assembled !== 'built'
}

function assembleUnit(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const diagonal = derive(
    'mm',
    { kind: 'geometry', why: 'diagonal of width and height' },
    [plan.width, plan.height],
    (width, height) => Math.hypot(width, height),
  )
  const tall = unit.way === 'tall'
  const drawers = unit.unit.drawers.length
  return operation(job, {
    kind: 'assemble',
    on: [unit.id],
    stage: 'assemble',
    title: told('assemble', 'title', { unit: name }),
    does: [
      ...when(unit.unit.assembled === null, told('assemble', 'not-said', { unit: name })),
      told('assemble', tall ? 'lying' : 'flat-floor', { unit: name }),
      toldFigure('assemble', 'square', { diagonal }),
      toldFigure('assemble', 'stripped', { mass: plan.lift.massStripped }),
      ...when(unit.unit.assembled !== null, told('assemble', 'not-too-tight')),
    ],
    figures: [
      shown('diagonal', diagonal, 'diagonal', { unit: name }),
      shown('mass', plan.lift.massStripped, 'mass-stripped', { unit: name }),
    ],
    checks: [check(`assemble.${unit.id}`, 'diagonals-equal', { unit: name }, usual(0), TOLERANCE.diagonals)],
    cautions: [caution('W024', 'panels'), ...when(tall, caution('W007', 'lying-unit'))],
    tools: ['square', 'mallet', 'screwdriver', 'tape'],
    people: tall ? 2 : 1,
    minutes:
      drawers === 0
        ? minutesFor(WORK.assemble)
        : inTurn(minutesFor(WORK.assemble), minutesFor(WORK.drawer, drawers)),
    changes: [{ unit: unit.id, from: 'delivered', to: 'assembled' }],
    facts: [`units.${unit.id}`, `units.${unit.id}.assembled`, `units.${unit.id}.kind`],
  })
}

export function assembleUnits(job: Job): readonly Operation[] {
  return job.units.filter(wantsAssembly).map((unit) => assembleUnit(job, unit))
}
