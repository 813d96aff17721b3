import type { ShimPlan } from '../../core/plan/types'
import { agree, NEAR } from '../agree'
import { type Case, underside } from '../case'
import { less, type Measure, nought, sum } from '../measure'
import { isCarcass, isHung, type UnitStretch } from '../positions'
import { finished, floorAt } from './legs'

/** Ways of standing in which the box, its frame or its cleat is packed up from the floor. */
const PACKED = new Set(['shims', 'plinth-frame', 'floor-cleat', 'nothing'])

export function isPacked({ unit }: UnitStretch): boolean {
  return isCarcass(unit) && !isHung(unit) && unit.stands !== null && PACKED.has(unit.stands)
}

/** A place on which a box bears, across its unit and out from its back. */
interface Bearing {
  readonly id: string
  readonly x: Measure
  readonly y: Measure
}

/** Where the file says it bears; where it says nothing, at the corners of the box and of its arms. */
function bearingsOf({ unit }: UnitStretch): readonly Bearing[] {
  if (unit.feet.length > 0) return unit.feet
  const { width, depth, returnLeft, returnRight, returnDepth } = unit
  const arms: readonly Bearing[] = [
    ...(returnLeft.value === null
      ? []
      : [
          { id: 'arm-left-outer', x: nought, y: returnLeft },
          { id: 'arm-left-inner', x: returnDepth, y: returnLeft },
        ]),
    ...(returnRight.value === null
      ? []
      : [
          { id: 'arm-right-outer', x: width, y: returnRight },
          { id: 'arm-right-inner', x: less(width, returnDepth), y: returnRight },
        ]),
  ]
  return [
    { id: 'back-left', x: nought, y: nought },
    { id: 'back-right', x: width, y: nought },
    { id: 'front-left', x: nought, y: depth },
    { id: 'front-right', x: width, y: depth },
    ...arms,
  ]
}

/** The floor under each place a box without legs bears on, as found on the day or as read. */
export function bearingFloors(c: Case, at: UnitStretch): readonly Measure[] {
  return bearingsOf(at).map((bearing) => floorAtBearing(c, at, bearing))
}

function floorAtBearing(c: Case, at: UnitStretch, { id, x, y }: Bearing, said?: number | null): Measure {
  const found = c.achieved.floorAtFoot.get(`${at.unit.id}.${id}`)
  return found ?? finished(c, floorAt(c, at.wall, sum(at.left, x), sum(at.out, y), said), ['everywhere'])
}

/** A box without legs is told, corner by corner, what goes between it and the floor, in the plan and where it is levelled. */
export function checkShims(c: Case): void {
  for (const at of c.units.values()) {
    const { id } = at.unit
    const shims = c.planUnits.get(id)?.shims ?? []
    const bearings = isPacked(at) ? bearingsOf(at) : []
    for (const bearing of bearings) {
      const shim = shims.find((s) => s.foot === bearing.id)
      if (shim === undefined) c.refuse('shim', `${id}.${bearing.id}`, 'the plan leaves it out')
      else checkShim(c, at, bearing, shim)
    }
    for (const { foot } of shims) {
      if (!bearings.some((b) => b.id === foot)) c.refuse('shim', `${id}.${foot}`, 'nothing bears there')
    }
  }
}

function checkShim(c: Case, at: UnitStretch, bearing: Bearing, shim: ShimPlan): void {
  const { id } = at.unit
  const what = `${id}.${bearing.id}`
  const said = shim.floor.state === 'unknown' ? null : shim.floor.value
  const floor = floorAtBearing(c, at, bearing, said)
  const off = (own: Measure, plan: number): boolean => own.value !== null && Math.abs(own.value - plan) > NEAR
  if (off(bearing.x, shim.x) || off(bearing.y, shim.y)) c.refuse('shim', what, 'it does not bear there')
  agree(c.refuse, 'shim', `${what} floor`, shim.floor, floor)
  agree(c.refuse, 'shim', `${what} height`, shim.height, less(underside(c, id), floor))
  const level = c.plan.operations.find((op) => op.id === `level:${id}`)
  const told = level?.figures.find((f) => f.name === `shim.${bearing.id}`)?.figure
  if (level === undefined) return
  if (told === undefined) c.refuse('shim', what, 'where it is levelled nobody is told of it')
  else agree(c.refuse, 'shim', `${what} at its step`, told, less(underside(c, id), floor))
}
