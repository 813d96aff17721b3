import { type Case, oncePerCase, topOf, underside } from './case'
import { ceilingOver } from './fixed-things'
import type { GivenAppliance, GivenFinishing, GivenHeight, GivenUnit, GivenWish } from './given'
import { placePoint } from './levels'
import { exactly, less, type Measure, notKnown, nought, orElse, plus, sum, taken, work } from './measure'
import { finished, floorAt, floorUnder } from './obligations/legs'
import { bearingFloors, isPacked } from './obligations/shims'
import { hull } from './polygon'
import { groupOf, isCarcass, isHung, type UnitStretch } from './positions'
import { boxesOf, finalPose } from './replay'
import { prismsAt } from './solids'

/** A hard demand on a height of the plan, worked out from the kitchen: `height` lies within [min, max]. */
export interface OwnDemand {
  /** Named as the plan names it, so that one it does not meet can be looked up among those it owns up to. */
  readonly id: string
  /** What it speaks of, for the refusal. */
  readonly say: string
  readonly height: Measure
  readonly min: Measure | null
  readonly max: Measure | null
  /** Further measures the limit rests on. */
  readonly rests?: readonly Measure[]
}

const FINGERS = 10
/** Where a finish still to come is laid in the bays of appliances. */
const BAY_FINISH = ['everywhere', 'bays-and-front']

export const ownDemands = oncePerCase((c: Case): readonly OwnDemand[] => {
  const units = [...c.units.values()].filter((u) => isCarcass(u.unit))
  return [
    ...units.filter((u) => u.unit.stands === 'legs').flatMap((u) => legReach(c, u.unit)),
    ...units.filter(isPacked).map((u) => onFloor(c, u)),
    ...units.flatMap((u) => underCeiling(c, u)),
    ...carcassHeights(c),
    ...c.given.worktops.map((w): OwnDemand => {
      const height = less(chosen(c, 'worktop-top'), chosen(c, 'base-top'))
      const say = 'the thickest worktop makes the height'
      const max = highest(c.given.worktops.map((other) => other.thickness))
      return { id: `worktop-thickness:${w.id}`, say, height, min: w.thickness, max }
    }),
    ...c.given.appliances.flatMap((a) => bays(c, a)),
    ...c.given.finishing.filter((f) => f.kind === 'plinth').flatMap((f) => plinth(c, f)),
    ...c.given.heightWishes.map((wish) => wished(c, wish)),
  ]
})

/** A height as the plan has chosen it. */
export function chosen(c: Case, name: string): Measure {
  const figure = c.plan.heights.values.find((v) => v.of === name)?.height
  return figure === undefined ? notKnown('heights') : taken(figure)
}

function legReach(c: Case, unit: GivenUnit): readonly OwnDemand[] {
  return unit.feet.map((foot) => {
    const floor = floorUnder(c, unit, foot.id)
    return {
      id: `leg-reach:${unit.id}.${foot.id}`,
      say: 'the leg reaches',
      height: underside(c, unit.id),
      min: sum(floor, unit.legs.min),
      max: sum(floor, unit.legs.max),
    }
  })
}

/** The corners of a unit on the plan, along and out from its wall. */
function corners(at: UnitStretch): readonly (readonly [Measure, Measure])[] {
  const front = sum(at.out, at.unit.depth)
  return [
    [at.left, at.out],
    [at.right, at.out],
    [at.left, front],
    [at.right, front],
  ]
}

function floorsAt(
  c: Case,
  wall: string,
  places: readonly (readonly [Measure, Measure])[],
): readonly Measure[] {
  return places.map(([along, out]) => floorAt(c, wall, along, out))
}

function highest(measures: readonly Measure[]): Measure {
  return work(measures, (...values) => Math.max(...values))
}

function lowest(measures: readonly Measure[]): Measure {
  return work(measures, (...values) => Math.min(...values))
}

function onFloor(c: Case, at: UnitStretch): OwnDemand {
  return {
    id: `shim-floor:${at.unit.id}`,
    say: 'the carcass stays off the floor',
    height: underside(c, at.unit.id),
    min: highest(bearingFloors(c, at)),
    max: null,
  }
}

/** Under the ceiling when it stands or hangs there, and with room over it while it is hooked on. */
function underCeiling(c: Case, at: UnitStretch): readonly OwnDemand[] {
  const pose = finalPose(c, at.unit.id)
  const boxes = boxesOf(c, at.unit.id)
  if (pose === null || boxes === null) return []
  const over = hull(prismsAt(pose, boxes).flatMap((p) => p.polygon))
  const ceiling = ceilingOver(c, over)
  if (ceiling === null) return []
  const top = topOf(c, at.unit)
  const onHooks = at.unit.stands === 'plates' || at.unit.stands === 'rail'
  // With its height screws wound right down first it goes on that much lower.
  const lift = onHooks ? less(plus(at.unit.hanging.hookLift, FINGERS), woundDown(at.unit)) : null
  return [
    {
      id: `ceiling:${at.unit.id}`,
      say: 'the ceiling leaves room',
      height: top,
      min: null,
      max: exactly(ceiling),
    },
    ...(lift === null || !isHung(at.unit)
      ? []
      : [
          {
            id: `hook-on:${at.unit.id}`,
            say: 'there is room to hook it on',
            height: sum(top, lift),
            min: null,
            max: exactly(ceiling),
          },
        ]),
  ]
}

/** How far the height screws of a hung unit can be wound down before it is hooked on; nothing where that is not known. */
export function woundDown({ stands, hanging }: GivenUnit): Measure {
  return stands === 'plates' || stands === 'rail' ? orElse(hanging.down, nought) : nought
}

/** The top of a group stands over its underside by the height of the carcasses; wall units of several heights share their tops. */
function carcassHeights(c: Case): readonly OwnDemand[] {
  return (['base', 'wall', 'tall'] as const).flatMap((group): readonly OwnDemand[] => {
    const heights = c.given.units.filter((u) => groupOf(u) === group).map((u) => u.height)
    if (heights.length === 0) return []
    return [
      {
        id: `carcass-height:${group}`,
        say: 'top and underside go with the carcass',
        height: less(chosen(c, `${group}-top`), chosen(c, `${group}-underside`)),
        min: lowest(heights),
        max: highest(heights),
      },
    ]
  })
}

/** An appliance goes in under the worktop, is not too low for its feet, and comes out again over a finished floor. */
function bays(c: Case, appliance: GivenAppliance): readonly OwnDemand[] {
  const bay = [...c.units.values()].find((u) => u.unit.applianceBay === appliance.id && !isCarcass(u.unit))
  // Under no worktop there is nothing above it.
  if (bay === undefined || !c.given.worktops.some((w) => w.over.includes(bay.unit.id))) return []
  const floors = floorsAt(c, bay.wall, corners(bay)).map((z) => finished(c, z, BAY_FINISH))
  const top = chosen(c, 'base-top')
  const gap = orElse(appliance.workingGap, nought)
  const front = sum(bay.out, bay.unit.depth)
  const ends = floorsAt(c, bay.wall, [
    [bay.left, front],
    [bay.right, front],
  ])
  const need = sum(appliance.heightMin, gap)
  const finish = c.given.finishWhere === 'up-to-plinth' && (c.given.finishToCome.value ?? 0) > 0
  return [
    {
      id: `bay-in:${appliance.id}`,
      say: 'the appliance goes in',
      height: less(top, highest(floors)),
      min: need,
      max: null,
      rests: floors,
    },
    ...(appliance.heightMax.value === null
      ? []
      : [
          {
            id: `bay-max:${appliance.id}`,
            say: 'its feet reach',
            height: less(top, lowest(floors)),
            min: null,
            max: appliance.heightMax,
          },
        ]),
    ...(finish
      ? [
          {
            id: `bay-out:${appliance.id}`,
            say: 'it comes out over the finished floor',
            height: less(top, sum(highest(ends), c.given.finishToCome)),
            min: need,
            max: null,
          },
        ]
      : []),
  ]
}

/** The plinth board reaches from the carcass to the floor. */
function plinth(c: Case, part: GivenFinishing): readonly OwnDemand[] {
  const units = part.of
    .flatMap((id) => c.units.get(id) ?? [])
    .filter((u) => isCarcass(u.unit) && !isHung(u.unit))
  return units.map((at) => {
    const line = less(sum(at.out, at.unit.depth), part.setBack)
    // A finish laid up to the plinth or under it brings the floor nearer to the board.
    const floors = floorsAt(c, at.wall, [
      [at.left, line],
      [at.right, line],
    ]).map((z) => finished(c, z, [...BAY_FINISH, 'up-to-plinth']))
    return {
      id: `plinth-cover:${part.id}`,
      say: 'the plinth reaches the floor',
      height: less(underside(c, at.unit.id), lowest(floors)),
      min: null,
      max: part.height,
      rests: floors,
    }
  })
}

function wished(c: Case, wish: GivenWish): OwnDemand {
  const over = wish.place === null ? null : placePoint(c.given, c.room, wish.place).point
  const limit = (height: GivenHeight | null): Measure | null =>
    height === null ? null : c.levels.of(height, over)
  const equal = wish.equals === null ? null : chosen(c, wish.equals)
  return {
    id: `wish:${wish.id}`,
    say: 'a wish on a height',
    height: chosen(c, wish.of),
    min: limit(wish.min) ?? equal,
    max: limit(wish.max) ?? equal,
  }
}
