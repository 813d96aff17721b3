import type { Operation } from '../plan/types'
import type { Job } from './job'
import { check, operation, told, when } from './make'
import { minutesFor, WORK } from './minutes'

/** The last walk round, wall by wall, and what is handed over. */
export function snag(job: Job): readonly Operation[] {
  const { units, context } = job
  if (units.length === 0) return []
  const holes = context.holes.filter((hole) => hole.verdict !== 'refused')
  return [
    operation(job, {
      kind: 'snag',
      on: ['room'],
      stage: 'snag',
      title: told('snag', 'title'),
      does: [
        told('snag', 'walk', { count: units.length }),
        told('snag', 'seal'),
        ...when(holes.length > 0, told('snag', 'map', { holes: holes.length })),
        told('snag', 'hand-over'),
      ],
      checks: [check('snag.tops', 'snag-doors'), check('snag.papers', 'snag-papers')],
      tools: ['sealant-gun', 'camera', 'screwdriver'],
      minutes: minutesFor(WORK.handOver),
      facts: units.map((u) => `units.${u.id}`),
    }),
  ]
}
