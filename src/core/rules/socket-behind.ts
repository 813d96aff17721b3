import { derive, type Figure } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Accessory } from '../kitchen/schema'
import { liesBehind } from '../placing/behind'
import type { UnitPlan } from '../plan/types'
import { type Found, margin, missing, type Rule, type Site } from './rule'

/** What is left behind an appliance for a socket and its plug; null when the space holds no appliance. */
function room(site: Site, space: UnitPlan, accessory: Accessory): Figure | null {
  const bay = site.stated(space.unit)?.applianceBay ?? null
  const appliance = site.kitchen.appliances.find(({ id }) => id === bay)
  if (appliance === undefined) return null
  return derive(
    'mm',
    { kind: 'geometry', why: 'depth of the space, less the appliance, less what stands out from the wall' },
    [space.depth, appliance.depthNeeded, accessory.standsProud],
    (depth, needed, proud) => (depth as number) - (needed as number) - (proud as number),
  )
}

function judged(site: Site, wall: string, accessory: Accessory, space: UnitPlan): readonly Found[] {
  const along = site.survey.along(wall, accessory.along)
  const height = site.onFace(wall, along, accessory.height)
  const lies = liesBehind({ along, height }, space)
  const left = lies === 'no' ? null : room(site, space, accessory)
  const depth = left === null ? null : margin(left)
  if (left === null || depth === null) return []
  // Where it may be beside the space, it may be out of the way.
  const key = lies === 'perhaps' && depth === 'short' ? 'near' : depth
  return [
    {
      subjects: [accessory.id, space.unit],
      about: [accessory.id, space.unit],
      weight: key === 'short' ? 'stop' : 'ask',
      said: [key, { wall: site.name(wall), unit: site.name(space.unit), along, short: missing(left) }],
      figures: [left, along, height],
      where: { wall, along, height },
      from: [factId('walls', wall, 'accessories', accessory.id, 'kind')],
      ask: ['ask'],
    },
  ]
}

/** F66: a socket behind an appliance, so that it stands out from the run. */
export const rule: Rule = {
  id: 'socket-behind',
  heading: 'A socket behind an appliance',
  catches: ['F66'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'depth of the space against depth of appliance, socket and plug' },
  why: 'A plug behind a dishwasher pushes its door a thumb’s width out of line.',
  words: {
    short:
      'Behind what goes into {unit} there is a socket, at {along} along {wall}. With its plug, {short} of depth is missing: the appliance stands out that much.',
    near: 'Behind what goes into {unit} there may be a socket in the way, at {along} along {wall}. Readings this near cannot tell: measure where it is, and the depth for its plug.',
    'not-known':
      'Behind what goes into {unit} there is a socket, at {along} along {wall}. Nobody has said how far it stands out with its plug, or how deep the appliance is.',
    ask: 'Plug in the cupboard beside it, or have an electrician move the socket there.',
  },
  check: (site) =>
    site.kitchen.walls.flatMap((wall) =>
      wall.accessories
        .filter(({ kind, face }) => face === 'room' && kind === 'socket')
        .flatMap((accessory) =>
          site
            .along(wall.id)
            .filter(({ kind }) => kind === 'appliance-space')
            .flatMap((space) => judged(site, wall.id, accessory, space)),
        ),
    ),
}
