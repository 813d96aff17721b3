import type { InputId } from '../figure'
import type { FittedUnit, Job } from '../operations/job'
import { bays } from '../operations/prove'
import type { Operation } from '../plan/types'

/**
 * The facts that make an operation exist, and no others: take one away, or change it, and the operation is gone or is
 * another. What an operation says rests on more; that is in its own `from`.
 */
export function madeBy(job: Job, operation: Operation): readonly InputId[] {
  const { kind } = operation
  const [on = ''] = operation.on
  if (kind === 'drill-rail' || kind === 'fix-rail') return [`rails.${on}`]
  if (kind === 'fit-nogging') return noggingFacts(job, on)
  if (kind === 'panel' || kind === 'plinth' || kind === 'finish') return [`finishing.${on}`]
  if (kind === 'worktop') return [`worktops.${on}`]
  if (kind === 'connect') return [`appliances.${on}`]
  if (kind === 'asbestos-check') return ['survey.houseBuilt']
  if (kind === 'prove') return proveFacts(job)
  return operation.on.flatMap((id) => unitFacts(job.unit(id), kind, job))
}

/** The room is proved because a worktop is to cover it, or an appliance to go in. */
function proveFacts(job: Job): readonly InputId[] {
  const tops = job.kitchen.worktops.map((top) => `worktops.${top.id}`)
  return [...tops, ...bays(job).map((bay) => `units.${bay.id}`)]
}

function noggingFacts(job: Job, on: string): readonly InputId[] {
  const [wall = '', id = ''] = on.split('.')
  const surveyed = job.wall(wall)?.noggings.some((n) => n.id === id) === true
  if (surveyed) return [`walls.${wall}.noggings.${id}`]
  const needed = job.context.neededNoggings.find((n) => n.wall === wall && n.id === id)
  return needed === undefined ? [] : [`units.${needed.unit}`, `walls.${wall}.construction`]
}

function unitFacts(unit: FittedUnit | undefined, kind: string, job: Job): readonly InputId[] {
  if (unit === undefined) return []
  const own = `units.${unit.id}`
  if (unit.way === 'tall') return unitItself(unit)
  if (kind === 'drill-plates' || kind === 'fix-plates') return [own, `${own}.stands`]
  if (kind === 'set-legs') return [own, ...(unit.unit.stands === 'legs' ? [`${own}.stands`] : [])]
  if (kind === 'second-fix') return [own, ...secondFixingFacts(unit, job)]
  return [own]
}

/**
 * What makes a unit what it is: a tall and an island by their kind alone. A hung unit hangs by how it is said to hang and
 * by its kind, and a base stands by either, so that neither fact alone makes it so.
 */
export function unitItself(unit: FittedUnit): readonly InputId[] {
  const own = `units.${unit.id}`
  return unit.way === 'tall' || unit.way === 'island' ? [own, `${own}.kind`] : [own]
}

function secondFixingFacts(unit: FittedUnit, job: Job): readonly InputId[] {
  const construction = job.wall(unit.wall)?.construction ?? null
  return construction === null ? [] : [`walls.${unit.wall}.construction`]
}
