import { derive, type Figure, hasValue } from '../figure'
import type { UnitPlan } from '../plan/types'
import type { Found, Rule, Site } from './rule'

const standing = ({ kind }: UnitPlan) => kind !== 'wall' && kind !== 'corner-wall' && kind !== 'bridging'

/** The narrowest of the widths measured on a wall; null when none was, and its length is all there is. */
function narrowest(site: Site, wall: string): Figure | null {
  const widths = (site.wall(wall)?.widths ?? []).map(({ width }) => width).filter(hasValue)
  const least = Math.min(...widths.map(({ value }) => value))
  return widths.find(({ value }) => value === least) ?? null
}

function judged(site: Site, wall: string, units: readonly UnitPlan[]): readonly Found[] {
  const room = narrowest(site, wall)
  const ends = [...units.map(({ right }) => right), ...partEnds(site, wall)].filter(hasValue)
  const furthest = Math.max(...ends.map(({ value }) => value))
  const end = ends.find(({ value }) => value === furthest)
  const last = units.at(-1)
  if (room === null || end === undefined || last === undefined) return []
  const over = derive('mm', rule.basis, [end, room], (e, r) => (e as number) - (r as number))
  if (!hasValue(over) || over.value <= 0) return []
  const values = { wall: site.name(wall), over, room, end, last: site.name(last.unit) }
  return [
    {
      subjects: [wall],
      about: [wall, last.unit],
      weight: over.value > over.pm ? 'stop' : 'ask',
      said: [over.value > over.pm ? 'over' : 'may-be-over', values],
      figures: [over, room, end],
      where: { wall, along: end },
      ask: ['ask'],
    },
  ]
}

/** Right ends of panels and fillers of a wall: they are part of its run. */
function partEnds(site: Site, wall: string): readonly Figure[] {
  return site.parts.filter((part) => part.wall === wall).map(({ right }) => right)
}

/** F01: a run that is longer than the wall at the height where it is narrowest. */
export const rule: Rule = {
  id: 'run-too-long',
  catches: ['F01'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'the right end of the run, and the narrowest width measured' },
  why: 'An alcove measured once, at the floor, is narrower somewhere else; the last unit then does not go in.',
  words: {
    over: 'The run on {wall} does not fit: {last} ends at {end}, the narrowest width is {room}. It is {over} too long.',
    'may-be-over':
      'The run on {wall} may not fit: {last} ends at {end}, the narrowest width is {room}. Readings this near cannot tell: measure both again.',
    ask: 'Measure the width at the floor, at worktop height and at the wall units, at the wall and at the front.',
  },
  check: (site) =>
    site.kitchen.walls.flatMap((wall) => judged(site, wall.id, site.along(wall.id).filter(standing))),
}
