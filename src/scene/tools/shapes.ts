import type { Act, StagedTool } from '../../core/staging/staging'
import { type Point, polyline, type Sketch } from '../sketch'
import { grip, palm } from './hand'
import { arrow, bar, block, TONES } from './solids'

/** What one piece of a tool is drawn as. */
type Shape = (sketch: Sketch, part: string, act: Act) => void

const depthOf = ({ motion }: Act): number | null =>
  (motion.kind === 'bore' || motion.kind === 'drive') && motion.by.state !== 'unknown'
    ? motion.by.value
    : null

/** Longest bit that is drawn short of its chuck, mm. */
const BIT = 90

/** The chuck, the body and the grip of what turns a bit, the chuck's mouth at `from`. */
function machine(sketch: Sketch, part: string, from: number, body: number): void {
  const back = from + CHUCK + body
  bar(sketch, part, 'steel', { z0: from, z1: from + CHUCK, r0: 16, r1: 22 })
  block(sketch, part, 'case', { x0: -34, x1: 34, y0: -36, y1: 36, z0: from + CHUCK, z1: back })
  block(sketch, part, 'case', { x0: -22, x1: 22, y0: -190, y1: -36, z0: back - 82, z1: back - 22 })
  block(sketch, part, 'enamel', { x0: -36, x1: 36, y0: -236, y1: -190, z0: back - 106, z1: back - 4 })
}
const CHUCK = 42

/** A bit with its depth stop: the collar meets the work when the bit is in as deep as the plan says. */
const drill =
  (body: number): Shape =>
  (sketch, part, act) => {
    const depth = act.motion.kind === 'bore' ? depthOf(act) : null
    const tip = Math.max(BIT, (depth ?? 0) + 24)
    bar(sketch, part, 'steel', { z0: 0, z1: tip, r0: 1, r1: 4 })
    if (depth !== null) bar(sketch, part, 'brass', { z0: depth, z1: depth + 12, r0: 10 })
    machine(sketch, part, tip, body)
  }

/** A side handle besides: what hammers is held in both hands. */
const hammerDrill: Shape = (sketch, part, act) => {
  drill(190)(sketch, part, act)
  const tip = Math.max(BIT, (depthOf(act) ?? 0) + 24)
  block(sketch, part, 'wood', { x0: -150, x1: -34, y0: -14, y1: 14, z0: tip + 50, z1: tip + 78 })
}

/** Driving, it stands on the head of the screw that goes in. */
const screwdriver: Shape = (sketch, part, act) => {
  const head = act.motion.kind === 'drive' ? (depthOf(act) ?? 0) : 0
  bar(sketch, part, 'steel', { z0: head, z1: head + 110, r0: 3.5 })
  bar(sketch, part, 'wood', { z0: head + 110, z1: head + 215, r0: 15, r1: 13 })
}

const driver: Shape = (sketch, part, act) => {
  if (act.motion.kind !== 'drive') return drill(150)(sketch, part, act)
  const head = depthOf(act) ?? 0
  bar(sketch, part, 'steel', { z0: head, z1: head + 66, r0: 4 })
  machine(sketch, part, head + 66, 150)
}

const pencil: Shape = (sketch, part) => {
  bar(sketch, part, 'case', { z0: 0, z1: 6, r0: 0.5, r1: 2 })
  bar(sketch, part, 'wood', { z0: 6, z1: 26, r0: 2, r1: 5 })
  bar(sketch, part, 'brass', { z0: 26, z1: 178, r0: 5 })
}

const detector: Shape = (sketch, part) => {
  block(sketch, part, 'case', { x0: -38, x1: 38, y0: -95, y1: 95, z0: 0, z1: 30 })
  block(sketch, part, 'enamel', { x0: -26, x1: 26, y0: 20, y1: 76, z0: 30, z1: 33 })
}

/** The case of a tape; its blade is drawn by what it measures. */
const tape: Shape = (sketch, part) => {
  block(sketch, part, 'case', { x0: -72, x1: 0, y0: -34, y1: 34, z0: 0, z1: 40 })
  block(sketch, part, 'brass', { x0: -4, x1: 3, y0: -14, y1: 14, z0: 0, z1: 10 })
}

const level =
  (length: number): Shape =>
  (sketch, part) => {
    const half = length / 2
    block(sketch, part, 'wood', { x0: -half, x1: half, y0: -12, y1: 12, z0: 0, z1: 52 })
    block(sketch, part, 'enamel', { x0: -42, x1: 42, y0: -13.5, y1: 13.5, z0: 26, z1: 53 })
  }

const mallet: Shape = (sketch, part) => {
  block(sketch, part, 'wood', { x0: -32, x1: 32, y0: -50, y1: 50, z0: 0, z1: 64 })
  block(sketch, part, 'wood', { x0: 32, x1: 300, y0: -12, y1: 12, z0: 22, z1: 44 })
}

const saw: Shape = (sketch, part) => {
  block(sketch, part, 'steel', { x0: -240, x1: 240, y0: -1, y1: 1, z0: 0, z1: 84 })
  block(sketch, part, 'wood', { x0: 240, x1: 330, y0: -12, y1: 12, z0: 10, z1: 116 })
}

const knife: Shape = (sketch, part) => {
  block(sketch, part, 'steel', { x0: -9, x1: 9, y0: -1, y1: 1, z0: 0, z1: 34 })
  block(sketch, part, 'enamel', { x0: -14, x1: 14, y0: -8, y1: 8, z0: 34, z1: 150 })
}

const clamp: Shape = (sketch, part) => {
  block(sketch, part, 'steel', { x0: -74, x1: 74, y0: -7, y1: 7, z0: 64, z1: 78 })
  block(sketch, part, 'case', { x0: -74, x1: -60, y0: -12, y1: 12, z0: 0, z1: 64 })
  block(sketch, part, 'case', { x0: 60, x1: 74, y0: -12, y1: 12, z0: 0, z1: 64 })
  block(sketch, part, 'wood', { x0: 74, x1: 170, y0: -12, y1: 12, z0: 20, z1: 44 })
}

const scribeBlock: Shape = (sketch, part, act) => {
  block(sketch, part, 'wood', { x0: -34, x1: 34, y0: -24, y1: 24, z0: 0, z1: 26 })
  pencil(sketch, part, act)
}

const sealantGun: Shape = (sketch, part) => {
  bar(sketch, part, 'enamel', { z0: 0, z1: 46, r0: 2, r1: 8 })
  bar(sketch, part, 'paper', { z0: 46, z1: 260, r0: 25 })
  block(sketch, part, 'case', { x0: -10, x1: 10, y0: -130, y1: -25, z0: 205, z1: 238 })
}

const list: Shape = (sketch, part) => {
  block(sketch, part, 'wood', { x0: -115, x1: 115, y0: -160, y1: 160, z0: 0, z1: 6 })
  block(sketch, part, 'paper', { x0: -105, x1: 105, y0: -148, y1: 140, z0: 6, z1: 9 })
}

const camera: Shape = (sketch, part) => {
  block(sketch, part, 'case', { x0: -70, x1: 70, y0: -45, y1: 45, z0: 30, z1: 72 })
  bar(sketch, part, 'steel', { z0: 0, z1: 30, r0: 26 })
}

const packers: Shape = (sketch, part) => {
  block(sketch, part, 'wood', { x0: -22, x1: 22, y0: -45, y1: 45, z0: 0, z1: 5 })
  block(sketch, part, 'wood', { x0: -22, x1: 22, y0: -45, y1: 45, z0: 5, z1: 10 })
}

const peg: Shape = (sketch, part) => bar(sketch, part, 'wood', { z0: -20, z1: 60, r0: 8 })
/** Lifting shows by an arrow; what is turned is gripped, what is pushed or pulled has a palm laid on it. */
const hands: Shape = (sketch, part, { motion }) => {
  if (motion.kind === 'carry') arrow(sketch, part, 190)
  else if (motion.kind === 'turn') grip(sketch, part)
  else palm(sketch, part)
}

const SHAPES: Partial<Record<StagedTool, Shape>> = {
  'drill-driver': driver,
  'hammer-drill': hammerDrill,
  screwdriver,
  pencil,
  detector,
  tape,
  level: level(600),
  'long-level': level(1200),
  mallet,
  saw,
  'mitre-saw': saw,
  knife,
  clamps: clamp,
  'scribe-block': scribeBlock,
  'sealant-gun': sealantGun,
  'delivery-list': list,
  camera,
  packers,
  'string-line': peg,
  hands,
}

/** Any tool without a drawing of its own: a plain case, so that where it is used still shows. */
const plain: Shape = (sketch, part) =>
  block(sketch, part, 'case', { x0: -40, x1: 40, y0: -40, y1: 40, z0: 0, z1: 80 })

export function sketchTool(sketch: Sketch, part: string, act: Act): void {
  const shape = SHAPES[act.tool] ?? plain
  shape(sketch, part, act)
}

/** The screw a driver stands on: its tip at the origin, as long as the plan says. */
export function sketchScrew(sketch: Sketch, part: string, length: number): void {
  bar(sketch, part, 'brass', { z0: 0, z1: length - 3, r0: 1, r1: 2.6 })
  bar(sketch, part, 'brass', { z0: length - 3, z1: length, r0: 2.6, r1: 5.5 })
}

/** One millimetre of a blade or a string along x: it is drawn out to what is measured. */
export function sketchReach(sketch: Sketch, part: string, act: Act): void {
  if (act.tool === 'string-line') {
    polyline(sketch, part, { weight: 'bold', colour: TONES.chalk.middle }, [
      [0, 0, 6],
      [1, 0, 6],
    ])
    return
  }
  block(sketch, part, 'enamel', { x0: 0, x1: 1, y0: -10, y1: 10, z0: 0, z1: 2 })
}

const TURNED = 250

/** Which way round something is turned: an arc about the tool, with its head. Seen from whoever turns, clockwise. */
export function sketchTurn(sketch: Sketch, part: string): void {
  const [r, z] = [46, 24]
  const at = (degrees: number, radius = r): Point => {
    const a = (-degrees * Math.PI) / 180
    return [radius * Math.cos(a), radius * Math.sin(a), z]
  }
  const pen = { weight: 'bold', colour: TONES.chalk.middle } as const
  polyline(
    sketch,
    part,
    pen,
    Array.from({ length: 26 }, (_, i) => at((i * TURNED) / 25)),
  )
  polyline(sketch, part, pen, [at(TURNED - 22, r + 16), at(TURNED), at(TURNED - 22, r - 16)])
}
