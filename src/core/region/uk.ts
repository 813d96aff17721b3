import { hseFilter } from './hse-filter'
import type { RegionPack } from './region'

export const uk: RegionPack = {
  id: 'uk',
  asOf: '2026-11',
  display: 'mm',
  bands: {
    basis: {
      kind: 'standard',
      source: 'BS 7671 reg 522.6.202(i); NHBC Standards 8.1.7',
      where: 'concealed cables less than 50 mm deep',
    },
    cornerStrip: 150,
    ceilingStrip: 150,
    drillMargin: { value: 10, basis: { kind: 'common-practice', why: 'a drill wanders 5 to 10 mm' } },
    depth: 50,
    thinWall: 100,
    fixedHorizontal: [],
    besideOpenings: null,
  },
  setback: null,
  lifting: { kind: 'filter', filter: hseFilter },
  gapOverWorktop: {
    min: 450,
    max: 500,
    basis: { kind: 'common-practice', why: 'usual room between worktop and wall units in Britain' },
  },
  asbestosBefore: {
    value: 2000,
    basis: { kind: 'standard', source: 'HSE asbestos guidance', where: 'buildings before 2000; from memory' },
  },
  trades: {
    gas: {
      kind: 'standard',
      source: 'Gas Safety (Installation and Use) Regulations 1998',
      where: 'work on gas fittings: registered engineers only; from memory',
    },
    circuit: {
      kind: 'standard',
      source: 'Building Regulations Part P, England, from 6 April 2013',
      where: 'new circuits are notifiable',
    },
  },
}
