import { type Figure, hasValue, known, type ValueFigure } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import type { Appliance } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import { type PlinthEnd, plinthEndsOf } from '../placing/plinth-line'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

/** A plinth whose file does not say how far back it stands is taken this far back, mm. Common practice. */
const SET_BACK = known(50, 20, 'mm', [], {
  kind: 'common-practice',
  why: 'plinths stand about 50 mm back from the front of the carcass',
})

interface Low extends PlinthEnd {
  readonly height: ValueFigure
}

/** The lower end of the gap under its unit, over the finished floor. */
function lowest(site: Site, unit: string): Low | null {
  const plan = site.unit(unit)
  const position = site.positions.find((one) => one.unit.id === unit)
  if (plan === undefined || position === undefined) return null
  const plinth = site.kitchen.finishing.find(({ kind, of }) => kind === 'plinth' && of.includes(unit))
  const back = plinth !== undefined && hasValue(plinth.setBack) ? plinth.setBack : SET_BACK
  const isSpace = plan.kind === 'appliance-space'
  const underside = isSpace ? heightNamed(site.heights, 'base-underside') : plan.underside
  const ends = plinthEndsOf(site.kitchen, site.survey, plan, position, underside, back)
  const known = ends.flatMap((end): readonly Low[] =>
    hasValue(end.height) ? [{ ...end, height: end.height }] : [],
  )
  return [...known].sort((a, b) => a.height.value - b.height.value)[0] ?? null
}

function height(site: Site, heater: Appliance): readonly Found[] {
  const needed: Figure = hasValue(heater.heightMin) ? heater.heightMin : heater.heightMax
  const unit = heater.over ?? ''
  const low = lowest(site, unit)
  const common = { subjects: [heater.id, 'height'], about: [heater.id, unit], ask: ['ask'] as const }
  const names = { heater: site.name(heater.id), unit: site.name(unit) }
  if (site.unit(unit) === undefined || low === null) return []
  if (!hasValue(needed)) {
    const from = [factId('appliances', heater.id, 'heightMin')]
    return [{ ...common, weight: 'ask', said: ['not-known', { ...names, there: low.height }], from }]
  }
  const short = sum('mm', rule.basis, [needed], [low.height])
  const stands = overLimit(short)
  if (stands !== 'over' && stands !== 'near') return []
  const isSure = stands === 'over'
  return [
    {
      ...common,
      weight: isSure ? 'stop' : 'ask',
      said: [isSure ? 'short' : 'near', { ...names, side: low.side, there: low.height, needed, short }],
      where: { wall: site.unit(unit)?.wall ?? '', along: low.along },
    },
  ]
}

/** Nothing on any wall is said to feed it. */
function supply(site: Site, heater: Appliance): readonly Found[] {
  const isFed = site.kitchen.walls.some(({ accessories }) =>
    accessories.some(({ serves }) => serves === heater.id),
  )
  if (isFed || heater.fuel === 'none') return []
  return [
    {
      subjects: [heater.id, 'supply'],
      about: [heater.id, ...(heater.over === null ? [] : [heater.over])],
      weight: 'ask',
      said: ['supply', { heater: site.name(heater.id) }],
      from: [factId('appliances', heater.id, 'fuel')],
      ask: ['ask.supply'],
    },
  ]
}

/** F69: a plinth heater with too little height under its unit, or nothing to feed it. */
export const rule: Rule = {
  id: 'plinth-heater',
  heading: 'The heater under a unit',
  catches: ['F69'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'from the finished floor at the face of the plinth up to the underside of the unit',
  },
  why: 'The heater comes with the last boxes, when nobody can bring a cable under the units any more.',
  words: {
    short:
      '{heater} needs {needed} under {unit}, and at its {side} end there are only {there} over the finished floor. {short} is missing.',
    near: '{heater} needs {needed} under {unit}, and at its {side} end there are {there} over the finished floor. Readings this near cannot tell: read the floor there again.',
    'not-known':
      '{heater} goes under {unit}, where there are {there} over the finished floor. How high it is nobody has entered.',
    supply:
      'No outlet on any wall is said to feed {heater}. Under a unit that stands, none is brought to it.',
    ask: 'Read the sheet of the heater: the height it needs, with room over it. Else set the base units higher, or put it where the floor is lower.',
    'ask.supply':
      'Ask an electrician, before the base units stand, which outlet feeds it and where it is switched off.',
  },
  check: (site) =>
    site.kitchen.appliances
      .filter(({ kind }) => kind === 'plinth-heater')
      .flatMap((heater) => [...height(site, heater), ...supply(site, heater)]),
}
