import type { Basis } from '../../figure'
import type { Job } from '../../operations/job'
import { largest } from '../../operations/make'
import { asbestosYear } from '../../operations/make-safe'
import type { Operation, OrderReason } from '../../plan/types'
import { madeBy } from '../made-by'
import { because, practice, reason } from '../reason'
import { holesOf, type Work } from '../work'
import { workedOn } from '../worked-on'
import type { OrderRule } from './rule'

const offFirst = practice('electricity, water and gas are off, and proved off, before any hole')

/** Power, water and gas off and proved so, and asbestos ruled out, before the first hole of any kind. */
export const isolateBeforeHole: OrderRule = (job, work) =>
  work.drilling.flatMap((hole) => [
    ...isolated(job, work, hole),
    ...reason({
      before: work.get('asbestos-check:room'),
      after: hole,
      kind: 'safety',
      rule: 'isolate-before-hole',
      basis: asbestosBasis(job),
      because: asbestosWords(job, hole),
      facts: ['survey.houseBuilt', ...madeBy(job, hole)],
      figures: holesOf(work, hole).map(({ depth }) => depth),
    }),
  ])

function isolated(job: Job, work: Work, operation: Operation): readonly OrderReason[] {
  const holes = holesOf(work, operation)
  const depth = largest(holes.map((hole) => hole.depth))
  const what = workedOn(job, operation)
  return reason({
    before: work.get('isolate:room'),
    after: operation,
    kind: 'safety',
    rule: 'isolate-before-hole',
    basis: offFirst,
    because:
      depth === null
        ? because('isolate-before-hole.no-hole-yet', { what })
        : because('isolate-before-hole', { what, count: holes.length, depth }),
    facts: madeBy(job, operation),
    figures: holes.map((hole) => hole.depth),
  })
}

function asbestosBasis(job: Job): Basis {
  return job.context.region?.asbestosBefore.basis ?? practice('homes built before 2000 may hold asbestos')
}

function asbestosWords(job: Job, operation: Operation) {
  const what = workedOn(job, operation)
  const { houseBuilt } = job.kitchen.survey
  const limit = String(asbestosYear(job.context.region))
  if (houseBuilt === null) return because('asbestos-before-hole.year-not-known', { what, limit })
  return because('asbestos-before-hole', { what, year: String(houseBuilt), limit })
}
