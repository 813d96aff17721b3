import { assumed, derive, type Figure, hasValue, restingOn, type ValueFigure } from '../figure'
import type { UnitId } from '../plan/types'
import type { FixingPurpose } from './choose-fixing'
import { type Drilled, drilled, type WantedHole } from './drill'
import { drilledOrMoved } from './move-inwards'
import { inStud } from './timber'
import type { WallWork } from './wall-work'

/** A fixing keeps this far inside the end of a rail where it goes into a stud, and starts this far in on masonry. */
const INSIDE_END = 20
const FIRST_IN = 50
const USUAL_SPACING = 400

/** A rail or cleat along a wall, fixed through a row of holes. */
export interface Row {
  /** Ids of its holes begin with this. */
  readonly name: string
  readonly purpose: FixingPurpose
  readonly for: readonly UnitId[]
  readonly from: Figure
  readonly to: Figure
  readonly holeHeight: Figure
  readonly standOff: Figure
  /** The maker's furthest fixing to fixing; may be unknown. */
  readonly maxSpacing: Figure
}

/** The maker's furthest spacing, or the usual one while it is not known. */
export function spacingOf(maxSpacing: Figure): ValueFigure {
  if (hasValue(maxSpacing)) return maxSpacing
  const why = 'rails and cleats on masonry are usually fixed every 400 mm'
  return assumed(USUAL_SPACING, 0, 'mm', maxSpacing.from, { kind: 'common-practice', why })
}

/**
 * The holes of a rail or cleat. In a stud wall one in each usable stud it crosses, well inside its ends. In masonry
 * evenly, no further apart than its maker allows, the first and last a little in from its ends; one that lands in a
 * band goes to the nearest free place either side, and to both where one would leave too long a span.
 */
export function rowFixings(work: WallWork, row: Row): readonly Drilled[] {
  const { from, to } = row
  if (!hasValue(from) || !hasValue(to)) return []
  if (work.kind === 'studs') return inStuds(work, row, from, to)
  return work.kind === 'masonry' ? inMasonry(work, row, from, to) : []
}

function wanted(row: Row, name: string, along: Figure): WantedHole {
  return {
    id: `${row.name}.${name}`,
    purpose: row.purpose,
    for: row.for,
    along,
    height: row.holeHeight,
    standOff: row.standOff,
  }
}

function inStuds(work: WallWork, row: Row, from: ValueFigure, to: ValueFigure): readonly Drilled[] {
  return work.studs.usable
    .filter(({ centre }) => centre.value >= from.value + INSIDE_END && centre.value <= to.value - INSIDE_END)
    .map((stud) => drilled(work, { ...wanted(row, stud.id, stud.centre), timber: inStud(work.wall, stud) }))
}

function inMasonry(work: WallWork, row: Row, from: ValueFigure, to: ValueFigure): readonly Drilled[] {
  const spacing = spacingOf(row.maxSpacing)
  const length = to.value - from.value
  const spans = Math.max(1, Math.ceil((length - 2 * FIRST_IN) / spacing.value - 1e-9))
  const places = Array.from({ length: spans + 1 }, (_, i) =>
    restingOn(evenly(from, to, i, spans), spacing.from),
  )
  return places.flatMap((along, i) => {
    const want = wanted(row, `${i + 1}`, along)
    const neighbours = [places[i - 1], places[i + 1]].map((p) =>
      p !== undefined && hasValue(p) ? p.value : null,
    )
    return placedBetween(work, want, neighbours, spacing.value)
  })
}

function evenly(from: Figure, to: Figure, index: number, spans: number): Figure {
  return derive(
    'mm',
    { kind: 'geometry', why: 'evenly along the rail, 50 mm in from either end' },
    [from, to],
    (a, b) => {
      const [start, end] = [(a as number) + FIRST_IN, (b as number) - FIRST_IN]
      return start + ((end - start) * index) / spans
    },
  )
}

/** One hole, moved if it must be; two, one on either side of what is in the way, where one would span too far. */
function placedBetween(
  work: WallWork,
  want: WantedHole,
  neighbours: readonly (number | null | undefined)[],
  furthest: number,
): readonly Drilled[] {
  const nearest = drilledOrMoved(work, want, [-1, 1])
  const at = nearest[0]?.hole.along
  if (at === undefined || !hasValue(at) || nearest.length === 1) return nearest
  const spans = neighbours.map((n) => (typeof n === 'number' ? Math.abs(at.value - n) : 0))
  if (Math.max(...spans) <= furthest) return nearest
  const [below] = drilledOrMoved(work, want, [-1])
  const [above] = drilledOrMoved(work, { ...want, id: `${want.id}-2` }, [1])
  const both = [below, above].filter((d): d is Drilled => d !== undefined && d.hole.verdict !== 'refused')
  return both.length < 2 ? nearest : [...both, ...nearest.slice(1)]
}
