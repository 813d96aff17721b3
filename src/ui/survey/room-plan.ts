import { valueOf } from '../../core/figure'
import type { Plan, PlanPoint, UnitPlan } from '../../core/plan/types'
import { corners } from '../paper/wall/pen'

/** One wall of the small plan, and where its name goes: outside, along it, never upside down. */
export interface PlanWall {
  readonly wall: string
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly name: { readonly x: number; readonly y: number; readonly turn: number }
}

export interface PlanUnit {
  readonly unit: string
  readonly kind: UnitPlan['kind']
  /** Its corners in order round. */
  readonly corners: readonly PlanPoint[]
}

/** The room seen from above, in mm, y growing downwards as it is drawn. */
export interface RoomPlanShape {
  readonly walls: readonly PlanWall[]
  readonly units: readonly PlanUnit[]
  readonly viewBox: string
  /** Size of its letters. */
  readonly text: number
}

/** Letters of the plan are this part of the room's longer side. */
const LETTERS = 1 / 21

/** What the small plan shows; null while no wall has its place in the room. */
export function roomPlan(plan: Pick<Plan, 'walls' | 'units'>): RoomPlanShape | null {
  const ends = plan.walls.flatMap(({ wall, origin, alongDir, outDir, length, placed }) => {
    const far = valueOf(length)
    if (!placed || far === undefined) return []
    const to = { x: origin.x + far * alongDir.x, y: origin.y + far * alongDir.y }
    return [{ wall, from: down(origin), to: down(to), out: down(outDir) }]
  })
  if (ends.length === 0) return null
  const units = plan.units.flatMap(footprint)
  const all = [...ends.flatMap((w) => [w.from, w.to]), ...units.flatMap((u) => u.corners)]
  const [left, right] = [Math.min(...all.map((p) => p.x)), Math.max(...all.map((p) => p.x))]
  const [top, bottom] = [Math.min(...all.map((p) => p.y)), Math.max(...all.map((p) => p.y))]
  const text = Math.max(right - left, bottom - top) * LETTERS
  const air = 2 * text
  return {
    walls: ends.map(({ wall, from, to, out }) => {
      const turn = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI
      const isUpsideDown = turn > 90 || turn <= -90
      const off = text * 0.95
      return {
        wall,
        from,
        to,
        name: {
          x: (from.x + to.x) / 2 - out.x * off,
          y: (from.y + to.y) / 2 - out.y * off,
          turn: isUpsideDown ? turn - 180 : turn,
        },
      }
    }),
    units,
    viewBox: [left - air, top - air, right - left + 2 * air, bottom - top + 2 * air]
      .map(Math.round)
      .join(' '),
    text,
  }
}

const down = ({ x, y }: PlanPoint): PlanPoint => ({ x, y: -y })

/** What a unit covers of the floor: all its boxes together. */
function footprint(unit: UnitPlan): readonly PlanUnit[] {
  return unit.solid.flatMap((box) => {
    const [a, b, c, d] = corners(unit, box).map(down)
    if (a === undefined || b === undefined || c === undefined || d === undefined) return []
    return [{ unit: unit.unit, kind: unit.kind, corners: [a, b, d, c] }]
  })
}
