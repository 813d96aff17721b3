import { because, geometry, reason } from '../reason'
import type { OrderRule } from './rule'

/** Hangers are in the unit before it is hooked on by them. */
export const hangersBeforeHung: OrderRule = (job, work) =>
  job.units.flatMap((unit) =>
    reason({
      before: work.get(`fit-hangers:${unit.id}`),
      after: work.get(`hang:${unit.id}`),
      kind: 'support',
      rule: 'hangers-before-hung',
      basis: geometry('it hooks on by its hangers'),
      because: because('hangers-before-hung', { unit: unit.name, hangerIn: unit.unit.hanging.hangerIn }),
      facts: [`units.${unit.id}`, `units.${unit.id}.stands`],
    }),
  )
