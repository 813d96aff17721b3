import type { StandingUnit } from '../../core/plan/standing-at'
import { face, type Place, type Sketch } from '../sketch'

/** A stack of shims as it is pushed in under a side, mm: along the unit and out from its back. */
const STACK = { wide: 40, deep: 90 }
/** Thinner than this, mm, it is not seen. */
const THIN = 0.5
const TOP = '#CBB287'
const SIDE = '#A98E5F'

/** The stacks of shims under the corners of a box, from when it is levelled; a frame or a cleat is not shown as shims. */
export function sketchShims(sketch: Sketch, { unit, state }: StandingUnit, place: Place): void {
  if (unit.stands !== 'shims' || (state !== 'levelled' && state !== 'secured')) return
  const { width } = unit
  if (width.state === 'unknown') return
  for (const { foot, x, y, height } of unit.shims ?? []) {
    if (height.state === 'unknown' || height.value < THIN) continue
    const x0 = Math.max(0, Math.min(x - STACK.wide / 2, width.value - STACK.wide))
    const y0 = Math.max(0, y - STACK.deep)
    stack(sketch, `shim:${unit.unit}.${foot}`, place, x0, y0, -height.value)
  }
}

function stack(sketch: Sketch, part: string, place: Place, x0: number, y0: number, low: number): void {
  const [x1, y1] = [x0 + STACK.wide, y0 + STACK.deep]
  const round = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ] as const
  round.forEach(([x, y], i) => {
    const [nx, ny] = round[(i + 1) % round.length] ?? [x, y]
    face(sketch, part, i % 2 === 0 ? SIDE : TOP, [
      place(x, y, low),
      place(nx, ny, low),
      place(nx, ny, 0),
      place(x, y, 0),
    ])
  })
}
