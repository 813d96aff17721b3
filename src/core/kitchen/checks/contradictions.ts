import { type Figure, hasValue, valueOf } from '../../figure'
import { STRENGTH_CLASSES } from '../../trade/strength-classes'
import { type JsonPath, type Problem, placeIn } from '../problem'
import type { Kitchen, Wall } from '../schema'

interface Range {
  readonly path: JsonPath
  readonly least: Figure
  readonly most: Figure
  readonly names: readonly [string, string]
}

function ranges(kitchen: Kitchen): readonly Range[] {
  return [
    ...kitchen.units.map(
      ({ legs }, i): Range => ({
        path: ['units', i, 'legs'],
        least: legs.min,
        most: legs.max,
        names: ['min', 'max'],
      }),
    ),
    ...kitchen.appliances.map(
      (appliance, i): Range => ({
        path: ['appliances', i],
        least: appliance.heightMin,
        most: appliance.heightMax,
        names: ['heightMin', 'heightMax'],
      }),
    ),
    ...kitchen.wishes.order.map(
      (wish, i): Range => ({
        path: ['wishes', 'order', i],
        least: wish.minLag,
        most: wish.maxLag,
        names: ['minLag', 'maxLag'],
      }),
    ),
  ]
}

function upsideDown(kitchen: Kitchen, { path, least, most, names }: Range): readonly Problem[] {
  const [low, high] = [valueOf(least), valueOf(most)]
  if (low === undefined || high === undefined || low <= high) return []
  const message = `${names[0]} is ${low}, more than ${names[1]}, which is ${high}.`
  const mend = 'Look at the sheet again; the two may have changed places.'
  return [{ kind: 'contradiction', path: placeIn(kitchen, path), message, mend }]
}

/** Only what the readings cannot explain: the least the layers can be, against the most the wall can be. */
function tooThin(kitchen: Kitchen, wall: Wall, index: number): readonly Problem[] {
  if (!hasValue(wall.thickness)) return []
  const known = wall.layers.map((layer) => layer.thickness).filter(hasValue)
  const sum = known.reduce((total, layer) => total + layer.value, 0)
  const least = known.reduce((total, layer) => total + Math.max(0, layer.value - layer.pm), 0)
  if (least <= wall.thickness.value + wall.thickness.pm) return []
  const message = `The wall is ${wall.thickness.value} mm thick, but its known layers come to ${sum} mm.`
  const mend = 'Look at the thickness of the wall, face to face, and of each layer.'
  return [{ kind: 'contradiction', path: placeIn(kitchen, ['walls', index, 'thickness']), message, mend }]
}

/** A density that is more than the characteristic one of its class is what such timber weighs on average. */
function meanDensity(kitchen: Kitchen, wall: Wall, index: number): readonly Problem[] {
  const { grade, density } = wall.studTimber
  if (grade === null || grade === 'other' || !hasValue(density)) return []
  const { characteristic, mean } = STRENGTH_CLASSES[grade]
  if (density.value <= characteristic) return []
  const message = `The density entered for ${grade} is ${density.value} kg/m³; its characteristic density is ${characteristic}. ${grade} weighs ${mean} on average, and the average gives too much.`
  const mend = 'Enter the characteristic density, or leave it out: the strength class says it.'
  const path = placeIn(kitchen, ['walls', index, 'studTimber', 'density'])
  return [{ kind: 'contradiction', path, message, mend }]
}

/** Pairs of figures of which one cannot be while the other is. */
export function contradictions(kitchen: Kitchen): readonly Problem[] {
  return [
    ...ranges(kitchen).flatMap((range) => upsideDown(kitchen, range)),
    ...kitchen.walls.flatMap((wall, index) => tooThin(kitchen, wall, index)),
    ...kitchen.walls.flatMap((wall, index) => meanDensity(kitchen, wall, index)),
  ]
}
