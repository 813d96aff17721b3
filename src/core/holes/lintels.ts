import { type Basis, type Figure, known, valueOf } from '../figure'
import { wallKind } from '../fixings/wall-kind'
import { factId } from '../kitchen/fact-id'
import type { Opening, Wall } from '../kitchen/schema'
import type { Band } from '../plan/types'
import type { Survey } from '../survey/survey'
import { band } from './band'
import type { Doubt } from './corner-strips'

/** How far a lintel runs on into the wall at each end: on masonry a bearing, in a framed wall the studs it stands on. */
const BEARING = 150
const FRAMED_BEARING = 100
/** Over an opening whose lintel nobody has entered, one is expected this far up. */
const LIKELY_HEIGHT = 300
const ON_FACE = known(0, 0, 'mm', [])

const basis: Basis = {
  kind: 'common-practice',
  why: 'a lintel bears about 150 mm on the wall at each end; a prestressed one must not be drilled in its tension zone, nor a steel without a design',
}
const framedBasis: Basis = {
  kind: 'common-practice',
  why: 'in a framed wall a lintel stands on one or two studs or a post, about 100 mm at most at each end; beyond them there is nothing of it',
}

/** While nobody knows what the wall is made of, the longer of the two. */
function bearingIn(wall: Wall): number {
  return wallKind(wall) === 'studs' ? FRAMED_BEARING : BEARING
}

/**
 * Where a lintel or a steel lies in the wall, its bearings included. Whether a hole in it is refused outright or only
 * asked about depends on what it is made of: see `lintelVerdict`.
 */
export function lintelBands(wall: Wall, survey: Pick<Survey, 'along' | 'height'>): readonly Band[] {
  const bearing = bearingIn(wall)
  return wall.lintels.map((lintel) => {
    const left = survey.along(wall.id, lintel.left)
    const right = survey.along(wall.id, lintel.right)
    return band({
      id: `lintel.${wall.id}.${lintel.id}`,
      wall: wall.id,
      kind: 'lintel',
      about: [lintel.id],
      left: { at: left, off: -bearing },
      right: { at: right, off: bearing },
      bottom: { at: survey.height(lintel.bottom, { wall: wall.id, along: left, out: ON_FACE }), off: 0 },
      top: { at: survey.height(lintel.top, { wall: wall.id, along: left, out: ON_FACE }), off: 0 },
      from: [
        factId('walls', wall.id, 'lintels', lintel.id, 'kind'),
        factId('walls', wall.id, 'construction'),
      ],
      basis: bearing === BEARING ? basis : framedBasis,
    })
  })
}

/** What a hole in this lintel is: timber and plain concrete may be drilled by those who know it, the rest may not. */
export function lintelVerdict(kind: Wall['lintels'][number]['kind']): 'refused' | 'ask' {
  return kind === 'timber' || kind === 'concrete' ? 'ask' : 'refused'
}

/** A rectangle on a wall, seen from inside; an open side is infinite. */
export interface Rectangle {
  /** One of its edges is not known and was taken as open: what lies in it is asked about, not refused. */
  readonly isUnsure?: boolean
  readonly id: string
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

const orElse = (figure: Figure, otherwise: number): number => valueOf(figure) ?? otherwise

/** Whatever its threshold, nothing is drilled under a door or an arch. */
const reachesFloor = ({ kind }: Opening): boolean => kind === 'door' || kind === 'arch'

/** Doors, windows, arches and hatches of a wall whose sides are known. A level that is not known counts as far away. */
export function openingsOn(wall: Wall, survey: Pick<Survey, 'along' | 'height'>): readonly Rectangle[] {
  return wall.openings.flatMap((opening): readonly Rectangle[] => {
    const left = survey.along(wall.id, opening.left)
    const [l, r] = [valueOf(left), valueOf(survey.along(wall.id, opening.right))]
    if (l === undefined || r === undefined) return []
    const at = { wall: wall.id, along: left, out: ON_FACE }
    const top = orElse(survey.height(opening.top, at), Number.POSITIVE_INFINITY)
    const bottom = reachesFloor(opening)
      ? Number.NEGATIVE_INFINITY
      : orElse(survey.height(opening.bottom, at), Number.NEGATIVE_INFINITY)
    const isUnsure =
      top === Number.POSITIVE_INFINITY || (!reachesFloor(opening) && bottom === Number.NEGATIVE_INFINITY)
    return [{ id: opening.id, left: l, right: r, bottom, top, isUnsure }]
  })
}

/**
 * Where a lintel must be though none was entered: over every opening something carries the wall. Left out where a
 * lintel that was entered lies over the same opening.
 */
export function likelyLintels(wall: Wall, survey: Pick<Survey, 'along' | 'height'>): readonly Rectangle[] {
  const entered = lintelBands(wall, survey)
  const bearing = bearingIn(wall)
  return openingsOn(wall, survey)
    .filter((opening) => Number.isFinite(opening.top))
    .filter((opening) => !entered.some((b) => liesOver(b, opening)))
    .map((opening) => ({
      id: opening.id,
      left: opening.left - bearing,
      right: opening.right + bearing,
      bottom: opening.top,
      top: opening.top + LIKELY_HEIGHT,
    }))
}

function liesOver(lintel: Band, opening: Rectangle): boolean {
  if (lintel.left === null || lintel.right === null || lintel.bottom === null) return false
  const overlaps = lintel.left <= opening.right && lintel.right >= opening.left
  return (
    overlaps && lintel.bottom >= opening.top - LIKELY_HEIGHT && lintel.bottom <= opening.top + LIKELY_HEIGHT
  )
}

/**
 * Openings decide where a hole beside them may go: their sides wherever it is, their levels only near them.
 */
export function openingDoubts(wall: Wall, survey: Pick<Survey, 'along' | 'height'>): readonly Doubt[] {
  const bearing = bearingIn(wall)
  return wall.openings.flatMap((opening): readonly Doubt[] => {
    const left = survey.along(wall.id, opening.left)
    const right = survey.along(wall.id, opening.right)
    const at = { wall: wall.id, along: left, out: ON_FACE }
    const sill = reachesFloor(opening) ? [] : [survey.height(opening.bottom, at)]
    return [
      doubt(wall, null, null, [left, right]),
      doubt(wall, reach(left, -bearing), reach(right, bearing), [...sill, survey.height(opening.top, at)]),
    ]
  })
}

function doubt(wall: Wall, left: number | null, right: number | null, figures: readonly Figure[]): Doubt {
  const from = figures.flatMap((f) => f.from)
  const missing = figures.flatMap((f) => (f.state === 'unknown' ? f.missing : []))
  return { wall: wall.id, left, right, from, missing }
}

function reach(figure: Figure, by: number): number | null {
  const at = valueOf(figure)
  return at === undefined ? null : at + by
}
