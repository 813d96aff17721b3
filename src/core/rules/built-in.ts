import { hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { AccessPoint } from '../kitchen/schema'
import { liesBehind } from '../placing/behind'
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

function judged(site: Site, point: AccessPoint): Found | null {
  const along = site.survey.along(point.wall, point.along)
  const height = site.onFace(point.wall, along, point.height)
  const covering = site.along(point.wall).flatMap((unit) => {
    const lies = unit.kind === 'appliance-space' ? 'no' : liesBehind({ along, height }, unit, HAND)
    return lies === 'no' ? [] : [{ unit, lies }]
  })
  const first = covering.find(({ lies }) => lies === 'yes') ?? covering[0]
  if (first === undefined) return null
  const { unit, lies } = first
  const name = site.name(unit.unit)
  const values = { what: WHAT[point.kind], wall: site.name(point.wall), unit: name, along }
  const common = {
    where: { wall: point.wall, along, height },
    figures: [along, height],
    from: [factId('access', point.id, 'panel'), ...unit.left.from, ...unit.right.from],
  }
  if (!hasValue(along) || !hasValue(height)) {
    const about = [point.wall]
    return {
      ...common,
      subjects: [point.id],
      about,
      weight: 'ask',
      said: ['no-place', values],
      ask: ['ask.place', values],
    }
  }
  return {
    ...common,
    subjects: [point.id, unit.unit],
    about: [unit.unit],
    weight: lies === 'yes' ? 'stop' : 'ask',
    said: [lies === 'yes' ? 'covered' : 'perhaps', values],
    ask: ['ask', { unit: name }],
    waysOut: [
      {
        said: ['panel', { unit: name }],
        cost: 'an hour',
        edits: [{ set: factId('access', point.id, 'panel'), to: true }],
      },
    ],
  }
}

/** F39, F89: a stopcock, tap, valve or eye built in behind a unit. */
export const rule: Rule = {
  id: 'built-in',
  heading: 'A valve or tap that is built in',
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
    perhaps:
      '{what} on {wall} may lie behind {unit}, at {along} along the wall. Readings this near cannot tell: measure it.',
    'no-place': '{what} on {wall} may lie behind a unit: nobody has measured where it is.',
    'ask.place': 'Measure to its middle: from the left corner of {wall}, and up or down from the line.',
    ask: 'Plan a loose panel or a cut-out in the back of {unit}, or have it moved by the trade it belongs to.',
    panel: 'Leave a loose panel or a cut-out in the back of {unit}.',
  },
  check: (site) =>
    site.kitchen.access.filter(({ panel }) => panel !== true).flatMap((point) => judged(site, point) ?? []),
}
