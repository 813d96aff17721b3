import { type Place, type Sketch, stroke } from '../sketch'
import { EDGE, held, type Outline, plate } from './solids'

/** A hand in a mitten: palm with its fingers, thumb and cuff, each one convex piece, mm. Flat, fingers along y. */
const PALM: Outline = [
  [-30, -92],
  [30, -92],
  [44, -44],
  [44, 30],
  [37, 76],
  [15, 100],
  [-15, 100],
  [-37, 76],
  [-44, 30],
  [-44, -44],
]
const THUMB: Outline = [
  [40, -56],
  [80, -10],
  [88, 20],
  [76, 30],
  [62, 20],
  [42, -8],
]
const CUFF: Outline = [
  [-38, -150],
  [38, -150],
  [38, -92],
  [-38, -92],
]
/** Between the fingers, on the back of the hand: across, and how far along. */
const FINGERS = [
  [-22, 84],
  [0, 94],
  [22, 84],
] as const
const THICK = 26

/** A hand laid flat against what it pushes or pulls: the palm at z 0, the back towards whoever pushes. */
export function palm(sketch: Sketch, part: string, place: Place = held): void {
  plate(sketch, part, 'hand', PALM, 0, THICK, place)
  plate(sketch, part, 'hand', THUMB, 2, THICK - 4, place)
  plate(sketch, part, 'cuff', CUFF, 0, THICK + 4, place)
  for (const [x, to] of FINGERS)
    stroke(sketch, part, EDGE, place(x, 22, THICK + 0.5), place(x, to, THICK + 0.5))
}

/** Seen along what it grips, which goes through the origin: the hand comes along y, the fingers go round on one side. */
const HEEL: Outline = [
  [-30, -104],
  [30, -104],
  [46, -60],
  [46, -26],
  [-42, -26],
  [-42, -60],
]
const ROUND: Outline = [
  [22, -26],
  [46, -26],
  [48, 8],
  [40, 34],
  [22, 22],
]
const TIPS: Outline = [
  [22, 22],
  [40, 34],
  [22, 50],
  [-8, 48],
  [-10, 28],
]
const PINCH: Outline = [
  [-42, -26],
  [-22, -26],
  [-20, 14],
  [-30, 24],
  [-44, 12],
]
const WRIST: Outline = [
  [-36, -166],
  [36, -166],
  [36, -104],
  [-36, -104],
]
/** Half its breadth along what it grips; the thumb lies on one finger only. */
const HALF = 38

/** A hand round a leg, a screw's head or a handle, to turn it. */
export function grip(sketch: Sketch, part: string): void {
  for (const outline of [HEEL, ROUND, TIPS]) plate(sketch, part, 'hand', outline, -HALF, HALF, held)
  plate(sketch, part, 'hand', PINCH, -HALF / 2, HALF / 2, held)
  plate(sketch, part, 'cuff', WRIST, -HALF - 2, HALF + 2, held)
  for (const z of [-HALF / 2, 0, HALF / 2]) {
    stroke(sketch, part, EDGE, held(47, -20, z), held(48.5, 8, z))
    stroke(sketch, part, EDGE, held(48.5, 8, z), held(40.5, 34.5, z))
  }
}
