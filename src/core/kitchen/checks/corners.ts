import { valueOf } from '../../figure'
import { type Problem, placeIn } from '../problem'
import type { Kitchen, Wall } from '../schema'

type Corner = Wall['cornerRight']

/** By how much a typed angle and one worked out from three lengths may differ before one of them must be wrong. */
const ANGLES_AGREE = 1

interface Triangle {
  readonly thisLeg: number
  readonly nextLeg: number
  readonly across: number
}

/** The three lengths of a corner, once all are known. */
function triangleOf(corner: Corner): Triangle | undefined {
  const thisLeg = valueOf(corner.thisLeg)
  const nextLeg = valueOf(corner.nextLeg)
  const across = valueOf(corner.across)
  return thisLeg === undefined || nextLeg === undefined || across === undefined
    ? undefined
    : { thisLeg, nextLeg, across }
}

function closes({ thisLeg, nextLeg, across }: Triangle): boolean {
  const isFlatOrMore = across > thisLeg + nextLeg || across < Math.abs(thisLeg - nextLeg)
  return thisLeg > 0 && nextLeg > 0 && across > 0 && !isFlatOrMore
}

/** The angle opposite `across`, in degrees, by the law of cosines. */
function angleOf({ thisLeg, nextLeg, across }: Triangle): number {
  const cosine = (thisLeg ** 2 + nextLeg ** 2 - across ** 2) / (2 * thisLeg * nextLeg)
  return (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI
}

/**
 * The inside angle of a corner in degrees: as typed, else from its three lengths. Three lengths alone are read as an
 * inner corner; with a typed angle past 180 they are those of an outer one. Undefined when it is not known.
 */
export function insideAngle(corner: Corner): number | undefined {
  const typed = valueOf(corner.angle)
  if (typed !== undefined) return typed
  const triangle = triangleOf(corner)
  return triangle !== undefined && closes(triangle) ? angleOf(triangle) : undefined
}

function disagreement(corner: Corner, triangle: Triangle): string | undefined {
  const typed = valueOf(corner.angle)
  if (typed === undefined) return undefined
  const inner = angleOf(triangle)
  const measured = typed > 180 ? 360 - inner : inner
  if (Math.abs(typed - measured) <= ANGLES_AGREE) return undefined
  return `The angle is given as ${typed}°, but its three lengths make it ${measured.toFixed(1)}°.`
}

function problemOf(kitchen: Kitchen, wall: Wall, index: number): readonly Problem[] {
  const triangle = triangleOf(wall.cornerRight)
  if (triangle === undefined) return []
  const path = placeIn(kitchen, ['walls', index, 'cornerRight'])
  if (!closes(triangle)) {
    const { thisLeg, nextLeg, across } = triangle
    const message = `No corner has these three lengths: ${thisLeg} and ${nextLeg} along the walls, ${across} across.`
    const mend = 'Measure the three again: each is shorter than the other two together.'
    return [{ kind: 'contradiction', path, message, mend }]
  }
  const message = disagreement(wall.cornerRight, triangle)
  const mend = 'Measure again and keep the one that is right; write null for the other.'
  const onScreen = 'Measure again and keep the one that is right; empty the other.'
  return message === undefined ? [] : [{ kind: 'contradiction', path, message, mend, onScreen }]
}

/** Corners whose three lengths make no triangle, or disagree with the typed angle by more than a degree. */
export function corners(kitchen: Kitchen): readonly Problem[] {
  return kitchen.walls.flatMap((wall, index) => problemOf(kitchen, wall, index))
}
