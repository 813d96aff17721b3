import type { GivenAccessory, GivenService, GivenWall } from './given'
import { at, flagAt, itemsAt, ownId, type Spot, textAt } from './json'
import { isKnown, type Measure, measureAt, work } from './measure'
import { readAlong, readHeight, readLayers, readRect } from './read-places'

/** One wall of the file with all that is on and in it. */
export function readWall(spot: Spot): GivenWall {
  return {
    id: ownId(spot),
    length: measureAt(spot, 'length'),
    corner: cornerOf(at(spot, 'cornerRight')),
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

/** The inside angle, typed or from two legs and the straight line across (law of cosines). */
function cornerOf(spot: Spot): Measure {
  const typed = measureAt(spot, 'angle')
  if (isKnown(typed)) return typed
  const three = [measureAt(spot, 'thisLeg'), measureAt(spot, 'nextLeg'), measureAt(spot, 'across')]
  const worked = work(three, (a = 0, b = 0, c = 0) => {
    const cosine = (a * a + b * b - c * c) / (2 * a * b)
    const degrees = (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI
    // Figures are kept to a thousandth, and walls are set out by the figure.
    return Math.round(degrees * 1000) / 1000
  })
  return isKnown(worked) ? worked : { ...worked, missing: [...typed.missing, ...worked.missing] }
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
