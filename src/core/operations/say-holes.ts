import type { Message } from '../message'
import type { Hole, NamedFigure } from '../plan/types'
import type { Job } from './job'
import { distinct, largest, shown, told, toldFigure } from './make'

/** Where holes are, how deep and with which bit, in the words of one kind of operation; none at all is said too. */
export function holeSentences(kind: string, holes: readonly Hole[]): readonly Message[] {
  const [first] = holes
  if (first === undefined) return [told(kind, 'no-hole')]
  const depth = largest(holes.map((hole) => hole.depth)) ?? first.depth
  return [
    where(holes, first),
    toldFigure('drill', first.stud === null ? 'plug' : 'timber', { depth, bit: first.bit }),
  ]
}

function where(holes: readonly Hole[], { along, height }: Hole): Message {
  if (holes.length === 1) return toldFigure('drill', 'one-hole', { along, height })
  const level = distinct(holes.map((hole) => hole.height)).length === 1
  return level
    ? toldFigure('drill', 'level-holes', { count: holes.length, height })
    : told('drill', 'holes-at-marks', { count: holes.length })
}

/** Each hole from the left corner of its wall and from the line, with its depth. */
export function holeFigures(job: Job, holes: readonly Hole[]): readonly NamedFigure[] {
  return holes.flatMap((hole) => {
    const values = { hole: hole.number ?? hole.id, wall: job.wallName(hole.wall) }
    return [
      shown(`${hole.id}.along`, hole.along, 'hole-along', values),
      shown(`${hole.id}.height`, hole.height, 'hole-height', values),
      shown(`${hole.id}.depth`, hole.depth, 'hole-depth', values),
    ]
  })
}
