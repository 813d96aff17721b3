import { valueOf } from '../../figure'
import { type Problem, placeIn, shown } from '../problem'
import type { Kitchen } from '../schema'
import { insideAngle } from './corners'

interface Point {
  readonly x: number
  readonly y: number
}

/** A crossing no deeper than this may come from the tape and the angles; deeper, walls are in the wrong order. */
const DEEP = 50
/** How near to a full turn the other way round the corners must come, in degrees. */
const NEAR_FULL_TURN = 180

/**
 * The ends of the walls on the plan, walked in order from (0, 0) along +x, the room on the right-hand side: an inside
 * angle of θ turns the walk clockwise by 180 − θ. Undefined while a length or a corner on the way is not known.
 */
function walk(kitchen: Kitchen): readonly Point[] | undefined {
  let here: Point = { x: 0, y: 0 }
  let heading = 0
  const points = [here]
  for (const [index, wall] of kitchen.walls.entries()) {
    const length = valueOf(wall.length)
    if (length === undefined) return undefined
    const turn = (heading * Math.PI) / 180
    here = { x: here.x + length * Math.cos(turn), y: here.y + length * Math.sin(turn) }
    points.push(here)
    const angle = insideAngle(wall.cornerRight)
    if (angle === undefined && index < kitchen.walls.length - 1) return undefined
    heading -= 180 - (angle ?? 180)
  }
  return points
}

/** How far c lies to the left of the way from a to b: negative to the right. */
function leftOf(a: Point, b: Point, c: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  return (dx * (c.y - a.y) - dy * (c.x - a.x)) / Math.hypot(dx, dy)
}

/** Whether two walls cross with all four ends further than `DEEP` past the other wall. */
function crossDeeply(a: Point, b: Point, c: Point, d: Point): boolean {
  const [toC, toD] = [leftOf(a, b, c), leftOf(a, b, d)]
  const [toA, toB] = [leftOf(c, d, a), leftOf(c, d, b)]
  const isAcross = toC * toD < 0 && toA * toB < 0
  return isAcross && Math.min(...[toA, toB, toC, toD].map(Math.abs)) > DEEP
}

function crossings(kitchen: Kitchen, points: readonly Point[]): readonly Problem[] {
  const { walls } = kitchen
  const problems: Problem[] = []
  for (let i = 0; i < walls.length; i++) {
    for (let k = i + 2; k < walls.length; k++) {
      const [a, b, c, d] = [points[i], points[i + 1], points[k], points[k + 1]]
      if (!a || !b || !c || !d || !crossDeeply(a, b, c, d)) continue
      const message = `This wall crosses wall ${shown(walls[i]?.id)}: the outline of the room runs through itself.`
      const mend =
        'Look at the lengths and corners, and that the walls are listed in order, left to right seen from inside.'
      problems.push({ kind: 'outline', path: placeIn(kitchen, ['walls', k]), message, mend })
    }
  }
  return problems
}

/** Twice the area to the left of the walk, closed straight back to its start: positive when it runs anticlockwise. */
function twiceArea(points: readonly Point[]): number {
  return points.reduce((sum, a, i) => {
    const b = points[(i + 1) % points.length] ?? a
    return sum + a.x * b.y - b.x * a.y
  }, 0)
}

/** Whether a closed outline runs the wrong way round: by its corners when all are known, else by the walk's area. */
function runsAnticlockwise(kitchen: Kitchen, points: readonly Point[] | undefined): boolean {
  if (kitchen.walls.length < 3 || kitchen.closed === false) return false
  const angles = kitchen.walls.map((wall) => insideAngle(wall.cornerRight))
  if (angles.every((angle) => angle !== undefined)) {
    const turned = angles.reduce<number>((sum, angle) => sum + 180 - (angle ?? 180), 0)
    return turned < -NEAR_FULL_TURN
  }
  return kitchen.closed === true && points !== undefined && twiceArea(points) > 0
}

/** An outline that crosses itself, or goes round the room the wrong way. */
export function outline(kitchen: Kitchen): readonly Problem[] {
  const points = walk(kitchen)
  const crossed = points === undefined ? [] : crossings(kitchen, points)
  if (crossed.length > 0 || !runsAnticlockwise(kitchen, points)) return crossed
  const message =
    'The walls go round the room anticlockwise, seen from above: their corners are those of its outside.'
  const mend =
    'List the walls left to right as seen from inside, each with the inside angle at its right end.'
  return [{ kind: 'outline', path: 'walls', message, mend }]
}
