import { because, geometry, reason } from '../reason'
import type { OrderRule } from './rule'

const basis = geometry('there is nothing to hang on before')

/** Plates, cleat or rail are on the wall before a unit hangs on them. */
export const platesBeforeHung: OrderRule = (job, work) =>
  job.units.flatMap((unit) => {
    const after = work.get(`hang:${unit.id}`)
    const rails = job.context.rails.filter((rail) => rail.units.includes(unit.id))
    return [
      ...reason({
        before: work.get(`fix-plates:${unit.id}`),
        after,
        kind: 'support',
        rule: 'plates-before-hung',
        basis,
        because: because('plates-before-hung', {
          unit: unit.name,
          below: unit.unit.hanging.plateBelowTop,
          top: unit.plan.top,
        }),
        facts: [`units.${unit.id}`, `units.${unit.id}.stands`],
      }),
      ...rails.flatMap((rail) =>
        reason({
          before: work.get(`fix-rail:${rail.rail}`),
          after,
          kind: 'support',
          rule: 'plates-before-hung',
          basis,
          because: because('plates-before-hung.rail', { unit: unit.name, edge: rail.edge }),
          facts: [
            `units.${unit.id}`,
            `units.${unit.id}.stands`,
            `rails.${rail.rail}`,
            `rails.${rail.rail}.units`,
          ],
        }),
      ),
    ]
  })
