import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Appliance, Service } from '../kitchen/schema'
import { bayOf } from '../placing/appliance-doors'
import { middleOf } from '../placing/hood-places'
import { type OnWall, wayAlongWalls } from '../placing/way-along-walls'
import { type Found, lessThan, margin, missing, type Rule, type Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'bends behind the units, and slack to pull the appliance out',
}
const BENDS = known(150, 0, 'mm', [], practice)
/** Most hoses and leads reach this far along a wall, mm: nearer, an unknown one is no matter. Common practice. */
const USUAL = 1000
const HOSED: readonly Appliance['kind'][] = ['dishwasher', 'washing-machine']

type What = 'water' | 'waste' | 'lead'
interface Target extends OnWall {
  readonly what: What
  readonly name: string
  readonly id: string
}

const pointsOf = (site: Site, kind: Service['kind']) =>
  site.kitchen.walls.flatMap(({ id: wall, services }) =>
    services
      .filter((one) => one.kind === kind && one.face === 'room')
      .flatMap(({ id, points }) =>
        points.map(({ along }) => ({ id, wall, along: site.survey.along(wall, along) })),
      ),
  )

/** Where its hoses go: the water, and the waste or else the trap of the sink. */
function hosesTo(site: Site): readonly Target[] {
  const to = (what: What, name: string, points: ReturnType<typeof pointsOf>): readonly Target[] =>
    points.map((point) => ({ ...point, what, name: `${name} on ${site.name(point.wall)}` }))
  const wastes = to('waste', 'the waste', pointsOf(site, 'waste'))
  const sinks = site.kitchen.appliances
    .filter(({ kind }) => kind === 'sink')
    .flatMap((sink): readonly Target[] => {
      const at = middleOf(site.kitchen, site.survey, site.units, sink)
      return at === null
        ? []
        : [{ what: 'waste', name: 'the trap of the sink', id: sink.id, wall: at.wall, along: at.middle }]
    })
  return [
    ...to('water', 'the cold water', pointsOf(site, 'water-cold')),
    ...(wastes.length > 0 ? wastes : sinks),
  ]
}

const WORDS: Readonly<Record<string, string>> = {
  socket: 'socket',
  spur: 'spur',
  'cooker-outlet': 'cooker outlet',
}

/** Where its lead goes: what is said to feed it. */
function leadTo(site: Site, { id }: Appliance): readonly Target[] {
  return site.kitchen.walls.flatMap((wall) =>
    wall.accessories
      .filter(({ serves, face, kind }) => serves === id && face === 'room' && WORDS[kind] !== undefined)
      .map(({ id: outlet, kind, along }) => ({
        what: 'lead' as const,
        name: `its ${WORDS[kind]} on ${site.name(wall.id)}`,
        id: outlet,
        wall: wall.id,
        along: site.survey.along(wall.id, along),
      })),
  )
}

interface Way extends Target {
  readonly way: Figure
  readonly mm: number
}

function nearest(site: Site, from: OnWall, targets: readonly Target[], what: What): Way | undefined {
  return targets
    .filter((target) => target.what === what)
    .flatMap((target): readonly Way[] => {
      const way = wayAlongWalls(site.kitchen, site.survey, from, target)
      return way === null || !hasValue(way) ? [] : [{ ...target, way, mm: way.value }]
    })
    .sort((a, b) => a.mm - b.mm)[0]
}

function judged(site: Site, appliance: Appliance, bay: string, to: Way): Found | null {
  const field = to.what === 'lead' ? 'leadLength' : 'hoseLength'
  const there = appliance[field]
  const needed = derive('mm', practice, [to.way, BENDS], (w, b) => (w as number) + (b as number))
  const left = lessThan(there, needed, 'length less the way along the wall and 150 mm for bends')
  const key = margin(left)
  if (key === null || (key === 'not-known' && to.mm <= USUAL)) return null
  const thing = to.what === 'lead' ? 'lead' : 'hose'
  const longer = hasValue(needed) ? Math.ceil((needed.value + needed.pm) / 100) * 100 : 0
  const short: Readonly<Record<string, Figure>> =
    key === 'short' ? { there, short: missing(left) } : key === 'near' ? { there } : {}
  return {
    subjects: [appliance.id, to.what],
    about: [appliance.id, bay, to.id],
    weight: key === 'short' ? 'stop' : 'ask',
    said: [
      key,
      {
        thing,
        appliance: site.name(appliance.id),
        bay: site.name(bay),
        to: to.name,
        way: to.way,
        needed,
        bends: BENDS,
        ...short,
      },
    ],
    figures: [left],
    from: [factId('appliances', appliance.id, field)],
    where: { wall: to.wall, along: to.along },
    ask: [to.what === 'lead' ? 'ask.lead' : 'ask.hose'],
    waysOut:
      to.what === 'lead' || key !== 'short'
        ? []
        : [
            {
              said: ['longer', { to: longer }],
              cost: 'a part to buy',
              edits: [{ set: factId('appliances', appliance.id, field), to: longer }],
            },
          ],
  }
}

/** F64, F109: a hose or lead too short for the way behind the units to its valve, trap or socket. */
export const rule: Rule = {
  id: 'hose-and-lead',
  heading: 'A hose or lead that is too short',
  catches: ['F64', 'F109'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'from the middle of the space along the walls to where the hose or lead goes',
  },
  why: 'The dishwasher is in, its lead ends a hand’s width from the socket, and an extension lies behind it for years.',
  words: {
    short:
      'The {thing} of {appliance} is {there} long. From the middle of {bay} to {to} it is {way} along the wall, with {bends} for bends {needed}: {short} is missing.',
    near: 'The {thing} of {appliance} is {there} long, and needs {needed} to reach {to}. Readings this near cannot tell: measure the way again.',
    'not-known':
      'How long the {thing} of {appliance} is nobody has entered. From the middle of {bay} to {to} it is {way} along the wall, and with {bends} for bends it needs {needed}.',
    'ask.hose': 'Read the sheet of the appliance: length of its hoses, and how long a longer one may be.',
    'ask.lead':
      'Read the sheet of the appliance. A socket nearer by is an electrician’s work; a lead is not made longer behind a unit.',
    longer: 'Buy the maker’s hose of at least {to} mm.',
  },
  check: (site) => {
    const hoses = hosesTo(site)
    return site.kitchen.appliances.flatMap((appliance) => {
      const bay = bayOf(site.kitchen, appliance)
      const at =
        bay === null ? null : middleOf(site.kitchen, site.survey, site.units, { id: appliance.id, over: bay })
      if (bay === null || at === null) return []
      const from = { wall: at.wall, along: at.middle }
      const targets = [...(HOSED.includes(appliance.kind) ? hoses : []), ...leadTo(site, appliance)]
      return (['water', 'waste', 'lead'] as const).flatMap((what) => {
        const to = nearest(site, from, targets, what)
        return to === undefined ? [] : (judged(site, appliance, bay, to) ?? [])
      })
    })
  },
}
