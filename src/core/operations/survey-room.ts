import { derive } from '../figure'
import type { Operation } from '../plan/types'
import { type Job, placeName } from './job'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { TOLERANCE, usual } from './tolerances'

/** The line is struck before anything is marked: everything else is measured from it. */
export function strikeLine(job: Job): readonly Operation[] {
  const { context, units } = job
  if (units.length === 0) return []
  const { highPoint } = context.floor
  const above = derive('mm', { kind: 'geometry', why: 'the line is height 0' }, [highPoint.z], (z) => -z)
  const walls = new Set(units.map((u) => u.wall)).size
  return [
    operation(job, {
      kind: 'strike',
      on: ['line'],
      stage: 'survey',
      title: told('strike', 'title'),
      does: [
        told('strike', 'reverse'),
        told('strike', 'round', { walls }),
        toldFigure('strike', 'height', { above, where: placeName(job, highPoint.where) }),
        told('strike', 'zero'),
      ],
      figures: [shown('above-high-point', above, 'line-above-high-point')],
      checks: [
        check('strike.reversal', 'laser-turned-round', {}, usual(0), TOLERANCE.lineCloses),
        check('strike.closing', 'line-closes', {}, usual(0), TOLERANCE.lineCloses),
      ],
      tools: ['laser', 'pencil'],
      minutes: minutesFor(WORK.strikeLine),
      lines: context.lines.filter((line) => line.of === 'line').map((line) => line.id),
      facts: units.map((u) => `units.${u.id}`),
    }),
  ]
}

/** The floor read down from the line, under every run: its highest place sets the heights. */
export function readFloor(job: Job): readonly Operation[] {
  const standing = job.kitchen.units.filter((unit) => job.unit(unit.id)?.way !== 'hung')
  if (standing.length === 0) return []
  const { highPoint, fall } = job.context.floor
  const where = placeName(job, highPoint.where)
  const readings = job.kitchen.floor.readings
  const drop = derive('mm', { kind: 'geometry', why: 'down from the line' }, [highPoint.z], (z) => -z)
  const runs = new Set(standing.map((unit) => unit.wall)).size
  return [
    operation(job, {
      kind: 'read-floor',
      on: ['room'],
      stage: 'survey',
      title: told('read-floor', 'title'),
      does: [
        told('read-floor', 'read', { count: readings.length }),
        told('read-floor', 'sign'),
        toldFigure('read-floor', 'high-point', { drop, where }),
        toldFigure('read-floor', 'fall', { fall }),
        told('read-floor', 'compare'),
      ],
      figures: [shown('high-point', highPoint.z, 'high-point', { where }), shown('fall', fall, 'floor-fall')],
      checks: [check('read-floor.high-point', 'drop-at-high-point', { where }, drop, TOLERANCE.floorReading)],
      cautions: when(job.kitchen.floor.heating === true, caution('W001', 'heated-floor')),
      tools: ['laser', 'tape', 'pencil'],
      minutes: minutesFor(WORK.readFloor, runs),
      facts: [
        ...readings.map((reading) => `floor.readings.${reading.id}`),
        ...standing.map((unit) => `units.${unit.id}`),
      ],
    }),
  ]
}
