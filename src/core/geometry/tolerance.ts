/** The only tolerances of the plane geometry, in mm unless said. Tolerances of the trade stand with their rules. */

/** A point no further than this from an edge lies on it. */
export const ON_EDGE = 1e-6

/** Two points no further apart than this are one. */
export const SAME_POINT = 1e-6

/** A direction's parts smaller than this are rounding: 90° turns exactly. A ratio. */
export const DIRECTION_GRAIN = 1e-12
