import type { FittedUnit } from '../../operations/job'
import type { ArcKind, OrderReason } from '../../plan/types'
import { unitItself } from '../made-by'
import { because, geometry, practice, reason } from '../reason'
import type { Work } from '../work'
import type { OrderRule } from './rule'

interface Pair {
  readonly before: string
  readonly after: string
  readonly rule: string
  readonly kind: ArcKind
}

/**
 * The steps of one unit: in its place before it is levelled, level before it is locked or fixed, locked before it is
 * screwed home. Screws lock in whatever is not right.
 */
const PAIRS: readonly Pair[] = [
  { before: 'stand-up', after: 'place', rule: 'upright-before-placed', kind: 'support' },
  { before: 'place', after: 'level', rule: 'placed-before-levelled', kind: 'support' },
  { before: 'hang', after: 'level', rule: 'placed-before-levelled', kind: 'support' },
  { before: 'level', after: 'lock', rule: 'levelled-before-locked', kind: 'datum' },
  { before: 'level', after: 'restrain', rule: 'levelled-before-fixed', kind: 'datum' },
  { before: 'level', after: 'fix', rule: 'levelled-before-fixed', kind: 'datum' },
  { before: 'level', after: 'second-fix', rule: 'levelled-before-fixed', kind: 'datum' },
  { before: 'level', after: 'screw-back', rule: 'levelled-before-fixed', kind: 'datum' },
  { before: 'lock', after: 'second-fix', rule: 'locked-before-secured', kind: 'support' },
  { before: 'lock', after: 'screw-back', rule: 'locked-before-secured', kind: 'support' },
]

const BASIS = {
  'upright-before-placed': geometry('it cannot be walked in lying down'),
  'placed-before-levelled': geometry('a unit is levelled where it stands'),
  'levelled-before-locked': practice('the lock holds what it is locked at'),
  'levelled-before-fixed': practice('screws lock the error in'),
  'locked-before-secured': practice('the last screws go in when it can no longer move'),
} as const

function stepReasons(work: Work, unit: FittedUnit, pair: Pair): readonly OrderReason[] {
  const { plan } = unit
  const height = unit.way === 'hung' ? plan.underside : plan.top
  return reason({
    before: work.get(`${pair.before}:${unit.id}`),
    after: work.get(`${pair.after}:${unit.id}`),
    kind: pair.kind,
    rule: pair.rule,
    basis: BASIS[pair.rule as keyof typeof BASIS],
    because:
      pair.rule === 'upright-before-placed'
        ? because(pair.rule, { unit: unit.name, height: plan.height })
        : because(`${pair.rule}.${unit.way === 'hung' ? 'underside' : 'top'}`, { unit: unit.name, height }),
    facts: unitItself(unit),
  })
}

export const ownSteps: OrderRule = (job, work) =>
  job.units.flatMap((unit) => PAIRS.flatMap((pair) => stepReasons(work, unit, pair)))
