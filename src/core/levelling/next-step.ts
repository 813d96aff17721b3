import { type Figure, hasValue, known } from '../figure'
import type { Operation, OperationCheck, UnitPlan } from '../plan/types'
import type { Lie } from './lie'
import type { Axis } from './vial'

/** A check of an operation that the level answers: which way it is read, and over what length its figure is meant. */
export interface LevelCheck {
  readonly axis: Axis
  readonly check: OperationCheck
  readonly over: Figure
}

const A_METRE = known(1000, 0, 'mm', [], { kind: 'geometry', why: 'the check is asked over a metre' })

/** A hung unit is level when both ends of its underside are on their line. */
const ASKED: Readonly<Record<string, { readonly axis: Axis; readonly over: (unit: UnitPlan) => Figure }>> = {
  'check.level-left-to-right': { axis: 'along', over: (u) => u.width },
  'check.level-front-to-back': { axis: 'out', over: (u) => u.depth },
  'check.tall-plumb-side': { axis: 'along', over: () => A_METRE },
  'check.tall-plumb-front': { axis: 'out', over: () => A_METRE },
  'check.underside-to-line': { axis: 'along', over: (u) => u.width },
}

/** The checks a level answers, in the order they are read. */
export function levelChecks({ checks }: Operation, unit: UnitPlan): readonly LevelCheck[] {
  return checks.flatMap((check) => {
    const asked = ASKED[check.ask.key]
    return asked === undefined ? [] : [{ axis: asked.axis, check, over: asked.over(unit) }]
  })
}

export interface Verdict {
  /** mm out of level over the length the check is meant over. */
  readonly off: number
  readonly over: number
  readonly limit: number
  readonly isWithin: boolean
}

/** How a unit lying so answers a check; null while the check has no figure. */
export function verdictOf({ check, over, axis }: LevelCheck, lie: Lie): Verdict | null {
  const { tolerance } = check
  if (tolerance === null || !hasValue(tolerance) || !hasValue(over)) return null
  const off = Math.abs(lie[axis]) * over.value
  return { off, over: over.value, limit: tolerance.value, isWithin: off <= tolerance.value }
}

/** What is to be done next, as a fitter goes on: this way, the other way, legs that bear nothing, what else is read. */
export type NextStep =
  | { readonly kind: 'turn' }
  | { readonly kind: 'other-way'; readonly axis: Axis }
  | { readonly kind: 'grip'; readonly legs: readonly string[] }
  | { readonly kind: 'read-on'; readonly checks: readonly OperationCheck[] }

export function nextStep(operation: Operation, unit: UnitPlan, lie: Lie, axis: Axis): NextStep {
  const asked = levelChecks(operation, unit)
  const isOff = (c: LevelCheck) => verdictOf(c, lie)?.isWithin !== true
  if (asked.some((c) => c.axis === axis && isOff(c))) return { kind: 'turn' }
  const other = asked.find((c) => c.axis !== axis && isOff(c))
  if (other !== undefined) return { kind: 'other-way', axis: other.axis }
  if (lie.hanging.length > 0) return { kind: 'grip', legs: lie.hanging.map((h) => h.id) }
  const answered = new Set(asked.filter((c) => isZero(c.check)).map((c) => c.check.id))
  return { kind: 'read-on', checks: operation.checks.filter((c) => !answered.has(c.id)) }
}

/** A check that the level alone answers: it asks for none out of level, and not for a height. */
const isZero = ({ target }: OperationCheck): boolean =>
  target !== null && hasValue(target) && target.value === 0
