import { Box3, Matrix4, Vector3 } from 'three'
import { type Figure, hasValue } from '../../core/figure'
import type { RoomPoint } from '../../core/plan/types'
import type { Act, Contact } from '../../core/staging/staging'
import { newSketch, type Sketch } from '../sketch'
import { palm } from './hand'
import { sketchReach, sketchScrew, sketchTool, sketchTurn } from './shapes'
import { AS_GIVEN, turnedFrame, type Waiting } from './waiting'

/** One rigid piece of what an act shows, drawn in a frame of its own. */
export interface Piece {
  /** `tool:<tool>@<on>`, and what part of it. */
  readonly name: string
  readonly sketch: Sketch
  /** Where it is at a moment of the act, 0..1, in the room, mm. */
  readonly at: (progress: number) => Matrix4
}

/** How far off a tool waits and goes back to, mm. */
export const READY = 90
/** Shares of an act: coming to the work, and the time from which it goes again. */
const COMES = 0.2
const GOES = 0.82

/** 0..1 of the work itself. */
export const workOf = (progress: number): number =>
  Math.max(0, Math.min(1, (progress - COMES) / (GOES - COMES)))

/** Pieces that are drawn with the room already: a level that lies there, blocks under an edge. */
const STANDS_THERE = /^(level|blocks):/

export function toolName(act: Act): string {
  return `tool:${act.tool}@${act.on}`
}

/** Everything that moves in one act; nothing where it is done somewhere else, or drawn with the room. */
export function piecesOf(act: Act, waiting: Waiting = AS_GIVEN): readonly Piece[] {
  const { contact, motion } = act
  if (contact === null || motion.kind === 'elsewhere') return []
  if (motion.kind === 'carry') return handsOf(act, contact, motion.spread)
  if (motion.kind === 'rest' && (STANDS_THERE.test(act.on) || act.tool === 'blocks')) return []
  const name = toolName(act)
  const own = newSketch()
  sketchTool(own, name, act)
  const frame = turnedFrame(act, contact, waiting.turn)
  const tool: Piece = {
    name,
    sketch: own,
    at: (p) => frame.clone().multiply(movedBy(act, contact, p, waiting)),
  }
  return [tool, ...besides(act, contact, frame)]
}

/** The corners of all that an act shows, as it waits and as it works, in the room: texts keep off it. */
export function spaceOf(act: Act, pieces: readonly Piece[]): readonly (readonly RoomPoint[])[] {
  // What is carried is in the picture anyway, and its hands go with it.
  if (act.motion.kind === 'carry') return []
  return pieces.flatMap(({ sketch, at }) => {
    const box = new Box3().setFromArray([...sketch.faces.points])
    if (box.isEmpty()) return []
    return [0, 0.5].map((progress) => {
      const place = at(progress)
      return [0, 1, 2, 3, 4, 5, 6, 7].map((k): RoomPoint => {
        const { min, max } = box
        const p = new Vector3(k & 1 ? max.x : min.x, k & 2 ? max.y : min.y, k & 4 ? max.z : min.z)
        const { x, y, z } = p.applyMatrix4(place)
        return { x, y, z }
      })
    })
  })
}

/** Two hands, one to either side, under the edge and pushing the way it is lifted. They go with the unit. */
function handsOf(act: Act, contact: Contact, spread: number): readonly Piece[] {
  const frame = frameOf(act, contact)
  return [-0.5, 0.5].map((side): Piece => {
    const name = `${toolName(act)}.${side < 0 ? 'left' : 'right'}`
    const sketch = newSketch()
    sketchTool(sketch, name, act)
    // Palm to the unit, the fingers under it, both thumbs to the same side.
    palm(sketch, name, (x, y, z) => [side < 0 ? y : -y, x, z + RISE])
    const place = frame.clone().multiply(shift(side * spread, 0, -RISE))
    return { name, sketch, at: () => place }
  })
}
/** How far above where a hand takes hold the point of its arrow is, mm. */
const RISE = 230

function besides(act: Act, contact: Contact, frame: Matrix4): readonly Piece[] {
  const { motion } = act
  const name = toolName(act)
  if (motion.kind === 'drive' && hasValue(motion.by)) {
    const [length, screw] = [motion.by.value, newSketch()]
    sketchScrew(screw, `${name}.screw`, length)
    const at = (p: number) => frame.clone().multiply(shift(0, 0, -length * workOf(p)))
    return [{ name: `${name}.screw`, sketch: screw, at }]
  }
  if (motion.kind === 'measure' || (motion.kind === 'draw' && act.tool === 'string-line')) {
    const reach = newSketch()
    sketchReach(reach, `${name}.reach`, act)
    const length = distance(contact.at, motion.to)
    const at = (p: number) =>
      frame.clone().multiply(new Matrix4().makeScale(Math.max(0.001, length * workOf(p)), 1, 1))
    return [{ name: `${name}.reach`, sketch: reach, at }]
  }
  if (motion.kind === 'turn') {
    const arc = newSketch()
    sketchTurn(arc, `${name}.turn`)
    return [{ name: `${name}.turn`, sketch: arc, at: () => frame.clone() }]
  }
  return []
}

const distance = (a: RoomPoint, b: RoomPoint): number => Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z)
const shift = (x: number, y: number, z: number): Matrix4 => new Matrix4().makeTranslation(x, y, z)

/** The tool's frame in the room: z back from the work, x along its broad side, or along where it goes. */
export function frameOf({ motion }: Act, { at, into, across }: Contact): Matrix4 {
  const z = new Vector3(-into.x, -into.y, -into.z).normalize()
  const goes =
    (motion.kind === 'draw' || motion.kind === 'measure') && distance(at, motion.to) > 1
      ? new Vector3(motion.to.x - at.x, motion.to.y - at.y, motion.to.z - at.z)
      : new Vector3(across.x, across.y, across.z)
  // Where it goes the way it works (a tape let down to the floor), its broad side is as given, and it lies along its way.
  const x = goes.clone().normalize()
  if (Math.abs(x.dot(z)) > 0.99) {
    const side = new Vector3(across.x, across.y, across.z)
    return new Matrix4().makeBasis(x, side.clone().cross(x).normalize(), side).setPosition(at.x, at.y, at.z)
  }
  x.addScaledVector(z, -x.dot(z)).normalize()
  return new Matrix4().makeBasis(x, z.clone().cross(x), z).setPosition(at.x, at.y, at.z)
}

/** Where the tool is in its own frame. */
function movedBy(act: Act, contact: Contact, p: number, waiting: Waiting): Matrix4 {
  const { motion } = act
  const work = workOf(p)
  const off = p < COMES ? READY * (1 - p / COMES) : p > GOES ? (READY * (p - GOES)) / (1 - GOES) : 0
  const [x, y] = [(waiting.x * off) / READY, (waiting.y * off) / READY]
  switch (motion.kind) {
    case 'bore': {
      const depth = hasValue(motion.by) ? motion.by.value : 0
      // In, and out again: the hole stays, the bit does not.
      const deep = p > GOES ? depth * (1 - (p - GOES) / (1 - GOES)) : depth * work
      return shift(x, y, off - deep)
    }
    case 'drive':
      return shift(x, y, off - (hasValue(motion.by) ? motion.by.value : 0) * work)
    case 'draw':
      return shift(x + (act.tool === 'string-line' ? 0 : distance(contact.at, motion.to) * work), y, off)
    case 'measure':
      return shift(x + (act.tool === 'detector' ? distance(contact.at, motion.to) * work : 0), y, off)
    case 'turn':
      if (act.tool === 'hands') return shift(x, y, off).multiply(new Matrix4().makeRotationZ(-wristAt(work)))
      return shift(x, y, off).multiply(new Matrix4().makeRotationZ(-turnedBy(motion.turns) * work))
    case 'knock':
      return shift(x, y, off + READY * Math.abs(Math.cos(Math.PI * 2 * work)))
    case 'tug':
      return shift(x, y, off + 30 * (1 - Math.cos(Math.PI * 2 * work)))
    default:
      return shift(x, y, off)
  }
}

/** A hand turns as far as its wrist goes, and goes back to take hold again: radians. */
const wristAt = (work: number): number => (Math.PI / 3) * Math.sin(2 * Math.PI * work) ** 2

/** Radians; where nobody knows by how much, one turn is shown. */
const turnedBy = (turns: Figure | null): number =>
  2 * Math.PI * (turns !== null && hasValue(turns) ? turns.value : 1)
