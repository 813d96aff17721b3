import { hasValue } from '../figure'
import { masonryBacking } from '../fixings/base-material'
import { bitFor, clearHole, isPlainScrew, nominal } from '../fixings/pilot'
import { wallKind } from '../fixings/wall-kind'
import type { Fixing, Wall } from '../kitchen/schema'
import type { Message } from '../message'
import type { Hole, OperationCheck } from '../plan/types'
import { beforeTheWall, goesThrough, stopFromRail } from './inside-unit'
import type { FittedUnit, Job } from './job'
import { check, largest, told, toldFigure, when } from './make'

/** Holes that take the same screw, with it; null: none has been entered for them. */
interface SameScrew {
  readonly fixing: Fixing | null
  readonly holes: readonly Hole[]
}

function byScrew(job: Job, holes: readonly Hole[]): readonly SameScrew[] {
  const ids = [...new Set(holes.map((hole) => hole.fixing))]
  return ids.map((id) => ({
    fixing: job.kitchen.fixings.find((fixing) => fixing.id === id) ?? null,
    holes: holes.filter((hole) => hole.fixing === id),
  }))
}

/**
 * How the holes are drilled: for each kind of screw its bit and how deep, from the finished face; through the unit's own
 * rail a clear hole first, and the depth stop from the face of that rail.
 */
export function bitSentences(job: Job, holes: readonly Hole[], unit?: FittedUnit): readonly Message[] {
  return byScrew(job, holes).flatMap(({ fixing, holes: its }) => {
    const [first] = its
    if (first === undefined) return []
    if (fixing === null) return [told('drill', 'no-screw')]
    const through = unit !== undefined && goesThrough(first)
    return through ? throughUnit(unit, fixing, first, its) : [straightIn(fixing, its, first)]
  })
}

function straightIn(fixing: Fixing, holes: readonly Hole[], first: Hole): Message {
  return toldFigure('drill', `bit.${fixing.kind}`, {
    diameter: nominal(fixing.diameter),
    length: nominal(fixing.length),
    bit: bitFor(fixing),
    depth: largest(holes.map((hole) => hole.depth)) ?? first.depth,
  })
}

function throughUnit(
  unit: FittedUnit,
  fixing: Fixing,
  first: Hole,
  holes: readonly Hole[],
): readonly Message[] {
  const depth = largest(holes.map((hole) => hole.depth)) ?? first.depth
  const before = beforeTheWall(unit, first)
  const stop = largest(holes.map((hole) => stopFromRail(unit, hole))) ?? depth
  const plain = isPlainScrew(fixing.kind)
  return [
    ...when(plain, toldFigure('drill', 'clear-hole', { clear: clearHole(fixing) })),
    toldFigure('drill', plain ? 'through.pilot' : 'through.plug', {
      bit: bitFor(fixing),
      stop,
      before,
      depth,
    }),
  ]
}

/** The screw itself, named as on its packet, and how many. */
export function screwSentences(job: Job, holes: readonly Hole[]): readonly Message[] {
  return byScrew(job, holes).map(({ fixing, holes: its }) =>
    fixing === null
      ? told('screw', 'not-entered')
      : toldFigure('screw', fixing.kind, {
          diameter: nominal(fixing.diameter),
          length: nominal(fixing.length),
          count: its.length,
        }),
  )
}

/** Kinds that sit in the wall by a sleeve or plug of their own. */
const pluggedIn = (job: Job, holes: readonly Hole[]): boolean =>
  byScrew(job, holes).some(({ fixing }) => fixing !== null && !isPlainScrew(fixing.kind))

/**
 * Plugs into masonry: dust out first, then flush with what holds and never in the plaster only. None in a stud wall, or
 * where no plug is used.
 */
export function plugSentences(job: Job, wall: Wall | undefined, holes: readonly Hole[]): readonly Message[] {
  if (wall === undefined || wallKind(wall) !== 'masonry' || !pluggedIn(job, holes)) return []
  const { material, inFront } = masonryBacking(wall)
  const kinds = byScrew(job, holes).flatMap(({ fixing }) => fixing?.kind ?? [])
  const standsOff = kinds.includes('stand-off')
  const bare = hasValue(inFront) && inFront.value === 0
  return [
    told('plug', 'dust'),
    standsOff
      ? told('plug', 'stand-off')
      : bare
        ? told('plug', 'flush')
        : toldFigure('plug', 'in-the-solid', { base: plainMaterial(material), front: inFront }),
  ]
}

/** Asked after the plugs are in. */
export function plugChecks(
  job: Job,
  wall: Wall | undefined,
  holes: readonly Hole[],
  id: string,
): readonly OperationCheck[] {
  return when(plugSentences(job, wall, holes).length > 0, check(`${id}.plugs`, 'plugs-in-the-solid'))
}

/** What a wall is built of, as it is said. */
function plainMaterial(material: string | null): string {
  return material === null ? 'masonry' : material.replaceAll('-', ' ')
}
