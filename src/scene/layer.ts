/** Millimetres out from the finished face at which flat things lie on a wall, so that none fights another for depth. */
export const LAYER = { stud: 0.5, band: 1, service: 1.5, shadow: 2.5, wash: 3, line: 4, opening: 12 } as const
