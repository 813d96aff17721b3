import type { Job } from '../../operations/job'
import { timbers } from '../../operations/noggings'
import type { OrderReason } from '../../plan/types'
import { studName, studPlaces } from '../../units/stud-name'
import { because, practice, reason } from '../reason'
import type { Work } from '../work'
import type { OrderRule } from './rule'

const basis = practice('a stud is known by both its edges before anything is screwed to it')

/** Studs are found before holes are marked in them, and before timber is let in between them. */
export const studsBeforeHoles: OrderRule = (job, work) => [
  ...work.ofKind('find-studs').flatMap(({ on: [wall = ''] }) => marked(job, work, wall)),
  ...letIn(job, work),
]

function marked(job: Job, work: Work, wall: string): readonly OrderReason[] {
  const holes = job.holesIn(wall).filter((hole) => hole.stud !== null)
  const [first] = holes
  if (first === undefined) return []
  const studs = [...new Set(holes.flatMap((hole) => hole.stud ?? []))]
  return reason({
    before: work.get(`find-studs:${wall}`),
    after: work.get(`mark-holes:${wall}`),
    kind: 'datum',
    rule: 'studs-before-holes',
    basis,
    because: because('studs-before-holes', {
      wall: job.wallName(wall),
      stud: studName(studPlaces(job.kitchen, job.context.survey, wall), first.stud ?? ''),
      along: first.along,
    }),
    facts: [
      `walls.${wall}.construction`,
      ...studs.flatMap((stud) => [`walls.${wall}.studs.${stud}`, `walls.${wall}.studs.${stud}.confirmed`]),
    ],
    figures: holes.map((hole) => hole.along),
  })
}

function letIn(job: Job, work: Work): readonly OrderReason[] {
  return timbers(job).flatMap((timber) =>
    reason({
      before: work.get(`find-studs:${timber.wall}`),
      after: work.get(`fit-nogging:${timber.wall}.${timber.id}`),
      kind: 'datum',
      rule: 'studs-before-holes',
      basis,
      because: because('studs-before-holes.timber', { from: timber.from, to: timber.to }),
      facts: [...timber.facts, `walls.${timber.wall}.construction`],
    }),
  )
}
