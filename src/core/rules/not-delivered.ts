import { type Figure, known } from '../figure'
import { type NotCome, notCome } from '../units/not-come'
import { say } from '../words/say'
import type { Found, Rule, Site } from './rule'

/** What in this order comes before the first step that is done to it or with it; null where no step is known to be. */
function until(site: Site, { id, list }: NotCome): { readonly count: Figure; readonly first: string } | null {
  const todo = site.order.filter(({ done }) => !done)
  // Which screw a step needs is told at its holes, which are marked long before.
  const at = list === 'fixings' ? -1 : todo.findIndex(({ on }) => on.includes(id))
  const first = todo[at]
  if (first === undefined || at === 0) return null
  const why = 'steps of this order, counted'
  const count = known(at, 0, 'count', [], { kind: 'geometry', why })
  return { count, first: say(first.title, site.kitchen.display) }
}

/** F09: something on the list that has not come. */
export const rule: Rule = {
  id: 'not-delivered',
  heading: 'What has not come',
  catches: ['F09'],
  dangerous: false,
  basis: { kind: 'common-practice', why: 'a run is begun when everything that stands in it is in the house' },
  why: 'A corner unit found missing on the third day stops the run on both its walls.',
  words: {
    missing:
      '{unit} was looked for and has not come. Its run on {wall} waits for it: its neighbours are set from it or against it.',
    'missing-until':
      '{unit} was looked for and has not come. Its run on {wall} waits for it: its neighbours are set from it or against it. In this order {count} steps come before the first that needs it: {first}.',
    thing: '{thing} was looked for and has not come.',
    'thing-until':
      '{thing} was looked for and has not come. In this order {count} steps come before the first that needs it: {first}.',
    ask: 'Ask whoever sold it for the day it comes, before the day is booked.',
  },
  check: (site) =>
    notCome(site.kitchen).map((one): Found => {
      const before = until(site, one)
      const key = one.list === 'units' ? 'missing' : 'thing'
      const wall = site.stated(one.id)?.wall
      const called: Readonly<Record<string, string>> =
        one.list === 'units' ? { unit: one.name, wall: site.name(wall ?? '') } : { thing: one.name }
      return {
        subjects: [one.id],
        weight: 'ask',
        said: before === null ? [key, called] : [`${key}-until`, { ...called, ...before }],
        from: [one.fact],
        ask: ['ask'],
      }
    }),
}
