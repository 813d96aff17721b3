import { type Figure, hasValue } from '../../src/core/figure'
import type { Band, Plan, PlanPoint, UnitPlan, WallFrame } from '../../src/core/plan/types'

/**
 * What a plan says for a line of a hand-worked sheet: `leg.base-1.back-left`, `hole.rail.rail-1.a-s3.along` and so on.
 * Null when the plan does not know it or has no such thing; what a plan does not print is measured in what it prints.
 */
export function planValue(plan: Plan, what: string): number | null {
  const [subject = '', ...rest] = what.split('.')
  return READERS[subject]?.(plan, rest) ?? null
}

type Reader = (plan: Plan, words: readonly string[]) => number | null

const READERS: Readonly<Record<string, Reader>> = {
  unit: (plan, [id, side]) => value(unitOf(plan, id)?.[side as 'left' | 'right']),
  part: (plan, [id, side]) => partSide(plan, id ?? '', side === 'right'),
  corner: (plan, [wall]) => value(plan.walls.find((w) => w.wall === wall)?.cornerRight),
  outline: (plan) => outlineMiss(plan),
  leg: (plan, [id, foot]) => value(standsOn(unitOf(plan, id)).find((l) => l.foot === foot)?.length),
  underside: (plan, [id]) => value(unitOf(plan, id)?.underside),
  bay: (plan, [appliance, corner]) => bayValue(plan, appliance ?? '', corner ?? ''),
  'high-point': (plan) => value(plan.floor.highPoint.z),
  'lowest-foot': (plan) => least(plan.units.flatMap((u) => standsOn(u).map((l) => value(l.floor)))),
  'plinth-low': (plan) => plinthLow(plan),
  line: (plan, [of]) => lineHeight(plan, of ?? ''),
  'stand-up': (plan, [id]) => value(unitOf(plan, id)?.standUp?.needed),
  rail: (plan, [id, end]) => value(plan.rails.find((r) => r.rail === id)?.[end as 'from' | 'to']),
  hole: (plan, words) => {
    const id = words.slice(0, -1).join('.')
    return value(
      plan.holes.find((h) => h.id === id)?.[words[words.length - 1] as 'along' | 'height' | 'depth'],
    )
  },
  band: (plan, words) => bandEdge(plan, words),
  mass: (plan, [id]) => value(unitOf(plan, id)?.lift.massStripped),
  lift: (plan, [id]) => value(unitOf(plan, id)?.lift.endLift ?? undefined),
}

function value(figure: Figure | undefined): number | null {
  return figure !== undefined && hasValue(figure) ? figure.value : null
}

function unitOf(plan: Plan, id: string | undefined): UnitPlan | undefined {
  return plan.units.find((u) => u.unit === id)
}

/** What a unit stands on, place by place: its legs, or the shims under a box without any. */
function standsOn(unit: UnitPlan | undefined): readonly { foot: string; floor: Figure; length: Figure }[] {
  return [
    ...(unit?.legs ?? []).map(({ foot, floor, extension }) => ({ foot, floor, length: extension })),
    ...(unit?.shims ?? []).map(({ foot, floor, height }) => ({ foot, floor, length: height })),
  ]
}

function least(values: readonly (number | null)[]): number | null {
  const known = values.filter((v) => v !== null)
  return known.length === 0 ? null : Math.min(...known)
}

/** Panels and fillers are printed as bodies: their sides are measured along their wall. */
function partSide(plan: Plan, id: string, right: boolean): number | null {
  const part = plan.parts?.find((p) => p.part === id)
  const [box] = part?.solid ?? []
  if (part === undefined || part.pose === null || box === undefined) return null
  const { pose } = part
  const frame = [...plan.walls].sort((a, b) => apart(a, pose.yaw) - apart(b, pose.yaw))[0]
  if (frame === undefined) return null
  return (
    (pose.x - frame.origin.x) * frame.alongDir.x +
    (pose.y - frame.origin.y) * frame.alongDir.y +
    (right ? box.x1 : box.x0)
  )
}

function apart({ alongDir }: WallFrame, yaw: number): number {
  const off = Math.abs(((Math.atan2(alongDir.y, alongDir.x) * 180) / Math.PI - yaw) % 360)
  return Math.min(off, 360 - off)
}

/** How far the end of the last wall lies from the beginning of the first. */
function outlineMiss(plan: Plan): number | null {
  const [first, last] = [plan.walls[0], plan.walls[plan.walls.length - 1]]
  const length = value(last?.length)
  if (first === undefined || last === undefined || length === null) return null
  return Math.hypot(
    last.origin.x + last.alongDir.x * length - first.origin.x,
    last.origin.y + last.alongDir.y * length - first.origin.y,
  )
}

/** The floor at a place, by the triangles and the plane that the plan prints. */
function floorAt({ floor }: Plan, at: PlanPoint): number | null {
  const points = new Map(floor.points.map((p) => [p.id, p]))
  for (const { readings } of floor.triangles) {
    const [a, b, c] = readings.map((id) => points.get(id))
    if (a === undefined || b === undefined || c === undefined) continue
    const area = cross(a.at, b.at, c.at)
    const weights = [cross(at, b.at, c.at) / area, cross(a.at, at, c.at) / area, cross(a.at, b.at, at) / area]
    if (weights.some((w) => w < -1e-6)) continue
    const heights = [a, b, c].map((p) => value(p.z))
    if (heights.some((z) => z === null)) return null
    return heights.reduce<number>((sum, z, i) => sum + (z as number) * (weights[i] as number), 0)
  }
  return floor.plane === null ? null : floor.plane.a + floor.plane.b * at.x + floor.plane.c * at.y
}

function cross(a: PlanPoint, b: PlanPoint, c: PlanPoint): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

const CORNERS = ['back-left', 'back-right', 'front-left', 'front-right'] as const

/** The floor at the corners of an appliance's bay, and the room over the highest of them. */
function bayValue(plan: Plan, appliance: string, corner: string): number | null {
  const bay = unitOf(plan, appliance.replace(/-\d+$/, '-space'))
  const frame = plan.walls.find((w) => w.wall === bay?.wall)
  const [left, right, depth] = [value(bay?.left), value(bay?.right), value(bay?.depth)]
  if (frame === undefined || left === null || right === null || depth === null) return null
  const floor = (name: string) => {
    const along = name.endsWith('left') ? left : right
    const out = name.startsWith('back') ? 0 : depth
    return floorAt(plan, {
      x: frame.origin.x + frame.alongDir.x * along + frame.outDir.x * out,
      y: frame.origin.y + frame.alongDir.y * along + frame.outDir.y * out,
    })
  }
  if (corner !== 'room') return floor(corner)
  const top = lineHeight(plan, 'base-top')
  const floors = CORNERS.map(floor)
  if (top === null || floors.some((z) => z === null)) return null
  return top - Math.max(...(floors as number[]))
}

/** The demand that a plinth covers the gap stands on the lowest floor at its line: its upper limit less the board. */
/** The lowest floor at any plinth: what the demands that plinths make of heights say of it. */
function plinthLow(plan: Plan): number | null {
  const demands = plan.heights.demands.filter((d) => d.id.startsWith('plinth-cover:'))
  return least(
    demands.map(({ because }) => {
      const floor = because.values['floor']
      return typeof floor === 'object' ? value(floor) : null
    }),
  )
}

function lineHeight(plan: Plan, of: string): number | null {
  const height = plan.heights.values.find((v) => v.of === of)?.height
  const struck = (name: string) => plan.lines.find((l) => l.of === name)?.height
  // A sheet may call the hook-on edge of a rail by the name it has with plates.
  return value(height ?? struck(of) ?? (of === 'plate' ? struck('rail') : undefined))
}

/** `socket-1.vertical.left`, `cold-main.left`; a corner strip by the end of the wall it is at. */
function bandEdge({ bands }: Plan, words: readonly string[]): number | null {
  const [about = '', second = '', third = ''] = words
  if (about === 'corner') {
    const strips = bands.filter((b) => b.kind === 'corner' && b.wall === second)
    return third === 'left' ? least(strips.map((b) => b.right)) : most(strips.map((b) => b.left))
  }
  const its = bands.filter((b) => b.about.includes(about))
  const band = third === '' ? its[0] : its.find((b) => b.kind === `accessory-${second}`)
  return (
    band?.[(third === '' ? second : third) as keyof Pick<Band, 'left' | 'right' | 'bottom' | 'top'>] ?? null
  )
}

function most(values: readonly (number | null)[]): number | null {
  const known = values.filter((v) => v !== null)
  return known.length === 0 ? null : Math.max(...known)
}
