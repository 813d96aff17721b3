import type { Basis } from '../figure'
import { hseFilter } from '../region/hse-filter'
import type { LiftingFilter, RegionPack } from '../region/region'

type Guided = Pick<RegionPack, 'lifting'> | null

/**
 * The filter that teams are judged by, and where the region has no other guidance also one person. Where the region is
 * not known the same filter is read: it is about people, not about the country.
 */
export function filterOf(region: Guided): LiftingFilter {
  if (region === null) return hseFilter
  const { lifting } = region
  return lifting.kind === 'filter' ? lifting.filter : lifting.team
}

/** What a recommended weight for one person stands on; null: one person is judged by the filter. */
export function basisAlone(region: Guided): Basis | null {
  return region?.lifting.kind === 'recommended-weight' ? region.lifting.basis : null
}
