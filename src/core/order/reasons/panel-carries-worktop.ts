import type { FinishingPart } from '../../kitchen/schema'
import type { Job } from '../../operations/job'
import { nameSaid } from '../../units/part-name'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

/**
 * An end panel beside an appliance space stands before the worktop goes over that space: an appliance carries nothing, so
 * at the open end the panel alone does.
 */
export const panelCarriesWorktop: OrderRule = (job, work) =>
  job.kitchen.finishing
    .filter((part) => carries(job, part))
    .flatMap((part) =>
      job.kitchen.worktops
        .filter((top) => part.of.some((id) => top.over.includes(id)))
        .flatMap((top) =>
          reason({
            before: work.get(`panel:${part.id}`),
            after: work.get(`worktop:${top.id}`),
            kind: 'support',
            rule: 'panel-carries-worktop',
            basis: practice('beside an appliance at the end of a run the panel alone carries the worktop'),
            because: because('panel-carries-worktop', {
              part: nameSaid(part.name ?? part.id),
              worktop: nameSaid(top.name ?? top.id),
              thickness: top.thickness,
            }),
            facts: [
              `finishing.${part.id}`,
              `finishing.${part.id}.kind`,
              `finishing.${part.id}.of`,
              `worktops.${top.id}`,
              `worktops.${top.id}.over`,
            ],
          }),
        ),
    )

/** An end panel that stands beside appliances and no unit. */
export function carries({ kitchen }: Pick<Job, 'kitchen'>, part: FinishingPart): boolean {
  const isSpace = (id: string) => kitchen.units.find((unit) => unit.id === id)?.kind === 'appliance-space'
  return part.kind === 'end-panel' && part.of.length > 0 && part.of.every(isSpace)
}
