import type { InputId } from '../figure'
import type { Finding, Hole, Operation, Stage } from './types'

/** Work that only looks, measures or marks: a finding about a unit does not stop it. */
export const LOOKING: readonly Stage[] = ['check-delivery', 'make-safe', 'survey', 'set-out']

/** Whether an operation goes into its wall: by a hole, or by cutting it open. */
const goesIn = ({ holes, kind }: Operation) => holes.length > 0 || kind === 'fit-nogging'

/** The stud a fact is of: `walls.a.studs.s1.confirmed`. */
function studIn(fact: InputId): string | undefined {
  const [list, , of, stud] = fact.split('.')
  return list === 'walls' && of === 'studs' ? stud : undefined
}

/**
 * How work can bear on what a finding is about, the closest first: it makes one of the holes named, or one in the stud
 * named; it should be fixed to the wall of that stud and has found nothing to hold in; it is done to the unit, appliance or
 * part named; it goes into the wall.
 */
function bearings(finding: Finding, holes: readonly Hole[]): readonly ((operation: Operation) => boolean)[] {
  const { about, where } = finding
  const isOn = (wall: string | null) => wall !== null && (about.includes(wall) || where?.wall === wall)
  const named = new Set(
    holes
      .filter((h) => about.includes(h.id) || (isOn(h.wall) && about.includes(h.stud ?? '')))
      .map((h) => h.id),
  )
  const isOfStud = (finding.settledBy ?? []).some((fact) => about.includes(studIn(fact) ?? ''))
  return [
    (o) => o.holes.some((id) => named.has(id)),
    (o) => isOfStud && o.kind === 'fix' && o.holes.length === 0 && isOn(o.wall),
    (o) => o.on.some((id) => id !== o.wall && about.includes(id)),
    (o) => goesIn(o) && isOn(o.wall),
  ]
}

/** Where work that is held in hand began: nothing may stop between lifting a unit and what holds it. */
function beginningOf(order: readonly Operation[], operation: Operation): Operation {
  const held = order.find(({ holding }) => holding.some((unit) => operation.holding.includes(unit)))
  return held === undefined || order.indexOf(held) > order.indexOf(operation) ? operation : held
}

/** The work a finding stops: the first in order of those that bear on it most closely; if none does, whatever comes first after looking. */
function stoppedBy(
  order: readonly Operation[],
  finding: Finding,
  holes: readonly Hole[],
): Operation | undefined {
  const acting = order.filter(({ stage, done }) => !LOOKING.includes(stage) && !done)
  const bearing = bearings(finding, holes).map((bears) => acting.find(bears))
  const first = bearing.find((operation) => operation !== undefined) ?? acting[0] ?? order.at(-1)
  return first === undefined ? undefined : beginningOf(acting, first)
}

/**
 * The order of work with a hold point wherever a finding that can hurt somebody is still open: the first work it bears on
 * does not begin before it is settled. One that bears on no single operation stops the first that is not looking.
 */
export function withHoldPoints(
  order: readonly Operation[],
  findings: readonly Finding[],
  holes: readonly Hole[],
): readonly Operation[] {
  const stops = new Map<string, string[]>()
  for (const finding of findings) {
    if (!finding.dangerous || (finding.weight !== 'stop' && finding.weight !== 'ask')) continue
    const operation = stoppedBy(order, finding, holes)
    if (operation !== undefined) stops.set(operation.id, [...(stops.get(operation.id) ?? []), finding.id])
  }
  return order.map((operation) => {
    const its = stops.get(operation.id)
    return its === undefined ? operation : { ...operation, holdPoint: true, stops: its }
  })
}
