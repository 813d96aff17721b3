import { agree, NEAR, round } from '../agree'
import { type Case, topOf } from '../case'
import { isCarcass } from '../positions'
import { boxesOf, finalPose } from '../replay'
import { samePose, sameSolid } from '../solids'
import { checkAlone } from './lift-alone'

/** Every unit stands along its wall where its chain of neighbours puts it, with the size the file gives. */
export function checkUnits(c: Case): void {
  for (const [id, own] of c.units) {
    const plan = c.planUnits.get(id)
    if (plan === undefined) {
      c.refuse('unit', id, 'the plan leaves it out')
      continue
    }
    if (plan.wall !== own.wall || plan.kind !== own.unit.kind) {
      c.refuse('unit', id, 'its wall or kind is not the one in the file')
    }
    agree(c.refuse, 'unit', `${id} left`, plan.left, own.left)
    agree(c.refuse, 'unit', `${id} right`, plan.right, own.right)
    agree(c.refuse, 'unit', `${id} width`, plan.width, own.unit.width)
    agree(c.refuse, 'unit', `${id} height`, plan.height, own.unit.height)
    agree(c.refuse, 'unit', `${id} depth`, plan.depth, own.unit.depth)
    if (isCarcass(own.unit)) agree(c.refuse, 'unit', `${id} top`, plan.top, topOf(c, own.unit))
    checkPose(c, id)
    checkLift(c, id)
    checkAlone(c, own.unit)
  }
  const ids = c.plan.units.map((u) => u.unit)
  for (const id of ids) if (!c.units.has(id)) c.refuse('unit', id, 'the kitchen has no such unit')
  if (new Set(ids).size < ids.length) c.refuse('unit', 'units', 'a unit is in the plan twice')
}

function checkPose(c: Case, id: string): void {
  const plan = c.planUnits.get(id)
  const own = c.units.get(id)
  if (plan === undefined || own === undefined) return
  const pose = finalPose(c, id)
  if (pose === null) {
    if (plan.pose !== null) c.refuse('pose', id, 'it is given a place that is not known')
  } else if (plan.pose === null) {
    if (boxesOf(c, id) !== null) c.refuse('pose', id, 'its place is known and the plan gives none')
  } else if (!samePose(plan.pose, pose, NEAR)) {
    const off = Math.hypot(plan.pose.x - pose.x, plan.pose.y - pose.y, plan.pose.z - pose.z)
    c.refuse('pose', id, `it stands ${round(off)} from its place`)
  }
  const boxes = boxesOf(c, id)
  if (boxes !== null && !sameSolid(boxes, plan.solid)) c.refuse('solid', id, 'its carcass has another shape')
}

/** A lift over the published filter is not called one for nobody to worry about. */
function checkLift(c: Case, id: string): void {
  const lift = c.planUnits.get(id)?.lift
  const unit = c.units.get(id)?.unit
  if (lift === undefined || unit === undefined || !isCarcass(unit)) return
  const heavy = lift.massStripped.state !== 'unknown' && lift.filter.state !== 'unknown'
  if (heavy && lift.people === null && lift.aid === 'none') {
    c.refuse('lift', id, 'no team of the crew may lift it, and no aid is named')
  }
  if (lift.people !== null && lift.people < 2 && unit.kind === 'tall') {
    c.refuse('lift', id, 'a tall unit is never stood up alone')
  }
}
