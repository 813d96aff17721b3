import { type Standing, type StandingUnit, standingAt } from '../plan/standing-at'
import { extentOf } from '../plan/travel-path'
import type { Plan } from '../plan/types'

/** What a unit is laid on, mm: a folded blanket. */
export const BLANKET = 12
/** Turned right over. */
const OVER = 180

/** What stands at one moment, as it is handled: a unit lies on its top, legs up, while its legs are set. */
export function shownAt(plan: Plan, index: number, t: number): Standing {
  const standing = standingAt(plan, index, t)
  if (standing.operation?.kind !== 'set-legs') return standing
  return { ...standing, units: standing.units.map((u) => (u.isInHand && u.tilt === null ? upturned(u) : u)) }
}

export const isUpturned = ({ tilt }: StandingUnit): boolean => tilt?.angle === OVER

/** Turned over sideways where it stands, so that its front stays in front and its left goes to the right. */
function upturned(unit: StandingUnit): StandingUnit {
  const { pose } = unit
  const { width, height } = extentOf(unit.unit.solid)
  const yaw = (pose.yaw * Math.PI) / 180
  const lengths = unit.unit.legs.map((l) => (l.extension.state === 'unknown' ? 0 : l.extension.value))
  const floor = pose.z - Math.max(0, ...lengths)
  return {
    ...unit,
    pose: {
      ...pose,
      x: pose.x + width * Math.cos(yaw),
      y: pose.y + width * Math.sin(yaw),
      z: floor + BLANKET + height,
    },
    tilt: { over: 'left', angle: OVER },
  }
}
