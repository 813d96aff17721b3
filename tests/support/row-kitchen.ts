/**
 * A row of units on one wall whose floor falls 2 mm in a metre to the right, and is level out of the wall: everything is
 * exact, so that heights can be worked by hand. Floor at x: −1000 − 0.002 x.
 */
import type { Kitchen } from '../../src/core/kitchen/schema'
import { atLeft, kitchenOf, placeOn, readingOf, sure, wallsOf } from './surveyed'

type Json = Readonly<Record<string, unknown>>

export const READINGS = [
  readingOf('f1', 'a', 0, 0, 1000),
  readingOf('f2', 'a', 6000, 0, 1012),
  readingOf('f3', 'a', 0, 700, 1000),
  readingOf('f4', 'a', 6000, 700, 1012),
]

export const foot = (id: string, x: number, y: number) => ({ id, x: sure(x), y: sure(y) })
const FEET = [foot('bl', 50, 50), foot('br', 550, 50), foot('fl', 50, 500), foot('fr', 550, 500)]
export const LEGS = { min: sure(130), max: sure(180), delivered: sure(150), perTurn: 1.5 }

/** 600 wide, 720 high, 560 deep, on four legs that reach from 130 to 180. */
export const baseUnit = (id: string, order: object, more: Json = {}): Json => ({
  id,
  kind: 'base',
  wall: 'a',
  order,
  width: sure(600),
  height: sure(720),
  depth: sure(560),
  stands: 'legs',
  feet: FEET,
  legs: LEGS,
  ...more,
})

/** The same, 300 deep, hooked onto plates with 25 of lift. */
export const wallUnit = (id: string, order: object, more: Json = {}): Json => ({
  id,
  kind: 'wall',
  wall: 'a',
  order,
  width: sure(600),
  height: sure(720),
  depth: sure(300),
  stands: 'plates',
  hanging: { hookLift: sure(25) },
  ...more,
})

export const TWO_BASES = [baseUnit('base-1', { left: atLeft(0) }), baseUnit('base-2', { rightOf: 'base-1' })]
export const WORKTOP = { id: 'top', over: ['base-1', 'base-2', 'space'], thickness: sure(38) }

/** To the right of the two bases, from 1200 to 1800: floor −1002.4 to −1003.6. */
export const SPACE = {
  id: 'space',
  kind: 'appliance-space',
  wall: 'a',
  order: { rightOf: 'base-2' },
  width: sure(600),
  height: sure(720),
  depth: sure(600),
  applianceBay: 'dw',
}
export const DISHWASHER = {
  id: 'dw',
  kind: 'dishwasher',
  heightMin: sure(850),
  heightMax: sure(890),
  workingGap: sure(5),
}

/** A flat ceiling at one height. */
export const ceilingAt = (up: number) => [
  { id: 'c1', at: placeOn('a', 0, 0), height: { up: sure(up) } },
  { id: 'c2', at: placeOn('a', 6000, 0), height: { up: sure(up) } },
]

export function rowKitchen(parts: Json = {}): Kitchen {
  const floor = { readings: READINGS, ...((parts['floor'] as Json | undefined) ?? {}) }
  return kitchenOf({ region: 'uk', walls: wallsOf([6000]), ...parts, floor })
}

/** The row with the dishwasher under its worktop. */
export function withDishwasher(parts: Json = {}): Kitchen {
  const units = [...TWO_BASES, SPACE, ...((parts['units'] as readonly Json[] | undefined) ?? [])]
  return rowKitchen({ worktops: [WORKTOP], appliances: [DISHWASHER], ...parts, units })
}
