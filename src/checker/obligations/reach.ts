import type { UnitPlan } from '../../core/plan/types'
import { agree, NEAR, round } from '../agree'
import type { Case } from '../case'
import { ceilingOver, fixedThings } from '../fixed-things'
import { woundDown } from '../height-demands'
import { plus } from '../measure'
import { overlap, thinness } from '../polygon'
import { boxesOf, finalPose, standingSolid } from '../replay'
import { boxPolygon } from '../solids'
import { type Tilt, tiltFloor, tiltOf } from '../sweep'

/** Room for hands and for a ceiling out of level, which may be counted in; common practice. */
const HAND_ROOM = 10

/** Room over a unit's head: while it is stood up, and while it is hooked on. */
export function checkReach(c: Case): void {
  for (const plan of c.plan.units) {
    checkStandUp(c, plan)
    checkHookOn(c, plan)
  }
}

/** The diagonal over the edge it turns about, and the blocks under that edge. */
function checkStandUp(c: Case, unitPlan: UnitPlan): void {
  const { unit, standUp } = unitPlan
  const boxes = boxesOf(c, unit)
  if (standUp === null || boxes === null) return
  const upright = { x: 0, y: 0, z: 0, yaw: 0 }
  const { radius } = tiltOf(boxes, upright, standUp.over)
  const blocks = standUp.blocks.state === 'unknown' ? 0 : standUp.blocks.value
  const needed = standUp.needed.state === 'unknown' ? null : standUp.needed.value
  if (needed !== null && needed < radius + blocks - NEAR) {
    c.refuse('stand-up', unit, `it needs ${round(radius + blocks)} to be stood up, not ${needed}`)
  }
  const most = radius + blocks + HAND_ROOM
  if (needed !== null && standUp.pivot === 'carcass-edge' && needed > most + NEAR) {
    c.refuse('stand-up', unit, `it needs ${round(radius + blocks)} to be stood up, not ${needed}`)
  }
  if (standUp.pivot === 'feet' && c.units.get(unit)?.unit.legs.maySwing !== true) {
    c.refuse('stand-up', unit, 'it is swung on its feet, and nobody has said its maker allows that')
  }
  const path = c.plan.paths.find((p) => p.unit === unit)
  const turn = path?.segments.find((s) => s.kind === 'stand-up')
  if (turn !== undefined && turn.kind === 'stand-up') {
    // Swung on its feet, a unit stands on its own legs and on no blocks.
    const otherBlocks = standUp.pivot === 'carcass-edge' && Math.abs(turn.blocks - blocks) > NEAR
    if (turn.over !== standUp.over || otherBlocks) {
      c.refuse('stand-up', unit, 'its path stands it up another way')
    }
    checkCeilingOverTilt(c, unitPlan, tiltOf(boxes, turn.upright, turn.over))
  }
  if (standUp.fits === 'no' && !c.plan.findings.some((f) => f.weight === 'stop' && f.about.includes(unit))) {
    c.refuse('finding missing', unit, 'it cannot be stood up, and nothing stops the work for it')
  }
}

/** The ceiling it is stood up under is no higher than that over the floor it sweeps on its way, or before its own place. */
function checkCeilingOverTilt(c: Case, { unit, standUp }: UnitPlan, tilt: Tilt): void {
  const { highPoint } = c.plan.floor
  if (standUp === null || standUp.ceiling.state === 'unknown' || highPoint.z.state === 'unknown') return
  const final = finalPose(c, unit)
  const { width, depth, height } = tilt
  const before =
    final === null
      ? null
      : ceilingOver(c, boxPolygon(final, { x0: 0, x1: width, y0: 0, y1: depth + height, z0: 0, z1: 1 }))
  const over = ceilingOver(c, tiltFloor(tilt))
  if (over === null) return
  const there = Math.max(over, before ?? over) - highPoint.z.value
  if (standUp.ceiling.value > there + standUp.ceiling.pm + NEAR) {
    c.refuse(
      'stand-up',
      unit,
      `there are ${round(there)} over the floor it sweeps, not ${standUp.ceiling.value}`,
    )
  }
}

/** Room over a unit where it hangs: to the ceiling over it, and to any box that lies over part of it. */
function roomOver(c: Case, unit: string): number | null {
  const rooms = standingSolid(c, unit).flatMap(({ polygon, top }) => {
    const ceiling = ceilingOver(c, polygon)
    const boxes = fixedThings(c).flatMap(({ wall, solid }) => {
      const isOver = wall === null && solid.bottom >= top && thinness(overlap(polygon, solid.polygon)) > NEAR
      return isOver ? [solid.bottom - top] : []
    })
    return ceiling === null ? boxes : [ceiling - top, ...boxes]
  })
  return rooms.length === 0 ? null : Math.min(...rooms)
}

/** The lift onto its hooks and room for fingers, common practice. */
function checkHookOn(c: Case, { unit, hookOn }: UnitPlan): void {
  const given = c.units.get(unit)?.unit
  if (hookOn === null || given === undefined) return
  agree(c.refuse, 'hook-on', unit, hookOn.needed, plus(given.hanging.hookLift, 10))
  if (hookOn.needed.state === 'unknown' || hookOn.there.state === 'unknown') {
    if (hookOn.fits === 'yes') c.refuse('hook-on', unit, 'whether there is room for it is not known')
    return
  }
  const over = roomOver(c, unit)
  if (over !== null && hookOn.there.value > over + hookOn.there.pm + NEAR) {
    c.refuse('hook-on', unit, `there are ${round(over)} over it, not ${hookOn.there.value}`)
  }
  const spare = hookOn.there.value - hookOn.needed.value + (woundDown(given).value ?? 0)
  const slack = hookOn.there.pm + hookOn.needed.pm + NEAR
  if (hookOn.fits === 'yes' && spare < -slack) c.refuse('hook-on', unit, 'there is no room to hook it on')
  if (hookOn.fits === 'no' && spare > slack) c.refuse('hook-on', unit, 'there is room to hook it on')
}
