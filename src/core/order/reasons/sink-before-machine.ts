import type { Appliance } from '../../kitchen/schema'
import { applianceSaid } from '../../units/part-name'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 15
const DRAINS: readonly Appliance['kind'][] = ['dishwasher', 'washing-machine']

/** A machine is tried as it is connected, and its water goes out by the trap of the sink, as a rule: the sink comes first. */
export const sinkBeforeMachine: OrderRule = (job, work) => {
  const sinks = job.kitchen.appliances.filter(({ kind }) => kind === 'sink')
  const machines = job.kitchen.appliances.filter(({ kind }) => DRAINS.includes(kind))
  return sinks.flatMap((sink) =>
    machines.flatMap((machine) =>
      reason({
        before: work.get(`connect:${sink.id}`),
        after: work.get(`connect:${machine.id}`),
        kind: 'service',
        rule: 'sink-before-machine',
        basis: practice(
          'a machine drains through the trap of the sink; one with a waste of its own may come first',
        ),
        because: because('sink-before-machine', {
          machine: applianceSaid(machine),
          sink: applianceSaid(sink),
        }),
        facts: [sink, machine].flatMap(({ id }) => [`appliances.${id}`, `appliances.${id}.kind`]),
        cost: COST,
      }),
    ),
  )
}
