import { type Figure, sortedIds } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import { guidanceNote } from '../lifting/guidance-note'
import { message } from '../message'
import type { RegionPack } from '../region/region'
import { factName } from '../words/fact-name'
import { figuresIn } from './figures-in'
import { finding } from './finding'
import { namesOf } from './names-of'
import type { Finding, Hole, UnitPlan } from './types'

/** What is to be said of the kitchen as a whole: no region chosen, what lifts are held against, sizes assumed. */
export function generalFindings(
  kitchen: Kitchen,
  region: RegionPack | null,
  units: readonly UnitPlan[],
  holes: readonly Hole[],
): readonly Finding[] {
  return [
    ...regionNotChosen(region),
    ...guidanceNote(region, units),
    ...assumedFigures(kitchen, units, holes),
  ]
}

/** Said at most; the rest stands on the sheet of what was assumed. */
const MOST_SAID = 12

function someOf(ids: readonly string[], kitchen: Kitchen): string {
  const names = namesOf(kitchen)
  const said = [...new Set(ids.map((id) => factName(id, names)))]
  const rest = said.length - MOST_SAID
  return `${said.slice(0, MOST_SAID).join(', ')}${rest > 0 ? ` and ${rest} more` : ''}`
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

/**
 * Sizes nobody has confirmed, once each; what rests on them is marked wherever it is shown. Sizes that no file can hold,
 * such as the thickness of a wall plate, show only in what rests on them: those figures are counted.
 */
function assumedFigures(
  kitchen: Kitchen,
  units: readonly UnitPlan[],
  holes: readonly Hole[],
): readonly Finding[] {
  const isAssumed = (figure: Figure) => figure.state === 'assumed'
  const facts = [...figuresIn([kitchen.units, kitchen.finishing, kitchen.appliances]).values()].filter(
    isAssumed,
  )
  const resting = [...figuresIn([units, holes]).values()].filter(isAssumed)
  if (units.length === 0 || facts.length + resting.length === 0) return []
  const ids = sortedIds(facts.flatMap((figure) => figure.from))
  return [
    finding({
      rule: 'assumed-figures',
      subjects: ['kitchen'],
      weight: 'note',
      say:
        ids.length === 0
          ? message('assumed-figures.resting', { count: resting.length })
          : message('assumed-figures', { count: ids.length, which: someOf(ids, kitchen) }),
      from: ids,
      basis: {
        kind: 'common-practice',
        why: 'usual sizes, until the maker’s sheet or a tape says otherwise',
      },
    }),
  ]
}
