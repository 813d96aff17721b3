import { NEAR, round } from '../agree'
import { type Case, placeOf } from '../case'
import { area, depthInside, hull } from '../polygon'
import { isCarcass, isHung } from '../positions'
import { boxesOf } from '../replay'
import { centreOf } from '../solids'

/** A unit left standing on its feet does not fall over: its centre of mass is over the area between its feet. */
export function checkStanding(c: Case): void {
  for (const unit of c.given.units.filter((u) => isCarcass(u) && !isHung(u))) {
    const boxes = boxesOf(c, unit.id)
    const feet = unit.feet.flatMap((f) =>
      f.x.value === null || f.y.value === null ? [] : [{ x: f.x.value, y: f.y.value }],
    )
    const placed = placeOf(c, `place:${unit.id}`)
    if (unit.stands !== 'legs' || boxes === null || placed === undefined) continue
    if (feet.length < unit.feet.length || unit.feet.length === 0) continue
    const support = hull(feet)
    const centre = centreOf(boxes)
    const inside = Math.abs(area(support)) < 1 ? -1 : depthInside(support, centre)
    const held = c.plan.operations[placed]?.holding.includes(unit.id) === true
    if (inside < 0 && !held) {
      c.refuse('standing', unit.id, 'its centre of mass is not over its feet, and nobody is said to hold it')
    }
  }
  checkTravel(c)
}

/** A leg that is said to reach does reach, as near as the plan's own precision claims. */
function checkTravel(c: Case): void {
  for (const unit of c.plan.units) {
    for (const leg of unit.legs) {
      const { extension, min, max } = leg
      const what = `${unit.unit}.${leg.foot}`
      if (extension.state === 'unknown' || min.state === 'unknown' || max.state === 'unknown') {
        if (leg.within !== 'not-known') c.refuse('leg', what, 'whether it reaches cannot be known')
        continue
      }
      const slack = extension.pm + min.pm + max.pm + NEAR
      const reaches = extension.value >= min.value - slack && extension.value <= max.value + slack
      if (leg.within === 'yes' && !reaches) {
        c.refuse('leg', what, `it is said to reach, but would have to be ${round(extension.value)} long`)
      }
      if (
        leg.within === 'too-short' &&
        extension.value <= max.value - slack &&
        extension.value >= min.value + slack
      ) {
        c.refuse('leg', what, 'it is said not to reach, and does')
      }
      if (
        leg.within === 'too-long' &&
        extension.value <= max.value - slack &&
        extension.value >= min.value + slack
      ) {
        c.refuse('leg', what, 'it is said not to reach, and does')
      }
    }
  }
}
