import { type Case, wallOf } from '../case'
import type { GivenStud, GivenWall } from '../given'
import { type Measure, work } from '../measure'
import type { UnitStretch } from '../positions'
import { fromLeft } from '../room'
import { isStudWall, isUsable } from '../wall-make-up'
import { secondHeight } from './fixing-heights'
import { type ExpectedHole, isRefused, type Refusing } from './hole'

/** Fixings keep off the edges of studs, and off each other in timber let in between them, mm; common practice. */
const EDGE_OF_STUD = 12
const NOGGING_IN = 60
/** A pilot is struck to 2 mm of its mark: a narrower piece of a stud cannot be aimed at, mm; common practice. */
const NARROWEST_AIM = 4

/** The fixings that are there for safety's sake go into timber; thin steel holds too little of a screw. */
const TIMBER_ONLY: ReadonlySet<string> = new Set(['second-fixing', 'tall-restraint', 'back-rail'])

export function carries(stud: GivenStud, purpose: string): boolean {
  return !TIMBER_ONLY.has(purpose) || stud.material !== 'steel'
}

/** Usable studs whose centre lies in a window, from left to right. */
export function usableStuds(wall: GivenWall, from: number, to: number): readonly GivenStud[] {
  const centre = (stud: GivenStud): number => fromLeft(wall, stud.centre).value ?? Number.NaN
  return wall.studs
    .filter((stud) => isUsable(stud) && centre(stud) >= from - 1e-6 && centre(stud) <= to + 1e-6)
    .sort((a, b) => centre(a) - centre(b))
}

export function window(at: UnitStretch, inside: number): { readonly from: Measure; readonly to: Measure } {
  const { board } = at.unit
  return {
    from: work([at.left, board], (left = 0, b = 0) => left + b + inside),
    to: work([at.right, board], (right = 0, b = 0) => right - b - inside),
  }
}

/** Two fixings into timber for every hung unit on a stud wall: studs behind it, or timber let in between them. */
export function secondHoles(c: Case, at: UnitStretch, how: Refusing): readonly ExpectedHole[] {
  const wall = wallOf(c, at.wall)
  if (wall === undefined || !isStudWall(wall)) return []
  const height = secondHeight(c, at.unit)
  const inStuds = studHoles(c, wall, at, 'second', 'second-fixing', height, how)
  const sure = inStuds.filter((hole) => !hole.optional)
  // Screwed through its back rail, a unit has its two fixings already.
  const optional = at.unit.stands !== 'plates' && at.unit.stands !== 'rail'
  const centred = [...inStuds, ...noggingHoles(c, wall, at, 'second', 'second-fixing', height, sure)]
  const beside = besideHoles(c, wall, at, 'second', 'second-fixing', height, how, centred)
  return [...centred, ...beside].map((hole) => ({
    ...hole,
    optional: hole.optional || optional,
  }))
}

export function noggingHoles(
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
    const middle = c.levels.onWall(nogging.centre, wall.id, fromLeft(wall, nogging.from)).value
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
export function studHoles(
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
    return free.includes(stud) ? [] : passedOver(hole)
  })
}

const passedOver = (hole: ExpectedHole): readonly ExpectedHole[] => [
  { ...hole, optional: true },
  { ...hole, id: `${hole.id}.refused`, optional: true },
]

/**
 * The place along where a screw meets a stud that stands under a side of the unit: half-way over what is left of the
 * stud, without its edges, clear of the panel. Null: its middle is behind the unit, or too little is left of it.
 */
export function metBeside(wall: GivenWall, stud: GivenStud, at: UnitStretch): Measure | null {
  const middle = fromLeft(wall, stud.centre)
  const inside = window(at, EDGE_OF_STUD)
  const [x, low, high] = [middle.value, inside.from.value, inside.to.value]
  if (x === null || low === null || high === null || (x > low - 1e-6 && x < high + 1e-6)) return null
  const towards = x < low ? 1 : -1
  const side = towards === 1 ? inside.from : inside.to
  const edge = work([middle, stud.width], (m = 0, width = 0) => m + towards * (width / 2 - EDGE_OF_STUD))
  const left = work([edge, side], (e = 0, s = 0) => towards * (e - s)).value ?? 0
  return left < NARROWEST_AIM - 1e-6 ? null : work([edge, side], (e = 0, s = 0) => (e + s) / 2)
}

/** Where `have` are fewer than the two that a hung unit wants: studs under its sides make up for it. */
export function besideHoles(
  c: Case,
  wall: GivenWall,
  at: UnitStretch,
  prefix: string,
  purpose: string,
  height: Measure,
  how: Refusing,
  have: readonly ExpectedHole[],
): readonly ExpectedHole[] {
  const wanting = 2 - have.filter((hole) => !hole.optional).length
  if (wanting <= 0) return []
  const holes = usableStuds(wall, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)
    .filter((stud) => carries(stud, purpose))
    .flatMap((stud): readonly ExpectedHole[] => {
      const along = metBeside(wall, stud, at)
      const id = `${prefix}.${at.unit.id}.${stud.id}`
      return along === null
        ? []
        : [{ id, wall: wall.id, purpose, along, height, stud: stud.id, optional: false }]
    })
  const isBarred = (hole: ExpectedHole) => isRefused(c, wall.id, hole.along, height, how)
  const free = holes.filter((hole) => !isBarred(hole)).slice(0, wanting)
  return [...free, ...holes.filter(isBarred).flatMap(passedOver)]
}

/** Where no stud takes the restraint of a tall, the first of the places over timber let in at its height does. */
export function restraintBetweenStuds(
  c: Case,
  wall: GivenWall,
  at: UnitStretch,
  prefix: string,
  height: Measure,
  inStuds: readonly ExpectedHole[],
): readonly ExpectedHole[] {
  if (inStuds.some((hole) => !hole.optional)) return []
  return noggingHoles(c, wall, at, prefix, 'tall-restraint', height, []).slice(0, 1)
}
