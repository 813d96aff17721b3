import { hseFilter } from './hse-filter'
import type { RegionPack } from './region'

/** German practice as remembered in the trade; other countries differ, and the sheet says so. */
export const continental: RegionPack = {
  id: 'continental',
  asOf: '2026-11',
  display: 'mm',
  bands: {
    basis: {
      kind: 'common-practice',
      why: 'German installation zones from secondary sources: 300 wide bands 150 from floor and ceiling, 1000 to 1300 in kitchens, 200 wide beside openings and corners',
    },
    cornerStrip: 300,
    ceilingStrip: 450,
    drillMargin: { value: 10, basis: { kind: 'common-practice', why: 'a drill wanders 5 to 10 mm' } },
    depth: 50,
    thinWall: 100,
    fixedHorizontal: [
      { from: 150, to: 450, above: 'floor' },
      { from: 1000, to: 1300, above: 'floor' },
    ],
    besideOpenings: { from: 100, to: 300 },
  },
  setback: null,
  lifting: { kind: 'filter', filter: hseFilter },
  gapOverWorktop: {
    min: 500,
    max: 650,
    basis: { kind: 'common-practice', why: 'usual room between worktop and wall units in Germany' },
  },
  asbestosBefore: {
    value: 2000,
    basis: { kind: 'common-practice', why: 'dates differ by country; 2000 makes the user check' },
  },
  trades: {
    gas: { kind: 'common-practice', why: 'gas and electricity by licensed trades; rules differ by country' },
    circuit: {
      kind: 'common-practice',
      why: 'gas and electricity by licensed trades; rules differ by country',
    },
  },
}
