import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { type Message, message } from '../message'
import type { StandUpPlan } from '../plan/types'
import type { Side } from './sweep'

/**
 * Standing a tall unit up under the ceiling: how much height it needs over each of its sides, and which side to take.
 *
 * Lying to standing without leaving the floor needs the diagonal of the side it is tilted over, and no other motion
 * needs less than the diagonal over the narrowest side; so this settles it both ways.
 *
 * @source methods G.1: a public proof, Mathematics Stack Exchange 339221
 */

const diagonalBasis: Basis = {
  kind: 'geometry',
  why: 'the top corner swings through the diagonal √(h² + s²) of the side the unit is tilted over',
}
const feetBasis: Basis = {
  kind: 'geometry',
  why: 'swung on its feet: √((h + leg)² + (s − inset)²) about the foot, or the carcass diagonal before the feet touch, whichever is more',
}
const blocksBasis: Basis = {
  kind: 'common-practice',
  why: 'blocks at least 10 mm higher than the legs wound right in, or it would turn on its legs',
}
const sumBasis: Basis = { kind: 'geometry', why: 'diagonal, blocks under the edge and room for the hands' }

/** Usual blocks, mm, and room kept over the corner, mm: the numbers of the two figures below. */
export const BLOCK_HEIGHT = 20
export const ROOM_FOR_HANDS = 10
/** Legs left on, wound right in, stay this far off the floor while the unit turns on its edge, mm. */
export const LEGS_CLEAR = 10

/** Blocks under the edge it turns on, so that fingers and floor come to no harm. */
export const BLOCKS: Figure = known(BLOCK_HEIGHT, 0, 'mm', [], {
  kind: 'common-practice',
  why: 'blocks or packers about 20 mm thick under the edge the unit turns on',
})
/** Room kept over the corner for hands, floor protection and a ceiling that is not flat. */
export const HAND_ROOM: Figure = known(ROOM_FOR_HANDS, 0, 'mm', [], {
  kind: 'common-practice',
  why: 'at least 10 mm over the top corner for hands, floor protection and an uneven ceiling',
})

/** Height a box h tall swings through, tilted over a side s: √(h² + s²). */
export function diagonalOf(height: number, side: number): number {
  return Math.sqrt(height * height + side * side)
}

/** The tallest box that stands up under a ceiling, tilted over a side s; undefined when not even a flat one does. */
export function tallestUnder(ceiling: number, side: number): number | undefined {
  return ceiling < side ? undefined : Math.sqrt(ceiling * ceiling - side * side)
}

/** Degrees from lying at which the corner is highest: tan θ = h/s. */
export function steepestAngle(height: number, side: number): number {
  return (Math.atan2(height, side) * 180) / Math.PI
}

/** What is known of the legs while a unit is stood up. */
export interface LegsWhileTilting {
  /** Wound right in: floor to underside of the carcass. */
  readonly shortest: Figure
  /** Centre of the foot nearest each side, in from that side. */
  readonly inset: Readonly<Record<Side, Figure>>
  /** The maker allows the unit to swing on its feet; null: nobody knows, which is no. */
  readonly maySwing: boolean | null
}

export interface StandUpInput {
  readonly height: Figure
  readonly depth: Figure
  readonly width: Figure
  /** Clear height, floor to the lowest ceiling or beam over the floor it is stood up on. */
  readonly ceiling: Figure
  /** Null: it has none. */
  readonly legs: LegsWhileTilting | null
  /** Left out: `BLOCKS`. */
  readonly blocks?: Figure
}

/** One way of standing it up, with the sum it comes from line by line. */
export interface StandUpNeed {
  readonly over: Side
  readonly pivot: 'carcass-edge' | 'feet'
  readonly legs: LegsInTheTilt
  readonly diagonal: Figure
  readonly blocks: Figure
  readonly handRoom: Figure
  readonly needed: Figure
  readonly fits: 'yes' | 'no' | 'not-known'
}

/**
 * What becomes of the legs while it is stood up: it has `none`; it may `swing` on them; they stay on, `wound-in`, over
 * blocks higher than they are; or they come `off`, because there is no height for such blocks or nobody knows how long
 * they are wound in.
 */
export type LegsInTheTilt = 'none' | 'swing' | 'wound-in' | 'off'

export interface StandUpChoice {
  readonly plan: StandUpPlan
  readonly legs: LegsInTheTilt
  /** The chosen way first, then every other, best first. */
  readonly ways: readonly StandUpNeed[]
  /** Sides to try on the floor, best first: those that fit, or may. */
  readonly sides: readonly Side[]
  readonly say: Message
}

const SIDES: readonly Side[] = ['back', 'front', 'left', 'right']

/** Height needed to stand it up over one side with the legs so, and whether the ceiling gives it. */
export function standUpNeed(input: StandUpInput, over: Side, legs: LegsInTheTilt): StandUpNeed {
  const onFeet = legs === 'swing'
  const blocks = blocksFor(input, legs)
  const diagonal = onFeet ? overFeet(input, over) : overEdge(input, over)
  const needed = derive('mm', sumBasis, [diagonal, blocks, HAND_ROOM], (d = 0, b = 0, r = 0) => d + b + r)
  return {
    over,
    pivot: onFeet ? 'feet' : 'carcass-edge',
    legs,
    diagonal,
    blocks,
    handRoom: HAND_ROOM,
    needed,
    fits: fitsUnder(needed, input.ceiling),
  }
}

const noBlocks: Figure = known(0, 0, 'mm', [], {
  kind: 'geometry',
  why: 'it turns on its feet, without blocks',
})

/** Under the edge it turns on: the usual ones, or as much higher as legs that stay on need to hang free of the floor. */
function blocksFor({ legs, blocks = BLOCKS }: StandUpInput, state: LegsInTheTilt): Figure {
  if (state === 'swing') return noBlocks
  if (state !== 'wound-in' || legs === null) return blocks
  return derive('mm', blocksBasis, [blocks, legs.shortest], (usual = 0, leg = 0) =>
    Math.max(usual, leg + LEGS_CLEAR),
  )
}

/**
 * The least height in which it stands up with its legs on, wound right in, over blocks only as high as they are: with its
 * feet on the floor no sooner than it stands. Null where it has no legs, or may swing on them.
 */
export function leastWithLegsOn(input: StandUpInput): Figure | null {
  const { legs, blocks = BLOCKS } = input
  if (legs === null || legs.maySwing === true) return null
  const shortest = legs.shortest
  const needs = SIDES.map((over) =>
    derive(
      'mm',
      sumBasis,
      [overEdge(input, over), blocks, shortest, HAND_ROOM],
      (diagonal = 0, usual = 0, leg = 0, hands = 0) => diagonal + Math.max(usual, leg) + hands,
    ),
  )
  return needs.reduce((a, b) => (hasValue(b) && (!hasValue(a) || b.value < a.value) ? b : a))
}

function sideOf(input: StandUpInput, over: Side): Figure {
  return over === 'back' || over === 'front' ? input.depth : input.width
}

function overEdge(input: StandUpInput, over: Side): Figure {
  return derive('mm', diagonalBasis, [input.height, sideOf(input, over)], (h = 0, s = 0) => diagonalOf(h, s))
}

function overFeet(input: StandUpInput, over: Side): Figure {
  if (input.legs === null) return overEdge(input, over)
  const { shortest, inset } = input.legs
  return derive(
    'mm',
    feetBasis,
    [input.height, sideOf(input, over), shortest, inset[over]],
    (h = 0, s = 0, leg = 0, i = 0) => heightOnFeet(h, s, leg, i),
  )
}

/** Yes or no only where the precision of both cannot change the answer. */
function fitsUnder(needed: Figure, ceiling: Figure): StandUpNeed['fits'] {
  if (!hasValue(needed) || !hasValue(ceiling)) return 'not-known'
  const slack = needed.pm + ceiling.pm
  const room = ceiling.value - needed.value
  if (room >= slack) return 'yes'
  return room < -slack || slack === 0 ? 'no' : 'not-known'
}

/**
 * How to stand it up: over the back where that fits (on its feet if the maker lets it, else on the carcass edge over
 * blocks), or else over the side that needs least. What fits comes before what may, and that before what does not; a
 * unit that fits no way gets the way that needs least, with `fits: no`.
 *
 * Legs stay on, wound right in, over blocks higher than they are, since nobody wants to fit legs under a standing unit;
 * but only where that loses no side the unit could be stood up over without them.
 */
export function standUpPlan(input: StandUpInput): StandUpChoice {
  const ways = waysOf(input)
  const [best = standUpNeed(input, 'back', 'none')] = ways
  const plan: StandUpPlan = {
    over: best.over,
    pivot: best.pivot,
    blocks: best.blocks,
    needed: best.needed,
    ceiling: input.ceiling,
    fits: best.fits,
  }
  const sides = ways.filter((way) => way.pivot === best.pivot && way.fits !== 'no').map((way) => way.over)
  return { plan, legs: best.legs, ways, sides, say: sayOf(best, input.ceiling) }
}

/**
 * The same plan for another side, when the floor and not the ceiling decided which, and under the ceiling over that
 * floor.
 */
export function standUpOver(
  choice: StandUpChoice,
  over: Side,
  ceiling: Figure = choice.plan.ceiling,
): StandUpPlan {
  const way = choice.ways.find((w) => w.over === over && w.pivot === choice.plan.pivot)
  if (way === undefined) return choice.plan
  const { pivot, blocks, needed } = way
  return { over, pivot, blocks, needed, ceiling, fits: fitsUnder(needed, ceiling) }
}

/**
 * How high over the floor it reaches, bare of room for hands, when it swings on its feet: what is added to the height of
 * the carcass edge by its legs is not there before the feet touch.
 */
export function heightOnFeet(height: number, side: number, leg: number, inset: number): number {
  return Math.max(diagonalOf(height + leg, side - inset), diagonalOf(height, side))
}

/**
 * What a plan means for legs whose length wound right in is `shortest` (null: it stands on none): read off what it turns
 * on and how high its blocks are, so that words and figures cannot disagree.
 */
export function legsInThePlan(
  shortest: Figure | null,
  { pivot, blocks }: Pick<StandUpPlan, 'pivot' | 'blocks'>,
): LegsInTheTilt {
  if (shortest === null) return 'none'
  if (pivot === 'feet') return 'swing'
  const isOver = hasValue(shortest) && hasValue(blocks) && blocks.value >= shortest.value + LEGS_CLEAR
  return isOver ? 'wound-in' : 'off'
}

function waysOf(input: StandUpInput): readonly StandUpNeed[] {
  const onFeet = input.legs !== null && input.legs.maySwing === true
  const over = (legs: LegsInTheTilt) => SIDES.map((side) => standUpNeed(input, side, legs))
  const all = [...(onFeet ? over('swing') : []), ...over(legsOnTheEdge(input))]
  const place = new Map(all.map((way, i) => [way, i]))
  return [...all].sort(
    (a, b) => rankOf(a) - rankOf(b) || leastFirst(a, b) || (place.get(a) ?? 0) - (place.get(b) ?? 0),
  )
}

/** Turned on its carcass edge: whether its legs may stay on. */
function legsOnTheEdge(input: StandUpInput): 'none' | 'wound-in' | 'off' {
  if (input.legs === null) return 'none'
  if (!hasValue(input.legs.shortest)) return 'off'
  const without = SIDES.map((over) => standUpNeed(input, over, 'off').fits)
  const losesNone = SIDES.every((over, i) => standUpNeed(input, over, 'wound-in').fits === without[i])
  return losesNone && without.some((fits) => fits !== 'no') ? 'wound-in' : 'off'
}

/** Over the back, where it fits, first; then what fits, what may fit, what does not. */
function rankOf(way: StandUpNeed): number {
  if (way.fits === 'yes') return way.over === 'back' ? 0 : 1
  return way.fits === 'not-known' ? 2 : 3
}

function leastFirst(a: StandUpNeed, b: StandUpNeed): number {
  // Two ways over the back that both fit keep their order: a maker who allows the feet saves the blocks.
  if (rankOf(a) === 0 && rankOf(b) === 0) return 0
  return neededOrMost(a) - neededOrMost(b)
}

function neededOrMost(way: StandUpNeed): number {
  return hasValue(way.needed) ? way.needed.value : Number.MAX_VALUE
}

function sayOf({ over, needed, fits }: StandUpNeed, ceiling: Figure): Message {
  return message(`placing.stand-up.${fits}`, { over, needed, ceiling })
}
