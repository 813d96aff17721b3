/**
 * Characteristic and mean densities of the two classes most studs are of, kg/m³. EN 338 Table 1: the characteristic ones
 * from memory, the mean ones from a secondary copy (sources §4). The mean is for masses; what a screw holds is worked
 * from the characteristic.
 */
export const STRENGTH_CLASSES = {
  C16: { characteristic: 310, mean: 370 },
  C24: { characteristic: 350, mean: 420 },
} as const
