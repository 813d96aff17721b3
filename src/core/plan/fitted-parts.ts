import { valueOf } from '../figure'
import type { HeightName } from '../kitchen/kinds'
import type { FinishingPart, Kitchen, Unit, Worktop } from '../kitchen/schema'
import type { Survey } from '../survey/survey'
import type { PartPosition } from '../units/positions'
import type { FittedPart, Heights, LocalBox, Pose, UnitId, UnitPlan, WallId } from './types'

/**
 * Parts that are fitted after the units, as plain bodies for the picture: worktops over their units, end panels and
 * fillers where they stand, plinths along their run, fronts on their unit. A part whose figures are not known yet has
 * no pose and is not drawn.
 */
interface Context {
  readonly kitchen: Kitchen
  readonly survey: Survey
  readonly parts: readonly PartPosition[]
  readonly units: readonly UnitPlan[]
  readonly heights: Heights
}

export function fittedParts(context: Context): readonly FittedPart[] {
  const { kitchen } = context
  return [
    ...kitchen.worktops.flatMap((w) => worktopBodies(w, context)),
    ...kitchen.finishing.flatMap((f) => finishingBodies(f, context)),
    ...kitchen.units.flatMap((u) => frontBodies(u, context)),
  ]
}

const height = (context: Context, of: HeightName): number | undefined => {
  const found = context.heights.values.find((v) => v.of === of)
  return found === undefined ? undefined : valueOf(found.height)
}

/** A body against a wall: along, out and height from its frame. */
function against(
  context: Context,
  wall: WallId,
  box: { left: number; right: number; near: number; far: number; bottom: number; top: number },
): { readonly pose: Pose | null; readonly solid: readonly LocalBox[] } {
  const at = context.survey.toRoom(wall, box.left, box.near)
  const frame = context.survey.frame(wall)
  if (at === null || frame === undefined) return { pose: null, solid: [] }
  const yaw = (Math.atan2(frame.alongDir.y, frame.alongDir.x) * 180) / Math.PI
  return {
    pose: { x: at.x, y: at.y, z: box.bottom, yaw },
    solid: [
      { x0: 0, x1: box.right - box.left, y0: 0, y1: box.far - box.near, z0: 0, z1: box.top - box.bottom },
    ],
  }
}

interface Run {
  readonly wall: WallId
  readonly units: readonly UnitPlan[]
  readonly left: number
  readonly right: number
  readonly depth: number
  readonly underside: number
}

/** The units of a part wall by wall, with the stretch they cover; units whose place is not known are left out. */
function runsOf(context: Context, ids: readonly UnitId[]): readonly Run[] {
  const units = context.units.filter((u) => ids.includes(u.unit))
  return [...new Set(units.map((u) => u.wall))].flatMap((wall) => {
    const here = units.filter((u) => u.wall === wall)
    const lefts = here.map((u) => valueOf(u.left))
    const rights = here.map((u) => valueOf(u.right))
    const depths = here.map((u) => valueOf(u.depth))
    const undersides = here.map((u) => valueOf(u.underside))
    if ([...lefts, ...rights, ...depths, ...undersides].some((v) => v === undefined)) return []
    return [
      {
        wall,
        units: here,
        left: Math.min(...(lefts as number[])),
        right: Math.max(...(rights as number[])),
        depth: Math.max(...(depths as number[])),
        underside: Math.min(...(undersides as number[])),
      },
    ]
  })
}

function worktopBodies(worktop: Worktop, context: Context): readonly FittedPart[] {
  const bottom = height(context, 'base-top')
  const top = height(context, 'worktop-top')
  const depth = valueOf(worktop.depth)
  if (bottom === undefined || top === undefined || depth === undefined) return []
  return runsOf(context, worktop.over).map((run, i) => ({
    part: i === 0 ? worktop.id : `${worktop.id}+${run.wall}`,
    name: worktop.name ?? 'worktop',
    kind: 'worktop' as const,
    of: run.units.map((u) => u.unit),
    ...against(context, run.wall, { left: run.left, right: run.right, near: 0, far: depth, bottom, top }),
  }))
}

function finishingBodies(part: FinishingPart, context: Context): readonly FittedPart[] {
  const named = {
    part: part.id,
    name: part.name ?? part.kind.replace('-', ' '),
    kind: part.kind,
    of: part.of,
  }
  if (part.kind === 'plinth') return plinthBodies(part, context)
  const place = context.parts.find((p) => p.part.id === part.id)
  const wall = part.wall ?? context.units.find((u) => part.of.includes(u.unit))?.wall
  if (place === undefined || wall === undefined || wall === null) return []
  const [left, right] = [valueOf(place.left), valueOf(place.right)]
  const beside = runsOf(context, part.of)[0]
  if (left === undefined || right === undefined || beside === undefined) return []
  const bottom = part.kind === 'filler' ? beside.underside : beside.underside - 100
  const tall = valueOf(part.height)
  const unitTop = valueOf((beside.units[0] as UnitPlan).top)
  const top = part.kind === 'filler' || tall === undefined ? unitTop : bottom + tall
  if (top === undefined) return []
  const far = part.kind === 'filler' ? beside.depth : (valueOf(part.depth) ?? beside.depth)
  const near = part.kind === 'filler' ? beside.depth - 20 : 0
  return [{ ...named, ...against(context, wall, { left, right, near, far, bottom, top }) }]
}

function plinthBodies(part: FinishingPart, context: Context): readonly FittedPart[] {
  const tall = valueOf(part.height)
  if (tall === undefined) return []
  const setBack = valueOf(part.setBack) ?? 50
  return runsOf(context, part.of).map((run, i) => ({
    part: i === 0 ? part.id : `${part.id}+${run.wall}`,
    name: part.name ?? 'plinth',
    kind: 'plinth' as const,
    of: run.units.map((u) => u.unit),
    ...against(context, run.wall, {
      left: run.left,
      right: run.right,
      near: run.depth - setBack - 16,
      far: run.depth - setBack,
      bottom: run.underside - Math.min(tall, 400),
      top: run.underside,
    }),
  }))
}

/** Doors side by side from hinge to hinge, drawers one above another, all on the face of the carcass. */
function frontBodies(unit: Unit, context: Context): readonly FittedPart[] {
  const planned = context.units.find((u) => u.unit === unit.id)
  const [width, tall, depth, thick] = [unit.width, unit.height, unit.depth, unit.front].map(valueOf)
  if (planned === undefined || planned.pose === null || width === undefined || tall === undefined) return []
  if (depth === undefined || thick === undefined || unit.doors.length + unit.drawers.length === 0) return []
  const pose = planned.pose
  const front = (id: string, box: Omit<LocalBox, 'y0' | 'y1'>): FittedPart => ({
    part: `${unit.id}.${id}`,
    name: `${planned.name}, front`,
    kind: 'front',
    of: [unit.id],
    pose,
    solid: [{ ...box, y0: depth, y1: depth + thick }],
  })
  const shut = 1.5
  const doors = unit.doors.map((door, i) => {
    const each = width / unit.doors.length
    const doorTall = valueOf(door.height) ?? tall
    return front(door.id, {
      x0: i * each + shut,
      x1: (i + 1) * each - shut,
      z0: shut,
      z1: Math.min(tall, doorTall) - shut,
    })
  })
  let top = tall
  const drawers = unit.drawers.map((drawer) => {
    const each = valueOf(drawer.height) ?? tall / unit.drawers.length
    top -= each
    return front(drawer.id, {
      x0: shut,
      x1: width - shut,
      z0: Math.max(0, top) + shut,
      z1: top + each - shut,
    })
  })
  return [...doors, ...drawers]
}
