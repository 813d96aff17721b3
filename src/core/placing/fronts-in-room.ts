import { type Basis, type Figure, valueOf } from '../figure'
import type { Leaf } from '../geometry/swept-leaf'
import type { Kitchen, Unit } from '../kitchen/schema'
import { fittedParts } from '../plan/fitted-parts'
import type { FittedPart, Heights, LocalBox, Pose, UnitPlan } from '../plan/types'
import { remembered } from '../remember'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'
import type { PartPosition, UnitPosition } from '../units/positions'
import { inRoom, type Prism, prismAt } from './solid'

/** What stands in the room once all is fitted, as far as it is known. */
export interface Fitted {
  readonly kitchen: Kitchen
  readonly survey: Survey
  readonly positions: readonly UnitPosition[]
  readonly parts: readonly PartPosition[]
  readonly units: readonly UnitPlan[]
  readonly heights: Heights
}

export type Door = Unit['doors'][number]
export type Drawer = Unit['drawers'][number]

/** A front as it hangs shut: a door or a drawer, its box in the frame of its unit. */
export interface Front {
  readonly unit: Unit
  readonly plan: UnitPlan
  readonly position: UnitPosition
  readonly pose: Pose
  readonly box: LocalBox
  readonly door: Door | null
  readonly drawer: Drawer | null
  readonly handle: Figure
  /** Its face out from the wall. */
  readonly face: Figure
}

/**
 * Between what distances from the free edge of a door of a unit its handle stands, mm. Common practice: its screws are 30
 * to 50 in from the edge, and it is some 20 thick.
 */
export const HANDLE_BACK = 60
export const HANDLE_EDGE = 20

const faceOfFront: Basis = { kind: 'geometry', why: 'out from the wall: stand-off, carcass and front' }

const fittedPartsOf = remembered((fitted: Fitted) => fittedParts(fitted))

/** Every front that hangs on the face of its unit. Those of a corner unit's arm have other faces and are left out. */
export const frontsInRoom: (fitted: Fitted) => readonly Front[] = remembered((fitted: Fitted) => {
  const plans = new Map(fitted.units.map((plan) => [plan.unit, plan]))
  const bodies = new Map(
    fittedPartsOf(fitted)
      .filter(({ kind }) => kind === 'front')
      .map((part) => [part.part, part]),
  )
  return fitted.positions.flatMap((position): readonly Front[] => {
    const { unit } = position
    const plan = plans.get(unit.id)
    if (plan === undefined) return []
    const face = sum('mm', faceOfFront, [position.out, position.depth, unit.front])
    const front = (of: Door | Drawer, door: Door | null, drawer: Drawer | null): readonly Front[] => {
      const body = bodies.get(`${unit.id}.${of.id}`)
      const [box] = body?.solid ?? []
      if (body?.pose == null || box === undefined || box.y0 !== valueOf(unit.depth)) return []
      return [{ unit, plan, position, pose: body.pose, box, door, drawer, handle: of.handle, face }]
    }
    return [
      ...unit.doors.flatMap((door) => front(door, door, null)),
      ...unit.drawers.flatMap((drawer) => front(drawer, null, drawer)),
    ]
  })
})

/** A door that is hung at its side, as a leaf: on the front corner of its carcass (overlay, common practice). */
export function leafOf({ pose, box, door, handle }: Front): Leaf | null {
  if (door === null || (door.hinge !== 'left' && door.hinge !== 'right')) return null
  const isLeft = door.hinge === 'left'
  return {
    pivot: inRoom(pose, isLeft ? box.x0 : box.x1, box.y1),
    shut: isLeft ? pose.yaw : pose.yaw + 180,
    opens: isLeft ? 'clockwise' : 'anticlockwise',
    width: box.x1 - box.x0,
    thickness: valueOf(door.thickness) ?? box.y1 - box.y0,
    handle: valueOf(handle) ?? 0,
    handleBack: HANDLE_BACK,
    handleEdge: HANDLE_EDGE,
  }
}

/** From where to where along its unit a front's handle may stand: near the free edge of a door, anywhere on a drawer. */
export function handleStretch({ door, box }: Front): readonly [x0: number, x1: number] {
  if (door?.hinge === 'left') return [Math.max(box.x0, box.x1 - HANDLE_BACK), box.x1 - HANDLE_EDGE]
  if (door?.hinge === 'right') return [box.x0 + HANDLE_EDGE, Math.min(box.x1, box.x0 + HANDLE_BACK)]
  return [box.x0, box.x1]
}

/** A front as it stands shut, its handle over its whole width. */
export function shutPrism({ pose, box, handle }: Front): Prism {
  return prismAt({ ...box, y1: box.y1 + (valueOf(handle) ?? 0) }, pose)
}

/** How far out of place a front may stand, by the readings it came from. */
export function frontPm({ plan, face, handle, unit }: Front): number {
  return pmOf([plan.left, face, handle, unit.width])
}

export function pmOf(figures: readonly Figure[]): number {
  return figures.reduce((all, figure) => all + (figure.state === 'unknown' ? 0 : figure.pm), 0)
}

/** Something that stands in the room for good: a carcass, a worktop, a panel, a shut front with its handle. */
export interface StandingBody {
  /** The unit or part it is. */
  readonly id: string
  readonly wall: string
  readonly name: string
  readonly what: 'unit' | 'worktop' | 'panel' | 'handle'
  readonly prism: Prism
  readonly figures: readonly Figure[]
}

const FLAT: readonly FittedPart['kind'][] = ['worktop', 'end-panel', 'filler', 'scribe']

/**
 * Everything that stands on the plan once the kitchen is fitted and shut. A space for an appliance counts as full: an
 * appliance will stand there. A worktop that reaches past its units does so at both ends and at the front.
 */
export const standingBodies: (fitted: Fitted) => readonly StandingBody[] = remembered((fitted: Fitted) => {
  const units = fitted.units.flatMap((plan): readonly StandingBody[] => {
    const [w, d, h] = [plan.width, plan.depth, plan.height].map(valueOf)
    if (plan.pose === null || w === undefined || d === undefined || h === undefined) return []
    const pose = plan.pose
    const space = [{ x0: 0, x1: w, y0: 0, y1: d, z0: 0, z1: h }]
    const boxes = plan.solid.length === 0 ? space : plan.solid
    const figures = [plan.left, plan.width, plan.depth]
    return boxes.map((box) => ({
      id: plan.unit,
      wall: plan.wall,
      name: plan.name,
      what: 'unit',
      prism: prismAt(box, pose),
      figures,
    }))
  })
  const fronts = frontsInRoom(fitted).map(
    (front): StandingBody => ({
      id: front.unit.id,
      wall: front.unit.wall,
      name: front.plan.name,
      what: 'handle',
      prism: shutPrism(front),
      figures: [front.plan.left, front.plan.width, front.face, front.handle],
    }),
  )
  const parts = fittedPartsOf(fitted).flatMap((part): readonly StandingBody[] => {
    const [box] = part.solid
    if (!FLAT.includes(part.kind) || part.pose === null || box === undefined) return []
    const beside = fitted.units.filter(({ unit }) => part.of.includes(unit))
    const [first] = beside
    if (first === undefined) return []
    const top = fitted.kitchen.worktops.find(({ id }) => part.part === id || part.part.startsWith(`${id}+`))
    const past = top === undefined ? 0 : (valueOf(top.freeOverhang) ?? 0)
    return [
      {
        id: top?.id ?? part.part,
        wall: first.wall,
        name: `the ${part.name.replace(/^the /, '')}`,
        what: part.kind === 'worktop' ? 'worktop' : 'panel',
        prism: prismAt({ ...box, x0: box.x0 - past, x1: box.x1 + past, y1: box.y1 + past }, part.pose),
        figures: [first.left, ...(top === undefined ? [] : [top.depth, top.freeOverhang])],
      },
    ]
  })
  return [...units, ...fronts, ...parts]
})

/** By how much places on two walls may be out to one another: the lengths and corners between them. */
export function pmBetween({ frames }: Survey, a: string, b: string): number {
  const [i, j] = [a, b].map((wall) => frames.findIndex((frame) => frame.wall === wall)) as [number, number]
  if (i === j || i < 0 || j < 0) return 0
  const between = frames.slice(Math.min(i, j), Math.max(i, j))
  return between.reduce((all, { length, cornerRight }) => {
    const turn = cornerRight.state === 'unknown' ? 0 : (cornerRight.pm * Math.PI) / 180
    return all + pmOf([length]) + turn * NEAR
  }, 0)
}

/** A corner that is out by an angle moves things this near it by that much, mm: a base unit and what opens from it. */
const NEAR = 1000
