import type { Band } from '../../core/plan/types'
import { NEAR, round } from '../agree'
import type { OwnBand } from '../bands/band'
import { type Case, wallOf } from '../case'

/** Every band on a wall is drawn where it is, and none is left out. */
export function checkBands(c: Case): void {
  for (const wall of c.given.walls) {
    const own = (c.bands.get(wall.id)?.bands ?? []).filter((b) => b.kind !== 'ceiling' && b.kind !== 'fixed')
    const plan = c.plan.bands.filter((b) => b.wall === wall.id)
    for (const band of own) {
      if (band.weight !== 'either' && !plan.some((p) => sameBand(c, p, band))) {
        c.refuse('band', `${wall.id} ${band.kind} ${band.about}`, `there is no such band ${extent(band)}`)
      }
    }
    for (const band of plan) {
      if (band.unknownBecause.length > 0 || band.kind === 'ceiling' || c.given.region === 'continental')
        continue
      if (!own.some((o) => sameBand(c, band, o))) {
        c.refuse('band', band.id, 'nothing on either face of the wall makes such a band')
      }
    }
  }
}

function sameBand(c: Case, plan: Band, own: OwnBand): boolean {
  const length = wallOf(c, own.wall)?.length.value ?? Number.POSITIVE_INFINITY
  const kind = plan.kind === own.kind && plan.face === own.face
  return (
    kind &&
    near(openAt(plan.left, 0, -1), openAt(own.left, 0, -1)) &&
    near(openAt(plan.right, length, 1), openAt(own.right, length, 1)) &&
    near(openAt(plan.bottom, null, -1), own.bottom) &&
    near(openAt(plan.top, null, 1), own.top)
  )
}

/** A band that reaches an end of its wall is open at that end, whether it is drawn to the end or beyond. */
function openAt(value: number | null, end: number | null, side: -1 | 1): number {
  if (value === null) return side * Number.POSITIVE_INFINITY
  const beyond = end !== null && (value - end) * side >= -NEAR
  return beyond ? side * Number.POSITIVE_INFINITY : value
}

function near(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= NEAR
}

function extent({ left, right, bottom, top }: OwnBand): string {
  return `from ${round(left)} to ${round(right)}, ${round(bottom)} to ${round(top)}`
}
