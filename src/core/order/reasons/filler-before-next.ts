import type { FinishingPart } from '../../kitchen/schema'
import { type FillerPlace, fillerPlace } from '../../operations/fillers'
import type { Job } from '../../operations/job'
import type { OrderReason } from '../../plan/types'
import { partName } from '../../units/part-name'
import { because, practice, reason } from '../reason'
import type { Work } from '../work'
import type { OrderRule } from './rule'

/** Taking the unit out again to put the filler in behind it. */
const COST = { before: 25, after: 20 }

/** A filler in a corner or between two units sets the place of the next unit: it goes in before that is pushed home. */
export const fillerBeforeNext: OrderRule = (job, work) =>
  job.kitchen.finishing.flatMap((part) => {
    const place = fillerPlace(job, part)
    return place === null ? [] : [...whole(job, work, part), ...inTurn(job, work, part, place)]
  })

const factsOf = (part: FinishingPart) => [
  `finishing.${part.id}`,
  `finishing.${part.id}.kind`,
  `finishing.${part.id}.of`,
]

/** It is screwed to a unit: that is put together first. */
function whole(job: Job, work: Work, part: FinishingPart): readonly OrderReason[] {
  return part.of.flatMap((id) => {
    const unit = job.unit(id)
    if (unit === undefined) return []
    return reason({
      before: work.get(`assemble:${id}`),
      after: work.get(`panel:${part.id}`),
      kind: 'support',
      rule: 'assembled-before-filler',
      basis: practice('a filler is screwed to a unit that is whole'),
      because: because('assembled-before-filler', {
        part: partName(job.kitchen, part),
        unit: unit.name,
        width: part.width,
      }),
      facts: [...factsOf(part), `units.${id}`, `units.${id}.assembled`],
    })
  })
}

function inTurn(job: Job, work: Work, part: FinishingPart, place: FillerPlace): readonly OrderReason[] {
  const { first, next, at } = place
  const stands = first.way === 'base' ? work.get(`level:${first.id}`) : work.secured(first.id)
  const panel = work.get(`panel:${part.id}`)
  const shared = {
    kind: 'practice' as const,
    facts: [...factsOf(part), `units.${first.id}`, `units.${next.id}`],
    figures: [first.plan.left, first.plan.right, next.plan.left, next.plan.right],
  }
  const values = {
    part: partName(job.kitchen, part),
    first: first.name,
    next: next.name,
    width: part.width,
  }
  return [
    ...reason({
      ...shared,
      before: stands,
      after: panel,
      rule: 'filler-after-first',
      basis: practice('a filler is set against a unit that is level'),
      because: because('filler-after-first', values),
      cost: COST.after,
    }),
    ...reason({
      ...shared,
      before: panel,
      after: work.move(next.id),
      rule: 'filler-before-next',
      basis: practice('a filler that sets the place of a unit is in before that unit is pushed home'),
      because: because(`filler-before-next.${at}`, values),
      cost: COST.before,
    }),
  ]
}
