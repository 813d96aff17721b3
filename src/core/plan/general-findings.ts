import { sortedIds } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import { message } from '../message'
import type { RegionPack } from '../region/region'
import { figuresIn } from './figures-in'
import { finding } from './finding'
import type { Finding, UnitPlan } from './types'

/** What is to be said of the kitchen as a whole: no region chosen, sizes assumed. */
export function generalFindings(
  kitchen: Kitchen,
  region: RegionPack | null,
  units: readonly UnitPlan[],
): readonly Finding[] {
  return [...regionNotChosen(region), ...assumedFigures(kitchen, units)]
}

function regionNotChosen(region: RegionPack | null): readonly Finding[] {
  if (region !== null) return []
  return [
    finding({
      rule: 'region-not-chosen',
      subjects: ['kitchen'],
      weight: 'ask',
      dangerous: true,
      say: message('region-not-chosen'),
      from: ['region'],
      basis: {
        kind: 'common-practice',
        why: 'where cables are to be expected, and which trades must be called, differs by country',
      },
    }),
  ]
}

/** Sizes nobody has confirmed, once each; what rests on them is marked wherever it is shown. */
function assumedFigures(kitchen: Kitchen, units: readonly UnitPlan[]): readonly Finding[] {
  const facts = new Set<string>()
  for (const figure of figuresIn([kitchen.units, kitchen.finishing, kitchen.appliances]).values()) {
    if (figure.state === 'assumed') for (const id of figure.from) facts.add(id)
  }
  if (facts.size === 0 || units.length === 0) return []
  const ids = sortedIds(facts)
  return [
    finding({
      rule: 'assumed-figures',
      subjects: ['kitchen'],
      weight: 'note',
      say: message('assumed-figures', { count: ids.length, which: ids.slice(0, 12).join(', ') }),
      from: ids,
      basis: {
        kind: 'common-practice',
        why: 'usual sizes, until the maker’s sheet or a tape says otherwise',
      },
    }),
  ]
}
