import { DoubleSide, MeshBasicMaterial } from 'three'
import { LineMaterial } from 'three/addons/lines/LineMaterial.js'
import { WEIGHTS, type Weight } from './sketch'

/**
 * The few materials of the picture, shared by all of it. Surfaces carry their light in their colours: nothing is lit,
 * nothing casts a shadow, so a frame costs little more than its pixels.
 */

/** Faces are pushed back a little, so that lines lying on them show whole. */
export const faceMaterial = new MeshBasicMaterial({
  vertexColors: true,
  side: DoubleSide,
  polygonOffset: true,
  polygonOffsetFactor: 1,
  polygonOffsetUnits: 1,
  toneMapped: false,
})

export const washMaterial = new MeshBasicMaterial({
  vertexColors: true,
  side: DoubleSide,
  transparent: true,
  depthWrite: false,
  // In the order they were sketched, back and front alike: two passes would make the material anew twice a frame.
  forceSinglePass: true,
  toneMapped: false,
})

/**
 * How far lines are pulled towards the eye, so that what they sit on and beside doesn't cut them: round marks about 50 mm,
 * the edges of what is in hand some 5, as where a plinth meets the floor.
 */
const NEARER: Partial<Record<Weight, number>> = { bold: -700, ring: -6000, dot: -6600, bar: -7200 }

export const lineMaterials: Readonly<Record<Weight, LineMaterial>> = {
  hair: lineMaterial('hair'),
  fine: lineMaterial('fine'),
  bold: lineMaterial('bold'),
  ring: lineMaterial('ring'),
  dot: lineMaterial('dot'),
  bar: lineMaterial('bar'),
}

function lineMaterial(weight: Weight): LineMaterial {
  const units = NEARER[weight]
  return new LineMaterial({
    linewidth: WEIGHTS[weight],
    vertexColors: true,
    toneMapped: false,
    polygonOffset: units !== undefined,
    polygonOffsetFactor: 0,
    polygonOffsetUnits: units ?? 0,
  })
}
