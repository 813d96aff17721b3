import { derive, type Figure, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Wall } from '../kitchen/schema'
import type { UnitPlan } from '../plan/types'
import type { Found, Rule, Site, Way } from './rule'

type Width = Wall['widths'][number]
type Height = NonNullable<Width['at']>
const AT: Readonly<Record<Height, string>> = {
  floor: 'at the floor',
  worktop: 'at worktop height',
  'wall-unit': 'at the wall units',
}
const DEEP: Readonly<Record<NonNullable<Width['depth']>, string>> = {
  back: 'at the back',
  middle: 'half-way out',
  front: 'at its mouth',
}
/** At these heights base units go in; tall ones pass all three, and wall units have a run of their own. */
const LOW: readonly Height[] = ['floor', 'worktop']

interface Narrow {
  readonly width: Figure
  /** Where it was measured, in words. */
  readonly place: string
}

/**
 * The narrowest of the widths measured on a wall at the height of what goes in; null when none was, and its length is all
 * there is. A unit is pushed straight in, so the mouth counts as much as the back.
 */
function narrowest(site: Site, wall: string, at: readonly Height[]): Narrow | null {
  const widths = (site.wall(wall)?.widths ?? []).flatMap((one) =>
    hasValue(one.width) && (one.at === null || at.includes(one.at)) ? [{ ...one, mm: one.width.value }] : [],
  )
  const least = Math.min(...widths.map(({ mm }) => mm))
  const one = widths.find(({ mm }) => mm === least)
  return one === undefined ? null : { width: one.width, place: placeOf(one) }
}

/** Where a width was taken, in words, as far as anybody said. */
function placeOf({ at, depth }: Width): string {
  const said = [depth === null ? '' : DEEP[depth], at === null ? '' : AT[at]].filter((part) => part !== '')
  return said.length === 0 ? 'where it is narrowest' : said.join(' ')
}

/** Fillers and panels whose width can give: narrower by what is too much, where enough of them is left. */
function waysOut(site: Site, wall: string, over: Figure): readonly Way[] {
  if (!hasValue(over)) return []
  const by = Math.ceil(over.value + over.pm)
  return site.parts
    .filter(({ part, wall: on }) => on === wall && part.kind === 'filler')
    .flatMap(({ part }): readonly Way[] => {
      if (!hasValue(part.width) || part.width.value - by < LEAST_FILLER) return []
      const to = part.width.value - by
      return [
        {
          said: ['narrower', { part: part.name ?? 'filler', to }],
          cost: 'minutes',
          edits: [{ set: factId('finishing', part.id, 'width'), to }],
        },
      ]
    })
}

/** A filler narrower than this is not worth cutting, mm. Common practice. */
const LEAST_FILLER = 10

/** What stands or hangs at one height of a wall, and at which heights its room was measured. */
interface Row {
  readonly of: 'low' | 'high'
  readonly units: readonly UnitPlan[]
  readonly at: readonly Height[]
}

function rowsOf(site: Site, wall: string): readonly Row[] {
  const units = site.along(wall)
  const isHigh = ({ kind }: UnitPlan) => kind === 'wall' || kind === 'corner-wall' || kind === 'bridging'
  const isTall = ({ kind }: UnitPlan) => kind === 'tall'
  const low = units.filter((unit) => !isHigh(unit))
  const high = units.some(isHigh) ? units.filter((unit) => isHigh(unit) || isTall(unit)) : []
  return [
    { of: 'low', units: low, at: low.some(isTall) ? [...LOW, 'wall-unit'] : LOW },
    { of: 'high', units: high, at: ['wall-unit'] },
  ]
}

function judged(site: Site, wall: string, { of, units, at }: Row): readonly Found[] {
  const room = narrowest(site, wall, at)
  const parts = of === 'low' ? partEnds(site, wall) : []
  const ends = [...units.map(({ right }) => right), ...parts].filter(hasValue)
  const furthest = Math.max(...ends.map(({ value }) => value))
  const end = ends.find(({ value }) => value === furthest)
  const last = units.at(-1)
  if (room === null || end === undefined || last === undefined) return []
  const over = derive('mm', rule.basis, [end, room.width], (e, r) => (e as number) - (r as number))
  if (!hasValue(over) || over.value <= 0) return []
  const { width, place } = room
  const values = { wall: site.name(wall), over, room: width, place, end, last: site.name(last.unit) }
  // Too long by just what the readings can be out, it has no play at all at the very best.
  const isSure = over.value >= over.pm
  return [
    {
      subjects: of === 'low' ? [wall] : [wall, 'wall-units'],
      about: [wall, last.unit],
      weight: isSure ? 'stop' : 'ask',
      said: [isSure ? 'over' : 'may-be-over', values],
      figures: [over, width, end],
      where: { wall, along: end },
      ask: ['ask'],
      waysOut: of === 'low' ? waysOut(site, wall, over) : [],
    },
  ]
}

/** Right ends of panels and fillers of a wall: they are part of its run. */
function partEnds(site: Site, wall: string): readonly Figure[] {
  return site.parts.filter((part) => part.wall === wall).map(({ right }) => right)
}

/** F01, F02: a run that is longer than its alcove where that is narrowest: at the floor, at the mouth, anywhere. */
export const rule: Rule = {
  id: 'run-too-long',
  heading: 'A run that is too long',
  catches: ['F01', 'F02'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'the right end of the run, and the narrowest width measured' },
  why: 'An alcove measured once, at the floor, is narrower somewhere else; the last unit then does not go in.',
  words: {
    over: 'The run on {wall} does not fit: {last} ends at {end}, and {place} there are only {room}. It is {over} too long.',
    'may-be-over':
      'The run on {wall} may not fit: {last} ends at {end}, and {place} there are {room}. Readings this near cannot tell: measure both again.',
    ask: 'Measure the width at the floor, at worktop height and at the wall units, at the wall and at the front.',
    narrower: 'Cut the {part} to {to} mm: it gives what is missing.',
  },
  check: (site) =>
    site.kitchen.walls.flatMap(({ id }) => rowsOf(site, id).flatMap((row) => judged(site, id, row))),
}
