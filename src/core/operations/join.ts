import { derive, hasValue } from '../figure'
import type { Message } from '../message'
import type { Operation, OperationCheck } from '../plan/types'
import { listed } from '../words/listed'
import type { FittedUnit, Job } from './job'
import { leftSlack } from './left-slack'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { type Joint, jointOn, joints, ontoTall } from './neighbours'
import { TOLERANCE, usual } from './tolerances'

/** The usual joining screw, mm, and how far short of both sides together a screw must stay. */
const SCREW = 30
const SHORT_OF = 2
/** Depths no further apart than this bring fronts flush, mm. */
const ALIKE = 1

/** How the two are brought together: clamped at top and bottom, or drawn to the side of a deeper tall. */
function together(joint: Joint): Message {
  const { left, right } = joint
  const onto = ontoTall(joint)
  if (onto === null || alike(onto.unit, onto.tall)) {
    return told('join', 'clamp', { left: left.name, right: right.name })
  }
  return toldFigure('join', 'onto-tall', {
    unit: onto.unit.name,
    tall: onto.tall.name,
    depth: onto.unit.plan.depth,
    tallDepth: onto.tall.plan.depth,
  })
}

/** As deep as one another, so that their fronts come flush. */
function alike(a: FittedUnit, b: FittedUnit): boolean {
  const [deep, other] = [a.plan.depth, b.plan.depth]
  return hasValue(deep) && hasValue(other) && Math.abs(deep.value - other.value) <= ALIKE
}

/** Hung units whose last screws were left slack until they are joined. */
function slackOf(job: Job, { left, right }: Joint): readonly FittedUnit[] {
  return [left, right].filter((unit) => leftSlack(job, unit))
}

function flushChecks(job: Job, joint: Joint, key: string): readonly OperationCheck[] {
  const values = { left: joint.left.name, right: joint.right.name }
  const onto = ontoTall(joint)
  if (onto !== null && !alike(onto.unit, onto.tall)) {
    return [check(`join.${key}.close`, 'sides-close', values, usual(0), TOLERANCE.flush)]
  }
  return [
    check(`join.${key}.flush`, 'fronts-flush', values, usual(0), TOLERANCE.flush),
    ...when(
      slackOf(job, joint).length > 0,
      check(`join.${key}.home`, 'flush-when-home', values, usual(0), TOLERANCE.flush),
    ),
  ]
}

const STAGE = { hung: 'wall-units', base: 'base-units', tall: 'talls' } as const

function joinUnits(job: Job, joint: Joint): Operation {
  const { left, right, of } = joint
  const both = derive(
    'mm',
    { kind: 'geometry', why: 'the two sides together' },
    [left.unit.board, right.unit.board],
    (a, b) => a + b,
  )
  const tooLong = hasValue(both) && both.value - SHORT_OF < SCREW
  const values = { left: left.name, right: right.name }
  const id = jointOn(left.id, right.id)
  const slack = slackOf(job, joint)
  return operation(job, {
    kind: 'join',
    on: id,
    stage: STAGE[of],
    title: told('join', 'title', values),
    does: [
      together(joint),
      told('join', 'pilot'),
      tooLong
        ? told('join', 'screw-shorter', { both })
        : toldFigure('join', 'screw', { both, screw: usual(SCREW) }),
      ...when(slack.length > 0, told('join', 'home', { units: listed(slack.map((unit) => unit.name)) })),
      told('join', 'where-the-level-lies'),
    ],
    figures: [shown('both-sides', both, 'both-sides')],
    checks: [
      ...flushChecks(job, joint, id.join('+')),
      check(`join.${id.join('+')}.through`, 'no-screw-through', values),
    ],
    cautions: [caution('M004', 'eyes'), caution('P001', 'no-gloves-at-drill')],
    tools: ['clamps', 'drill-driver', 'level', ...(of === 'hung' ? (['stepladder'] as const) : [])],
    minutes: minutesFor(WORK.join),
    wall: left.wall,
    facts: [`units.${left.id}`, `units.${right.id}`, ...left.plan.right.from, ...right.plan.left.from],
  })
}

/** Neighbours clamped, then screwed side to side behind their front edges. */
export function joinNeighbours(job: Job): readonly Operation[] {
  return joints(job).map((joint) => joinUnits(job, joint))
}
