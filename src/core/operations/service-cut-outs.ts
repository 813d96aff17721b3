import { derive, type Figure, hasValue, known } from '../figure'
import type { Message } from '../message'
import type { NamedFigure, OperationCheck } from '../plan/types'
import { applianceSaid } from '../units/part-name'
import { listed } from '../words/listed'
import { type Behind, behindUnit } from './behind-unit'
import type { FittedUnit, Job } from './job'
import { check, shown, told, when } from './make'
import { bayOf } from './prove'

/** What is said, shown and checked of the holes in a unit's back for what comes out of the wall behind it. */
export interface CutOuts {
  readonly count: number
  readonly does: readonly Message[]
  readonly figures: readonly NamedFigure[]
  readonly checks: readonly OperationCheck[]
}

/** Room left round a pipe or a faceplate on every side, so that the unit goes over it: common practice, no source. */
const ROOM = known(5, 0, 'mm', [], {
  kind: 'common-practice',
  why: 'common practice, no source: enough to push a unit home over it, and for a pipe to move as it warms',
})

/** A hole for something so wide, with room all round. */
function withRoom(size: Figure): Figure {
  return derive(
    'mm',
    {
      kind: 'common-practice',
      why: 'what goes through, and room all round it, so that the unit goes over it',
    },
    [size, ROOM],
    (across = 0, room = 0) => across + 2 * room,
  )
}

const isSized = ({ size }: Behind) => hasValue(size.wide) && (size.tall === null || hasValue(size.tall))

function holeFigures({ id, what, x, y, size }: Behind, unit: string): readonly NamedFigure[] {
  const of = { what, unit }
  const { wide, tall } = size
  return [
    shown(`cut-out.${id}.x`, x, 'cut-out-x', of),
    shown(`cut-out.${id}.y`, y, 'cut-out-y', of),
    shown(`cut-out.${id}.wide`, withRoom(wide), tall === null ? 'cut-out-across' : 'cut-out-wide', of),
    ...(tall === null ? [] : [shown(`cut-out.${id}.tall`, withRoom(tall), 'cut-out-tall', of)]),
  ]
}

/** A sink in the unit whose waste nobody has found behind it: it goes out somewhere, by a hole nobody can place yet. */
function wasteNotFound(job: Job, unit: FittedUnit, holes: readonly Behind[]): readonly Message[] {
  if (holes.some((hole) => hole.what === 'waste pipe')) return []
  return job.kitchen.appliances
    .filter((appliance) => appliance.kind === 'sink' && bayOf(job.kitchen, appliance)?.id === unit.id)
    .map((sink) => told('cut-outs', 'waste', { sink: applianceSaid(sink), unit: unit.name, room: ROOM }))
}

/** The holes to cut in a unit's back before it goes to its place: pipes and outlets the survey has behind it. */
export function cutOutsOf(job: Job, unit: FittedUnit): CutOuts {
  const holes = unit.way === 'island' ? [] : behindUnit(job, unit.plan)
  const waste = wasteNotFound(job, unit, holes)
  const notSized = holes.filter((hole) => !isSized(hole))
  return {
    count: holes.length + waste.length,
    does: [
      ...when(
        holes.length > 0,
        told('cut-outs', 'before', { count: holes.length, what: listed(holes.map((h) => h.what)) }),
        told('cut-outs', 'room', { room: ROOM }),
      ),
      ...when(
        notSized.length > 0,
        told('cut-outs', 'measure', { what: listed(notSized.map((h) => h.what)) }),
      ),
      ...waste,
    ],
    figures: holes.flatMap((hole) => holeFigures(hole, unit.name)),
    checks: holes.length === 0 ? [] : [check(`cut-outs.${unit.id}`, 'cut-outs-marked', { unit: unit.name })],
  }
}
