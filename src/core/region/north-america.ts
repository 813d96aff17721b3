import { nioshGuidance } from './niosh'
import type { RegionPack } from './region'

/** No cable bands: cables run through stud centres, kept back from the stud's face or behind a steel plate. */
export const northAmerica: RegionPack = {
  id: 'north-america',
  asOf: '2026-11',
  display: 'inch',
  bands: null,
  setback: {
    depth: 31.75,
    basis: {
      kind: 'standard',
      source: 'NEC 300.4',
      where: '1 1/4 in from the face of the stud, or a steel plate; from memory',
    },
  },
  lifting: nioshGuidance,
  gapOverWorktop: {
    min: 457.2,
    max: 457.2,
    basis: {
      kind: 'common-practice',
      why: '18 in between counter and wall units is usual: the wall units’ undersides at 54 in',
    },
  },
  asbestosBefore: {
    value: 1990,
    basis: {
      kind: 'common-practice',
      why: 'products lingered after the bans; the year makes the user check',
    },
  },
  trades: {
    gas: { kind: 'common-practice', why: 'gas and electricity by licensed trades under local permits' },
    circuit: { kind: 'common-practice', why: 'gas and electricity by licensed trades under local permits' },
  },
}
