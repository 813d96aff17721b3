import type { Appliance, Kitchen } from '../kitchen/schema'
import type { Operation, OperationCheck } from '../plan/types'
import { listed } from '../words/listed'
import { baySockets } from './bay-sockets'
import type { Job } from './job'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { TOLERANCE, usual } from './tolerances'

/** The space or unit an appliance goes into, by either naming the other. */
export function bayOf(kitchen: Kitchen, appliance: Pick<Appliance, 'id' | 'over'>) {
  return kitchen.units.find((unit) => unit.applianceBay === appliance.id || unit.id === appliance.over)
}

/** Bays that are proved before the worktop goes on: the spaces left for appliances. */
export function bays(job: Job) {
  return job.kitchen.units.filter((unit) => unit.kind === 'appliance-space' || unit.applianceBay !== null)
}

function bayChecks(job: Job): readonly OperationCheck[] {
  return bays(job).map((unit) =>
    check(`prove.${unit.id}.width`, 'bay-width', { bay: job.name(unit.id) }, unit.width, TOLERANCE.bayWidth),
  )
}

/** The hold point before the worktops: nothing can be put right under a worktop. */
export function proveRoom(job: Job): readonly Operation[] {
  const { kitchen, units, context } = job
  const spaces = bays(job)
  const sockets = baySockets(job)
  const underWorktop = kitchen.worktops.length > 0 || (units.length > 0 && spaces.length > 0)
  if (!underWorktop) return []
  const top = context.heights.values.find((v) => v.of === 'base-top')?.height
  return [
    operation(job, {
      kind: 'prove',
      on: ['room'],
      stage: 'hold-point',
      title: told('prove', 'title'),
      does: [
        ...when(units.length > 0, told('prove', 'secured', { count: units.length })),
        ...(top === undefined ? [] : [toldFigure('prove', 'tops', { top })]),
        ...when(
          spaces.length > 0,
          told('prove', 'bays', { bays: listed(spaces.map((u) => job.name(u.id))) }),
        ),
        ...sockets.does,
        told('prove', 'hold'),
      ],
      figures: [
        ...(top === undefined ? [] : [shown('base-top', top, 'height.base-top')]),
        ...spaces.map((u) => shown(`bay.${u.id}`, u.width, 'bay-width', { bay: job.name(u.id) })),
        ...sockets.figures,
      ],
      checks: [
        check('prove.secured', 'all-secured'),
        check('prove.tops', 'tops-to-line', {}, top ?? null, TOLERANCE.baseTop),
        check('prove.straight', 'run-straight', {}, usual(0), TOLERANCE.straight),
        ...bayChecks(job),
        ...when(sockets.outOfReach, check('prove.outlets', 'outlet-settled')),
      ],
      cautions: [caution('W001', 'stop-here')],
      tools: ['long-level', 'laser', 'tape', 'string-line'],
      minutes: minutesFor(WORK.prove),
      holdPoint: true,
      facts: [
        ...kitchen.worktops.map((w) => `worktops.${w.id}`),
        ...spaces.map((u) => `units.${u.id}`),
        ...units.map((u) => `units.${u.id}`),
      ],
    }),
  ]
}
