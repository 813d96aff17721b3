import { type Figure, known } from '../figure'
import { studBacking } from '../fixings/base-material'
import type { Message } from '../message'
import type { HolePurpose, Operation, UnitId, WallId } from '../plan/types'
import { drillFor, drillingCautions } from './cautions'
import type { Job } from './job'
import { check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { TOLERANCE, usual } from './tolerances'

interface Timber {
  readonly wall: WallId
  readonly id: string
  readonly kind: 'nogging' | 'pattress'
  readonly from: Figure
  readonly to: Figure
  readonly height: Figure
  /** For whose fixings it is needed and not yet in the survey; null: it is in the survey. */
  readonly neededFor: { readonly unit: UnitId; readonly purpose: HolePurpose } | null
  readonly facts: readonly string[]
}

/** Timber in the survey, let in or to be let in, and timber that fixings want and do not find. */
export function timbers(job: Job): readonly Timber[] {
  const { survey, neededNoggings } = job.context
  const planned = job.walls.flatMap((wall) =>
    wall.noggings.map((n): Timber => {
      const from = survey.along(wall.id, n.from)
      const to = survey.along(wall.id, n.to)
      const height = survey.height(n.centre, { wall: wall.id, along: from, out: usual(0) })
      const fact = `walls.${wall.id}.noggings.${n.id}`
      return { wall: wall.id, id: n.id, kind: n.kind, from, to, height, neededFor: null, facts: [fact] }
    }),
  )
  const needed = neededNoggings.map(
    (n): Timber => ({
      wall: n.wall,
      id: n.id,
      kind: 'nogging',
      from: n.from,
      to: n.to,
      height: n.height,
      neededFor: { unit: n.unit, purpose: n.purpose },
      facts: [`units.${n.unit}`, `walls.${n.wall}.construction`],
    }),
  )
  return [...planned, ...needed]
}

const practice = (value: number): Figure =>
  known(value, 0, 'mm', [], { kind: 'common-practice', why: 'screws timber is fixed between studs with' })

/** Screws for timber let in, which are no fixing of a unit and stand in no list: common practice. */
const SCREWS = {
  nogging: { diameter: practice(5), length: practice(90), bit: practice(3) },
  pattress: { diameter: practice(5), length: practice(60), bit: practice(3) },
} as const

/** What lies in front of the studs and is cut or closed again; null: nobody has said. */
function boardOf(job: Job, wall: WallId): Figure | null {
  const found = job.wall(wall)
  return found === undefined ? null : studBacking(found, 'timber-stud').inFront
}

/** A nogging goes in behind the board: the board is cut for it, only after the trace, and closed before the marks. */
function opened(job: Job, timber: Timber): readonly Message[] {
  if (timber.kind === 'pattress') return []
  const board = boardOf(job, timber.wall)
  return [board === null ? told('fit-nogging', 'cut.unknown') : toldFigure('fit-nogging', 'cut', { board })]
}

function fitNogging(job: Job, timber: Timber): Operation {
  const { wall, id, from, to, height } = timber
  const name = job.wallName(wall)
  return operation(job, {
    kind: 'fit-nogging',
    on: [`${wall}.${id}`],
    stage: 'walls-ready',
    title: told('fit-nogging', `title.${timber.kind}`, { wall: name }),
    does: [
      ...when(
        timber.neededFor !== null,
        told('fit-nogging', 'needed-for', { unit: job.name(timber.neededFor?.unit ?? '') }),
      ),
      told('fit-nogging', 'there-already'),
      ...opened(job, timber),
      toldFigure('fit-nogging', timber.neededFor === null ? 'place' : 'place-behind', { from, to, height }),
      told('fit-nogging', timber.kind, { ...SCREWS[timber.kind] }),
      told('fit-nogging', 'record'),
      ...when(timber.kind === 'nogging', told('fit-nogging', 'close')),
    ],
    figures: [
      shown('from', from, 'timber-from', { wall: name }),
      shown('to', to, 'timber-to', { wall: name }),
      shown('height', height, 'timber-height'),
    ],
    checks: [check(`fit-nogging.${wall}.${id}`, 'timber-flush', {}, usual(0), TOLERANCE.noggingFlush)],
    cautions: drillingCautions(job.wall(wall)),
    tools: ['saw', 'knife', ...drillFor(job.wall(wall)), 'level', 'camera'],
    minutes: minutesFor(WORK.nogging),
    wall,
    facts: timber.facts,
  })
}

export function fitNoggings(job: Job): readonly Operation[] {
  return timbers(job).map((timber) => fitNogging(job, timber))
}
