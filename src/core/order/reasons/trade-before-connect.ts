import { gasAppliances } from '../../operations/make-safe'
import { applianceSaid } from '../../units/part-name'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

/** The gas engineer is booked before a gas appliance can be connected: nobody else may. */
export const tradeBeforeConnect: OrderRule = (job, work) =>
  gasAppliances(job.kitchen).flatMap((appliance) =>
    reason({
      before: work.get('call-trade:gas'),
      after: work.get(`connect:${appliance.id}`),
      kind: 'service',
      rule: 'trade-before-connect',
      basis: job.context.region?.trades.gas ?? practice('gas is for registered people only'),
      because: because('trade-before-connect', { appliance: applianceSaid(appliance) }),
      facts: [`appliances.${appliance.id}`, `appliances.${appliance.id}.fuel`],
    }),
  )
