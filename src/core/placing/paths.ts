import { quantise } from '../figure'
import { type Message, message } from '../message'
import type { PlacingPath, PlanPoint, UnitId } from '../plan/types'
import { blockersOf, judgeRoute, type Mover, refusalOf } from './judge'
import { type Body, bodiesOf, type PlacedUnit, standUpWayOf } from './placed'
import { routesTo } from './routes'
import { CONTACT, extentsMeet, overlapOf } from './solid'
import { findStandUp } from './standing'
import {
  type FixedThing,
  fixedCuts,
  fixedInTheWay,
  noSlack,
  type Room,
  type Slack,
  type Surroundings,
  surroundingsOf,
  type WallsKnown,
} from './surroundings'
import type { Side } from './sweep'

/** Which ways each unit could come to its place, and which other units would be in its way on each. */

export type { PlacedUnit } from './placed'
export type { Room } from './surroundings'

export interface PathOptions {
  /** Where the user lets units be set down first, if said. */
  readonly stagingHint?: PlanPoint | null
  /**
   * How deep a unit may cut into something fixed where it ends up and still be brought there, mm; 0 if left out. A wall
   * measured a little out of square cuts many a corner; that it does is in `overlaps`, for a finding of its own.
   */
  readonly misfit?: number
}

/** A unit that cannot come in, or be stood up, because of fixed things alone: no order of work would help. */
export interface Trapped {
  readonly unit: UnitId
  /** `in-place`: it does not fit where it is to stand; `on-the-way`: there is no way to it. */
  readonly where: 'in-place' | 'on-the-way'
  readonly say: Message
  /** What was met first from each direction, or over each side, tried. */
  readonly inTheWay: readonly { readonly from: string; readonly thing: FixedThing }[]
}

/** Two things that are in one another where they end up. */
export interface Overlap {
  readonly unit: UnitId
  readonly with: { readonly kind: 'unit'; readonly id: UnitId } | FixedThing
  /** By the least push that would part them, mm. */
  readonly by: number
}

/** A unit that would stand in the floor, as that is guessed past its readings. */
export interface GuessedFloor {
  readonly unit: UnitId
  /** How far its underside lies under the floor at most, mm. */
  readonly by: number
}

export interface CandidatePaths {
  /**
   * Best first. A way whose blockers include all those of a better one is left out: whenever it is open so is the
   * better one. So one way alone, blocked by nothing, is the usual answer.
   */
  readonly candidates: ReadonlyMap<UnitId, readonly PlacingPath[]>
  readonly trapped: readonly Trapped[]
  /** Tall units that nothing lets be stood up in this room; their candidates bring them in upright. */
  readonly notStoodUp: readonly Trapped[]
  readonly overlaps: readonly Overlap[]
  readonly guessedFloor: readonly GuessedFloor[]
  readonly walls: WallsKnown
  /** What has to be said of the whole: walls that were not looked at. */
  readonly say: readonly Message[]
}

/** Kept for each unit at most. */
const MOST = 8

/**
 * Candidate paths of every unit with a body. Each one lies inside the room, clear of obstacles, under the ceiling and
 * over the floor, to within contact (0.1 mm); each names the units that would be in its way. See `judge.ts` for what
 * clearance means, `routes.ts` for the ways tried.
 */
export function candidatePaths(
  placed: readonly PlacedUnit[],
  room: Room,
  options: PathOptions = {},
): CandidatePaths {
  const around = surroundingsOf(room)
  const bodies = bodiesOf([...placed].sort((a, b) => (a.unit < b.unit ? -1 : a.unit > b.unit ? 1 : 0)))
  const pairs = overlappingUnits(bodies)
  const candidates = new Map<UnitId, readonly PlacingPath[]>()
  const trapped: Trapped[] = []
  const notStoodUp: Trapped[] = []
  const overlaps: Overlap[] = [...pairs]
  const guessedFloor: GuessedFloor[] = []
  for (const body of bodies) {
    const stand = fitInPlace(body, around, options.misfit ?? 0)
    overlaps.push(...stand.overlaps)
    if (stand.guessed > 0) guessedFloor.push({ unit: body.placed.unit, by: quantise(stand.guessed) })
    const mover = moverOf(body, bodies, pairs, stand)
    const answer = stand.trapped === null ? waysInto(mover, around, options.stagingHint ?? null) : null
    if (stand.trapped !== null) trapped.push(stand.trapped)
    if (answer?.trapped) trapped.push(answer.trapped)
    if (answer?.notStoodUp) notStoodUp.push(answer.notStoodUp)
    candidates.set(body.placed.unit, answer?.paths ?? [])
  }
  return {
    candidates,
    trapped,
    notStoodUp,
    overlaps,
    guessedFloor,
    walls: around.walls,
    say: wallsSaid(around),
  }
}

function wallsSaid({ walls }: Surroundings): readonly Message[] {
  return walls === 'outline' ? [] : [message(`placing.walls.${walls}`)]
}

function moverOf(
  body: Body,
  bodies: readonly Body[],
  pairs: readonly Overlap[],
  { slack, underCeiling }: Pick<InPlace, 'slack' | 'underCeiling'>,
): Mover {
  const { unit } = body.placed
  const inIt = new Set(
    pairs.flatMap((pair) => (pair.unit === unit ? [pair.with.id] : pair.with.id === unit ? [pair.unit] : [])),
  )
  const others = bodies.filter((other) => other !== body && !inIt.has(other.placed.unit))
  return { body, others, slack, underCeiling, slices: new Map() }
}

/** A unit among those that already stand, for looking at a path it has. Undefined when it is not there or has no body. */
function moverFor(path: PlacingPath, placed: readonly PlacedUnit[]): Mover | undefined {
  const bodies = bodiesOf(placed)
  const body = bodies.find((one) => one.placed.unit === path.unit)
  if (body === undefined) return undefined
  return moverOf(body, bodies, overlappingUnits(bodies), { slack: noSlack, underCeiling: true })
}

/** What fixed thing of a room is in the way of a path, if any: for looking again at a path in a room that has changed. */
export function pathRefusedBy(path: PlacingPath, placed: PlacedUnit, room: Room): FixedThing | null {
  const mover = moverFor(path, [placed])
  return mover === undefined ? null : refusalOf(mover, path.segments, surroundingsOf(room))
}

/** One unit in the way of one part of a path: of the tilting floor, or of the way in. */
export interface InTheWay {
  readonly unit: UnitId
  readonly during: 'stand-up' | 'move'
}

/** Which of the placed units would be in the way of which part of a path, in its order, ids rising. */
export function unitsInTheWay(path: PlacingPath, placed: readonly PlacedUnit[]): readonly InTheWay[] {
  const mover = moverFor(path, placed)
  if (mover === undefined) return []
  return (['stand-up', 'move'] as const).flatMap((during) =>
    blockersOf(
      mover,
      path.segments.filter((segment) => segment.kind === during),
    ).map((unit) => ({ unit, during })),
  )
}

// ------------------------------------------------------------------------------------------------ where it ends up

function overlappingUnits(bodies: readonly Body[]): readonly Overlap[] {
  return bodies.flatMap((a, i) =>
    bodies.slice(i + 1).flatMap((b) => {
      const by = deepest(a, b)
      return by > CONTACT
        ? [{ unit: a.placed.unit, with: { kind: 'unit' as const, id: b.placed.unit }, by: quantise(by) }]
        : []
    }),
  )
}

function deepest(a: Body, b: Body): number {
  let most = 0
  for (const p of a.inPlace)
    for (const q of b.inPlace) if (extentsMeet(p, q)) most = Math.max(most, overlapOf(p, q))
  return most
}

interface InPlace {
  readonly slack: Slack
  readonly underCeiling: boolean
  readonly overlaps: readonly Overlap[]
  readonly trapped: Trapped | null
  /** How far it stands in floor that nobody has read, mm; 0: it does not. */
  readonly guessed: number
}

/** Floor readings are good to about this, mm: a unit no deeper in the floor stands on it. Common practice. */
const IN_FLOOR = 0.9

/** Whether it fits where it is to stand, what it cuts into there, and how far that is let pass. */
function fitInPlace(body: Body, around: Surroundings, misfit: number): InPlace {
  const hit = body.inPlace.some((prism) => fixedInTheWay(around, prism) !== null)
  const over = overCeiling(body, around)
  const under = underFloor(body, around)
  const { guessed } = under
  if (!hit && over <= CONTACT && under.read <= IN_FLOOR)
    return { slack: noSlack, underCeiling: true, overlaps: [], trapped: null, guessed }
  const cuts = deepestCuts(body, around)
  const slack = new Map(
    [...cuts].filter(([, cut]) => cut.by <= misfit).map(([id, cut]) => [id, cut.by + CONTACT]),
  )
  const overlaps = [
    ...cuts.values(),
    ...(over > CONTACT ? [{ thing: CEILING, by: over }] : []),
    ...(under.read > IN_FLOOR ? [{ thing: FLOOR, by: under.read }] : []),
  ].map(({ thing, by }) => ({ unit: body.placed.unit, with: thing, by: quantise(by) }))
  const blocking = body.inPlace.flatMap((prism) => fixedInTheWay(around, prism, slack) ?? [])[0]
  const tooHigh = over > Math.max(misfit, CONTACT) ? CEILING : undefined
  const tooLow = under.read > Math.max(misfit, IN_FLOOR) ? FLOOR : undefined
  const thing = blocking ?? tooHigh ?? tooLow
  const trapped = thing === undefined ? null : doesNotFit(body, thing, overlaps)
  return { slack, underCeiling: over <= CONTACT, overlaps, trapped, guessed }
}

const CEILING: FixedThing = { kind: 'ceiling', id: 'ceiling' }
const FLOOR: FixedThing = { kind: 'floor', id: 'floor' }

/** How far it stands in the floor: where that was read, and, deeper than that, where it is guessed. */
function underFloor(body: Body, { room }: Surroundings): { readonly read: number; readonly guessed: number } {
  const readUnder = room.floorReadUnder ?? room.floorHighUnder
  const deepest = (floorUnder: Room['floorHighUnder']) =>
    body.inPlace.reduce((most, prism) => {
      const floor = floorUnder(prism.polygon)
      return floor === null ? most : Math.max(most, floor - prism.bottom)
    }, 0)
  const [read, all] = [deepest(readUnder), deepest(room.floorHighUnder)]
  return { read, guessed: all > IN_FLOOR && all > read + CONTACT ? all : 0 }
}

function overCeiling(body: Body, around: Surroundings): number {
  return body.inPlace.reduce((most, prism) => {
    const ceiling = around.room.ceilingLowUnder(prism.polygon)
    return ceiling === null ? most : Math.max(most, prism.top - ceiling)
  }, 0)
}

function deepestCuts(
  body: Body,
  around: Surroundings,
): ReadonlyMap<string, { readonly thing: FixedThing; readonly by: number }> {
  const cuts = new Map<string, { readonly thing: FixedThing; readonly by: number }>()
  for (const cut of body.inPlace.flatMap((prism) => fixedCuts(around, prism))) {
    if (cut.by > (cuts.get(cut.thing.id)?.by ?? 0)) cuts.set(cut.thing.id, cut)
  }
  return cuts
}

function doesNotFit(body: Body, thing: FixedThing, overlaps: readonly Overlap[]): Trapped {
  const { unit } = body.placed
  const by = overlaps.find((overlap) => overlap.with.id === thing.id)?.by
  const say =
    by === undefined
      ? message('placing.outside-room', { unit, thing: thing.id })
      : message('placing.no-room-in-place', { unit, thing: thing.id, by })
  return { unit, where: 'in-place', say, inTheWay: [{ from: 'in-place', thing }] }
}

// ------------------------------------------------------------------------------------------------------ ways to it

interface Answer {
  readonly paths: readonly PlacingPath[]
  readonly trapped: Trapped | null
  readonly notStoodUp: Trapped | null
}

function waysInto(mover: Mover, around: Surroundings, hint: PlanPoint | null): Answer {
  const { unit } = mover.body.placed
  const way = standUpWayOf(mover.body.placed)
  if (way === null) return carriedIn(mover, around, hint)
  const { found, refused } = findStandUp(mover, around, hint)
  if (found.length > 0) return { paths: undominated(found), trapped: null, notStoodUp: null }
  // A side that was not to be tried was left out for want of height.
  const low = SIDE_WORDS.filter((side) => !way.sides.includes(side)).map((side) => [side, CEILING] as const)
  const why = new Map<Side, FixedThing>([...refused, ...low])
  return {
    ...carriedIn(mover, around, hint),
    notStoodUp: stuckBy(unit, why, 'placing.not-stood-up', SIDE_WORDS),
  }
}

/** Brought in as it is set down; the first way that no unit is in is taken and the search ends. */
function carriedIn(mover: Mover, around: Surroundings, hint: PlanPoint | null): Answer {
  const { placed, bounds } = mover.body
  const found: PlacingPath[] = []
  const refused = new Map<string, FixedThing>()
  for (const route of routesTo(placed, bounds, around, hint)) {
    const verdict = judgeRoute(mover, route, around)
    if (verdict.ok) found.push(verdict.path)
    else if (!refused.has(route.approach)) refused.set(route.approach, verdict.inTheWay)
    if (verdict.ok && verdict.path.blockedBy.length === 0) break
  }
  // The sort is stable: as many units in the way, as tried.
  const paths = undominated(found.sort((a, b) => a.blockedBy.length - b.blockedBy.length))
  const words = placed.kind === 'island' ? ISLAND_WORDS : WALL_WORDS
  const key = placed.kind === 'island' ? 'placing.trapped-island' : 'placing.trapped'
  const trapped = paths.length > 0 ? null : stuckBy(placed.unit, refused, key, words)
  return { paths, trapped, notStoodUp: null }
}

const SIDE_WORDS: readonly Side[] = ['back', 'front', 'left', 'right']
const WALL_WORDS = ['front', 'left', 'right'] as const
const ISLAND_WORDS = ['front', 'left', 'right', 'back'] as const

function stuckBy(
  unit: UnitId,
  refused: ReadonlyMap<string, FixedThing>,
  key: string,
  words: readonly string[],
): Trapped {
  const inTheWay = words.flatMap((from) => {
    const thing = refused.get(from)
    return thing === undefined ? [] : [{ from, thing }]
  })
  const values = Object.fromEntries(words.map((from) => [from, refused.get(from)?.id ?? 'floor']))
  return { unit, where: 'on-the-way', say: message(key, { unit, ...values }), inTheWay }
}

/** Leaves out every way that is blocked by all that block a better one. Sets of ids are small and sorted. */
function undominated(ranked: readonly PlacingPath[]): readonly PlacingPath[] {
  const kept: PlacingPath[] = []
  for (const path of ranked) {
    const worse = kept.some((better) => better.blockedBy.every((unit) => path.blockedBy.includes(unit)))
    if (!worse) kept.push(path)
    if (kept.length === MOST) break
  }
  return kept
}
