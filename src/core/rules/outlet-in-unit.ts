import { derive } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Accessory } from '../kitchen/schema'
import { liesBehind } from '../placing/behind'
import { overLimit } from '../placing/over-limit'
import type { UnitPlan } from '../plan/types'
import type { Found, Rule, Site } from './rule'

function judged(site: Site, wall: string, accessory: Accessory, unit: UnitPlan): readonly Found[] {
  const along = site.survey.along(wall, accessory.along)
  const height = site.onFace(wall, along, accessory.height)
  const lies = liesBehind({ along, height }, unit)
  const stated = site.stated(unit.unit)
  const space = stated?.void
  // Cut round, it may reach into a cupboard; into drawers it may not.
  if (accessory.cutOut === true && stated?.drawers.length === 0) return []
  if (lies === 'no' || space === undefined) return []
  const over = derive(
    'mm',
    { kind: 'geometry', why: 'how far it stands out, less the space behind the back panel' },
    [accessory.standsProud, space],
    (proud, free) => (proud as number) - (free as number),
  )
  const stands = overLimit(over)
  if (stands === 'within') return []
  // Where it may be beside the unit, it may be out of the way.
  const key = stands === 'over' && lies === 'perhaps' ? 'near' : stands
  const dead = accessory.live === false
  return [
    {
      subjects: [accessory.id, unit.unit],
      about: [accessory.id, unit.unit],
      weight: key === 'over' ? 'stop' : 'ask',
      dangerous: !dead,
      said: [
        key,
        {
          kind: accessory.kind.replace('-', ' '),
          wall: site.name(wall),
          unit: site.name(unit.unit),
          along,
          state: dead ? 'said to be dead' : accessory.live === true ? 'live' : 'not known to be dead',
          over,
        },
      ],
      figures: [over, along, height],
      where: { wall, along, height },
      from: ['live', 'cutOut'].map((key) => factId('walls', wall, 'accessories', accessory.id, key)),
      ask: ['ask'],
      waysOut: [
        {
          said: ['cut', { unit: site.name(unit.unit) }],
          cost: 'an hour',
          edits: [{ set: factId('walls', wall, 'accessories', accessory.id, 'cutOut'), to: true }],
        },
      ],
    },
  ]
}

/** F35: an old outlet in the wall behind a unit that has no room for it. */
export const rule: Rule = {
  id: 'outlet-in-unit',
  heading: 'An old outlet behind a unit',
  catches: ['F35'],
  dangerous: true,
  basis: { kind: 'geometry', why: 'what stands out from the wall against the space behind the back panel' },
  why: 'A drawer pushed home against a live cooker outlet cracks it.',
  words: {
    over: 'The {kind} on {wall}, at {along} from its left corner, is behind {unit} and {state}. It stands out {over} further than the space behind the back.',
    near: 'The {kind} on {wall}, at {along} from its left corner, may be in the way behind {unit} and is {state}. Readings this near cannot tell: measure where it is, and how far it stands out.',
    'not-known':
      'The {kind} on {wall}, at {along} from its left corner, will be behind {unit}, and is {state}. Nobody has said how far it stands out.',
    cut: 'With its circuit proved dead, cut the back of {unit} round it, where it can be reached from inside.',
    ask: 'Have an electrician take it out and end its cable, or move it to where it can be reached.',
  },
  check: (site) =>
    site.kitchen.walls.flatMap((wall) =>
      wall.accessories
        .filter(({ face }) => face === 'room')
        .flatMap((accessory) =>
          site
            .along(wall.id)
            .filter(({ kind }) => kind !== 'appliance-space')
            .flatMap((unit) => judged(site, wall.id, accessory, unit)),
        ),
    ),
}
