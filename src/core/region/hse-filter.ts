import type { LiftingFilter } from './region'

/**
 * The lifting filter of the Health and Safety Executive's leaflet INDG143 rev 4 (2020) and guidance L23 (2016): figures
 * below which a closer look is usually not needed. They are not limits and do not make a lift safe. The leaflet gives
 * them as a picture; these are taken from secondary copies (women 7 and 16 kg, and the rows below mid lower leg, are the
 * least well attested). Hands in several zones: the smallest figure governs.
 */
export const hseFilter: LiftingFilter = {
  basis: {
    kind: 'standard',
    source: 'HSE INDG143 rev 4 (2020), L23 (2016)',
    where: 'lifting and lowering filter, hands close to the body',
  },
  man: {
    'above-shoulder': 10,
    'shoulder-elbow': 20,
    'elbow-knuckle': 25,
    'knuckle-lower-leg': 20,
    'below-lower-leg': 10,
  },
  woman: {
    'above-shoulder': 7,
    'shoulder-elbow': 13,
    'elbow-knuckle': 16,
    'knuckle-lower-leg': 13,
    'below-lower-leg': 7,
  },
  team: { two: 2 / 3, three: 1 / 2 },
}
