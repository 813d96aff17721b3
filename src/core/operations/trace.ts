import type { Operation, WallId } from '../plan/types'
import type { Job } from './job'
import { caution, check, largest, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { timberTips } from './noggings'

/** A wall traced already is only looked over: this share of the time. */
const LOOK_AGAIN = 0.3

/** Walls that somebody is going to drill: units are fixed to them, or timber is let in. */
export function wallsToDrill(job: Job): readonly WallId[] {
  const wanted = new Set([
    ...job.units.filter((u) => u.way !== 'island').map((u) => u.wall),
    ...job.context.holes.map((hole) => hole.wall),
    ...job.context.neededNoggings.map((n) => n.wall),
    ...job.walls.filter((wall) => wall.noggings.length > 0).map((wall) => wall.id),
  ])
  return job.walls.filter((wall) => wanted.has(wall.id)).map((wall) => wall.id)
}

function traceWall(job: Job, id: WallId, share: number): Operation {
  const wall = job.wall(id)
  // A refused hole is never drilled: it is neither counted nor traced to its depth.
  const holes = job.holesIn(id).filter((hole) => hole.verdict !== 'refused')
  const bands = job.context.bands.filter((band) => band.wall === id)
  const deepest = largest([...holes.map((hole) => hole.depth), ...timberTips(job, id)])
  const name = job.wallName(id)
  const traced = wall?.traced === 'whole'
  const lookBehind = wall?.behind !== 'outside' && wall?.otherFaceChecked !== true
  return operation(job, {
    kind: 'trace',
    on: [id],
    stage: 'make-safe',
    title: told('trace', 'title', { wall: name }),
    does: [
      told('trace', traced ? 'traced-before' : 'go-over', {
        wall: name,
        holes: holes.length,
        bands: bands.length,
      }),
      ...(deepest === null ? [] : [toldFigure('trace', 'depth', { depth: deepest })]),
      ...when(lookBehind, told('trace', 'other-face')),
      told('trace', 'fooled'),
      told('trace', 'live-and-dead'),
    ],
    figures: deepest === null ? [] : [shown('depth', deepest, 'deepest-hole')],
    checks: [check(`trace.${id}`, 'wall-traced', { wall: name }, deepest)],
    cautions: [caution('W012', 'bands-are-not-cables'), caution('W001', 'never-drill-to-find-out')],
    tools: ['detector', 'pencil'],
    minutes: minutesFor(WORK.trace, traced ? share * LOOK_AGAIN : share),
    holdPoint: true,
    wall: id,
    facts: [`walls.${id}.traced`, ...when(lookBehind, `walls.${id}.otherFaceChecked`)],
  })
}

/** Every wall that is to be drilled, gone over with a detector first. */
export function traceWalls(job: Job): readonly Operation[] {
  const walls = wallsToDrill(job)
  return walls.map((id) => traceWall(job, id, 1 / walls.length))
}
