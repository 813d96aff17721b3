import { assumed, derive, type Figure, hasValue } from '../figure'
import type { UnitPosition } from '../units/positions'
import { type Drilled, drilled, type WantedHole } from './drill'
import { holesBelow, hookOnEdge } from './hanging-edge'
import { PLATE_THICKNESS } from './stand-off'
import type { WallWork } from './wall-work'

type Side = 'left' | 'right'

/** Holes in each plate as its sheet says; nobody has said: one, which puts the whole load of a side on it. */
export function holesInPlate(position: Pick<UnitPosition, 'unit'>): Figure {
  const { plateHoles } = position.unit.hanging
  if (hasValue(plateHoles)) return plateHoles
  const why = 'one hole a plate is taken until its sheet has been read'
  return assumed(1, 0, 'count', plateHoles.from, { kind: 'common-practice', why })
}

/** How many holes are drilled for one plate: at least one, and whole. */
export function plateHoleCount(position: Pick<UnitPosition, 'unit'>): number {
  const holes = holesInPlate(position)
  return hasValue(holes) ? Math.max(1, Math.round(holes.value)) : 1
}

/**
 * Holes of the two wall plates of a unit: each plate centred on its hanger, as far in from the side as the maker says,
 * its holes spread evenly about that centre. Plates go where the hangers are and cannot be moved.
 */
export function plateFixings(work: WallWork, position: UnitPosition, top: Figure): readonly Drilled[] {
  const height = holesBelow(hookOnEdge(position, top), position.unit.hanging.plateHoleBelow)
  const sides: readonly Side[] = ['left', 'right']
  return sides.flatMap((side) =>
    Array.from({ length: plateHoleCount(position) }, (_, i) =>
      drilled(work, plateHole(position, side, i, height)),
    ),
  )
}

function plateHole(position: UnitPosition, side: Side, index: number, height: Figure): WantedHole {
  return {
    id: `plate.${position.unit.id}.${side}.${index + 1}`,
    purpose: 'plate',
    for: [position.unit.id],
    along: alongOf(position, side, index),
    height,
    standOff: PLATE_THICKNESS,
  }
}

function alongOf(position: UnitPosition, side: Side, index: number): Figure {
  const { hangerIn, plateHolePitch } = position.unit.hanging
  const holes = holesInPlate(position)
  const count = plateHoleCount(position)
  const sign = side === 'left' ? 1 : -1
  const spread = count > 1 ? [plateHolePitch] : []
  return derive(
    'mm',
    {
      kind: 'geometry',
      why: 'side of the unit, the hanger in from it, and the hole off the middle of the plate',
    },
    [position[side], hangerIn, holes, ...spread],
    (edge, inwards, n, pitch = 0) =>
      (edge as number) + sign * (inwards as number) + (index - ((n as number) - 1) / 2) * pitch,
  )
}
