import { type Basis, type Figure, hasValue, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Appliance, Kitchen, Unit } from '../kitchen/schema'
import { message } from '../message'
import { standUpPlan } from '../placing/stand-up'
import { remembered } from '../remember'
import { highestOf, lowestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import { unitNames } from '../units/names'
import type { FirstLine } from './line'
import { verdictOf } from './verdict'

/** Heights before the survey: the tallest unit under the ceiling, the dishwasher under the worktop, the legs and the floor. */

const ceilingBasis: Basis = {
  kind: 'geometry',
  why: 'the lowest of the ceiling readings; one read from the line stands over the highest of the floor readings',
}

/**
 * The lowest ceiling over the floor, of what has been read, wherever: before there are walls to say over which place. It is
 * asked by several of the first answers. The plan has the ceiling over each place, `survey/ceiling`.
 */
export const lowestCeilingRead = remembered((kitchen: Kitchen): Figure => {
  const drops = kitchen.floor.readings.filter((one) => one.line === 'line' && hasValue(one.drop))
  const floor = lowestOf(
    'mm',
    ceilingBasis,
    drops.map(({ drop }) => drop),
  )
  const read = kitchen.ceiling.flatMap(({ height }) => {
    if (hasValue(height.aboveFloor)) return [height.aboveFloor]
    const over = height.line === 'line' ? sum('mm', ceilingBasis, [height.up, floor]) : height.up
    return height.line === 'line' && hasValue(over) ? [over] : []
  })
  return read.length === 0 ? unknown('mm', ['ceiling']) : lowestOf('mm', ceilingBasis, read)
})

/** The tallest of the tall units whose height is known; undefined while none is. */
export function tallestUnit(kitchen: Kitchen): Unit | undefined {
  const talls = kitchen.units.filter(({ kind, height }) => kind === 'tall' && hasValue(height))
  const mm = ({ height }: Unit): number => (hasValue(height) ? height.value : 0)
  return talls.reduce<Unit | undefined>((a, b) => (a === undefined || mm(b) > mm(a) ? b : a), undefined)
}

const standing: Basis = {
  kind: 'geometry',
  why: 'stood up without its legs: the diagonal of the side it is tilted over, blocks under its edge and room for hands; a room to turn it in is not looked at yet',
}

/** Whether the tallest unit can be stood up under the lowest ceiling, by the same geometry as the plan, its legs off. */
export function tallLines(kitchen: Kitchen): readonly FirstLine[] {
  const unit = tallestUnit(kitchen)
  const ceiling = lowestCeilingRead(kitchen)
  if (unit === undefined || !hasValue(ceiling)) return []
  const { height, depth, width } = unit
  const { plan } = standUpPlan({ height, depth, width, ceiling, legs: null })
  const said = { unit: unitNames(kitchen).get(unit.id) ?? unit.id, height, ceiling }
  const line = (say: FirstLine['say'], figures: readonly Figure[]): FirstLine => ({
    kind: 'fits',
    say,
    facts: [...new Set(figures.flatMap(({ from }) => from))],
    basis: standing,
  })
  if (verdictOf(sum('mm', standing, [ceiling], [height])) === 'no') {
    return [line(message('first.tall.taller', said), [height, ceiling])]
  }
  if (!hasValue(plan.needed)) return [line(message('first.tall.open', said), [height, ceiling])]
  const values = { ...said, over: plan.over, needed: plan.needed }
  const figures = [plan.needed, ceiling]
  if (plan.fits === 'yes') return [line(message('first.tall.yes', values), figures)]
  return [line(message(plan.fits === 'no' ? 'first.tall.no' : 'first.tall.near', values), figures)]
}

const fallBasis: Basis = { kind: 'geometry', why: 'from the highest to the lowest reading of the floor' }

/** How far the floor falls: from its readings where there are two, else as it was first looked at. */
export function floorFall({ floor }: Kitchen): Figure {
  const drops = floor.readings
    .filter(({ line, drop }) => line === 'line' && hasValue(drop))
    .map(({ drop }) => drop)
  if (drops.length < 2) return floor.worstDrop
  return sum('mm', fallBasis, [highestOf('mm', fallBasis, drops)], [lowestOf('mm', fallBasis, drops)])
}

const ON_LEGS: readonly Unit['kind'][] = ['base', 'corner-base', 'open-end']

const onLegs = ({ units }: Kitchen): readonly Unit[] =>
  units.filter((u) => ON_LEGS.includes(u.kind) && (u.stands === null || u.stands === 'legs'))

const legsBasis: Basis = {
  kind: 'geometry',
  why: 'worktops lie level, so legs at the lowest place are longer than at the highest by the fall of the floor',
}

/** Whether the legs reach over the fall of the floor: those with the least to give. */
export function legLines(kitchen: Kitchen): readonly FirstLine[] {
  const fall = floorFall(kitchen)
  const reaches = onLegs(kitchen)
    .map(({ legs }) => sum('mm', legsBasis, [legs.max], [legs.min]))
    .filter(hasValue)
  if (!hasValue(fall) || reaches.length === 0) return []
  const reach = lowestOf('mm', legsBasis, reaches)
  const left = sum('mm', legsBasis, [reach], [fall])
  const verdict = verdictOf(left)
  if (verdict === 'open') return []
  const over = sum('mm', legsBasis, [fall], [reach])
  const say = message(`first.legs.${verdict}`, { fall, reach, left, over })
  return [{ kind: 'fits', say, facts: left.from, basis: legsBasis }]
}

/** The dishwasher that asks for the most height, of those whose least height is known. */
export function dishwasherAsking({ appliances }: Kitchen): Appliance | undefined {
  const mm = ({ heightMin }: Appliance): number => (hasValue(heightMin) ? heightMin.value : 0)
  return appliances
    .filter(({ kind, heightMin }) => kind === 'dishwasher' && hasValue(heightMin))
    .reduce<Appliance | undefined>((a, b) => (a === undefined || mm(b) > mm(a) ? b : a), undefined)
}

const bayBasis: Basis = {
  kind: 'geometry',
  why: 'height of the lowest base unit with its legs wound out, less the fall of the floor, over the highest floor; room to slide it in is not counted',
}

/** The most room there can be under the worktop where the floor is highest; unknown while a part of it is. */
export function mostUnderWorktop(kitchen: Kitchen): Figure {
  const tops = onLegs(kitchen).map(({ height, legs }) => sum('mm', bayBasis, [height, legs.max]))
  const read = tops.filter(hasValue)
  if (read.length === 0) return unknown('mm', ['units'])
  return sum('mm', bayBasis, [lowestOf('mm', bayBasis, read)], [floorFall(kitchen)])
}

/** Whether the dishwasher goes under the worktop with its feet wound in. */
export function dishwasherLines(kitchen: Kitchen): readonly FirstLine[] {
  const dishwasher = dishwasherAsking(kitchen)
  const room = mostUnderWorktop(kitchen)
  if (dishwasher === undefined || !hasValue(room)) return []
  const least = dishwasher.heightMin
  const left = sum('mm', bayBasis, [room], [least])
  const over = sum('mm', bayBasis, [least], [room])
  const facts = [...left.from, factId('appliances', dishwasher.id, 'kind')]
  const verdict = verdictOf(left)
  if (verdict === 'open') return []
  return [
    {
      kind: 'fits',
      say: message(`first.dishwasher.${verdict}`, { least, room, left, over }),
      facts,
      basis: bayBasis,
    },
  ]
}
