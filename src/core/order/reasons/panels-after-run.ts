import type { FinishingPart } from '../../kitchen/schema'
import { fillerPlace } from '../../operations/fillers'
import { operationKindFor } from '../../operations/finishing'
import type { Job } from '../../operations/job'
import type { OrderReason } from '../../plan/types'
import { because, practice, reason } from '../reason'
import type { Work } from '../work'
import { carries } from './panel-carries-worktop'
import type { OrderRule } from './rule'

const COST = 15

/** End panels when the whole run stands fast, and before the worktop that meets them. */
export const panelsAfterRun: OrderRule = (job, work) =>
  job.kitchen.finishing
    .filter((part) => operationKindFor(part) === 'panel')
    .flatMap((part) => [
      ...(fillerPlace(job, part) === null ? afterRun(job, work, part) : []),
      ...(carries(job, part) ? [] : beforeWorktop(job, work, part)),
    ])

const partFacts = (part: FinishingPart) => [
  `finishing.${part.id}`,
  `finishing.${part.id}.kind`,
  `finishing.${part.id}.of`,
]

/** The other standing units of the walls its own units are on. */
function afterRun(job: Job, work: Work, part: FinishingPart): readonly OrderReason[] {
  const own = part.of.flatMap((id) => job.unit(id) ?? [])
  const walls = new Set(own.map((unit) => unit.wall))
  const run = job.units.filter(
    (unit) => walls.has(unit.wall) && unit.way === 'base' && !part.of.includes(unit.id),
  )
  return run.flatMap((unit) =>
    reason({
      before: work.secured(unit.id),
      after: work.get(`panel:${part.id}`),
      kind: 'practice',
      rule: 'panels-after-run',
      basis: practice('end panels last, when the run no longer moves'),
      because: because('panels-after-run', {
        part: part.name ?? part.id,
        unit: unit.name,
        right: unit.plan.right,
      }),
      facts: [...partFacts(part), `units.${unit.id}`, `units.${unit.id}.wall`],
      cost: COST,
    }),
  )
}

function beforeWorktop(job: Job, work: Work, part: FinishingPart): readonly OrderReason[] {
  return job.kitchen.worktops
    .filter((top) => top.over.some((id) => part.of.includes(id)))
    .flatMap((top) =>
      reason({
        before: work.get(`panel:${part.id}`),
        after: work.get(`worktop:${top.id}`),
        kind: 'practice',
        rule: 'panels-after-run',
        basis: practice('a panel is in before the worktop that meets it'),
        because: because('panels-after-run.worktop', {
          part: part.name ?? part.id,
          worktop: top.name ?? top.id,
          thickness: top.thickness,
        }),
        facts: [...partFacts(part), `worktops.${top.id}`, `worktops.${top.id}.over`],
        cost: COST,
      }),
    )
}
