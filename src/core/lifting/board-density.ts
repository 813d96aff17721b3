import { assumed, type Figure } from '../figure'

/**
 * Density of particleboard by thickness, mm to kg/m³: it falls as boards get thicker.
 * Source: a maker's sheet for P2 boards to EN 312, measured to EN 323.
 */
const PARTICLEBOARD: readonly (readonly [number, number])[] = [
  [10, 700],
  [12, 690],
  [15, 670],
  [16, 660],
  [18, 650],
  [19, 650],
  [22, 640],
  [25, 640],
  [28, 620],
  [32, 610],
  [36, 610],
  [38, 600],
]

/** A back this thin is of fibreboard. Source: a maker's sheet to BS EN 323, 880 at 3 mm and 840 at 6 to 9. */
const THIN_BACK = 8
const THIN_BACK_DENSITY = 860

/** Between the rows of the table the density is taken to run straight; beyond its ends it stays. kg/m³. */
export function particleboardDensity(thickness: number): number {
  const above = PARTICLEBOARD.findIndex(([t]) => t >= thickness)
  const at = PARTICLEBOARD[above === -1 ? PARTICLEBOARD.length - 1 : above] as readonly [number, number]
  const below = PARTICLEBOARD[above - 1]
  if (below === undefined || above === -1) return at[1]
  return below[1] + ((at[1] - below[1]) * (thickness - below[0])) / (at[0] - below[0])
}

/** A back panel: fibreboard when it is thin, else of the same board as the rest. kg/m³. */
export function backDensity(thickness: number): number {
  return thickness <= THIN_BACK ? THIN_BACK_DENSITY : particleboardDensity(thickness)
}

/** Mass of a panel: mm², mm, kg/m³. */
export function panelMass(area: number, thickness: number, density: number): number {
  return (area * thickness * density) / 1e9
}

/** By how much a maker's board may be heavier or lighter than the table; kept as a figure so that it is never lost. */
export const BOARD_SPREAD: Figure = assumed(0, 50, 'ratio', [], {
  kind: 'common-practice',
  why: 'density of particleboard by its thickness, kg/m³, from one maker; others differ by 50',
})

/** Doors and fronts: fibreboard. Source: the same sheet, 19 to 30 mm 740 ± 20; 18 mm ones are taken with them. */
export const FRONT_DENSITY: Figure = assumed(740, 20, 'ratio', [], {
  kind: 'common-practice',
  why: 'fronts taken as fibreboard of 740 kg/m³; glass, solid timber and frames differ',
})
