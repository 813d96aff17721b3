import { derive, type Figure, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen, Unit } from '../kitchen/schema'
import { type Narrow, passesBy, type Sides } from '../placing/through'
import type { Found, Rule, Site, Way } from './rule'

type Stage = Kitchen['route'][number]

/** A door or packing takes this much on each side, and knuckles. Common practice. */
const HANDS = 10

const WHAT: Readonly<Record<Stage['kind'], string>> = {
  door: 'the door',
  corner: 'the corner',
  stairs: 'the stairs',
  'lift-car': 'the lift',
}

interface Carried {
  readonly id: string
  readonly name: string
  readonly sides: readonly [Figure, Figure, Figure]
  readonly ways: readonly Way[]
}

/** Units that come built; one that comes flat is carried in as boards, the largest of which is its side. */
function carried(site: Site, unit: Unit): Carried {
  const flat = unit.assembled === 'flat-packed'
  return {
    id: unit.id,
    name: site.name(unit.id),
    sides: [unit.width, unit.depth, unit.height].map((side, i) =>
      flat && i === 0 ? unit.board : side,
    ) as unknown as Carried['sides'],
    ways: flat
      ? []
      : [
          {
            said: ['flat'],
            cost: 'a day or more',
            edits: [{ set: factId('units', unit.id, 'assembled'), to: 'flat-packed' }],
          },
        ],
  }
}

/** A worktop as a board as long as what it lies over. */
function board(site: Site, worktop: Kitchen['worktops'][number]): readonly Carried[] {
  const under = worktop.over.flatMap((id) => site.unit(id) ?? [])
  const walls = new Set(under.map(({ wall }) => wall))
  if (under.length === 0 || walls.size !== 1) return []
  const length = derive(
    'mm',
    { kind: 'geometry', why: 'from the left side of the first unit under it to the right side of the last' },
    under.flatMap(({ left, right }) => [left, right]),
    (...ends) => Math.max(...ends) - Math.min(...ends),
  )
  return [
    {
      id: worktop.id,
      name: worktop.name ?? 'The worktop',
      sides: [length, worktop.depth, worktop.thickness],
      ways: [],
    },
  ]
}

/** What is narrow about a stage; null when a figure of it nobody has measured. */
function narrowAt(stage: Stage): readonly Figure[] {
  const height = hasValue(stage.height) ? stage.height : stage.ceiling
  return stage.kind === 'corner' ? [stage.width, stage.width2, height] : [stage.width, stage.width, height]
}

function room(thing: Carried, stage: Stage): Figure {
  const kind: Narrow['kind'] = stage.kind === 'corner' ? 'corner' : 'door'
  return derive('mm', rule.basis, [...thing.sides, ...narrowAt(stage)], (a, b, c, width, onward, height) =>
    passesBy([a, b, c] as Sides, {
      kind,
      width: (width as number) - HANDS,
      onward: (onward as number) - HANDS,
      height: (height as number) - HANDS,
    }),
  )
}

function judged(thing: Carried, stage: Stage): readonly Found[] {
  const by = room(thing, stage)
  const values = { what: thing.name, stage: WHAT[stage.kind], id: stage.id }
  const common = { subjects: [thing.id, stage.id], about: [thing.id] }
  if (!hasValue(by)) {
    return thing.sides.every(hasValue)
      ? [{ ...common, weight: 'ask', said: ['not-measured', values], figures: [by], ask: ['measure'] }]
      : []
  }
  if (by.value >= by.pm) return []
  const short = derive('mm', rule.basis, [by], (b) => -(b as number))
  const sure = by.value < -by.pm
  return [
    {
      ...common,
      weight: sure ? 'stop' : 'ask',
      said: [sure ? 'short' : 'near', { ...values, short }],
      figures: [by],
      ask: ['measure'],
      waysOut: thing.ways,
    },
  ]
}

/** F07, F08: a tall unit or a worktop that does not come through a door or round a corner of the way in. */
export const rule: Rule = {
  id: 'way-in',
  catches: ['F07', 'F08'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the box turned every way through the opening; round a corner the exact bound for a rectangle, with 10 mm for hands (common practice)',
  },
  why: 'A tall unit that cannot turn the corner of the hall goes back to the shop.',
  words: {
    short:
      '{what} does not come through {stage} on the way in ({id}): {short} is missing, however it is held.',
    near: '{what} may not come through {stage} on the way in ({id}): too near for the tape to tell. Measure again, between the frames.',
    'not-measured':
      'Whether {what} comes through {stage} on the way in ({id}) cannot be told: it has not been measured.',
    measure: 'Measure clear of handles, frames and radiators: width, width past a corner, height.',
    flat: 'Have it sent flat, and put it together in the room.',
  },
  check: (site) => {
    const { kitchen } = site
    const things = [
      ...kitchen.units.filter(({ kind }) => kind !== 'appliance-space').map((unit) => carried(site, unit)),
      ...kitchen.worktops.flatMap((worktop) => board(site, worktop)),
    ]
    return kitchen.route
      .filter(({ kind }) => kind !== 'stairs')
      .flatMap((stage) => things.flatMap((thing) => judged(thing, stage)))
  },
}
