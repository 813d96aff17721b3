import { hasValue, valueOf } from '../figure'
import type { HeightName } from '../kitchen/kinds'
import type { FinishingPart, Kitchen, Unit, Worktop } from '../kitchen/schema'
import type { Survey } from '../survey/survey'
import { partName, worktopName } from '../units/part-name'
import type { PartPosition } from '../units/positions'
import { frontBodies } from './front-bodies'
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
  const units = new Map(context.units.map((u) => [u.unit, u]))
  return [
    ...kitchen.worktops.flatMap((w) => worktopBodies(w, context)),
    ...kitchen.finishing.flatMap((f) => finishingBodies(f, context)),
    ...kitchen.units.flatMap((u) => frontBodies(u, units.get(u.id), cornerOf(u, context))),
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
    name: worktopName(context.kitchen, worktop),
    kind: 'worktop' as const,
    of: run.units.map((u) => u.unit),
    ...against(context, run.wall, { left: run.left, right: run.right, near: 0, far: depth, bottom, top }),
  }))
}

function finishingBodies(part: FinishingPart, context: Context): readonly FittedPart[] {
  switch (part.kind) {
    case 'plinth':
      return plinthBodies(part, context)
    case 'cornice':
    case 'pelmet':
      return trimBodies(part, context)
    case 'upstand':
    case 'splashback':
      return backBodies(part, context)
    default:
      return besideBodies(part, context)
  }
}

const named = (part: FinishingPart, { kitchen }: Context) => ({
  part: part.id,
  name: partName(kitchen, part),
  kind: part.kind,
  of: part.of,
})

/** An end panel, filler or scribe beside its unit: a panel as deep as the unit and from the floor, a filler at its face. */
function besideBodies(part: FinishingPart, context: Context): readonly FittedPart[] {
  const wall = part.wall ?? context.units.find((u) => part.of.includes(u.unit))?.wall
  const beside = runsOf(context, part.of)[0]
  if (wall === undefined || wall === null || beside === undefined) return []
  const placed = context.parts.find((p) => p.part.id === part.id)
  const ends =
    placed === undefined ? inFrontOfCorner(part, context) : [placed.left, placed.right].map(valueOf)
  const [left, right] = ends ?? []
  const top = valueOf((beside.units[0] as UnitPlan).top)
  if (left === undefined || right === undefined || top === undefined) return []
  const isPanel = part.kind === 'end-panel'
  const tall = valueOf(part.height)
  const bottom = isPanel && tall !== undefined ? top - tall : beside.underside
  const far = isPanel ? (valueOf(part.depth) ?? beside.depth) : beside.depth
  const near = isPanel ? 0 : beside.depth - (valueOf(part.depth) ?? BOARD)
  return [{ ...named(part, context), ...against(context, wall, { left, right, near, far, bottom, top }) }]
}

/** Thickness of a part where nobody has said, for the picture only, mm. */
const BOARD = 18

/**
 * A filler of a corner unit with no place of its own: on the face of the unit, up to where the front of the other run
 * crosses it. For two fronts `here` and `there` out from walls that meet at an angle θ that is at
 * (there + here · cos θ) / sin θ from the corner.
 */
function inFrontOfCorner(part: FinishingPart, context: Context): readonly number[] | null {
  const unit = context.kitchen.units.find((u) => part.of.includes(u.id) && cornerOf(u, context) !== null)
  if (unit === undefined) return null
  const end = cornerOf(unit, context)
  const { frames } = context.survey
  const at = frames.findIndex((frame) => frame.wall === unit.wall)
  const round = frames[(at + (end === 'right' ? 1 : frames.length - 1)) % frames.length]
  const angle = (end === 'right' ? frames[at] : round)?.cornerRight
  const other = context.units.find((u) => u.wall === round?.wall && u.kind === unitBeside(unit))
  const [degrees, here, there, length, width] = [
    angle,
    unit.depth,
    other?.depth,
    frames[at]?.length,
    part.width,
  ].map((figure) => (figure === undefined ? undefined : valueOf(figure)))
  if (degrees === undefined || here === undefined || there === undefined) return null
  if (length === undefined || width === undefined) return null
  const front = valueOf(unit.front) ?? 0
  const turn = (degrees * Math.PI) / 180
  const meets = (there + front + (here + front) * Math.cos(turn)) / Math.sin(turn)
  return end === 'right' ? [length - meets - width, length - meets] : [meets, meets + width]
}

const unitBeside = (corner: Unit) => (corner.kind === 'corner-wall' ? 'wall' : 'base')

/** Cornices on top of their units, pelmets under their front edges. */
function trimBodies(part: FinishingPart, context: Context): readonly FittedPart[] {
  const tall = valueOf(part.height)
  if (tall === undefined) return []
  const isPelmet = part.kind === 'pelmet'
  return runsOf(context, part.of).flatMap((run, i) => {
    const tops = run.units.flatMap((u) => valueOf(u.top) ?? [])
    if (tops.length < run.units.length) return []
    const bottom = isPelmet ? run.underside - tall : Math.max(...tops)
    const near = isPelmet ? run.depth - BOARD : 0
    const box = { left: run.left, right: run.right, near, far: run.depth, bottom, top: bottom + tall }
    return [{ ...onWall(part, context, run, i), ...against(context, run.wall, box) }]
  })
}

/** Upstands and splashbacks on the worktop, against the wall. */
function backBodies(part: FinishingPart, context: Context): readonly FittedPart[] {
  const tall = valueOf(part.height)
  const bottom = height(context, 'worktop-top')
  if (tall === undefined || bottom === undefined) return []
  const far = valueOf(part.depth) ?? BOARD
  return runsOf(context, part.of).map((run, i) => {
    const box = { left: run.left, right: run.right, near: 0, far, bottom, top: bottom + tall }
    return { ...onWall(part, context, run, i), ...against(context, run.wall, box) }
  })
}

/** One body of a part for each wall it runs along. */
function onWall(part: FinishingPart, context: Context, run: Run, i: number) {
  return {
    ...named(part, context),
    part: i === 0 ? part.id : `${part.id}+${run.wall}`,
    of: run.units.map((u) => u.unit),
  }
}

function plinthBodies(part: FinishingPart, context: Context): readonly FittedPart[] {
  const tall = valueOf(part.height)
  if (tall === undefined) return []
  const setBack = valueOf(part.setBack) ?? 50
  return runsOf(context, part.of).map((run, i) => ({
    ...onWall(part, context, run, i),
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

/** At which end of its wall a corner unit stands; null for other units, and while it is not known. */
function cornerOf(unit: Unit, { units, survey }: Context): 'left' | 'right' | null {
  if (unit.kind !== 'corner-base' && unit.kind !== 'corner-wall') return null
  if (hasValue(unit.returnLeft)) return 'left'
  if (hasValue(unit.returnRight)) return 'right'
  const planned = units.find((u) => u.unit === unit.id)
  const length = survey.frame(unit.wall)?.length
  const [long, left, right] = [length, planned?.left, planned?.right].map((f) =>
    f === undefined ? undefined : valueOf(f),
  )
  if (long === undefined || left === undefined || right === undefined) return null
  return left <= long - right ? 'left' : 'right'
}
