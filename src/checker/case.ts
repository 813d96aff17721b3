import type { Plan, UnitPlan } from '../core/plan/types'
import type { WallBands } from './bands/band'
import { bandsOf } from './bands/bands-of'
import type { FactBook } from './facts'
import type { Given, GivenUnit, GivenWall } from './given'
import type { Levels } from './levels'
import { type Measure, notKnown, sum, taken } from './measure'
import { stretches, type UnitStretch } from './positions'
import type { Achieved } from './read-log'
import type { Refuse } from './report'
import type { Room } from './room'

/** Everything the obligations look at: the kitchen as read anew, what follows from it, and the plan to be judged. */
export interface Case {
  readonly given: Given
  readonly room: Room
  readonly levels: Levels
  readonly units: ReadonlyMap<string, UnitStretch>
  readonly parts: ReturnType<typeof stretches>['parts']
  readonly achieved: Achieved
  readonly facts: FactBook
  readonly plan: Plan
  readonly planUnits: ReadonlyMap<string, UnitPlan>
  /** Position of every operation in the order of the plan. */
  readonly place: ReadonlyMap<string, number>
  readonly bands: ReadonlyMap<string, WallBands>
  /** What is wrong with the plan's triangles over the floor readings; null when nothing is. */
  readonly floorFault: string | null
  readonly refuse: Refuse
}

export function buildCase(
  given: Given,
  room: Room,
  levels: Levels,
  achieved: Achieved,
  facts: FactBook,
  plan: Plan,
  floorFault: string | null,
  refuse: Refuse,
): Case {
  const { units, parts } = stretches(given)
  return {
    given,
    room,
    levels,
    units,
    parts,
    achieved,
    facts,
    plan,
    planUnits: new Map(plan.units.map((u) => [u.unit, u])),
    place: new Map(plan.operations.map((op, i) => [op.id, i])),
    bands: new Map(given.walls.map((wall) => [wall.id, bandsOf(given, room, levels, wall)])),
    floorFault,
    refuse,
  }
}

/** Works something out once for each case. */
export function oncePerCase<T>(make: (c: Case) => T): (c: Case) => T {
  const made = new WeakMap<Case, { readonly value: T }>()
  return (c) => {
    const before = made.get(c)
    if (before !== undefined) return before.value
    const value = make(c)
    made.set(c, { value })
    return value
  }
}

export function wallOf(c: Case, id: string): GivenWall | undefined {
  return c.given.walls.find((wall) => wall.id === id)
}

/** Underside of a unit as the plan sets it: a choice, judged against every demand elsewhere. */
export function underside(c: Case, unit: string): Measure {
  const figure = c.planUnits.get(unit)?.underside
  return figure === undefined ? notKnown('units') : taken(figure)
}

/** A size of a unit: the file's, or where the file leaves it open the plan's if it is marked as assumed. */
export function sizeOf(c: Case, unit: GivenUnit, size: 'width' | 'height' | 'depth'): Measure {
  const plan = c.planUnits.get(unit.id)?.[size]
  return unit[size].value === null && plan?.state === 'assumed' ? taken(plan) : unit[size]
}

export function topOf(c: Case, unit: GivenUnit): Measure {
  return sum(underside(c, unit.id), sizeOf(c, unit, 'height'))
}

/** Where an operation stands in the order; undefined when the plan has no such operation. */
export function placeOf(c: Case, operation: string): number | undefined {
  return c.place.get(operation)
}
