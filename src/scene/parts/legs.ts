import type { StandingUnit } from '../../core/plan/standing-at'
import { face, type Place, type Point, type Sketch } from '../sketch'

const AROUND = 8
/** No wider than lets the plinth stand in front of them, mm. */
const LEG = { radius: 13, foot: 18, footHeight: 9 }
/** Lit from the left, dark to the right. */
const SHADES = [
  '#5E584F',
  '#67615A',
  '#746E66',
  '#7D776F',
  '#7D776F',
  '#746E66',
  '#67615A',
  '#5E584F',
] as const

/** The legs of a unit as long as they are then; one whose length isn't known isn't drawn. */
export function sketchLegs(sketch: Sketch, { unit, legs }: StandingUnit, place: Place): void {
  if (legs === 'off') return
  for (const leg of unit.legs) {
    const length = legs === 'wound-in' ? leg.min : leg.extension
    if (length.state === 'unknown') continue
    const part = `leg:${unit.unit}.${leg.foot}`
    const floor = -length.value
    prism(sketch, part, place, leg.x, leg.y, LEG.radius, floor + LEG.footHeight, 0)
    prism(sketch, part, place, leg.x, leg.y, LEG.foot, floor, floor + LEG.footHeight)
  }
}

function prism(
  sketch: Sketch,
  part: string,
  place: Place,
  x: number,
  y: number,
  radius: number,
  low: number,
  high: number,
): void {
  const at = (i: number, z: number): Point => {
    const a = (2 * Math.PI * i) / AROUND
    return place(x + radius * Math.cos(a), y + radius * Math.sin(a), z)
  }
  for (let i = 0; i < AROUND; i += 1) {
    face(sketch, part, SHADES[i] ?? SHADES[0], [at(i, low), at(i + 1, low), at(i + 1, high), at(i, high)])
  }
  face(
    sketch,
    part,
    '#857F76',
    Array.from({ length: AROUND }, (_, i) => at(i, high)),
  )
}
