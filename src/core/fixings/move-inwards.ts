import { derive, type Figure, hasValue, type InputId, restingOn, sortedIds } from '../figure'
import type { Band } from '../plan/types'
import { type Drilled, drilled, type WantedHole } from './drill'
import type { WallWork } from './wall-work'

/** How far a bracket may be moved to get out of a band, and in what steps. Common practice. */
const STEP = 10
const FURTHEST = 120

type Direction = 1 | -1

/**
 * A hole that may be moved to one side: drilled where wanted if nothing there would go away by moving, else at the
 * first place inwards that is free. The place first wanted stays in the list, refused, so that nobody drills it after
 * all. If no place is free it stays where it was, with what speaks against it.
 *
 * Where the hole goes then rests on everything that could have moved it: while one of those is not known, neither is
 * the place.
 */
export function drilledOrMoved(
  work: WallWork,
  want: WantedHole,
  towards: readonly Direction[],
): readonly Drilled[] {
  const settled = withPlaceSettled(work, want, towards)
  const first = drilled(work, settled)
  if (!first.wouldMove || !hasValue(settled.along)) return [first]
  const tried = placesToTry(towards).map((by) => drilled(work, moved(settled, by)))
  const free = tried.find((d) => !d.wouldMove) ?? tried.find((d) => d.hole.verdict !== 'refused')
  if (free === undefined) return [first]
  if (first.hole.verdict !== 'refused') return free.wouldMove ? [first] : [free]
  return [free, { ...first, hole: { ...first.hole, id: `${first.hole.id}.refused` } }]
}

/**
 * The first place to one side of a refused hole, and within what it fixes, where it would not be refused; undefined if
 * there is none within reach, or while something that could refuse it there has no place yet.
 */
export function freeBeside(
  work: WallWork,
  want: WantedHole,
  towards: Direction,
  within: { readonly from: number; readonly to: number },
): Drilled | undefined {
  const settled = withPlaceSettled(work, want, [towards])
  if (!hasValue(settled.along)) return undefined
  const at = settled.along.value
  const tried = placesToTry([towards])
    .filter((by) => at + by >= within.from && at + by <= within.to)
    .map((by) => drilled(work, moved(settled, by)))
  return tried.find((d) => !d.wouldMove) ?? tried.find((d) => d.hole.verdict !== 'refused')
}

function placesToTry(towards: readonly Direction[]): readonly number[] {
  const out: number[] = []
  for (let by = STEP; by <= FURTHEST; by += STEP) out.push(...towards.map((direction) => direction * by))
  return out
}

function moved(want: WantedHole, by: number): WantedHole {
  const along = derive(
    'mm',
    { kind: 'geometry', why: 'moved along the wall to the first place out of what stood against it' },
    [want.along],
    (at) => (at as number) + by,
  )
  return { ...want, along }
}

function withPlaceSettled(work: WallWork, want: WantedHole, towards: readonly Direction[]): WantedHole {
  if (!hasValue(want.along)) return want
  const { from, missing } = whatCouldMoveIt(work, want.along.value, want, towards)
  const along: Figure = restingOn(want.along, from)
  if (missing.length === 0) return { ...want, along }
  const { unit, basis } = want.along
  return { ...want, along: { state: 'unknown', unit, basis, from: along.from, missing: sortedIds(missing) } }
}

/** A corner strip ends within this of where it is drawn, whatever its precision: further off it moves nothing. */
const MARGIN = 20

/** Facts that decide where a hole that may be moved ends up: the bands it could meet, and what makes some of them exist. */
export function whatCouldMoveIt(
  work: WallWork,
  at: number,
  { purpose, height }: Pick<WantedHole, 'purpose' | 'height'>,
  towards: readonly Direction[],
): { readonly from: readonly InputId[]; readonly missing: readonly InputId[] } {
  const low = at - (towards.includes(-1) ? FURTHEST : 0)
  const high = at + (towards.includes(1) ? FURTHEST : 0)
  const isNear = (b: Band) =>
    b.kind !== 'corner' ||
    b.left === null ||
    b.right === null ||
    (b.left - MARGIN <= high && b.right + MARGIN >= low)
  const counts = (b: Band) => (b.kind !== 'ceiling' || purpose !== 'base-bracket') && isNear(b)
  const bands = [...work.site.bands.filter(counts), ...work.site.deep]
  const doubts = work.doubts.filter(
    (d) => d.left === null || d.right === null || (d.left <= high && d.right >= low),
  )
  const hangsOnHeight = bands.some(isLimitedInHeight) || work.wall.openings.length > 0
  // Past the end of the wall it gives way as out of a band.
  const { length } = work.wall
  const isNearEnd = hasValue(length) && high > length.value
  const lacking = hangsOnHeight && height.state === 'unknown' ? height.missing : []
  return {
    from: [
      ...bands.flatMap((b) => b.from),
      ...doubts.flatMap((d) => d.from),
      ...(hangsOnHeight ? height.from : []),
      ...(isNearEnd ? length.from : []),
    ],
    missing: [...bands.flatMap((b) => b.unknownBecause), ...doubts.flatMap((d) => d.missing), ...lacking],
  }
}

/** Only the upright bands stop a hole at every height. */
function isLimitedInHeight({ kind }: Band): boolean {
  return kind !== 'accessory-vertical' && kind !== 'corner'
}
