import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 10

/** A plinth is in the way of feet and clamps while a worktop is laid. It can be unclipped again, so this is preferred. */
export const worktopBeforePlinth: OrderRule = (job, work) =>
  job.kitchen.finishing
    .filter((part) => part.kind === 'plinth')
    .flatMap((part) =>
      job.kitchen.worktops
        .filter((top) => top.over.some((id) => part.of.includes(id)))
        .flatMap((top) =>
          reason({
            before: work.get(`worktop:${top.id}`),
            after: work.get(`plinth:${part.id}`),
            kind: 'finish',
            rule: 'worktop-before-plinth',
            basis: practice('a plinth is in the way of feet and clamps while a worktop is laid'),
            because: because('worktop-before-plinth', {
              plinth: part.name ?? part.id,
              worktop: top.name ?? top.id,
              height: part.height,
            }),
            facts: [
              `finishing.${part.id}`,
              `finishing.${part.id}.of`,
              `worktops.${top.id}`,
              `worktops.${top.id}.over`,
            ],
            cost: COST,
          }),
        ),
    )
