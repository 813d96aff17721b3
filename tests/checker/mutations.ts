/**
 * Ways of spoiling a plan, each by chance from a seed: whatever comes of one must be refused. After every change the list
 * of preferred reasons set aside is put right again, so that a plan is not refused for its bookkeeping alone.
 */
import type { Figure } from '../../src/core/figure'
import type { Operation, Plan, Pose } from '../../src/core/plan/types'

export interface Spoilt {
  readonly kitchen: unknown
  readonly plan: Plan
  /** What was done, for the message of a test that fails. */
  readonly how: string
}
export type Spoil = (kitchen: Kitchen, plan: Plan, next: () => number) => Spoilt | null

/** As much of a kitchen file as is changed here. */
export interface Kitchen {
  readonly boxes?: readonly unknown[]
  readonly walls: readonly { readonly id: string }[]
}

/** Repeatable chance. */
export function chance(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32
  }
}

function pick<T>(items: readonly T[], next: () => number): T | undefined {
  return items[Math.floor(next() * items.length)]
}

function replaced<T>(items: readonly T[], one: T, by: T): readonly T[] {
  return items.map((item) => (item === one ? by : item))
}

/** Shifts a figure by a millimetre one way or the other; null when it has no value. */
function nudged(figure: Figure, next: () => number): Figure | null {
  return figure.state === 'unknown' ? null : { ...figure, value: figure.value + (next() < 0.5 ? 1 : -1) }
}

function tidied(plan: Plan): Plan {
  const place = new Map(plan.operations.map((op, i) => [op.id, i]))
  const reasons = plan.reasons.filter((r) => place.has(r.before) && place.has(r.after))
  const setAside = reasons
    .filter((r) => !r.hard && (place.get(r.before) ?? 0) > (place.get(r.after) ?? 0))
    .map((r) => r.id)
  return { ...plan, reasons, order: { ...plan.order, setAside } }
}

function without(plan: Plan, ids: readonly string[]): Plan {
  return tidied({ ...plan, operations: plan.operations.filter((op) => !ids.includes(op.id)) })
}

/** Takes an operation out of the order and puts it in again right before another. */
function moved(plan: Plan, id: string, before: string): Plan {
  const op = plan.operations.filter((o) => o.id === id)
  const rest = plan.operations.filter((o) => o.id !== id)
  return tidied({ ...plan, operations: rest.flatMap((o) => (o.id === before ? [...op, o] : [o])) })
}

const dropOperation: Spoil = (kitchen, plan, next) => {
  const op = pick(plan.operations, next)
  return op === undefined ? null : { kitchen, plan: without(plan, [op.id]), how: `without ${op.id}` }
}

const swapAcrossReason: Spoil = (kitchen, plan, next) => {
  const reason = pick(
    plan.reasons.filter((r) => r.hard),
    next,
  )
  if (reason === undefined) return null
  return { kitchen, plan: moved(plan, reason.after, reason.before), how: `against ${reason.id}` }
}

const swapUntold: Spoil = (kitchen, plan, next) => {
  const reason = pick(
    plan.reasons.filter((r) => r.hard),
    next,
  )
  if (reason === undefined) return null
  const untold = { ...plan, reasons: plan.reasons.filter((r) => r !== reason) }
  return {
    kitchen,
    plan: moved(untold, reason.after, reason.before),
    how: `against ${reason.id}, struck out`,
  }
}

const shiftLine: Spoil = (kitchen, plan, next) => {
  const line = pick(plan.lines, next)
  const height = line === undefined ? null : nudged(line.height, next)
  if (line === undefined || height === null) return null
  return {
    kitchen,
    plan: { ...plan, lines: replaced(plan.lines, line, { ...line, height }) },
    how: `line ${line.id}`,
  }
}

const shiftMark: Spoil = (kitchen, plan, next) => {
  const mark = pick(plan.marks, next)
  const along = mark === undefined ? null : nudged(mark.along, next)
  if (mark === undefined || along === null) return null
  return {
    kitchen,
    plan: { ...plan, marks: replaced(plan.marks, mark, { ...mark, along }) },
    how: `mark ${mark.id}`,
  }
}

const shiftLeg: Spoil = (kitchen, plan, next) => {
  const unit = pick(
    plan.units.filter((u) => u.legs.length > 0),
    next,
  )
  const leg = unit === undefined ? undefined : pick(unit.legs, next)
  const key = pick(['floor', 'extension', 'x', 'y'] as const, next) ?? 'x'
  if (unit === undefined || leg === undefined) return null
  const by = key === 'x' || key === 'y' ? leg[key] + 1 : nudged(leg[key], next)
  if (by === null) return null
  const legs = replaced(unit.legs, leg, { ...leg, [key]: by })
  return {
    kitchen,
    plan: { ...plan, units: replaced(plan.units, unit, { ...unit, legs }) },
    how: `${key} of leg ${unit.unit}.${leg.foot}`,
  }
}

const shiftHole: Spoil = (kitchen, plan, next) => {
  const hole = pick(plan.holes, next)
  const key = pick(['along', 'height'] as const, next) ?? 'along'
  const by = hole === undefined ? null : nudged(hole[key], next)
  if (hole === undefined || by === null) return null
  return {
    kitchen,
    plan: { ...plan, holes: replaced(plan.holes, hole, { ...hole, [key]: by }) },
    how: `${key} of hole ${hole.id}`,
  }
}

function nudgedPose(pose: Pose, next: () => number): Pose {
  const key = pick(['x', 'y', 'z'] as const, next) ?? 'x'
  return { ...pose, [key]: pose[key] + (next() < 0.5 ? 1 : -1) }
}

/** A unit a millimetre off; half of the time its path goes there with it. */
const shiftPose: Spoil = (kitchen, plan, next) => {
  const unit = pick(
    plan.units.filter((u) => u.pose !== null && u.solid.length > 0),
    next,
  )
  if (unit === undefined || unit.pose === null) return null
  const pose = nudgedPose(unit.pose, next)
  const units = replaced(plan.units, unit, { ...unit, pose })
  const path = plan.paths.find((p) => p.unit === unit.unit)
  const last = path?.segments.at(-1)
  if (next() < 0.5 || path === undefined || last === undefined || last.kind !== 'move') {
    return { kitchen, plan: { ...plan, units }, how: `pose of ${unit.unit}` }
  }
  const segments = replaced(path.segments, last, { ...last, to: pose })
  return {
    kitchen,
    plan: { ...plan, units, paths: replaced(plan.paths, path, { ...path, segments }) },
    how: `pose and path of ${unit.unit}`,
  }
}

const SUPPORTS = [
  'fix-plates',
  'drill-plates',
  'fix-rail',
  'drill-rail',
  'set-legs',
  'fit-hangers',
  'second-fix',
  'fix',
  'restrain',
  'lock',
]

/** Plates, rail, legs, fixings: by the operation, or by the thing itself. */
const removeSupport: Spoil = (kitchen, plan, next) => {
  const ways: readonly (() => Spoilt | null)[] = [
    () => {
      const op = pick(
        plan.operations.filter((o) => SUPPORTS.includes(o.kind)),
        next,
      )
      return op === undefined ? null : { kitchen, plan: without(plan, [op.id]), how: `without ${op.id}` }
    },
    () => {
      const unit = pick(
        plan.units.filter((u) => u.legs.length > 0),
        next,
      )
      if (unit === undefined) return null
      const gone = pick(unit.legs, next)
      const units = replaced(plan.units, unit, { ...unit, legs: unit.legs.filter((l) => l !== gone) })
      return { kitchen, plan: { ...plan, units }, how: `without leg ${unit.unit}.${gone?.foot}` }
    },
    () => {
      const hole = pick(
        plan.holes.filter((h) => h.verdict !== 'refused'),
        next,
      )
      if (hole === undefined) return null
      const strip = (ids: readonly string[]): readonly string[] => ids.filter((id) => id !== hole.id)
      return {
        kitchen,
        plan: {
          ...plan,
          holes: plan.holes.filter((h) => h !== hole),
          operations: plan.operations.map((op) => ({ ...op, holes: strip(op.holes) })),
        },
        how: `without hole ${hole.id}`,
      }
    },
    () => {
      const rail = pick(plan.rails, next)
      if (rail === undefined) return null
      return {
        kitchen,
        plan: { ...plan, rails: plan.rails.filter((r) => r !== rail) },
        how: `without rail ${rail.rail}`,
      }
    },
  ]
  return pick(ways, next)?.() ?? null
}

/** From the moment a unit hangs or a tall is up, to the operation that secures it. */
function hangingSpells(plan: Plan): readonly (readonly Operation[])[] {
  return plan.operations.flatMap((op, from) => {
    if (op.kind !== 'hang' && op.kind !== 'stand-up') return []
    const unit = op.on[0] ?? ''
    const to = plan.operations.findIndex((o) =>
      o.changes.some((ch) => ch.unit === unit && ch.to === 'secured'),
    )
    return to < 0 ? [] : [plan.operations.slice(from, to + 1)]
  })
}

/** Something else is done, or nobody holds it, while a unit is not secured; or its doors go on before. */
const letGo: Spoil = (kitchen, plan, next) => {
  const spell = pick(hangingSpells(plan), next)
  const first = spell?.[0]
  if (spell === undefined || first === undefined) return null
  const unit = first.on[0] ?? ''
  if (next() < 0.5) {
    const other = pick(
      plan.operations.filter((op) => !op.on.includes(unit) && op.holding.length === 0),
      next,
    )
    const before = pick(spell.slice(1), next)
    if (other === undefined || before === undefined) return null
    return { kitchen, plan: moved(plan, other.id, before.id), how: `${other.id} before ${before.id}` }
  }
  const op = pick(spell.slice(0, -1), next)
  if (op === undefined) return null
  return {
    kitchen,
    plan: { ...plan, operations: replaced(plan.operations, op, { ...op, holding: [] }) },
    how: `nobody holds at ${op.id}`,
  }
}

/** A box put into the room somewhere on a unit's way in. */
const obstacle: Spoil = (kitchen, plan, next) => {
  const path = pick(plan.paths, next)
  const unit = plan.units.find((u) => u.unit === path?.unit)
  const frame = plan.walls.find((w) => w.wall === unit?.wall)
  const segment = pick(path?.segments.filter((s) => s.kind === 'move') ?? [], next)
  const solid = unit === undefined ? undefined : pick(unit.solid, next)
  if (segment === undefined || segment.kind !== 'move' || solid === undefined || frame === undefined)
    return null
  const share = next()
  const { from, to } = segment
  const at = (a: number, b: number): number => a + (b - a) * share
  const inside = (a: number, b: number): number => a + (b - a) * (0.1 + 0.8 * next())
  const turn = (to.yaw * Math.PI) / 180
  const lx = inside(solid.x0, solid.x1)
  const ly = inside(solid.y0, solid.y1)
  const x = at(from.x, to.x) + lx * Math.cos(turn) + ly * Math.sin(turn) - frame.origin.x
  const y = at(from.y, to.y) + lx * Math.sin(turn) - ly * Math.cos(turn) - frame.origin.y
  const z = at(from.z, to.z) + inside(solid.z0, solid.z1)
  const along = x * frame.alongDir.x + y * frame.alongDir.y
  const out = x * frame.outDir.x + y * frame.outDir.y
  const half = 5 + next() * 100
  const box = {
    id: 'in-the-way',
    kind: 'boxing',
    wall: frame.wall,
    left: { at: along - half },
    right: { at: along + half },
    near: Math.max(0, out - half),
    out: out + half,
    bottom: { up: z - half },
    top: { up: z + half },
  }
  return {
    kitchen: { ...kitchen, boxes: [...(kitchen.boxes ?? []), box] },
    plan,
    how: `box of ${Math.round(2 * half)} in the way of ${path?.unit}`,
  }
}

/** A tall or hung unit goes up though what is to hold it is not settled; what it stopped for is stopped for before it. */
const strikeHoldPoint: Spoil = (kitchen, plan, next) => {
  const [first] = plan.operations
  const op = pick(
    plan.operations.filter((o) => (o.kind === 'stand-up' || o.kind === 'hang') && isUnsettled(plan, o)),
    next,
  )
  if (op === undefined || first === undefined) return null
  const struck = replaced(plan.operations, op, { ...op, holdPoint: false, stops: [] })
  const stops = [...first.stops, ...op.stops]
  const operations = replaced(struck, first, { ...first, stops, holdPoint: true })
  return { kitchen, plan: { ...plan, operations }, how: `no hold point at ${op.id}` }
}

function isUnsettled(plan: Plan, { on }: Operation): boolean {
  return plan.holes.some(
    (h) =>
      (h.purpose === 'tall-restraint' || h.purpose === 'second-fixing') &&
      h.verdict === 'ask' &&
      h.for.some((unit) => on.includes(unit)),
  )
}

export const SPOILS: Readonly<Record<string, Spoil>> = {
  'operation dropped': dropOperation,
  'swapped across a hard reason': swapAcrossReason,
  'hard reason struck out and its ends swapped': swapUntold,
  'line shifted 1 mm': shiftLine,
  'mark shifted 1 mm': shiftMark,
  'leg shifted 1 mm': shiftLeg,
  'hole shifted 1 mm': shiftHole,
  'pose shifted 1 mm': shiftPose,
  'support removed': removeSupport,
  'let go before secured': letGo,
  'obstacle in a path': obstacle,
  'hold point struck out': strikeHoldPoint,
}
