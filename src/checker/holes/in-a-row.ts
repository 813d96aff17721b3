import { disagreement } from '../agree'
import { type Case, wallOf } from '../case'
import type { GivenRail, GivenStud } from '../given'
import { isKnown, less, type Measure, notKnown, plus, sum, work } from '../measure'
import type { UnitStretch } from '../positions'
import { fromLeft } from '../room'
import { isStudWall } from '../wall-make-up'
import { hookEdge } from './fixing-heights'
import { type ExpectedHole, isRefused, type Refusing, STEP, STEPS } from './hole'
import { carries, noggingHoles, usableStuds } from './in-timber'

/** Ends of a rail inside the run of its units, and the first fixings inside those ends; common practice. */
const RAIL_INSET = 20
const STUD_INSIDE_RAIL = 20
const RAIL_END = 50
/** Furthest from fixing to fixing where the maker's figure is not known; common practice. */
const USUAL_SPACING = 400

export function plateHoles(c: Case, at: UnitStretch): readonly ExpectedHole[] {
  const { unit } = at
  const { hangerIn, plateHoles: count, plateHolePitch, plateHoleBelow } = unit.hanging
  const n = count.value ?? 1
  const optional = wallOf(c, at.wall)?.construction === null
  const height = less(hookEdge(c, unit), plateHoleBelow)
  const centres = [
    ['left', sum(at.left, hangerIn)],
    ['right', less(at.right, hangerIn)],
  ] as const
  return centres.flatMap(([side, centre]) =>
    Array.from({ length: n }, (_, i): ExpectedHole => {
      const share = i - (n - 1) / 2
      const along = n === 1 ? centre : work([centre, plateHolePitch], (x = 0, pitch = 0) => x + share * pitch)
      const id = `plate.${unit.id}.${side}.${i + 1}`
      return { id, wall: at.wall, purpose: 'plate', along, height, stud: null, optional }
    }),
  )
}

/** From inside the leftmost unit to inside the rightmost one that hangs on it. */
export function railEnds(c: Case, rail: GivenRail): { readonly from: Measure; readonly to: Measure } {
  const units = rail.units.flatMap((id) => c.units.get(id) ?? [])
  if (units.length === 0)
    return { from: notKnown(`rails.${rail.id}.units`), to: notKnown(`rails.${rail.id}.units`) }
  const lefts = units.map((u) => u.left)
  const rights = units.map((u) => u.right)
  return {
    from: work(lefts, (...values) => Math.min(...values) + RAIL_INSET),
    to: work(rights, (...values) => Math.max(...values) - RAIL_INSET),
  }
}

export function railStuds(c: Case, rail: GivenRail): readonly GivenStud[] {
  const wall = wallOf(c, rail.wall)
  const { from, to } = railEnds(c, rail)
  if (wall === undefined || from.value === null || to.value === null) return []
  return usableStuds(wall, from.value + STUD_INSIDE_RAIL, to.value - STUD_INSIDE_RAIL)
}

export function railHoles(c: Case, rail: GivenRail, how: Refusing): readonly ExpectedHole[] {
  const wall = wallOf(c, rail.wall)
  const units = rail.units.flatMap((id) => c.units.get(id)?.unit ?? [])
  if (wall === undefined || units.length === 0) return []
  const heights = units.map((u) => less(hookEdge(c, u), u.hanging.plateHoleBelow))
  const height = work(heights, (first = 0) => first)
  const hole = (name: string, along: Measure, stud: string | null): ExpectedHole => {
    const id = `rail.${rail.id}.${name}`
    return { id, wall: wall.id, purpose: 'rail', along, height, stud, optional: wall.construction === null }
  }
  if (isStudWall(wall)) {
    return railStuds(c, rail).map((stud) => hole(stud.id, fromLeft(wall, stud.centre), stud.id))
  }
  const { from, to } = railEnds(c, rail)
  return inARow(c, from, to, rail.maxSpacing.value ?? USUAL_SPACING, how, (name, along) => ({
    ...hole(name, along, null),
    alongOpen: !isKnown(height),
  }))
}

/** Holes evenly from near one end to near the other, no further apart than allowed. */
function inARow(
  c: Case,
  from: Measure,
  to: Measure,
  apart: number,
  how: Refusing,
  hole: (name: string, along: Measure) => ExpectedHole,
): readonly ExpectedHole[] {
  if (from.value === null || to.value === null) return []
  const span = Math.max(0, to.value - from.value - 2 * RAIL_END)
  const bays = Math.max(1, Math.ceil(span / apart - 1e-9))
  return Array.from({ length: bays + 1 }, (_, i) =>
    hole(
      `${i + 1}`,
      work([from, to], (a = 0) => a + RAIL_END + (span * i) / bays),
    ),
  ).flatMap((own) => [own, ...besides(c, own, from.value ?? 0, to.value ?? 0, how)])
}

/** A cleat is fixed to the wall behind one unit as a rail is behind several, at its hook-on edge. */
export function cleatHoles(c: Case, at: UnitStretch, how: Refusing): readonly ExpectedHole[] {
  const wall = wallOf(c, at.wall)
  if (wall === undefined) return []
  const from = plus(at.left, RAIL_INSET)
  const to = plus(at.right, -RAIL_INSET)
  const common = {
    wall: wall.id,
    purpose: 'cleat',
    height: less(hookEdge(c, at.unit), at.unit.hanging.plateHoleBelow),
  }
  const optional = wall.construction === null
  const hole = (name: string, along: Measure, stud: string | null): ExpectedHole => ({
    ...common,
    id: `cleat.${at.unit.id}.${name}`,
    along,
    stud,
    optional,
    alongOpen: !isKnown(common.height),
  })
  if (!isStudWall(wall))
    return inARow(c, from, to, USUAL_SPACING, how, (name, along) => hole(name, along, null))
  if (from.value === null || to.value === null) return []
  const studs = usableStuds(wall, from.value + STUD_INSIDE_RAIL, to.value - STUD_INSIDE_RAIL)
    .filter((stud) => carries(stud, 'cleat'))
    .map((stud) => hole(stud.id, fromLeft(wall, stud.centre), stud.id))
  // Timber between the studs may serve it too.
  const between = noggingHoles(c, wall, at, 'cleat', 'cleat', common.height, studs)
  return [...studs, ...between.map((own) => ({ ...own, optional: true }))]
}

/** Beside a refused hole of a rail there may be others, 10 mm and more to its left and right, as far as the rail goes. */
function besides(
  c: Case,
  own: ExpectedHole,
  from: number,
  to: number,
  how: Refusing,
): readonly ExpectedHole[] {
  if (!isRefused(c, own.wall, own.along, own.height, how)) return []
  return ([-1, 1] as const).flatMap((side): readonly ExpectedHole[] => {
    const places = Array.from({ length: STEPS }, (_, i) => plus(own.along, side * STEP * (i + 1)))
    const id = `${own.id}-${side < 0 ? 'left' : 'right'}`
    const free = places.filter((place) => !isRefused(c, own.wall, place, own.height, how))
    // Edges of bands being good to a few mm only, the plan may go one step further than needed.
    const there = c.plan.holes.find((hole) => hole.id === id)?.along
    const along =
      free.slice(0, 2).find((place) => there === undefined || disagreement(there, place) === null) ?? free[0]
    if (along === undefined || (along.value ?? 0) < from || (along.value ?? 0) > to) return []
    return [{ ...own, id, along, optional: true, alongOpen: false }]
  })
}
