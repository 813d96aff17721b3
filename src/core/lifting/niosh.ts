/**
 * The revised lifting equation of the American National Institute for Occupational Safety and Health: the weight it
 * recommends for one person at one end of a lift. It is no limit, and a lift below it is not thereby without risk.
 *
 * For two hands, standing, with room to move, on a firm floor, and a thing that keeps still. Not for one hand, sitting or
 * kneeling, steps and ladders, a slippery floor, carrying, pushing, or two people.
 *
 * Source: DHHS (NIOSH) publication 94-110, Applications manual for the revised NIOSH lifting equation (1994, revised
 * 2021), its metric form; the formulas are from a handbook's copy of it. Its tables round the multipliers, and two of
 * their entries differ from the formulas by one in the second place (22 and 23 in from the body; 130 cm of travel): the
 * formulas are used.
 */

/** kg for a lift close to the body at knuckle height, without travel or turning. */
export const LOAD_CONSTANT = 23

/** Not more than one lift in five minutes, for an hour at most: nothing is taken off for how often. */
export const INFREQUENT = 1

/** How well it can be held: by handles, by fingers under it, or badly. */
export type Coupling = 'good' | 'fair' | 'poor'

/** One end of a lift, where it begins or where it is set down. Centimetres and degrees, as the equation has them. */
export interface LiftEnd {
  /** Middle of the hands in front of the middle of the ankles. */
  readonly horizontal: number
  /** Hands above the floor. */
  readonly vertical: number
  /** How far up or down it goes from one end to the other. */
  readonly travel: number
  /** How far the trunk is turned from straight ahead. */
  readonly turned: number
  /** Multiplier for how often, of the manual's table. */
  readonly often: number
  readonly coupling: Coupling
}

export interface Multipliers {
  readonly horizontal: number
  readonly vertical: number
  readonly distance: number
  readonly asymmetry: number
  readonly frequency: number
  readonly coupling: number
}

/** Closer to the body than this, and shorter travel than this, count as this. */
const CLOSEST = 25
/** Past these nothing is recommended at all. */
const FURTHEST = 63
const HIGHEST = 175
const LONGEST = 175
const MOST_TURNED = 135
/** Height of the knuckles, at which lifting is easiest. */
const KNUCKLES = 75

const horizontalOf = (h: number): number => (h > FURTHEST ? 0 : CLOSEST / Math.max(h, CLOSEST))

const verticalOf = (v: number): number => (v > HIGHEST ? 0 : 1 - 0.003 * Math.abs(Math.max(v, 0) - KNUCKLES))

const distanceOf = (d: number): number => (d > LONGEST ? 0 : 0.82 + 4.5 / Math.max(d, CLOSEST))

const asymmetryOf = (a: number): number => (a > MOST_TURNED ? 0 : 1 - 0.0032 * a)

function couplingOf(coupling: Coupling, vertical: number): number {
  if (coupling === 'poor') return 0.9
  return coupling === 'fair' && vertical < KNUCKLES ? 0.95 : 1
}

/** What each measure of one end of a lift leaves of the load constant, from 1 down to 0. */
export function multipliersOf(end: LiftEnd): Multipliers {
  return {
    horizontal: horizontalOf(end.horizontal),
    vertical: verticalOf(end.vertical),
    distance: distanceOf(end.travel),
    asymmetry: asymmetryOf(end.turned),
    frequency: end.often,
    coupling: couplingOf(end.coupling, end.vertical),
  }
}

/** The recommended weight at one end of a lift, kg. 0: nothing is recommended to be lifted so. */
export function recommendedWeight(end: LiftEnd): number {
  return Object.values(multipliersOf(end)).reduce<number>((kg, part) => kg * part, LOAD_CONSTANT)
}

/** Below this the knees are in the way, and a box is held further out. */
const OVER_THE_KNEES = 25

/**
 * How far in front of the ankles the hands are that hold a box of this depth, where nobody has measured it: half the box,
 * and so much for the body behind it.
 */
export function horizontalFromDepth(depth: number, vertical: number): number {
  return (vertical < OVER_THE_KNEES ? 25 : 20) + depth / 2
}

/** The manual's largest box that can be held fairly without handles, cm along the front and up. */
const EASY = { along: 40, up: 30 }

/**
 * How a box without handles is held, fingers under it. The manual calls anything longer or higher than its largest good
 * box hard to hold: nearly every unit is.
 */
export function couplingOfBox(along: number, up: number): Coupling {
  return along <= EASY.along && up <= EASY.up ? 'fair' : 'poor'
}
