import { hits } from './bands'
import { type Case, topOf, underside, wallOf } from './case'
import type { GivenRail, GivenStud, GivenUnit, GivenWall } from './given'
import { isKnown, less, type Measure, notKnown, plus, sum, work } from './measure'
import { groupOf, isHung, type UnitStretch } from './positions'
import { fromLeft } from './room'
import { isStudWall, isUsable } from './wall-make-up'

/** Where the rules of the trade put a hole, worked out from the kitchen alone. */
export interface ExpectedHole {
  readonly id: string
  readonly wall: string
  readonly purpose: string
  readonly along: Measure
  readonly height: Measure
  readonly stud: string | null
  /** It may be left out when the rule allows another: a refused first choice. */
  readonly optional: boolean
  /** Its place along may also be left open. */
  readonly alongOpen?: boolean
}

/** Ends of a rail inside the run of its units, and the first fixings inside those ends; common practice. */
const RAIL_INSET = 20
const STUD_INSIDE_RAIL = 20
const RAIL_END = 50
const USUAL_SPACING = 400
const EDGE_OF_STUD = 12
const BRACKET_IN = 30
const NOGGING_IN = 60
const BRACKET_BELOW_TOP = 40
const RESTRAINT_BELOW_TOP = 60
const STEP = 10
const STEPS = 12

/**
 * Holes of one purpose on one unit or rail. Where the rules leave open whether a place lies in a band (an end of a wall
 * that may be a corner, a plate nobody measured, an edge that is only good to a few mm), there are several ways they may
 * come out; one of them must.
 */
export interface HoleGroup {
  /** What the ids of all its holes begin with. */
  readonly prefix: string
  readonly ways: readonly (() => readonly (readonly ExpectedHole[])[])[]
}

export function expectedHoles(c: Case): readonly HoleGroup[] {
  const units = [...c.units.values()]
  const moving = (prefix: string, places: (how: Refusing) => readonly ExpectedHole[]): HoleGroup => ({
    prefix,
    ways: REFUSING.map((how) => () => withOpen(c, places(how))),
  })
  return [
    ...units
      .filter((u) => u.unit.stands === 'plates')
      .map((u) => ({ prefix: `plate.${u.unit.id}.`, ways: [() => [plateHoles(c, u)]] })),
    ...c.given.rails.map((rail) => moving(`rail.${rail.id}.`, (how) => railHoles(c, rail, how))),
    ...units
      .filter((u) => isHung(u.unit))
      .map((u) => moving(`second.${u.unit.id}.`, (how) => secondHoles(c, u, how))),
    ...units.filter((u) => hasBrackets(u.unit)).flatMap((u) => bracketGroups(c, u, moving)),
    ...units
      .filter((u) => u.unit.stands === 'back-rail-screws')
      .flatMap((u) => sideGroups(c, u, 'back-rail', backRailMiddle(c, u.unit), moving)),
    ...units
      .filter((u) => u.unit.stands === 'cleat')
      .map((u) => moving(`cleat.${u.unit.id}.`, (how) => cleatHoles(c, u, how))),
  ]
}

/** A unit that too little to screw into stands behind, and the fixing it is needed for. */
export interface TimberNeed {
  readonly unit: string
  readonly purpose: 'second-fixing' | 'tall-restraint' | 'back-rail' | 'cleat'
}

export function timberNeeded(c: Case): readonly TimberNeed[] {
  return [...c.units.values()].flatMap((at): readonly TimberNeed[] => {
    const wall = wallOf(c, at.wall)
    const need = fixedBack(c, at)
    if (wall === undefined || need === null || !isStudWall(wall)) return []
    if (!isKnown(at.left) || !isKnown(at.right) || !isKnown(at.unit.board)) return []
    const enough = need.holes.filter((hole) => !hole.optional).length >= need.atLeast
    // Timber of the file may be at the right height, when that is not known.
    const open = !isKnown(need.height) && wall.noggings.length > 0
    return enough || open ? [] : [{ unit: at.unit.id, purpose: need.purpose }]
  })
}

/** The holes by which a unit is held into timber, and how many it takes: one holds a tall back, two hold a hung unit up. */
function fixedBack(
  c: Case,
  at: UnitStretch,
):
  | (TimberNeed & {
      readonly height: Measure
      readonly holes: readonly ExpectedHole[]
      readonly atLeast: number
    })
  | null {
  const unit = at.unit.id
  const wall = wallOf(c, at.wall)
  if (wall === undefined) return null
  if (groupOf(at.unit) === 'tall') {
    const height = fixingHeight(c, at.unit)
    const holes = studHoles(c, wall, at, '', 'tall-restraint', height, SURELY)
    return { unit, purpose: 'tall-restraint', height, holes, atLeast: 1 }
  }
  switch (at.unit.stands) {
    case 'plates':
    case 'rail':
      return {
        unit,
        purpose: 'second-fixing',
        height: secondHeight(c, at.unit),
        holes: secondHoles(c, at, SURELY),
        atLeast: 2,
      }
    case 'back-rail-screws': {
      const height = backRailMiddle(c, at.unit)
      const inStuds = studHoles(c, wall, at, '', 'back-rail', height, SURELY)
      const sure = inStuds.filter((hole) => !hole.optional)
      const between = noggingHoles(c, wall, at, '', 'back-rail', height, sure)
      return { unit, purpose: 'back-rail', height, holes: [...sure, ...between], atLeast: 2 }
    }
    case 'cleat': {
      const height = less(hookEdge(c, at.unit), at.unit.hanging.plateHoleBelow)
      return { unit, purpose: 'cleat', height, holes: cleatHoles(c, at, SURELY), atLeast: 2 }
    }
    default:
      return null
  }
}

/**
 * Whether a hole gives way only to bands that are surely there or also to those that may be, and whether it keeps the
 * precision of a band's edges off it.
 */
interface Refusing {
  /** Bands that may be there and count: none, those at the ends of the wall, or all. */
  readonly perhaps: 'none' | 'ends' | 'all'
  readonly margin: number
}
const SURELY: Refusing = { perhaps: 'none', margin: 0 }
/** Edges of bands and places of holes together are good to a few mm; places are 10 mm apart. */
const EDGES_GOOD_TO = [0, 2, 4, 6, 8, 10, 12, 14]
const REFUSING: readonly Refusing[] = (['none', 'ends', 'all'] as const).flatMap((perhaps) =>
  EDGES_GOOD_TO.map((margin) => ({ perhaps, margin })),
)

/** The fixings that are there for safety's sake go into timber; thin steel holds too little of a screw. */
const TIMBER_ONLY: ReadonlySet<string> = new Set(['second-fixing', 'tall-restraint', 'back-rail'])

/** On a wall where the place of something is not known, where a hole can go need not be known either. */
function withOpen(c: Case, holes: readonly ExpectedHole[]): readonly (readonly ExpectedHole[])[] {
  const wall = holes[0]?.wall ?? ''
  if (c.bands.get(wall)?.unsure !== true) return [holes]
  const open = holes.map((h) => ({
    ...h,
    along: notKnown(`walls.${wall}`),
    optional: h.id.endsWith('.refused'),
  }))
  return [holes, open]
}

/** Base units are fixed back by brackets and talls restrained; an island has no wall to be fixed to. */
export function hasBrackets(unit: GivenUnit): boolean {
  return !isHung(unit) && unit.kind !== 'island' && (groupOf(unit) === 'base' || groupOf(unit) === 'tall')
}

/** Hook-on edge of plate or rail. */
export function hookEdge(c: Case, unit: GivenUnit): Measure {
  return less(topOf(c, unit), unit.hanging.plateBelowTop)
}

function plateHoles(c: Case, at: UnitStretch): readonly ExpectedHole[] {
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

function railHoles(c: Case, rail: GivenRail, how: Refusing): readonly ExpectedHole[] {
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
function cleatHoles(c: Case, at: UnitStretch, how: Refusing): readonly ExpectedHole[] {
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
  return [...studs, ...noggingHoles(c, wall, at, 'cleat', 'cleat', common.height, studs)]
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
    const along = places.find((place) => !isRefused(c, own.wall, place, own.height, how))
    if (along === undefined || (along.value ?? 0) < from || (along.value ?? 0) > to) return []
    return [
      { ...own, id: `${own.id}-${side < 0 ? 'left' : 'right'}`, along, optional: true, alongOpen: false },
    ]
  })
}

function carries(stud: GivenStud, purpose: string): boolean {
  return !TIMBER_ONLY.has(purpose) || stud.material !== 'steel'
}

/** Usable studs whose centre lies in a window, from left to right. */
function usableStuds(wall: GivenWall, from: number, to: number): readonly GivenStud[] {
  const centre = (stud: GivenStud): number => fromLeft(wall, stud.centre).value ?? Number.NaN
  return wall.studs
    .filter((stud) => isUsable(stud) && centre(stud) >= from - 1e-6 && centre(stud) <= to + 1e-6)
    .sort((a, b) => centre(a) - centre(b))
}

/** Middle of the rail behind which a hung unit gets its second fixings: the lower rail, or else the back rail. */
export function secondHeight(c: Case, unit: GivenUnit): Measure {
  const low = work(
    [underside(c, unit.id), unit.bottomRail.edge, unit.bottomRail.height],
    (z = 0, up = 0, h = 0) => z + up + h / 2,
  )
  if (isKnown(unit.bottomRail.edge) && isKnown(unit.bottomRail.height)) return low
  return backRailMiddle(c, unit)
}

function backRailMiddle(c: Case, unit: GivenUnit): Measure {
  return work(
    [topOf(c, unit), unit.backRail.edge, unit.backRail.height],
    (top = 0, down = 0, h = 0) => top - down - h / 2,
  )
}

function window(at: UnitStretch, inside: number): { readonly from: Measure; readonly to: Measure } {
  const { board } = at.unit
  return {
    from: work([at.left, board], (left = 0, b = 0) => left + b + inside),
    to: work([at.right, board], (right = 0, b = 0) => right - b - inside),
  }
}

/** Two fixings into timber for every hung unit on a stud wall: studs behind it, or timber let in between them. */
function secondHoles(c: Case, at: UnitStretch, how: Refusing): readonly ExpectedHole[] {
  const wall = wallOf(c, at.wall)
  if (wall === undefined || !isStudWall(wall)) return []
  const height = secondHeight(c, at.unit)
  const inStuds = studHoles(c, wall, at, 'second', 'second-fixing', height, how)
  const sure = inStuds.filter((hole) => !hole.optional)
  // Screwed through its back rail, a unit has its two fixings already.
  const optional = at.unit.stands !== 'plates' && at.unit.stands !== 'rail'
  return [...inStuds, ...noggingHoles(c, wall, at, 'second', 'second-fixing', height, sure)].map((hole) => ({
    ...hole,
    optional: hole.optional || optional,
  }))
}

function noggingHoles(
  c: Case,
  wall: GivenWall,
  at: UnitStretch,
  prefix: string,
  purpose: string,
  height: Measure,
  inStuds: readonly ExpectedHole[],
): readonly ExpectedHole[] {
  const { from, to } = window(at, NOGGING_IN)
  const level = height.value
  if (inStuds.length >= 2 || from.value === null || to.value === null || level === null) return []
  for (const nogging of wall.noggings) {
    const left = fromLeft(wall, nogging.from).value
    const right = fromLeft(wall, nogging.to).value
    const middle = c.levels.of(nogging.centre, null).value
    const tall = nogging.depth.value
    if (left === null || right === null || middle === null || tall === null) continue
    if (Math.abs(middle - level) > tall / 2) continue
    const taken = inStuds.map((hole) => hole.along.value ?? 0)
    const points: Measure[] = []
    for (const point of [from, to]) {
      const x = point.value ?? 0
      const clear = [...taken, ...points.map((p) => p.value ?? 0)].every((t) => Math.abs(t - x) >= NOGGING_IN)
      if (x >= left && x <= right && clear && taken.length + points.length < 2) points.push(point)
    }
    if (points.length === 0) continue
    return points.map((along, i): ExpectedHole => {
      const id = `${prefix}.${at.unit.id}.${nogging.id}-${i + 1}`
      return { id, wall: wall.id, purpose, along, height, stud: null, optional: false }
    })
  }
  return []
}

/**
 * Leftmost and rightmost usable stud behind a unit that is not refused, passing inwards over refused ones; those passed
 * over may stand in the plan as refused.
 */
function studHoles(
  c: Case,
  wall: GivenWall,
  at: UnitStretch,
  prefix: string,
  purpose: string,
  height: Measure,
  how: Refusing,
): readonly ExpectedHole[] {
  const { from, to } = window(at, EDGE_OF_STUD)
  if (from.value === null || to.value === null) return []
  const studs = usableStuds(wall, from.value, to.value).filter((s) => carries(s, purpose))
  const free = studs.filter((stud) => !isRefused(c, wall.id, fromLeft(wall, stud.centre), height, how))
  const chosen = new Set([free[0]?.id, free.at(-1)?.id])
  return studs.flatMap((stud): readonly ExpectedHole[] => {
    const along = fromLeft(wall, stud.centre)
    const id = `${prefix}.${at.unit.id}.${stud.id}`
    const hole = { id, wall: wall.id, purpose, along, height, stud: stud.id, optional: false }
    if (chosen.has(stud.id)) return [hole]
    if (free.includes(stud)) return []
    return [
      { ...hole, optional: true },
      { ...hole, id: `${id}.refused`, optional: true },
    ]
  })
}

/** Height of base brackets and tall restraints: in the back rail where there is one, or a little below the top. */
function fixingHeight(c: Case, unit: GivenUnit): Measure {
  const railed = isKnown(unit.backRail.edge) && isKnown(unit.backRail.height)
  const below = groupOf(unit) === 'tall' ? RESTRAINT_BELOW_TOP : BRACKET_BELOW_TOP
  return railed ? backRailMiddle(c, unit) : plus(topOf(c, unit), -below)
}

/** Base brackets and the restraint of a tall. */
function bracketGroups(
  c: Case,
  at: UnitStretch,
  moving: (prefix: string, places: (how: Refusing) => readonly ExpectedHole[]) => HoleGroup,
): readonly HoleGroup[] {
  const purpose = groupOf(at.unit) === 'tall' ? 'tall-restraint' : 'base-bracket'
  return sideGroups(c, at, purpose, fixingHeight(c, at.unit), moving)
}

/**
 * Two fixings near the sides of a unit: on masonry a bracket's width in from each, where each side gives way by itself; on
 * studs in the outermost ones, chosen together.
 */
function sideGroups(
  c: Case,
  at: UnitStretch,
  purpose: string,
  height: Measure,
  moving: (prefix: string, places: (how: Refusing) => readonly ExpectedHole[]) => HoleGroup,
): readonly HoleGroup[] {
  const wall = wallOf(c, at.wall)
  if (wall === undefined) return []
  const prefix = `${purpose}.${at.unit.id}.`
  if (isStudWall(wall)) {
    const open = at.unit.stands === null
    return [
      moving(prefix, (how) => {
        const inStuds = studHoles(c, wall, at, purpose, purpose, height, how)
        const sure = inStuds.filter((hole) => !hole.optional)
        const between =
          purpose === 'back-rail' ? noggingHoles(c, wall, at, purpose, purpose, height, sure) : []
        return [...inStuds, ...between].map((hole) => ({ ...hole, optional: hole.optional || open }))
      }),
    ]
  }
  const { from, to } = window(at, BRACKET_IN)
  // A wall nobody knows the make-up of is not drilled to find out, nor for a unit nobody knows how it stands.
  const optional = wall.construction === null || at.unit.stands === null
  const side = (name: string, first: Measure, inwards: 1 | -1): HoleGroup =>
    moving(`${prefix}${name}`, (how) =>
      steppedHole(c, wall.id, purpose, `${prefix}${name}`, first, inwards, height, how).map((hole) => ({
        ...hole,
        optional: hole.optional || optional,
      })),
    )
  return [side('left', from, 1), side('right', to, -1)]
}

/** A bracket may move towards the middle, 10 mm at a time, out of a band it would fall in. */
function steppedHole(
  c: Case,
  wall: string,
  purpose: string,
  id: string,
  first: Measure,
  inwards: 1 | -1,
  height: Measure,
  how: Refusing,
): readonly ExpectedHole[] {
  const hole = { id, wall, purpose, along: first, height, stud: null, optional: false }
  // Whether it has to move is not known before its height is.
  if (!isKnown(height)) return [{ ...hole, alongOpen: true }]
  if (!isRefused(c, wall, first, height, how)) return [hole]
  const places = Array.from({ length: STEPS }, (_, i) => plus(first, inwards * STEP * (i + 1)))
  const moved = places.find((along) => !isRefused(c, wall, along, height, how))
  // A first choice that is only too near an edge need not be told of.
  const refused = { ...hole, id: `${id}.refused`, optional: !isRefused(c, wall, first, height) }
  if (moved !== undefined) return [refused, { ...hole, along: moved }]
  // Nowhere to go: the first choice stands in the list as refused, under either name.
  return [
    { ...refused, optional: true },
    { ...hole, optional: true },
  ]
}

/** A place in a band no hole may lie in. */
export function isRefused(
  c: Case,
  wall: string,
  along: Measure,
  height: Measure,
  how: Refusing = SURELY,
): boolean {
  if (along.value === null || height.value === null) return false
  const bands = (c.bands.get(wall)?.bands ?? []).filter(
    (band) =>
      band.weight === 'refuse' ||
      (band.weight === 'either' &&
        (how.perhaps === 'all' || (how.perhaps === 'ends' && band.kind === 'corner'))),
  )
  return hits(bands, along.value, height.value, how.margin).length > 0
}
