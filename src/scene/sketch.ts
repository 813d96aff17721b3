/**
 * A sketch: everything one drawing holds, gathered as flat lists so that it goes to the screen in a handful of draw
 * calls: one for all faces, one for all washes, one for each weight of line.
 *
 * Points are millimetres, right-handed, z up. Every piece belongs to a named part ("unit:wall-3", "line:base-top"), by
 * which the id picture and the tests tell them apart.
 */

export type Point = readonly [number, number, number]

/** Even weights on screen, in CSS pixels whatever the distance; `dot` and `ring` are round marks, `bar` goes over them. */
export const WEIGHTS = { hair: 1, fine: 1.35, bold: 3.5, dot: 8, ring: 13, bar: 2.6 } as const
export type Weight = keyof typeof WEIGHTS

export interface Pen {
  readonly weight: Weight
  readonly colour: string
  /** Dash, gap, dash, gap … in mm; left out: unbroken. */
  readonly dashes?: readonly number[]
}

export interface Surface {
  readonly points: number[]
  /** One colour, opacity and part for each point. */
  readonly colours: string[]
  readonly opacities: number[]
  readonly parts: string[]
}
export interface Strokes {
  /** Pairs of ends. */
  readonly points: number[]
  /** One colour and part for each pair. */
  readonly colours: string[]
  readonly parts: string[]
}
export interface Sketch {
  readonly faces: Surface
  readonly washes: Surface
  readonly strokes: Readonly<Record<Weight, Strokes>>
}

const surface = (): Surface => ({ points: [], colours: [], opacities: [], parts: [] })
const strokes = (): Strokes => ({ points: [], colours: [], parts: [] })

export function newSketch(): Sketch {
  return {
    faces: surface(),
    washes: surface(),
    strokes: {
      hair: strokes(),
      fine: strokes(),
      bold: strokes(),
      dot: strokes(),
      ring: strokes(),
      bar: strokes(),
    },
  }
}

function fan(
  on: Surface,
  part: string,
  colour: string,
  points: readonly Point[],
  opacities: readonly number[],
): void {
  for (let i = 1; i + 1 < points.length; i += 1) {
    for (const k of [0, i, i + 1]) {
      on.points.push(...(points[k] as Point))
      on.colours.push(colour)
      on.opacities.push(opacities[k] ?? 1)
      on.parts.push(part)
    }
  }
}

/** A flat convex face, corners in order round it. */
export function face(sketch: Sketch, part: string, colour: string, points: readonly Point[]): void {
  fan(sketch.faces, part, colour, points, [])
}

/** A thin see-through face; one opacity for all corners, or one for each (a soft edge). */
export function wash(
  sketch: Sketch,
  part: string,
  colour: string,
  opacity: number | readonly number[],
  points: readonly Point[],
): void {
  fan(sketch.washes, part, colour, points, typeof opacity === 'number' ? points.map(() => opacity) : opacity)
}

/** A straight line, broken into dashes if the pen asks for them. */
export function stroke(sketch: Sketch, part: string, pen: Pen, from: Point, to: Point): void {
  const on = sketch.strokes[pen.weight]
  for (const [a, b] of dashed(pen.dashes ?? [], from, to)) {
    on.points.push(...a, ...b)
    on.colours.push(pen.colour)
    on.parts.push(part)
  }
}

/** Lines through points in order. */
export function polyline(sketch: Sketch, part: string, pen: Pen, points: readonly Point[]): void {
  for (let i = 1; i < points.length; i += 1) {
    stroke(sketch, part, pen, points[i - 1] as Point, points[i] as Point)
  }
}

/** Lines round points, back to the first. */
export function ring(sketch: Sketch, part: string, pen: Pen, points: readonly Point[]): void {
  const [first] = points
  if (first !== undefined) polyline(sketch, part, pen, [...points, first])
}

/** A round mark of the pen's weight: a line too short to see, with its round ends. */
export function dot(sketch: Sketch, part: string, weight: 'dot' | 'ring', colour: string, at: Point): void {
  stroke(sketch, part, { weight, colour }, at, [at[0], at[1], at[2] + 0.5])
}

/** Cuts a line into its dashes; the last one may be short. */
export function dashed(
  pattern: readonly number[],
  from: Point,
  to: Point,
): readonly (readonly [Point, Point])[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2])
  if (pattern.length === 0 || length === 0) return length === 0 ? [] : [[from, to]]
  const at = (d: number): Point => {
    const f = Math.min(1, d / length)
    return [from[0] + (to[0] - from[0]) * f, from[1] + (to[1] - from[1]) * f, from[2] + (to[2] - from[2]) * f]
  }
  const pieces: (readonly [Point, Point])[] = []
  let done = 0
  for (let i = 0; done < length; i += 1) {
    const step = pattern[i % pattern.length] ?? length
    if (i % 2 === 0) pieces.push([at(done), at(done + step)])
    done += step
  }
  return pieces
}

/** A box's extents in some frame of its own. */
export interface Box {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly z0: number
  readonly z1: number
}
/** Takes a point of a frame of its own to the sketch's frame. */
export type Place = (x: number, y: number, z: number) => Point

export interface BoxShades {
  /** x1 and x0 sides, y1 (front) and y0 (back), z1 and z0. */
  readonly right: string
  readonly left: string
  readonly front: string
  readonly back: string
  readonly top: string
  readonly under: string
}

/** All six faces of a box. */
export function boxFaces(sketch: Sketch, part: string, shades: BoxShades, place: Place, b: Box): void {
  const c = cornersOf(place, b)
  const [a0, b0, c0, d0, a1, b1, c1, d1] = c
  face(sketch, part, shades.under, [a0, b0, c0, d0])
  face(sketch, part, shades.top, [a1, b1, c1, d1])
  face(sketch, part, shades.back, [a0, b0, b1, a1])
  face(sketch, part, shades.right, [b0, c0, c1, b1])
  face(sketch, part, shades.front, [c0, d0, d1, c1])
  face(sketch, part, shades.left, [d0, a0, a1, d1])
}

/** All twelve edges of a box. */
export function boxEdges(sketch: Sketch, part: string, pen: Pen, place: Place, b: Box): void {
  const [a0, b0, c0, d0, a1, b1, c1, d1] = cornersOf(place, b)
  ring(sketch, part, pen, [a0, b0, c0, d0])
  ring(sketch, part, pen, [a1, b1, c1, d1])
  for (const [low, high] of [
    [a0, a1],
    [b0, b1],
    [c0, c1],
    [d0, d1],
  ] as const) {
    stroke(sketch, part, pen, low, high)
  }
}

type Corners = readonly [Point, Point, Point, Point, Point, Point, Point, Point]
/** Round the bottom from back left, then round the top. */
function cornersOf(place: Place, b: Box): Corners {
  const round = (z: number) =>
    [place(b.x0, b.y0, z), place(b.x1, b.y0, z), place(b.x1, b.y1, z), place(b.x0, b.y1, z)] as const
  return [...round(b.z0), ...round(b.z1)]
}

/** Every part a sketch names, once, in code-unit order. */
export function partsIn(sketches: readonly Sketch[]): readonly string[] {
  const names = new Set<string>()
  for (const s of sketches) {
    for (const list of [s.faces.parts, s.washes.parts, ...Object.values(s.strokes).map((x) => x.parts)]) {
      for (const name of list) names.add(name)
    }
  }
  return [...names].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0))
}
