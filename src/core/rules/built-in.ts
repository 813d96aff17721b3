import { type Figure, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { AccessPoint } from '../kitchen/schema'
import type { UnitPlan } from '../plan/types'
import type { Found, Rule, Site } from './rule'

/** Room a hand wants round a tap. Common practice. */
const HAND = 50

const WHAT: Readonly<Record<AccessPoint['kind'], string>> = {
  stopcock: 'The stopcock',
  'gas-tap': 'The gas tap',
  valve: 'A valve',
  'rodding-eye': 'A rodding eye',
  meter: 'A meter',
  'consumer-unit': 'The consumer unit',
  other: 'Something that must be reached',
}

const between = (at: Figure, low: Figure, high: Figure): boolean =>
  hasValue(at) &&
  hasValue(low) &&
  hasValue(high) &&
  at.value > low.value - HAND &&
  at.value < high.value + HAND

/** The unit of its own wall that covers it: across, up, and further out than it. */
function coveredBy(site: Site, point: AccessPoint): UnitPlan | undefined {
  const along = site.survey.along(point.wall, point.along)
  const height = site.onFace(point.wall, along, point.height)
  return site
    .along(point.wall)
    .find(
      (unit) =>
        unit.kind !== 'appliance-space' &&
        between(along, unit.left, unit.right) &&
        between(height, unit.underside, unit.top),
    )
}

/** F39, F89: a stopcock, tap, valve or eye built in behind a unit. */
export const rule: Rule = {
  id: 'built-in',
  catches: ['F39', 'F89'],
  dangerous: true,
  basis: {
    kind: 'common-practice',
    why: 'what shuts water or gas off is reached with an open hand, without tools',
  },
  why: 'The tap that stops a flood is no use behind a screwed back.',
  words: {
    covered:
      '{what} on {wall} lies behind {unit}, at {along} along the wall. Nobody can reach it once the unit is in.',
    ask: 'Plan a loose panel or a cut-out in the back of {unit}, or have it moved by the trade it belongs to.',
    panel: 'Leave a loose panel or a cut-out in the back of {unit}.',
  },
  check: (site) =>
    site.kitchen.access.flatMap((point): readonly Found[] => {
      const unit = point.panel === true ? undefined : coveredBy(site, point)
      if (unit === undefined) return []
      const along = site.survey.along(point.wall, point.along)
      const name = site.name(unit.unit)
      return [
        {
          subjects: [point.id, unit.unit],
          about: [unit.unit],
          weight: 'stop',
          said: ['covered', { what: WHAT[point.kind], wall: site.name(point.wall), unit: name, along }],
          where: { wall: point.wall, along, height: site.onFace(point.wall, along, point.height) },
          from: [factId('access', point.id, 'panel'), ...unit.left.from, ...unit.right.from],
          ask: ['ask', { unit: name }],
          waysOut: [
            {
              said: ['panel', { unit: name }],
              cost: 'an hour',
              edits: [{ set: factId('access', point.id, 'panel'), to: true }],
            },
          ],
        },
      ]
    }),
}
