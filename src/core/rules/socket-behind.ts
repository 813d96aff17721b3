import { derive, type Figure, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Accessory } from '../kitchen/schema'
import type { UnitPlan } from '../plan/types'
import { both, liesBetween } from '../survey/between'
import type { Found, Rule, Site } from './rule'

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
  const lies = both(
    liesBetween(along, space.left, space.right),
    liesBetween(height, space.underside, space.top),
  )
  const left = lies === 'no' ? null : room(site, space, accessory)
  if (left === null || (hasValue(left) && left.value >= left.pm)) return []
  const short = derive('mm', rule.basis, [left], (l) => -(l as number))
  const key = !hasValue(left) ? 'not-known' : left.value < -left.pm ? 'proud' : 'near'
  return [
    {
      subjects: [accessory.id, space.unit],
      about: [accessory.id, space.unit],
      weight: key === 'proud' ? 'stop' : 'ask',
      said: [
        key,
        { wall: site.name(wall), unit: site.name(space.unit), along, ...(key === 'proud' ? { short } : {}) },
      ],
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
  catches: ['F66'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'depth of the space against depth of appliance, socket and plug' },
  why: 'A plug behind a dishwasher pushes its door a thumb’s width out of line.',
  words: {
    proud:
      'Behind what goes into {unit} there is a socket, at {along} along {wall}. With its plug, {short} of depth is missing: the appliance stands out that much.',
    near: 'Behind what goes into {unit} there is a socket, at {along} along {wall}. Whether there is depth for its plug is too near to tell.',
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
