import type { GapTable } from '../region/flatness'

/**
 * Gap allowed under a straightedge between two points so far apart: straight between the rows of the table, rounded to
 * whole millimetres. Null outside the table, which is not carried further.
 *
 * Source: DIN 18202 Table 3; so worked, 54 of the 56 published values in between come out (sources §8.3).
 */
export function permittedGap(table: GapTable, distance: number): number | null {
  const next = table.findIndex(([at]) => at >= distance)
  const above = table[next]
  if (above === undefined) return null
  if (above[0] === distance) return above[1]
  const below = table[next - 1]
  if (below === undefined) return null
  const share = (distance - below[0]) / (above[0] - below[0])
  return Math.round(below[1] + share * (above[1] - below[1]))
}
