import { derive, type Figure, hasValue, type ValueFigure } from '../figure'
import { heightNamed } from '../heights/height-named'
import { HUNG_KINDS } from '../kitchen/kinds'
import type { FinishingPart } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import { type PlinthEnd, plinthEndsOf } from '../placing/plinth-line'
import type { UnitPlan } from '../plan/types'
import { partName } from '../units/part-name'
import type { Found, Rule, Site } from './rule'

interface Low extends PlinthEnd {
  readonly unit: UnitPlan
  readonly height: ValueFigure
}

/** The gap of a plinth at both ends of each of its units; nothing where the floor or the finish is not known. */
function endsOf(site: Site, plinth: FinishingPart): readonly Low[] {
  return site.units
    .filter(({ unit, kind }) => plinth.of.includes(unit) && !HUNG_KINDS.includes(kind))
    .flatMap((unit) => {
      const position = site.positions.find((one) => one.unit.id === unit.unit)
      if (position === undefined) return []
      const isSpace = unit.kind === 'appliance-space'
      const underside = isSpace ? heightNamed(site.heights, 'base-underside') : unit.underside
      return plinthEndsOf(site.kitchen, site.survey, unit, position, underside, plinth.setBack).flatMap(
        (end): Low[] => (hasValue(end.height) ? [{ ...end, unit, height: end.height }] : []),
      )
    })
}

function judged(site: Site, plinth: FinishingPart): readonly Found[] {
  const needed: Figure = plinth.openingHeight
  if (!hasValue(needed) || needed.value === 0) return []
  const ends = endsOf(site, plinth)
  const least = Math.min(...ends.map(({ height }) => height.value))
  const low = ends.find(({ height }) => height.value === least)
  if (low === undefined) return []
  const short = derive('mm', rule.basis, [needed, low.height], (n, h) => (n as number) - (h as number))
  const stands = overLimit(short)
  if (stands !== 'over' && stands !== 'near') return []
  const values = {
    plinth: partName(site.kitchen, plinth),
    side: low.side,
    unit: low.unit.name,
    there: low.height,
    needed,
    short,
  }
  return [
    {
      subjects: [plinth.id],
      about: [plinth.id, low.unit.unit],
      weight: stands === 'over' ? 'stop' : 'ask',
      said: [stands === 'over' ? 'short' : 'may-be-short', values],
      where: { wall: low.unit.wall, along: low.along },
      ask: ['ask'],
    },
  ]
}

/** F14: a plinth too low, where the floor is highest, for the vent or heater that is let into it. */
export const rule: Rule = {
  id: 'plinth-opening',
  heading: 'An opening in the plinth',
  catches: ['F14'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the gap over the finished floor at the face of the plinth, at both ends of every unit it runs under',
  },
  why: 'A plinth is ripped down where the floor is high, and the grille or heater bought for it no longer goes in.',
  words: {
    short:
      'The {plinth} is only {there} high at the {side} end of {unit}, where the floor is highest. What is let into it needs {needed}: {short} more.',
    'may-be-short':
      'The {plinth} is {there} high at the {side} end of {unit}, where the floor is highest. What is let into it needs {needed}. Readings this near cannot tell: read the floor there again.',
    ask: 'Find the height on the sheet of the vent or heater, or put it where the floor is lower. Else set the base units higher.',
  },
  check: (site) =>
    site.kitchen.finishing.filter(({ kind }) => kind === 'plinth').flatMap((plinth) => judged(site, plinth)),
}
