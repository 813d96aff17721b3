import type { Operation, StandingState } from '../../core/plan/types'
import type { Case } from '../case'
import { isCarcass, isHung } from '../positions'

const ORDER: readonly StandingState[] = [
  'delivered',
  'assembled',
  'carried',
  'held',
  'hooked',
  'standing',
  'levelled',
  'locked',
  'secured',
]

/** What a finished operation of a kind may leave its unit as. */
const LEAVES: Readonly<Record<string, readonly StandingState[]>> = {
  assemble: ['assembled'],
  'set-legs': ['assembled'],
  'fit-hangers': ['assembled'],
  'stand-up': ['carried', 'held', 'standing'],
  place: ['standing'],
  hang: ['hooked', 'held'],
  level: ['levelled'],
  lock: ['locked', 'secured'],
  join: ['locked'],
  'second-fix': ['secured'],
  'screw-back': ['secured'],
  fix: ['secured'],
  restrain: ['secured'],
}

/** Picked up on the way: nobody needs an operation of its own to lift a unit that is ready. */
function mayBe(current: StandingState, from: StandingState, built: boolean): boolean {
  if (current === from) return true
  const ready = current === 'assembled' || (current === 'delivered' && built)
  return (ready && (from === 'carried' || from === 'assembled')) || (current === 'carried' && from === 'held')
}

/** Every unit comes from the van to the wall one state after another, without a jump, and ends secured. */
export function checkChanges(c: Case): void {
  const states = new Map<string, StandingState>(
    c.given.units.filter(isCarcass).map((unit) => [unit.id, 'delivered'] as const),
  )
  for (const op of c.plan.operations) {
    for (const change of op.changes) {
      const current = states.get(change.unit)
      if (current === undefined) {
        c.refuse('state', op.id, `${change.unit} has no carcass to be moved`)
        continue
      }
      checkChange(c, op, change, current)
      states.set(change.unit, change.to)
    }
  }
  for (const [unit, state] of states) {
    if (state !== 'secured') c.refuse('state', unit, `it ends ${state} and is never secured`)
  }
}

function checkChange(
  c: Case,
  op: Operation,
  change: Operation['changes'][number],
  current: StandingState,
): void {
  const { unit, from, to } = change
  const given = c.units.get(unit)?.unit
  if (given === undefined) return
  if (!mayBe(current, from, given.assembled === 'built')) {
    c.refuse('state', op.id, `it takes ${unit} as ${from}, but by then it is ${current}`)
  }
  if (ORDER.indexOf(to) <= ORDER.indexOf(from)) {
    c.refuse('state', op.id, `${unit} goes from ${from} back to ${to}`)
  }
  const steps = ORDER.indexOf(to) - ORDER.indexOf(from)
  if (to === 'secured' && from !== 'levelled' && from !== 'locked') {
    c.refuse('state', op.id, `${unit} is secured from ${from}, without being levelled`)
  }
  if (to === 'levelled' && from !== 'standing' && from !== 'hooked' && from !== 'held') {
    c.refuse('state', op.id, `${unit} is levelled from ${from}, ${steps} steps on`)
  }
  if ((to === 'hooked' && !isHung(given)) || (to === 'standing' && isHung(given))) {
    c.refuse('state', op.id, `${unit} cannot be ${to}`)
  }
  const allowed = LEAVES[op.kind]
  const last = op.changes.filter((ch) => ch.unit === unit).at(-1)
  if (last === change && allowed !== undefined && !allowed.includes(to)) {
    c.refuse('state', op.id, `such an operation does not leave a unit ${to}`)
  }
  if (allowed === undefined) c.refuse('state', op.id, `such an operation does not change how ${unit} stands`)
}

/** Where in the order a unit first reaches a state; undefined when it never does. */
export function reached(c: Case, unit: string, ...states: readonly StandingState[]): number | undefined {
  const index = c.plan.operations.findIndex((op) =>
    op.changes.some((ch) => ch.unit === unit && states.includes(ch.to)),
  )
  return index < 0 ? undefined : index
}
