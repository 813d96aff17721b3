import type { Given, GivenOrder, GivenUnit } from './given'
import { less, type Measure, notKnown, nought, orElse, sum } from './measure'
import { fromLeft } from './room'

/** Where a unit or part stands along its wall, from the wall's left end, and how far out its back is. */
export interface Stretch {
  readonly wall: string
  readonly left: Measure
  readonly right: Measure
}
export interface UnitStretch extends Stretch {
  readonly unit: GivenUnit
  readonly out: Measure
}

interface Placed {
  readonly id: string
  readonly wall: string
  readonly order: GivenOrder
  readonly width: Measure
}

/** Works along the chains of neighbours ("right of", "left of") from whatever was measured from a corner. */
export function stretches(given: Given): {
  readonly units: ReadonlyMap<string, UnitStretch>
  readonly parts: ReadonlyMap<string, Stretch>
} {
  const things: readonly Placed[] = [
    ...given.units,
    ...given.finishing.flatMap((f) =>
      f.order === null ? [] : [{ ...f, wall: f.wall ?? '', order: f.order }],
    ),
  ]
  const byId = new Map(things.map((thing) => [thing.id, thing]))
  const settled = new Map<string, Measure>()
  const walking = new Set<string>()

  const leftOf = (thing: Placed): Measure => {
    const before = settled.get(thing.id)
    if (before !== undefined) return before
    if (walking.has(thing.id)) return notKnown(`units.${thing.id}.order`)
    walking.add(thing.id)
    const left = workOut(thing)
    walking.delete(thing.id)
    settled.set(thing.id, left)
    return left
  }
  const workOut = (thing: Placed): Measure => {
    const { order } = thing
    const gap = orElse(order.gap, nought)
    if (order.left !== null) {
      const wall = given.walls.find((w) => w.id === thing.wall)
      return wall === undefined ? notKnown(`finishing.${thing.id}.wall`) : fromLeft(wall, order.left)
    }
    const neighbour = byId.get(order.rightOf ?? order.leftOf ?? '')
    if (neighbour === undefined) return notKnown(`units.${thing.id}.order`)
    const side = leftOf(neighbour)
    if (order.rightOf !== null) return sum(side, neighbour.width, gap)
    return less(less(side, gap), thing.width)
  }

  const stretch = (thing: Placed): Stretch => {
    const left = leftOf(thing)
    return { wall: thing.wall, left, right: sum(left, thing.width) }
  }
  return {
    units: new Map(
      given.units.map((unit) => [unit.id, { ...stretch(unit), unit, out: orElse(unit.standOff, nought) }]),
    ),
    parts: new Map(
      things.filter((t) => given.finishing.some((f) => f.id === t.id)).map((t) => [t.id, stretch(t)]),
    ),
  }
}

/** Heights are chosen for three groups together; an appliance's space has no carcass and belongs to none. */
export type Group = 'base' | 'wall' | 'tall'

const HUNG = new Set(['plates', 'rail', 'back-rail-screws', 'cleat'])
const WALL_KINDS = new Set(['wall', 'corner-wall', 'bridging'])

export function isHung(unit: GivenUnit): boolean {
  return unit.stands === null ? WALL_KINDS.has(unit.kind) : HUNG.has(unit.stands)
}

export function groupOf(unit: GivenUnit): Group | null {
  if (unit.kind === 'appliance-space') return null
  if (unit.kind === 'tall') return 'tall'
  if (WALL_KINDS.has(unit.kind)) return 'wall'
  return isHung(unit) ? 'wall' : 'base'
}

export function isCarcass(unit: GivenUnit): boolean {
  return unit.kind !== 'appliance-space'
}
