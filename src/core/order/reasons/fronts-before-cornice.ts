import { operationKindFor, sitsOnWorktop } from '../../operations/finishing'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 5

/** Doors are lined up before cornice and pelmet are mitred to them. */
export const frontsBeforeCornice: OrderRule = (job, work) =>
  job.kitchen.finishing
    .filter((part) => operationKindFor(part) === 'finish' && !sitsOnWorktop(part))
    .flatMap((part) =>
      part.of.flatMap((id) => {
        const unit = job.unit(id)
        if (unit === undefined) return []
        return reason({
          before: work.get(`hang-fronts:${id}`),
          after: work.get(`finish:${part.id}`),
          kind: 'practice',
          rule: 'fronts-before-cornice',
          basis: practice('mitres are cut to the doors as they hang'),
          because: because('fronts-before-cornice', {
            part: part.name ?? part.id,
            unit: unit.name,
            width: unit.plan.width,
          }),
          facts: [`finishing.${part.id}`, `finishing.${part.id}.of`, `units.${id}`],
          cost: COST,
        })
      }),
    )
