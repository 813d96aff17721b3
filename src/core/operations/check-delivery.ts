import { type Figure, hasValue } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import { filterOf } from '../lifting/guidance'
import { covers, teamsFor } from '../lifting/team'
import type { Message } from '../message'
import type { Operation } from '../plan/types'
import type { HandZone } from '../region/region'
import { notCome } from '../units/not-come'
import { applianceSaid } from '../units/part-name'
import { listed } from '../words/listed'
import type { Job } from './job'
import { caution, check, counted, largest, operation, shown, told, when } from './make'
import { minutesFor, WORK } from './minutes'

/** A usual delivery, which the table's time is for. */
const USUAL_UNITS = 13.5

const factOf = (part: keyof Kitchen, id: string) => `${part}.${id}`

/** Carried in by hand, boxes are held between knuckle and elbow. */
const CARRIED: HandZone = 'elbow-knuckle'

/** What to do about a box that is more than this crew lifts by the published filter. */
function tooHeavy(job: Job, heaviest: Figure | null): readonly Message[] {
  const filter = filterOf(job.context.region)
  const strongest = teamsFor(job.kitchen.crew.people, CARRIED, filter).at(-1)?.capability
  if (heaviest === null || strongest === undefined || !hasValue(heaviest)) return []
  if (covers(strongest, heaviest)) return []
  return [told('check-delivery', 'too-heavy', { mass: heaviest, filter: strongest })]
}

/** One look at everything that came, before anything is opened for good or taken out of the room. */
export function checkDelivery(job: Job): readonly Operation[] {
  const { units, kitchen } = job
  if (units.length === 0 && kitchen.appliances.length === 0) return []
  const handed = units.filter((u) => u.unit.hand === 'left' || u.unit.hand === 'right')
  const unseen = units.filter((u) => u.unit.delivered !== true)
  const boxes = counted(
    units.length,
    units.map((u) => factOf('units', u.id)),
  )
  const heaviest = largest(units.map((u) => u.plan.lift.massFull))
  const appliances = kitchen.appliances.map(applianceSaid)
  const missing = notCome(kitchen)
  return [
    operation(job, {
      kind: 'check-delivery',
      on: ['room'],
      stage: 'check-delivery',
      title: told('check-delivery', 'title'),
      does: [
        told('check-delivery', 'count', { count: boxes }),
        ...when(
          handed.length > 0,
          told('check-delivery', 'hand', { units: listed(handed.map((u) => u.name)) }),
        ),
        ...tooHeavy(job, heaviest),
        told('check-delivery', 'damage'),
        ...when(
          unseen.length > 0 && unseen.length < units.length,
          told('check-delivery', 'unseen', { units: listed(unseen.map((u) => u.name)) }),
        ),
        ...when(
          missing.length > 0,
          told('check-delivery', 'missing', { things: listed(missing.map(({ name }) => name)) }),
        ),
        ...when(appliances.length > 0, told('check-delivery', 'sheets', { appliances: listed(appliances) })),
      ],
      figures: [
        shown('units', boxes, 'units-to-count'),
        ...(heaviest === null ? [] : [shown('heaviest', heaviest, 'heaviest-unit')]),
      ],
      checks: [
        check('check-delivery.complete', 'delivery-complete'),
        check('check-delivery.sound', 'no-damage'),
      ],
      cautions: [caution('M008', 'boxes'), caution('W022', 'straps')],
      tools: ['delivery-list', 'lamp', 'knife', 'camera'],
      people: 2,
      minutes: minutesFor(WORK.delivery, Math.max(0.2, units.length / USUAL_UNITS)),
      facts: [
        ...units.map((u) => factOf('units', u.id)),
        ...units.map((u) => `units.${u.id}.delivered`),
        ...handed.map((u) => `units.${u.id}.hand`),
        ...kitchen.appliances.map((a) => factOf('appliances', a.id)),
        ...missing.filter(({ list }) => list !== 'units').map(({ fact }) => fact),
      ],
    }),
  ]
}
