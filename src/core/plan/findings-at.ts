import { gravestFirst } from './gravest-first'
import { LOOKING } from './hold-points'
import type { Finding, Hole, Operation, Plan, WallId } from './types'

/** Work on a unit by itself, or on one that is in its place: what is found about its place is told as it goes there. */
const ASIDE: readonly string[] = ['assemble', 'set-legs', 'fit-hangers', 'level', 'lock', 'join']
/** Nearer than this, mm, a finding's place is the place of a hole. */
const SAME = 1

/** Holes an operation makes or marks, and those refused that it would have made. */
function holesOf(plan: Plan, operation: Operation): readonly Hole[] {
  const own = plan.holes.filter((h) => operation.holes.includes(h.id))
  const purposes = new Set(own.map((h) => h.purpose))
  const refused = plan.holes.filter(
    (h) =>
      h.verdict === 'refused' &&
      purposes.has(h.purpose) &&
      operation.on.some((id) => h.id.startsWith(`${h.purpose}.${id}.`)),
  )
  return [...own, ...refused.filter((h) => !own.includes(h))]
}

function isAtHole(finding: Finding, hole: Hole): boolean {
  const { about, where } = finding
  if (about.includes(hole.id)) return true
  if (where === null || where.wall !== hole.wall || where.along === null || where.height === null)
    return false
  const { along, height } = hole
  if (along.state === 'unknown' || height.state === 'unknown') return false
  return Math.abs(along.value - where.along) < SAME && Math.abs(height.value - where.height) < SAME
}

/** What is found about a lift is told where it is lifted. */
const isLift = (finding: Finding) => finding.rule.startsWith('lift-') || finding.rule === 'heavy-lift-late'

/** What is found about a hole, by its id or by its place, is told where that hole is traced for, marked and made. */
const isAboutHoles = (plan: Plan, finding: Finding) => plan.holes.some((h) => isAtHole(finding, h))

/** Whether somebody at this operation should know of a finding. */
function concerns(plan: Plan, operation: Operation, finding: Finding): boolean {
  if (operation.stops.includes(finding.id)) return true
  if (holesOf(plan, operation).some((h) => isAtHole(finding, h))) return true
  const { about } = finding
  const units = about.filter((id) => plan.units.some((u) => u.unit === id))
  // What is about a unit and the wall it meets is told at the unit.
  if (!operation.on.some((id) => (units.length > 0 ? units : about).includes(id))) return false
  if (isAboutHoles(plan, finding)) return operation.kind === 'trace'
  if (isLift(finding)) return operation.path !== null || units.length === 0
  if (about.includes('room')) return operation.stage === 'make-safe'
  const isWholeWall = finding.where !== null && finding.where.along === null
  return isWholeWall ? operation.stage !== 'set-out' : !ASIDE.includes(operation.kind)
}

/** What has been found that bears on an operation: the gravest first, and within a weight what can hurt someone. */
export function findingsAt(plan: Plan, operation: Operation): readonly Finding[] {
  return plan.findings.filter((f) => concerns(plan, operation, f)).sort(gravestFirst)
}

/** Letters of the findings of a step, as they are flagged and listed: A to Z, then AA. Holes have the numbers. */
export function letterOf(place: number): string {
  const letter = String.fromCharCode(65 + (place % 26))
  return place < 26 ? letter : letterOf(Math.floor(place / 26) - 1) + letter
}

/** A finding with its letter in the list of its step. */
export interface Lettered {
  readonly finding: Finding
  readonly letter: string
}

/** The findings of an operation in the order of their list; one that is open and not of them comes last. */
export function letteredFindings(
  plan: Plan,
  operation: Operation | null,
  open: string | null,
): readonly Lettered[] {
  const own = operation === null ? [] : findingsAt(plan, operation)
  const other = own.some((f) => f.id === open) ? undefined : plan.findings.find((f) => f.id === open)
  const all = other === undefined ? own : [...own, other]
  return all.map((finding, i) => ({ finding, letter: letterOf(i) }))
}

/** What is to be settled before an operation with a hold point: what stops it, or else the asks that bear on it. */
export function toSettle(plan: Plan, operation: Operation): readonly Finding[] {
  if (!operation.holdPoint) return []
  const found = findingsAt(plan, operation)
  const { stops } = operation
  if (stops.length > 0) return found.filter((f) => stops.includes(f.id))
  // Looking and tracing is how an ask is settled.
  return LOOKING.includes(operation.stage)
    ? []
    : found.filter((f) => f.weight === 'stop' || f.weight === 'ask')
}

/**
 * The operation at which a finding is best looked at: the one it stops, else the first work it bears on, else looking. One
 * with a place that no work bears on is looked at when its wall is.
 */
export function operationOf(plan: Plan, finding: Finding): Operation | undefined {
  const bearing = plan.operations.filter((o) => concerns(plan, o, finding))
  const { where } = finding
  return (
    bearing.find((o) => o.stops.includes(finding.id)) ??
    bearing.find((o) => !LOOKING.includes(o.stage)) ??
    bearing[0] ??
    (where === null ? undefined : plan.operations.find((o) => o.wall === where.wall))
  )
}

/** A place a finding speaks of: a spot on a wall, a hole in it, a unit, or a wall as a whole. */
export type FindingPlace =
  | { readonly kind: 'spot'; readonly wall: WallId; readonly along: number; readonly height: number }
  | { readonly kind: 'hole'; readonly hole: Hole }
  | { readonly kind: 'unit'; readonly unit: string }
  | { readonly kind: 'part'; readonly part: string }
  | { readonly kind: 'wall'; readonly wall: WallId }

/** Every place in the room that a finding speaks of, the one it is told at first; none: it is about all of the job. */
export function placesOf(plan: Plan, finding: Finding): readonly FindingPlace[] {
  const { about, where } = finding
  const holes = plan.holes.flatMap((h): readonly FindingPlace[] => {
    const isPlaced = h.along.state !== 'unknown' && h.height.state !== 'unknown'
    return about.includes(h.id) && isPlaced ? [{ kind: 'hole', hole: h }] : []
  })
  if (holes.length > 0) return holes
  const units = plan.units.filter((u) => about.includes(u.unit) && u.pose !== null)
  if (where !== null && where.along !== null) {
    const { wall, along } = where
    const height = where.height ?? middleOf(plan, finding)
    return [{ kind: 'spot', wall, along, height }]
  }
  if (units.length > 0) return units.map((u) => ({ kind: 'unit', unit: u.unit }))
  const parts = (plan.parts ?? []).filter((p) => about.includes(p.part) && p.pose !== null)
  if (parts.length > 0) return parts.map((p) => ({ kind: 'part', part: p.part }))
  const walls = plan.walls.filter((w) => about.includes(w.wall) || w.wall === where?.wall)
  return walls.map((w) => ({ kind: 'wall', wall: w.wall }))
}

/** Where no height is given: the middle of the unit it is about, or the line. */
function middleOf(plan: Plan, finding: Finding): number {
  const unit = plan.units.find((u) => finding.about.includes(u.unit) && u.wall === finding.where?.wall)
  if (unit === undefined || unit.underside.state === 'unknown' || unit.top.state === 'unknown') return 0
  return (unit.underside.value + unit.top.value) / 2
}
