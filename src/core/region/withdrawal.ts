import type { Formula } from '../fixings/stud-timber'
import type { Region } from '../kitchen/schema'

/** By which published formula the pull of a screw in timber is reckoned in a region. */
const FORMULAS: Readonly<Record<Region, Formula>> = {
  uk: 'eurocode',
  continental: 'eurocode',
  'north-america': 'american',
}

/** None where the region is not known: it is never guessed. */
export function withdrawalFormula(region: Region | null): Formula | null {
  return region === null ? null : FORMULAS[region]
}
