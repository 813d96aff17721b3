import type { Operation } from '../../core/plan/types'
import { type Case, wallOf } from '../case'
import type { GivenUnit } from '../given'
import { isCarcass, isHung } from '../positions'
import { isStudWall } from '../wall-make-up'
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
    checkCanBeSecured(c, unit, c.plan.operations[from])
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

/**
 * Never up what cannot be secured: while a hole of its last fixing is asked about, or too few may be drilled, the step
 * that stands it up or hangs it is a hold point.
 */
function checkCanBeSecured(c: Case, unit: GivenUnit, op: Operation | undefined): void {
  if (op === undefined || op.holdPoint || (op.kind !== 'stand-up' && op.kind !== 'hang')) return
  const tall = unit.kind === 'tall' && !isHung(unit)
  const purposes: readonly string[] = tall ? ['tall-restraint'] : ['second-fixing', 'back-rail']
  const holes = c.plan.holes.filter(
    (h) => purposes.includes(h.purpose) && h.verdict !== 'refused' && h.for.includes(unit.id),
  )
  const least = tall ? 1 : leastBehind(c, unit)
  if (holes.length < least || holes.some((h) => h.verdict === 'ask')) {
    c.refuse('hold point', op.id, `what is to hold ${unit.id} at last is not settled, and work does not stop`)
  }
}

/** Screws behind a hung unit: two where the wall does not carry by its plates alone, none where it does. */
function leastBehind(c: Case, unit: GivenUnit): number {
  const wall = wallOf(c, unit.wall)
  const wants = wall === undefined || wall.construction === null || isStudWall(wall)
  return wants || unit.stands === 'back-rail-screws' ? 2 : 0
}
