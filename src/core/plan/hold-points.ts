import type { Finding, Operation, Stage } from './types'

/** Work that only looks, measures or marks: a finding about a unit does not stop it. */
export const LOOKING: readonly Stage[] = ['check-delivery', 'make-safe', 'survey', 'set-out']

/** Whether an operation does something to what a finding is about. */
function bearsOn(operation: Operation, finding: Finding): boolean {
  const { about, where } = finding
  if (operation.on.some((id) => about.includes(id))) return true
  const wall = operation.wall
  const drills = operation.holes.length > 0
  return drills && wall !== null && (about.includes(wall) || where?.wall === wall)
}

/** Where work that is held in hand began: nothing may stop between lifting a unit and what holds it. */
function beginningOf(order: readonly Operation[], operation: Operation): Operation {
  const held = order.find(({ holding }) => holding.some((unit) => operation.holding.includes(unit)))
  return held === undefined || order.indexOf(held) > order.indexOf(operation) ? operation : held
}

/** The work a finding stops: the first in order that bears on it; if none does, whatever comes first after looking. */
function stoppedBy(order: readonly Operation[], finding: Finding): Operation | undefined {
  const acting = order.filter(({ stage, done }) => !LOOKING.includes(stage) && !done)
  const first = acting.find((operation) => bearsOn(operation, finding)) ?? acting[0] ?? order.at(-1)
  return first === undefined ? undefined : beginningOf(acting, first)
}

/**
 * The order of work with a hold point wherever a finding that can hurt somebody is still open: the first work it bears on
 * does not begin before it is settled. One that bears on no single operation stops the first that is not looking.
 */
export function withHoldPoints(
  order: readonly Operation[],
  findings: readonly Finding[],
): readonly Operation[] {
  const stops = new Map<string, string[]>()
  for (const finding of findings) {
    if (!finding.dangerous || (finding.weight !== 'stop' && finding.weight !== 'ask')) continue
    const operation = stoppedBy(order, finding)
    if (operation !== undefined) stops.set(operation.id, [...(stops.get(operation.id) ?? []), finding.id])
  }
  return order.map((operation) => {
    const its = stops.get(operation.id)
    return its === undefined ? operation : { ...operation, holdPoint: true, stops: its }
  })
}
