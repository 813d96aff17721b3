import { derive, type Figure, hasValue, known, restingOn, unknown } from '../figure'
import { studBacking } from '../fixings/base-material'
import { mergedIds } from '../ids'
import type { Message } from '../message'
import type { Hole, HolePurpose, Operation, UnitId, WallId } from '../plan/types'
import { drillFor, drillingCautions } from './cautions'
import type { Job } from './job'
import { check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import {
  reachInto,
  sectionFigures,
  sectionSentences,
  type TimberSection,
  usualSection,
} from './timber-section'
import { TOLERANCE, usual } from './tolerances'

interface Timber {
  readonly wall: WallId
  readonly id: string
  readonly kind: 'nogging' | 'pattress'
  readonly from: Figure
  readonly to: Figure
  readonly height: Figure
  /** As the survey has the piece; null: it is still to be bought. */
  readonly entered: Pick<TimberSection, 'high' | 'thick'> | null
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
      const entered = { high: n.depth, thick: n.thickness }
      return {
        wall: wall.id,
        id: n.id,
        kind: n.kind,
        from,
        to,
        height,
        entered,
        neededFor: null,
        facts: [fact],
      }
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
      entered: null,
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
  nogging: { diameter: practice(5), length: practice(70), bit: practice(3) },
  pattress: { diameter: practice(5), length: practice(60), bit: practice(3) },
} as const

/** How deep the tip of a nogging's screw comes behind the face of the timber: driven at 30° to it, half its length. */
const TIP_SHARE = 0.5

/** How deep such a tip comes from the finished face; unknown while the board before it is. */
function tipOf(job: Job, wall: WallId): Figure {
  const board = boardOf(job, wall)
  if (board === null) return unknown('mm', [`walls.${wall}.layers`])
  return derive(
    'mm',
    { kind: 'geometry', why: 'the board, and half the length of a screw driven at 30° to the wall' },
    [board, SCREWS.nogging.length],
    (front = 0, length = 0) => front + TIP_SHARE * length,
  )
}

/** How deep the screws of timber let in come, wall by wall: they are traced for like any hole. */
export const timberTips = (job: Job, wall: WallId): readonly Figure[] =>
  timbers(job).flatMap((timber) =>
    timber.wall === wall && timber.kind === 'nogging' ? [tipOf(job, wall)] : [],
  )

/** What lies in front of the studs and is cut or closed again; null: nobody has said. */
function boardOf(job: Job, wall: WallId): Figure | null {
  const found = job.wall(wall)
  return found === undefined ? null : studBacking(found, 'timber-stud').inFront
}

/** Holes of the unit it is needed for; where the survey has it, those that lie within it. */
function holesInto(job: Job, timber: Timber): readonly Hole[] {
  const { wall, from, to, height, entered, neededFor } = timber
  if (neededFor !== null)
    return job
      .holesIn(wall)
      .filter((hole) => hole.purpose === neededFor.purpose && hole.for.includes(neededFor.unit))
  const high = entered?.high
  if (!hasValue(from) || !hasValue(to) || !hasValue(height) || high === undefined || !hasValue(high))
    return []
  const isWithin = ({ along, height: at }: Hole) =>
    hasValue(along) &&
    hasValue(at) &&
    along.value > from.value &&
    along.value < to.value &&
    Math.abs(at.value - height.value) < high.value / 2
  return job.holesIn(wall).filter((hole) => hole.verdict !== 'refused' && isWithin(hole))
}

/** How far screws go into it. That they come into it at all rests on where it lies, and where they do. */
function reachOf(job: Job, timber: Timber): Figure {
  const { wall, from, to, height, entered } = timber
  const holes = holesInto(job, timber)
  const places = [from, to, height, ...(entered === null ? [] : [entered.high])]
  const lies = [...places, ...holes.flatMap((hole) => [hole.along, hole.height])]
  return restingOn(reachInto(holes, boardOf(job, wall)), mergedIds(lies.map((figure) => figure.from)))
}

function sectionOf(job: Job, timber: Timber): TimberSection {
  const { kind, entered } = timber
  return {
    ...(entered ?? usualSection(job.context.region)),
    isEntered: entered !== null,
    reach: kind === 'pattress' ? null : reachOf(job, timber),
  }
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
  const section = sectionOf(job, timber)
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
      ...sectionSentences(section),
      timber.kind === 'nogging'
        ? toldFigure('fit-nogging', 'nogging', { ...SCREWS.nogging, tip: tipOf(job, wall) })
        : told('fit-nogging', timber.kind, { ...SCREWS[timber.kind] }),
      told('fit-nogging', 'record'),
      ...when(timber.kind === 'nogging', told('fit-nogging', 'close')),
    ],
    figures: [
      shown('from', from, 'timber-from', { wall: name }),
      shown('to', to, 'timber-to', { wall: name }),
      shown('height', height, 'timber-height'),
      ...sectionFigures(section),
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
