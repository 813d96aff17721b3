import { derive, hasValue } from '../figure'
import type { Appliance } from '../kitchen/schema'
import { highestBox } from '../units/drawers'
import { type Found, lessThan, margin, missing, type Rule, type Site } from './rule'

function judged(site: Site, hob: Appliance): readonly Found[] {
  const unit = site.stated(hob.over ?? '')
  const worktop = site.kitchen.worktops.find(({ over }) => hob.over !== null && over.includes(hob.over))
  const top = unit === undefined ? null : highestBox(unit)
  if (unit === undefined || worktop === undefined || top === null) return []
  const reach = derive(
    'mm',
    { kind: 'geometry', why: 'body of the hob below the worktop’s top, less the worktop' },
    [hob.below, worktop.thickness],
    (b, t) => Math.max(0, (b as number) - (t as number)),
  )
  if (hasValue(reach) && reach.value === 0) return []
  const left = lessThan(top, reach, 'top of the drawer’s box less how far the hob reaches into the carcass')
  const key = margin(left)
  if (key === null) return []
  return [
    {
      subjects: [hob.id, unit.id],
      about: [hob.id, unit.id],
      weight: key === 'short' ? 'stop' : 'ask',
      said: [
        key,
        {
          hob: site.name(hob.id),
          unit: site.name(unit.id),
          ...(hasValue(reach) && key !== 'not-known' ? { reach } : {}),
          ...(key === 'short' ? { short: missing(left) } : {}),
        },
      ],
      figures: [reach, left],
      ask: ['ask'],
    },
  ]
}

/** F67: the body of a hob that fouls the drawer under it. */
export const rule: Rule = {
  id: 'under-hob',
  heading: 'The drawer under the hob',
  catches: ['F67'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'how far the hob reaches down against the top of the drawer’s box' },
  why: 'The top drawer under a deep hob does not shut, and knives touch its underside.',
  words: {
    short: '{hob} reaches {reach} into {unit} and fouls its top drawer: {short} is missing.',
    near: '{hob} reaches {reach} into {unit}, to the top of its drawer: too near to tell. Measure both.',
    'not-known':
      '{hob} lies over the drawers of {unit}. How far it reaches down, or where the box of the top drawer begins, is not known.',
    ask: 'Read the sheet of the hob: how far its body reaches below the worktop, and whether it wants a shelf under it.',
  },
  check: (site) =>
    site.kitchen.appliances.filter(({ kind }) => kind === 'hob').flatMap((hob) => judged(site, hob)),
}
