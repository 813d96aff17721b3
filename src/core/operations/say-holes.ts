import { holesSaid } from '../holes/holes-said'
import type { Message } from '../message'
import type { Hole, NamedFigure } from '../plan/types'
import { insideFigures, insideSentences } from './inside-unit'
import type { FittedUnit, Job } from './job'
import { distinct, shown, told, toldFigure, when } from './make'
import { bitSentences } from './say-screws'

/**
 * Where holes are, how deep and with which bit, in the words of one kind of operation; none at all is said too. With the
 * unit that already stands or hangs in front of them, their places are told inside it. Holes are those to be drilled:
 * refused ones are not among them, nor counted.
 */
export function holeSentences(
  job: Job,
  kind: string,
  holes: readonly Hole[],
  unit?: FittedUnit,
): readonly Message[] {
  const [first] = holes
  if (first === undefined) return [told(kind, 'no-hole')]
  const open = holes.filter((hole) => hole.verdict === 'ask')
  return [
    ...(unit === undefined ? [where(holes, first)] : insideSentences(unit, holes)),
    unit === undefined ? told('drill', 'detector') : told('drill', 'detector-before', { unit: unit.name }),
    ...when(
      holes.some((hole) => hole.stud !== null),
      told('drill', 'stud-as-found'),
    ),
    ...bitSentences(job, holes, unit),
    ...when(open.length > 0, told('drill', 'ask-first', { holes: holesSaid(open) })),
  ]
}

function where(holes: readonly Hole[], { along, height }: Hole): Message {
  if (holes.length === 1) return toldFigure('drill', 'one-hole', { along, height })
  const level = distinct(holes.map((hole) => hole.height)).length === 1
  return level
    ? toldFigure('drill', 'level-holes', { count: holes.length, height })
    : told('drill', 'holes-at-marks', { count: holes.length })
}

/** Holes that are drilled behind a unit once it is in its place. */
function hiddenHoles(job: Job, unit: FittedUnit): readonly Hole[] {
  return job.holesFor(unit.id, 'second-fixing', 'back-rail', 'base-bracket', 'tall-restraint')
}

/** Said before a unit goes to its place: it will hide marks that are drilled later, so the detector goes over them now. */
export function hiddenMarks(job: Job, unit: FittedUnit): readonly Message[] {
  const holes = hiddenHoles(job, unit)
  return when(
    holes.length > 0,
    told('drill', holes.length === 1 ? 'hides-one' : 'hides-marks', { unit: unit.name, count: holes.length }),
  )
}

/** Each hole from the left corner of its wall and from the line, with its depth; and inside the unit in front of it. */
export function holeFigures(job: Job, holes: readonly Hole[], unit?: FittedUnit): readonly NamedFigure[] {
  const onWall = holes.flatMap((hole) => {
    const values = { hole: hole.number ?? hole.id, wall: job.wallName(hole.wall) }
    return [
      shown(`${hole.id}.along`, hole.along, 'hole-along', values),
      shown(`${hole.id}.height`, hole.height, 'hole-height', values),
      shown(`${hole.id}.depth`, hole.depth, 'hole-depth', values),
    ]
  })
  return unit === undefined ? onWall : [...onWall, ...insideFigures(unit, holes)]
}
