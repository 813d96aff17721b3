import { sitsOnWorktop } from '../../operations/finishing'
import { because, geometry, reason } from '../reason'
import type { OrderRule } from './rule'

/** An upstand or splashback sits on the worktop. Of nothing in particular: on all of them. */
export const worktopBeforeUpstand: OrderRule = (job, work) =>
  job.kitchen.finishing.filter(sitsOnWorktop).flatMap((part) =>
    job.kitchen.worktops
      .filter((top) => part.of.length === 0 || part.of.some((id) => top.over.includes(id)))
      .flatMap((top) =>
        reason({
          before: work.get(`worktop:${top.id}`),
          after: work.get(`finish:${part.id}`),
          kind: 'support',
          rule: 'worktop-before-upstand',
          basis: geometry('it sits on the worktop'),
          because: because('worktop-before-upstand', {
            part: part.name ?? part.id,
            worktop: top.name ?? top.id,
            thickness: top.thickness,
          }),
          facts: [
            `finishing.${part.id}`,
            `finishing.${part.id}.kind`,
            `worktops.${top.id}`,
            ...(part.of.length === 0 ? [] : [`finishing.${part.id}.of`, `worktops.${top.id}.over`]),
          ],
        }),
      ),
  )
