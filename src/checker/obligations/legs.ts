import type { LegPlan, PlanPoint } from '../../core/plan/types'
import { agree, NEAR } from '../agree'
import { type Case, underside } from '../case'
import type { GivenUnit } from '../given'
import { isKnown, less, type Measure, notKnown, sum, taken, work } from '../measure'
import { type Frame, pointMeasures, roomPoint } from '../room'
import { nearestLevel } from '../surface'

/** Every leg winds out from the floor under its own foot to the underside of the carcass, within what it can. */
export function checkLegs(c: Case): void {
  for (const unit of c.given.units) {
    const plan = c.planUnits.get(unit.id)
    if (plan === undefined) continue
    const feet = unit.stands === 'legs' ? unit.feet : []
    for (const foot of feet) {
      const leg = plan.legs.find((l) => l.foot === foot.id)
      if (leg === undefined) {
        if (isKnown(foot.x) && isKnown(foot.y))
          c.refuse('leg', `${unit.id}.${foot.id}`, 'the plan leaves it out')
        continue
      }
      checkPlace(c, `${unit.id}.${foot.id}`, leg, foot.x, foot.y)
      checkLeg(c, unit, leg)
    }
    for (const leg of plan.legs.filter((l) => !feet.some((f) => f.id === l.foot))) {
      // A unit whose feet nobody gave stands on assumed ones; theirs is still the floor that was read.
      if (leg.floor.state === 'assumed' && unit.stands === 'legs' && feet.length === 0) checkLeg(c, unit, leg)
      else if (leg.floor.state !== 'unknown') {
        c.refuse(
          'leg',
          `${unit.id}.${leg.foot}`,
          'the file has no such foot, and it is not marked as assumed',
        )
      }
    }
  }
}

function checkPlace(c: Case, what: string, leg: LegPlan, x: Measure, y: Measure): void {
  const off = (own: Measure, plan: number): boolean => own.value !== null && Math.abs(own.value - plan) > NEAR
  if (off(x, leg.x) || off(y, leg.y)) c.refuse('leg', what, 'its foot does not stand there')
}

function checkLeg(c: Case, unit: GivenUnit, leg: LegPlan): void {
  const what = `${unit.id}.${leg.foot}`
  const floor = floorUnder(c, unit, leg.foot)
  agree(c.refuse, 'leg', `${what} floor`, leg.floor, floor)
  agree(c.refuse, 'leg', `${what} extension`, leg.extension, less(underside(c, unit.id), floor))
  agree(c.refuse, 'leg', `${what} min`, leg.min, unit.legs.min)
  agree(c.refuse, 'leg', `${what} max`, leg.max, unit.legs.max)
  agree(c.refuse, 'leg', `${what} delivered`, leg.delivered, unit.legs.delivered)
  if (c.achieved.turnsTried) return
  const turns = work(
    [taken(leg.extension), unit.legs.delivered, unit.legs.perTurn],
    (e = 0, d = 0, t = 1) => (e - d) / t,
  )
  if (isKnown(turns) && turns.value !== null && leg.turns.state !== 'unknown') {
    // Whether a turn out counts up or down is the plan's way of saying it.
    if (Math.abs(Math.abs(leg.turns.value) - Math.abs(turns.value)) > NEAR) {
      c.refuse(
        'leg',
        `${what} turns`,
        `the plan says ${leg.turns.value}, worked out again it is ${turns.value}`,
      )
    }
  } else if (isKnown(turns) !== (leg.turns.state !== 'unknown')) {
    c.refuse('leg', `${what} turns`, 'known and not known do not go with what the file holds')
  }
}

/** Floor under a foot, as found on the day or from the surface of the readings. */
export function floorUnder(c: Case, unit: GivenUnit, foot: string): Measure {
  const found = c.achieved.floorAtFoot.get(`${unit.id}.${foot}`)
  if (found !== undefined) return found
  const at = c.units.get(unit.id)
  const own = unit.feet.find((f) => f.id === foot)
  if (at === undefined) return notKnown('units')
  const leg = c.planUnits.get(unit.id)?.legs.find((l) => l.foot === foot)
  const assumed = (value: number | undefined, id: string): Measure =>
    value === undefined || leg?.floor.state !== 'assumed'
      ? notKnown(id)
      : { value, assumed: true, missing: [] }
  const id = `units.${unit.id}.feet`
  const x = own !== undefined && isKnown(own.x) ? own.x : assumed(leg?.x, id)
  const y = own !== undefined && isKnown(own.y) ? own.y : assumed(leg?.y, id)
  const said = leg === undefined ? undefined : leg.floor.state === 'unknown' ? null : leg.floor.value
  return finished(c, floorAt(c, at.wall, sum(at.left, x), sum(at.out, y), said), ['everywhere'])
}

/** The floor as it will be when the finish that is still to come has been laid, if it is laid there. */
export function finished(c: Case, floor: Measure, where: readonly string[]): Measure {
  const laid = c.given.finishWhere !== null && where.includes(c.given.finishWhere)
  return laid ? sum(floor, c.given.finishToCome) : floor
}

/** Floor at a place along and out from a wall; `said`: what the plan says it is, null where it says that is not known. */
export function floorAt(c: Case, wall: string, along: Measure, out: Measure, said?: number | null): Measure {
  const frame = c.room.frames.get(wall)
  const { point, missing } = pointMeasures(frame, along, out)
  const floor =
    point !== null
      ? c.levels.floor.at(point)
      : frame !== undefined && !frame.placed && along.value !== null && out.value !== null
        ? floorApart(c, frame, roomPoint(frame, along.value, out.value), said)
        : notKnown(...missing)
  return {
    ...floor,
    assumed: floor.value !== null && (floor.assumed || along.assumed || out.assumed),
  }
}

/** Floor by a wall without a place: the plan does not publish its triangles there, so that any good ones will do. */
function floorApart(c: Case, frame: Frame, point: PlanPoint, said: number | null | undefined): Measure {
  const surface = c.levels.floorBy(frame)
  const own = surface.at(point)
  if (said === undefined || own.value === said) return own
  if (own.value !== null && said !== null && Math.abs(own.value - said) <= NEAR) return own
  return nearestLevel(surface.readings, point, said) ?? own
}
