import { assumed, derive, type Figure, hasValue, restingOn, type ValueFigure } from '../figure'
import type { UnitId } from '../plan/types'
import type { FixingPurpose } from './choose-fixing'
import { type Drilled, drilled, type WantedHole } from './drill'
import { freeBeside } from './move-inwards'
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
 * evenly, no further apart than its maker allows, the first and last a little in from its ends; for one that lands in a
 * band there is another at the nearest free place beside it, on both sides where one would leave too long a span.
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
    const neighbours = [places[i - 1], places[i + 1]].flatMap((p) =>
      p !== undefined && hasValue(p) ? [p.value] : [],
    )
    const first = drilled(work, want)
    return first.hole.verdict === 'refused'
      ? [first, ...inItsStead(work, want, { from: from.value, to: to.value }, neighbours, spacing.value)]
      : [first]
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

/** The nearest free place beside a refused one that the rail still covers; one on either side of it where one alone would span too far. */
function inItsStead(
  work: WallWork,
  want: WantedHole,
  rail: { readonly from: number; readonly to: number },
  neighbours: readonly number[],
  furthest: number,
): readonly Drilled[] {
  const left = freeBeside(work, { ...want, id: `${want.id}-left` }, -1, rail)
  const right = freeBeside(work, { ...want, id: `${want.id}-right` }, 1, rail)
  const both = [left, right].filter((d): d is Drilled => d !== undefined)
  const off = (d: Drilled) => Math.abs(placeOf(d.hole.along) - placeOf(want.along))
  const [nearest] = [...both].sort((a, b) => off(a) - off(b))
  if (nearest === undefined) return []
  const spans = neighbours.map((n) => Math.abs(placeOf(nearest.hole.along) - n))
  return Math.max(0, ...spans) <= furthest ? [nearest] : both
}

const placeOf = (along: Figure): number => (hasValue(along) ? along.value : 0)
