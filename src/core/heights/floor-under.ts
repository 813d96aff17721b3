import { type Basis, type Figure, hasValue, unknown } from '../figure'
import type { FloorSurface } from '../plan/types'
import { rangeOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import type { HeightsContext } from './context'
import type { Footing } from './footings'

const underUnits: Basis = {
  kind: 'geometry',
  why: 'the floor under every foot, box corner and corner of an appliance bay',
}

function everyFooting({ standing, bays }: HeightsContext): readonly Footing[] {
  return [...standing.flatMap(({ footings }) => footings), ...bays.flatMap(({ corners }) => corners)]
}

/**
 * The highest floor under any foot or bay, where it is, and the fall from there to the lowest. Both rest on every foot,
 * since any of them might be the one. Of equally high ones the first by name is told.
 */
export function floorUnder(context: HeightsContext): Pick<FloorSurface, 'highPoint' | 'fall'> {
  const footings = everyFooting(context)
  const floors = footings.map(({ floor }) => floor)
  if (floors.length === 0) {
    const none = unknown('mm', ['units'], ['units'], underUnits)
    return { highPoint: { z: none, where: '' }, fall: none }
  }
  const { highest: z, lowest } = rangeOf('mm', underUnits, floors)
  const fall = sum('mm', underUnits, [z], [lowest])
  return { highPoint: { z, where: hasValue(z) ? nameAt(footings, z) : '' }, fall }
}

function nameAt(footings: readonly Footing[], height: Figure): string {
  const highest = footings.flatMap(({ unit, id, floor }) =>
    hasValue(floor) && hasValue(height) && floor.value === height.value ? [`${unit}.${id}`] : [],
  )
  return highest.sort()[0] ?? ''
}
