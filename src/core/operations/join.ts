import { derive, hasValue } from '../figure'
import type { Operation } from '../plan/types'
import type { Job } from './job'
import { caution, check, operation, shown, told, toldFigure } from './make'
import { minutesFor, WORK } from './minutes'
import { type Joint, jointOn, joints } from './neighbours'
import { TOLERANCE, usual } from './tolerances'

/** The usual joining screw, mm, and how far short of both sides together a screw must stay. */
const SCREW = 25
const SHORT_OF = 2

function joinUnits(job: Job, { left, right, of }: Joint): Operation {
  const both = derive(
    'mm',
    { kind: 'geometry', why: 'the two sides together' },
    [left.unit.board, right.unit.board],
    (a, b) => a + b,
  )
  const tooLong = hasValue(both) && both.value - SHORT_OF < SCREW
  const values = { left: left.name, right: right.name }
  const id = jointOn(left.id, right.id)
  return operation(job, {
    kind: 'join',
    on: id,
    stage: of === 'hung' ? 'wall-units' : 'base-units',
    title: told('join', 'title', values),
    does: [
      told('join', 'clamp', values),
      told('join', 'pilot'),
      tooLong ? told('join', 'screw-shorter', { both }) : toldFigure('join', 'screw', { both }),
      told('join', 'where-the-level-lies'),
    ],
    figures: [shown('both-sides', both, 'both-sides')],
    checks: [
      check(`join.${id.join('+')}.flush`, 'fronts-flush', values, usual(0), TOLERANCE.flush),
      check(`join.${id.join('+')}.through`, 'no-screw-through', values),
    ],
    cautions: [caution('M004', 'eyes'), caution('P001', 'no-gloves-at-drill')],
    tools: ['clamps', 'drill-driver', 'level', ...(of === 'hung' ? (['stepladder'] as const) : [])],
    minutes: minutesFor(WORK.join),
    wall: left.wall,
    facts: [`units.${left.id}`, `units.${right.id}`, ...left.plan.right.from, ...right.plan.left.from],
  })
}

/** Neighbours clamped, then screwed side to side between the hinge holes. */
export function joinNeighbours(job: Job): readonly Operation[] {
  return joints(job).map((joint) => joinUnits(job, joint))
}
