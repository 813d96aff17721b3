import { hasValue } from '../../figure'
import { fillerPlace } from '../../operations/fillers'
import { operationKindFor } from '../../operations/finishing'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

/** Re-doing a panel cut before its unit stood fast. */
const COST = 20

/**
 * A panel is scribed to a unit that no longer moves. Preferred: one may be fitted sooner, and planed again. A filler that
 * sets the place of the next unit is not scribed: it has a rule of its own.
 */
export const fixedBeforePanel: OrderRule = (job, work) =>
  job.kitchen.finishing
    .filter((part) => operationKindFor(part) === 'panel' && fillerPlace(job, part) === null)
    .flatMap((part) =>
      part.of.flatMap((id) => {
        const unit = job.unit(id)
        if (unit === undefined) return []
        const side = hasValue(part.width) ? part.width : unit.plan.right
        return reason({
          before: work.secured(id),
          after: work.get(`panel:${part.id}`),
          kind: 'finish',
          rule: 'fixed-before-panel',
          basis: practice('a panel is scribed to a unit that no longer moves'),
          because: because('fixed-before-panel', { unit: unit.name, part: part.name ?? part.id, side }),
          facts: [
            `units.${id}`,
            `finishing.${part.id}`,
            `finishing.${part.id}.of`,
            `finishing.${part.id}.kind`,
          ],
          cost: COST,
        })
      }),
    )
