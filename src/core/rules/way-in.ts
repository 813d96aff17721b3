import { derive, type Figure, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen, Unit } from '../kitchen/schema'
import { longestRoundCorner } from '../placing/round-a-corner'
import { type Narrow, passesBy, type Sides } from '../placing/through'
import { longestPiece, worktopRuns } from '../placing/worktop-runs'
import { highestOf } from '../survey/extremes'
import { type Found, margin, missing, type Rule, type Site, type Way } from './rule'

type Stage = Kitchen['route'][number]

/** Knuckles and packing take this much: what goes with less goes only just. Common practice. */
const HANDS = 10

const WHAT: Readonly<Record<Stage['kind'], string>> = {
  door: 'door',
  corner: 'corner',
  stairs: 'stairs',
  'lift-car': 'lift',
}

/** "The door", or "door 2" where there are several, counted from the street. */
function stageSaid(route: Kitchen['route'], { id, kind }: Stage): string {
  const alike = route.filter((stage) => stage.kind === kind)
  return alike.length < 2
    ? `the ${WHAT[kind]}`
    : `${WHAT[kind]} ${alike.findIndex((one) => one.id === id) + 1}`
}

/** How a stage is worked out; stairs turn and slope, and a width and a height do not say what goes up them. */
const WORKED: Readonly<Record<Stage['kind'], Narrow['kind'] | null>> = {
  door: 'door',
  corner: 'corner',
  stairs: null,
  'lift-car': 'car',
}

interface Carried {
  readonly id: string
  /** Long enough that stairs are to be asked about: a tall unit that comes built, a worktop. */
  readonly isLong: boolean
  readonly name: string
  readonly sides: readonly [Figure, Figure, Figure]
  readonly ways: readonly Way[]
}

/** Units that come built; one that comes flat is carried in as boards, the largest of which is its side. */
function carried(site: Site, unit: Unit): Carried {
  const flat = unit.assembled === 'flat-packed'
  return {
    id: unit.id,
    isLong: !flat && unit.kind === 'tall',
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

/** A worktop as a board as long as the longest piece it is carried in. */
function boards(site: Site): readonly Carried[] {
  const runs = worktopRuns(site.kitchen, site.units)
  return site.kitchen.worktops.flatMap((worktop): readonly Carried[] => {
    const pieces = runs
      .filter((run) => run.worktop === worktop)
      .map((run) => longestPiece(worktop, run, site.survey))
    if (pieces.length === 0) return []
    const length = highestOf('mm', rule.basis, pieces)
    const sides = [length, worktop.depth, worktop.thickness] as const
    return [{ id: worktop.id, isLong: true, name: site.name(worktop.id), sides, ways: [] }]
  })
}

/** What is narrow about a stage: width, way on or depth, height. */
function narrowAt(stage: Stage): readonly Figure[] {
  const height = hasValue(stage.height) ? stage.height : stage.ceiling
  return [stage.width, stage.kind === 'door' ? stage.width : stage.width2, height]
}

/** What is to spare for it there, in the way it goes best, with so much of each width and height kept for hands. */
function room(thing: Carried, stage: Stage, kind: Narrow['kind'], hands: number): Figure {
  return derive('mm', rule.basis, [...thing.sides, ...narrowAt(stage)], (a, b, c, width, onward, height) =>
    passesBy([a, b, c] as Sides, {
      kind,
      width: (width as number) - hands,
      onward: (onward as number) - hands,
      height: (height as number) - hands,
    }),
  )
}

/** The longest that turns a corner lying on the floor, on whichever of its sides leaves it least wide. */
function turned({ sides }: Carried, stage: Stage): { readonly narrow: Figure; readonly longest: Figure } {
  const [width, onward] = narrowAt(stage) as readonly [Figure, Figure]
  const narrow = derive('mm', rule.basis, sides, Math.min)
  const longest = derive('mm', rule.basis, [narrow, width, onward], (least = 0, a = 0, b = 0) =>
    Math.max(0, longestRoundCorner(a, b, least) ?? 0),
  )
  return { narrow, longest }
}

function judged(site: Site, thing: Carried, stage: Stage): readonly Found[] {
  const values = { what: thing.name, stage: stageSaid(site.kitchen.route, stage) }
  const common = { subjects: [thing.id, stage.id], about: [thing.id] }
  const kind = WORKED[stage.kind]
  if (kind === null) {
    const from = [factId('route', stage.id, 'kind')]
    return thing.isLong
      ? [{ ...common, weight: 'ask', said: ['stairs', values], figures: thing.sides, from, ask: ['walk'] }]
      : []
  }
  const by = room(thing, stage, kind, 0)
  if (!hasValue(by)) {
    return thing.sides.every(hasValue)
      ? [{ ...common, weight: 'ask', said: ['not-measured', values], figures: [by], ask: ['measure'] }]
      : []
  }
  const key = margin(by)
  if (key === null) {
    const isTight = margin(room(thing, stage, kind, HANDS)) !== null
    const tight = { ...values, spare: by, hands: HANDS }
    return isTight ? [{ ...common, weight: 'warn', said: ['tight', tight], ask: ['measure'] }] : []
  }
  const isStopped = key === 'short'
  const turns = isStopped && kind === 'corner' && thing.isLong
  const said = { ...values, short: missing(by) }
  return [
    {
      ...common,
      weight: isStopped ? 'stop' : 'ask',
      said: turns ? ['short-to-turn', { ...said, ...turned(thing, stage) }] : [key, said],
      figures: [by],
      ask: ['measure'],
      waysOut: thing.ways,
    },
  ]
}

/** F07, F08: a tall unit or a worktop that does not come through a door or round a corner of the way in. */
export const rule: Rule = {
  id: 'way-in',
  heading: 'The way into the house',
  catches: ['F07', 'F08'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the box turned every way through the opening; round a corner the exact bound for a rectangle; with less than 10 mm for hands it goes only just (common practice)',
  },
  why: 'A tall unit that cannot turn the corner of the hall goes back to the shop.',
  words: {
    short: '{what} does not come through {stage} on the way in: {short} is missing, however it is held.',
    'short-to-turn':
      '{what} does not come through {stage} on the way in: {short} is missing, however it is held. Lying down and {narrow} wide, nothing longer than {longest} turns there.',
    tight:
      '{what} only just comes through {stage} on the way in: {spare} to spare, in the way it goes best. With {hands} mm kept for hands on each width it does not go. Try it first with laths as long and as wide.',
    near: '{what} may not come through {stage} on the way in: too near for the tape to tell. Measure again, between the frames.',
    'not-measured':
      'Whether {what} comes through {stage} on the way in cannot be told: it has not been measured.',
    stairs:
      'Whether {what} goes up {stage} on the way in cannot be worked out from widths: it turns and tilts there.',
    walk: 'Walk the stairs with a frame of laths as long, as wide and as deep, before anything is ordered.',
    measure: 'Measure clear of handles, frames and radiators: width, width past a corner, height.',
    flat: 'Have it sent flat, and put it together in the room.',
  },
  check: (site) => {
    const { kitchen } = site
    const things = [
      ...kitchen.units.filter(({ kind }) => kind !== 'appliance-space').map((unit) => carried(site, unit)),
      ...boards(site),
    ]
    return kitchen.route.flatMap((stage) => things.flatMap((thing) => judged(site, thing, stage)))
  },
}
