import type { Operation } from '../../core/plan/types'
import type { Case } from '../case'
import { isCarcass, isHung } from '../positions'
import { reached } from './changes'

/**
 * Nobody lets go before a unit is secured: from the moment a unit hangs on its hooks, or a tall is stood up, until it is
 * secured, only its own operations come, or ones during which somebody is said to hold it.
 */
export function checkHeld(c: Case): void {
  for (const unit of c.given.units.filter(isCarcass)) {
    const from = startsHanging(c, unit.id, isHung(unit), unit.kind === 'tall')
    if (from === undefined) continue
    const to = reached(c, unit.id, 'secured') ?? c.plan.operations.length
    c.plan.operations.slice(from, to + 1).forEach((op, i) => {
      if (!attends(op, unit.id)) {
        c.refuse('let go', op.id, `${unit.id} is not secured yet and nobody is said to hold it`)
      }
      const last = from + i === to
      if (!last && !op.holding.includes(unit.id)) {
        c.refuse('let go', op.id, `nobody is said to hold ${unit.id}, which is not secured yet`)
      }
    })
    checkPeople(c, unit.id, c.plan.operations[from])
  }
}

function startsHanging(c: Case, unit: string, hung: boolean, tall: boolean): number | undefined {
  if (hung) {
    const index = c.plan.operations.findIndex((op) => op.kind === 'hang' && op.on.includes(unit))
    return index < 0 ? reached(c, unit, 'hooked', 'held') : index
  }
  if (!tall) return undefined
  const index = c.plan.operations.findIndex((op) => op.kind === 'stand-up' && op.on.includes(unit))
  return index < 0 ? reached(c, unit, 'standing') : index
}

function attends(op: Operation, unit: string): boolean {
  return op.on.includes(unit) || op.holding.includes(unit) || op.changes.some((ch) => ch.unit === unit)
}

/** As many people as the plan's own lift asks for. */
function checkPeople(c: Case, unit: string, op: Operation | undefined): void {
  const people = c.planUnits.get(unit)?.lift.people ?? null
  if (op !== undefined && people !== null && op.people < people) {
    c.refuse('let go', op.id, `the lift asks for ${people} people and ${op.people} are there`)
  }
}
