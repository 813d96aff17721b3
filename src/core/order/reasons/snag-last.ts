import { counted } from '../../operations/make'
import { madeBy } from '../made-by'
import { because, practice, reason } from '../reason'
import { workedOn } from '../worked-on'
import type { OrderRule } from './rule'

/** Kinds of operation after which something is there to be looked at. */
const SEEN: readonly string[] = [
  'panel',
  'plinth',
  'finish',
  'worktop',
  'connect',
  'hang-fronts',
  'join',
  'prove',
]

/** The last walk round comes after everything that is walked round. */
export const snagLast: OrderRule = (job, work) => {
  const secured = job.units.flatMap((unit) => work.secured(unit.id) ?? [])
  const seen = SEEN.flatMap((kind) => work.ofKind(kind))
  return [...secured, ...seen].flatMap((before) => {
    const checks = counted(before.checks.length, madeBy(job, before))
    return reason({
      before,
      after: work.get('snag:room'),
      kind: 'finish',
      rule: 'snag-last',
      basis: practice('the last walk round looks at finished work'),
      because: because('snag-last', { what: workedOn(job, before), checks }),
      facts: madeBy(job, before),
    })
  })
}
