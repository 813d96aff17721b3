import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

/** Work stops, and the room is proved, before a worktop covers it. */
export const holdPointBeforeWorktop: OrderRule = (job, work) =>
  job.kitchen.worktops.flatMap((top) => {
    const height = job.context.heights.values.find((value) => value.of === 'base-top')?.height
    const worktop = top.name ?? top.id
    return reason({
      before: work.get('prove:room'),
      after: work.get(`worktop:${top.id}`),
      kind: 'safety',
      rule: 'hold-point-before-worktop',
      basis: practice('nothing can be put right under a worktop'),
      because:
        height === undefined
          ? because('hold-point-before-worktop.no-height', { worktop })
          : because('hold-point-before-worktop', { worktop, height }),
      facts: [`worktops.${top.id}`],
    })
  })
