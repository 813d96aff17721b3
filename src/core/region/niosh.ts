import { hseFilter } from './hse-filter'
import type { LiftingGuidance } from './region'

/**
 * North American guidance: the recommended weight of the revised NIOSH lifting equation, for one person. It says nothing
 * of two who lift together; for them the British filter and its team shares are kept, marked as another country's.
 */
export const nioshGuidance: LiftingGuidance = {
  kind: 'recommended-weight',
  basis: {
    kind: 'standard',
    source: 'DHHS (NIOSH) 94-110 (1994, revised 2021)',
    where: 'revised lifting equation, one person, hands under it, not turning, infrequent',
  },
  team: {
    ...hseFilter,
    basis: {
      kind: 'standard',
      source: 'HSE INDG143 rev 4 (2020), L23 (2016)',
      where:
        'lifting and lowering filter, hands close to the body: British guidance, since the North American equation is for one person',
    },
  },
}
