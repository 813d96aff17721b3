/**
 * What published formulas give for the pull that the thread of one screw bears in the side grain of timber, the screw
 * standing square to the grain. None of them is a screw maker's figure.
 */

const MM_PER_INCH = 25.4
const N_PER_POUND = 4.4482216152605

/** Pounds on an inch of thread, as newtons on a millimetre. */
export const newtonsPerMm = (poundsPerInch: number): number => (poundsPerInch * N_PER_POUND) / MM_PER_INCH

/**
 * Wood screw: W = 2850·G²·D, pounds on each inch of thread.
 *
 * @param gravity assigned specific gravity of the species, G
 * @param diameter nominal diameter of the screw in inches, D
 * Source: NDS 12.2.2, an allowable value for load of normal duration; secondary copies (sources §6.1).
 */
export const woodScrewPounds = (gravity: number, diameter: number): number => 2850 * gravity ** 2 * diameter

/**
 * Lag screw: W = 1800·G^1.5·D^0.75, pounds on each inch of full thread, its tapered tip left out. Reproduces the table
 * of the same standard (12.2A).
 */
export const lagScrewPounds = (gravity: number, diameter: number): number =>
  1800 * gravity ** 1.5 * diameter ** 0.75

/** Newtons that one wood or lag screw bears by these formulas; diameter and thread in millimetres. */
export function americanPull(
  kind: 'wood' | 'lag',
  gravity: number,
  diameter: number,
  thread: number,
): number {
  const pounds = kind === 'lag' ? lagScrewPounds : woodScrewPounds
  return newtonsPerMm(pounds(gravity, diameter / MM_PER_INCH)) * Math.max(0, thread)
}

/** Limits of the formula of Eurocode 5, by what they limit. */
export type EurocodeLimit = 'diameter' | 'core' | 'penetration'

export const EUROCODE_DIAMETERS = { least: 6, most: 12 } as const
export const EUROCODE_CORE = { least: 0.6, most: 0.75 } as const
/** Thread in the timber, in diameters. */
export const EUROCODE_PENETRATION = 6
/** So near a limit, and it is on it: shares of two typed sizes are not exact. */
const ON_IT = 1e-9

/**
 * The first limit that a screw misses, or null: 6 to 12 mm thick, its core 0.6 to 0.75 of that, its thread in the timber
 * at least six times it. Outside them the formula says nothing; what its maker has declared does (EN 14592 or an ETA).
 */
export function eurocodeLimit(diameter: number, core: number, thread: number): EurocodeLimit | null {
  const { least, most } = EUROCODE_DIAMETERS
  if (diameter < least - ON_IT || diameter > most + ON_IT) return 'diameter'
  const share = core / diameter
  if (share < EUROCODE_CORE.least - ON_IT || share > EUROCODE_CORE.most + ON_IT) return 'core'
  return thread < EUROCODE_PENETRATION * diameter - ON_IT ? 'penetration' : null
}

/** Withdrawal strength of the thread, N/mm²: f = 0.52·d^−0.5·l^−0.1·ρ^0.8. */
export const eurocodeStrength = (diameter: number, thread: number, density: number): number =>
  0.52 * diameter ** -0.5 * thread ** -0.1 * density ** 0.8

/**
 * Newtons that one screw square to the grain bears, a characteristic value: F = f·d·l·k, with k = d/8 and at most 1. The
 * code divides it further for the length of the load and for the material before anything is designed with it.
 *
 * @param density characteristic density of the timber, kg/m³; the mean is more, and gives too much
 * Source: EN 1995-1-1:2004+A1:2008, 8.7.2, eqs 8.38 to 8.40; three secondary copies (sources §6.2).
 */
export function eurocodePull(diameter: number, thread: number, density: number): number {
  if (thread <= 0) return 0
  return eurocodeStrength(diameter, thread, density) * diameter * thread * Math.min(diameter / 8, 1)
}
