import type { GivenAccessory, GivenService, GivenWall } from './given'
import { at, flagAt, isRecord, itemsAt, ownId, type Spot, textAt } from './json'
import { isKnown, type Measure, measureAt, work } from './measure'
import { readAlong, readHeight, readLayers, readRect } from './read-places'

/** One wall of the file with all that is on and in it; lengths read to `tape` mm where nothing else is said. */
export function readWall(spot: Spot, tape: number): GivenWall {
  return {
    id: ownId(spot),
    length: measureAt(spot, 'length'),
    corner: cornerOf(at(spot, 'cornerRight'), tape),
    construction: textAt(spot, 'construction'),
    layers: readLayers(spot, 'layers'),
    layersToCome: readLayers(spot, 'layersToCome'),
    thickness: measureAt(spot, 'thickness'),
    behind: textAt(spot, 'behind'),
    otherFaceChecked: flagAt(spot, 'otherFaceChecked'),
    otherFaceShift: measureAt(spot, 'otherFaceShift'),
    studs: itemsAt(spot, 'studs').map((stud) => ({
      id: ownId(stud),
      centre: readAlong(at(stud, 'centre')),
      width: measureAt(stud, 'width'),
      material: textAt(stud, 'material'),
      confirmed: textAt(stud, 'confirmed'),
    })),
    studTimber: {
      grade: textAt(at(spot, 'studTimber'), 'grade'),
      density: measureAt(spot, 'studTimber', 'density'),
      gravity: measureAt(spot, 'studTimber', 'specificGravity'),
    },
    noggings: itemsAt(spot, 'noggings').map((nogging) => ({
      id: ownId(nogging),
      from: readAlong(at(nogging, 'from')),
      to: readAlong(at(nogging, 'to')),
      centre: readHeight(at(nogging, 'centre')),
      depth: measureAt(nogging, 'depth'),
    })),
    accessories: itemsAt(spot, 'accessories').map(readAccessory),
    services: itemsAt(spot, 'services').map(readService),
    lintels: itemsAt(spot, 'lintels').map(readRect),
    openings: itemsAt(spot, 'openings').map(readRect),
    traced: textAt(spot, 'traced'),
    tracedDepth: measureAt(spot, 'tracedDepth'),
    provedDead: flagAt(spot, 'provedDead'),
  }
}

const degreesOf = (a: number, b: number, c: number): number =>
  (Math.acos(Math.min(1, Math.max(-1, (a * a + b * b - c * c) / (2 * a * b)))) * 180) / Math.PI

/** How well a typed angle is known where nothing is said of it, in degrees; common practice. */
const ANGLE_READ = 0.1

/**
 * The inside angle, typed or from two legs and the straight line across (law of cosines). Where both are there and further
 * apart than they were read to, the legs.
 */
function cornerOf(spot: Spot, tape: number): Measure {
  const typed = measureAt(spot, 'angle')
  const keys = ['thisLeg', 'nextLeg', 'across'] as const
  const three = keys.map((key) => measureAt(spot, key))
  const isOuter = (typed.value ?? 0) > 180
  const worked = work(three, (a = 0, b = 0, c = 0) => {
    const degrees = isOuter ? 360 - degreesOf(a, b, c) : degreesOf(a, b, c)
    // Figures are kept to a thousandth, and walls are set out by the figure.
    return Math.round(degrees * 1000) / 1000
  })
  if (typed.value !== null && worked.value !== null && three.every(({ value }) => (value ?? 0) > 0)) {
    const [a = 1, b = 1, c = 1] = three.map(({ value }) => value ?? 1)
    const [p = 0, q = 0, r = 0] = keys.map((key) => readTo(at(spot, key), tape))
    const turn = (...[x, y, z]: readonly [number, number, number]) =>
      Math.max(
        Math.abs(degreesOf(a + x, b + y, c + z) - degreesOf(a, b, c)),
        Math.abs(degreesOf(a - x, b - y, c - z) - degreesOf(a, b, c)),
      )
    const known = readTo(at(spot, 'angle'), ANGLE_READ) + turn(p, 0, 0) + turn(0, q, 0) + turn(0, 0, r)
    return Math.abs(typed.value - worked.value) > known + 1e-3 ? worked : typed
  }
  if (isKnown(typed)) return typed
  return isKnown(worked) ? worked : { ...worked, missing: [...typed.missing, ...worked.missing] }
}

/** How well a figure was read: its own precision where it has one. */
function readTo({ json }: Spot, usual: number): number {
  const own = isRecord(json) ? json['pm'] : undefined
  return typeof own === 'number' ? own : usual
}

function faceOf(spot: Spot): 'room' | 'other' {
  return textAt(spot, 'face') === 'other' ? 'other' : 'room'
}

function readAccessory(spot: Spot): GivenAccessory {
  return {
    id: ownId(spot),
    face: faceOf(spot),
    along: readAlong(at(spot, 'along')),
    height: readHeight(at(spot, 'height')),
    width: measureAt(spot, 'width'),
    tall: measureAt(spot, 'tall'),
  }
}

function readService(spot: Spot): GivenService {
  return {
    id: ownId(spot),
    face: faceOf(spot),
    points: itemsAt(spot, 'points').map((point) => ({
      along: readAlong(at(point, 'along')),
      height: readHeight(at(point, 'height')),
    })),
    width: measureAt(spot, 'width'),
    traced: textAt(spot, 'traced'),
  }
}
