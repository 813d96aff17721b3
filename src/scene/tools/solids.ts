import type { BoxShades, Pen, Point, Sketch } from '../sketch'
import { type Box, boxEdges, boxFaces, face, type Place, ring } from '../sketch'

/** Frame of a tool: its tip at the origin, x along its broad side, z back from the work towards whoever holds it. */
export const held: Place = (x, y, z) => [x, y, z]

/** One colour of a tool as flat light shows it. */
export interface Tone {
  readonly light: string
  readonly middle: string
  readonly dark: string
}
export const TONES = {
  steel: { light: '#C9C5BC', middle: '#B3AEA4', dark: '#98938A' },
  case: { light: '#6B655B', middle: '#565147', dark: '#443F37' },
  wood: { light: '#E5CBA3', middle: '#D9B98A', dark: '#B8945F' },
  paper: { light: '#FBF8F1', middle: '#F3EEE2', dark: '#DDD4C4' },
  enamel: { light: '#F7F5EF', middle: '#EDE9DF', dark: '#D8D2C4' },
  chalk: { light: '#2E6DB5', middle: '#1F5FA8', dark: '#184C87' },
  hand: { light: '#F6E9D6', middle: '#EBD8BD', dark: '#CFB390' },
  cuff: { light: '#E9EDF1', middle: '#D5DDE5', dark: '#AEBBC8' },
  brass: { light: '#B08A42', middle: '#96712F', dark: '#7C5413' },
} as const satisfies Record<string, Tone>
export type ToneName = keyof typeof TONES

export const EDGE: Pen = { weight: 'hair', colour: '#262522' }

const shades = ({ light, middle, dark }: Tone): BoxShades => ({
  right: middle,
  left: dark,
  front: light,
  back: dark,
  top: light,
  under: dark,
})

export function block(sketch: Sketch, part: string, tone: ToneName, box: Box): void {
  boxFaces(sketch, part, shades(TONES[tone]), held, box)
  boxEdges(sketch, part, EDGE, held, box)
}

/** The corners of a flat convex piece, in order round it. */
export type Outline = readonly (readonly [x: number, y: number])[]

/** A flat piece of even thickness. */
export function plate(
  sketch: Sketch,
  part: string,
  tone: ToneName,
  outline: Outline,
  z0: number,
  z1: number,
  place: Place,
): void {
  const { light, middle, dark } = TONES[tone]
  const [low, high] = [z0, z1].map((z) => outline.map(([x, y]) => place(x, y, z))) as [Point[], Point[]]
  for (const [points, colour] of [
    [low, dark],
    [high, light],
  ] as const) {
    face(sketch, part, colour, points)
    ring(sketch, part, EDGE, points)
  }
  for (const [i, [x]] of outline.entries()) {
    const k = (i + 1) % outline.length
    const colour = x + (outline[k]?.[0] ?? 0) > 0 ? middle : dark
    face(sketch, part, colour, [low[i], low[k], high[k], high[i]] as Point[])
  }
}

const AROUND = 10

/** A round bar along z, one radius at each end. */
export function bar(
  sketch: Sketch,
  part: string,
  tone: ToneName,
  { x = 0, y = 0, z0, z1, r0, r1 = r0 }: BarSize,
): void {
  const at = (i: number, z: number, r: number): Point => {
    const a = (2 * Math.PI * i) / AROUND
    return [x + r * Math.cos(a), y + r * Math.sin(a), z]
  }
  const { light, middle, dark } = TONES[tone]
  for (let i = 0; i < AROUND; i += 1) {
    const lit = Math.sin((2 * Math.PI * (i + 0.5)) / AROUND)
    const colour = lit > 0.4 ? light : lit < -0.4 ? dark : middle
    face(sketch, part, colour, [at(i, z0, r0), at(i + 1, z0, r0), at(i + 1, z1, r1), at(i, z1, r1)])
  }
  for (const [z, r] of [
    [z0, r0],
    [z1, r1],
  ] as const) {
    const round = Array.from({ length: AROUND }, (_, i) => at(i, z, r))
    face(sketch, part, middle, round)
    ring(sketch, part, EDGE, round)
  }
}
interface BarSize {
  readonly x?: number
  readonly y?: number
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1?: number
}

/** A flat arrow with its point at the origin, from the side a hand pushes. */
export function arrow(sketch: Sketch, part: string, length: number): void {
  const [half, head, wide] = [9, 46, 26]
  const outline: readonly (readonly [number, number])[] = [
    [0, 0],
    [wide, head],
    [half, head],
    [half, length],
    [-half, length],
    [-half, head],
    [-wide, head],
  ]
  for (const y of [-3, 3]) {
    const points = outline.map(([x, z]): Point => [x, y, z])
    // Two convex pieces: the head, and the shaft.
    face(sketch, part, TONES.chalk.middle, [points[0], points[1], points[6]] as Point[])
    face(sketch, part, TONES.chalk.middle, [points[2], points[3], points[4], points[5]] as Point[])
    ring(sketch, part, { weight: 'fine', colour: TONES.chalk.dark }, points)
  }
}
