import { derive, hasValue } from '../figure'
import type { Appliance } from '../kitchen/schema'
import { highestBox } from '../units/drawers'
import { type Found, lessThan, margin, missing, type Rule, type Site } from './rule'

function judged(site: Site, sink: Appliance): readonly Found[] {
  const unit = site.stated(sink.over ?? '')
  const worktop = site.kitchen.worktops.find(({ over }) => sink.over !== null && over.includes(sink.over))
  const top = unit === undefined ? null : highestBox(unit)
  if (unit === undefined || worktop === undefined || top === null) return []
  const deep = derive(
    'mm',
    { kind: 'geometry', why: 'underside of the trap below the worktop’s top, less the worktop' },
    [sink.outlet, worktop.thickness],
    (o, t) => (o as number) - (t as number),
  )
  const left = lessThan(top, deep, 'top of the drawer’s box less how far the trap reaches into the carcass')
  const key = margin(left)
  if (key === null) return []
  return [
    {
      subjects: [sink.id, unit.id],
      about: [sink.id, unit.id],
      weight: key === 'short' ? 'stop' : 'ask',
      said: [
        key,
        {
          unit: site.name(unit.id),
          ...(hasValue(deep) && key !== 'not-known' ? { deep } : {}),
          ...(key === 'short' ? { short: missing(left) } : {}),
        },
      ],
      figures: [deep, left],
      ask: ['ask'],
    },
  ]
}

/** F104: a drawer or pull-out that runs into the trap of the sink over it. */
export const rule: Rule = {
  id: 'drawer-and-trap',
  heading: 'A drawer that meets the trap',
  catches: ['F104'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'how deep bowl and trap hang against the top of the drawer’s box' },
  why: 'A drawer under a sink stops at the trap, on the first evening.',
  words: {
    short:
      'Bowl and trap hang {deep} into {unit} and stand in the way of its top drawer: {short} is missing.',
    near: 'Bowl and trap hang {deep} into {unit}, to the top of its drawer: too near to tell. Measure both.',
    'not-known':
      '{unit} has drawers under a sink. How deep bowl and trap hang, or where the box of the top drawer begins, is not known.',
    ask: 'Read the sheets of sink, trap and drawer. Some drawers are made to pass round a trap; a trap can be set to the back.',
  },
  check: (site) =>
    site.kitchen.appliances.filter(({ kind }) => kind === 'sink').flatMap((sink) => judged(site, sink)),
}
