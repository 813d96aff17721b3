import { type FittedUnit, type Job, placeName } from '../../operations/job'
import { legName } from '../../operations/leg-name'
import type { Operation, OrderReason } from '../../plan/types'
import { because, geometry, practice, reason } from '../reason'
import type { Work } from '../work'
import type { OrderRule } from './rule'

/** The floor is read before the heights that rest on it are marked, and before legs are wound or boxes shimmed to it. */
export const floorBeforeHeights: OrderRule = (job, work) => [
  ...work.ofKind('set-out-heights').flatMap((operation) => heights(job, work, operation)),
  ...job.units.flatMap((unit) => [...legs(work, unit), ...shims(work, unit)]),
]

const onFloor = (id: string) => id.startsWith('floor.readings.')

function heights(job: Job, work: Work, operation: Operation): readonly OrderReason[] {
  const [wall = ''] = operation.on
  const resting = job.context.lines.filter((line) => line.wall === wall && line.height.from.some(onFloor))
  const [first] = resting
  if (first === undefined) return []
  const { z, where } = job.context.floor.highPoint
  return reason({
    before: work.get('read-floor:room'),
    after: operation,
    kind: 'datum',
    rule: 'floor-before-heights',
    basis: practice('heights are set from the highest floor under a foot'),
    because: because('floor-before-heights', {
      where: placeName(job, where),
      high: z,
      height: first.height,
    }),
    facts: [`walls.${wall}`],
    figures: resting.map((line) => line.height),
  })
}

function legs(work: Work, unit: FittedUnit): readonly OrderReason[] {
  const [first] = unit.plan.legs
  if (first === undefined) return []
  return reason({
    before: work.get('read-floor:room'),
    after: work.get(`set-legs:${unit.id}`),
    kind: 'datum',
    rule: 'floor-before-heights',
    basis: geometry('a leg is as long as the carcass stands over the floor at its foot'),
    because: because('floor-before-heights.legs', {
      unit: unit.name,
      foot: legName(unit, first),
      floor: first.floor,
      extension: first.extension,
    }),
    facts: [`units.${unit.id}`],
    figures: unit.plan.legs.flatMap((leg) => [leg.floor, leg.extension]),
  })
}

function shims(work: Work, unit: FittedUnit): readonly OrderReason[] {
  const all = unit.plan.shims ?? []
  const [first] = all
  if (first === undefined) return []
  return reason({
    before: work.get('read-floor:room'),
    after: work.get(`level:${unit.id}`),
    kind: 'datum',
    rule: 'floor-before-heights',
    basis: geometry('a shim is as high as the carcass stands over the floor at its corner'),
    because: because('floor-before-heights.shims', {
      unit: unit.name,
      corner: legName(unit, first),
      floor: first.floor,
      height: first.height,
    }),
    facts: [`units.${unit.id}`],
    figures: all.flatMap(({ floor, height }) => [floor, height]),
  })
}
