import { type Basis, derive, type Figure, known } from '../figure'

/** Standard gravity as this tool uses it, m/s². */
export const G = 9.81

/** One row of fixings of a hung unit: its height above the pivot, and how many fixings it has. */
export interface FixingRow {
  readonly height: number
  readonly count: number
}

/**
 * Tension in each fixing of every row. A rigid unit turns about its lower back edge; tension grows with the height of
 * the row above that edge: T_i = W·e·h_i / Σ(n_j·h_j²).
 *
 * @param load weight of the unit and all in it, W
 * @param out distance of its centre of mass from the wall, e; lengths all in one unit
 * Source: statics of a bracket about its lower edge, as in machine-design textbooks (sources §7).
 */
export function rowTensions(load: number, out: number, rows: readonly FixingRow[]): readonly number[] {
  const sum = rows.reduce((total, { height, count }) => total + count * height * height, 0)
  return rows.map(({ height }) => (sum === 0 ? Number.POSITIVE_INFINITY : (load * out * height) / sum))
}

const statics: Basis = {
  kind: 'geometry',
  why: 'a rigid unit turns about its lower back edge: pull = weight × distance of its centre of mass from the wall ÷ height of the fixings above that edge',
}

/** Weight of a unit and all in it: what the fixings share as shear. */
export function weightOf(mass: Figure): Figure {
  const basis: Basis = { kind: 'geometry', why: 'mass × 9.81 m/s²' }
  return derive('N', basis, [mass], (m) => (m as number) * G)
}

/** Pull of the whole unit on its top row of fixings. Lower fixings hardly help, and are not counted on. */
export function pullOn(weight: Figure, centreOut: Figure, rowHeight: Figure): Figure {
  return derive('N', statics, [weight, centreOut, rowHeight], (w, e, h) => {
    const [tension] = rowTensions(w as number, e as number, [{ height: Math.max(h as number, 1), count: 1 }])
    return tension as number
  })
}

/** An even share: each of so many fixings. */
export function shareOf(total: Figure, count: Figure): Figure {
  const basis: Basis = { kind: 'geometry', why: 'shared equally by the fixings' }
  return derive('N', basis, [total, count], (all, n) => (all as number) / Math.max(1, n as number))
}

export const TWO_PLATES: Figure = known(2, 0, 'count', [], {
  kind: 'geometry',
  why: 'one plate at each side',
})
