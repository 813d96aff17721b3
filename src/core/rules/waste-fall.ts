import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import type { Appliance } from '../kitchen/schema'
import { middleOf } from '../placing/hood-places'
import { overLimit } from '../placing/over-limit'
import { type OnWall, wayAlongWalls } from '../placing/way-along-walls'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const standard: Basis = {
  kind: 'standard',
  source: 'Approved Document H, drainage and waste disposal (England)',
  where: 'branch discharge pipes of 40 mm: a fall of 18 to 90 mm in each metre; quoted from memory',
}
const FALL = known(18, 0, 'mm', [], standard)

interface Point extends OnWall {
  readonly z: Figure
}
/** A straight piece of waste pipe on its way down, and by how much it falls too little. */
interface Leg {
  readonly what: 'to-pipe' | 'in-pipe'
  readonly from: Point
  readonly to: Point
  readonly length: Figure
  readonly drop: Figure
  readonly needed: Figure
  readonly short: Figure
}

function legBetween(site: Site, what: Leg['what'], from: Point, to: Point): Leg | null {
  const length = wayAlongWalls(site.kitchen, site.survey, from, to)
  if (length === null) return null
  const drop = sum('mm', rule.basis, [from.z], [to.z])
  const needed = derive('mm', standard, [length, FALL], (l, f) => ((l as number) * (f as number)) / 1000)
  return { what, from, to, length, drop, needed, short: sum('mm', standard, [needed], [drop]) }
}

/** Waste pipes, each from the end at which the sink comes in: the nearer one, and of two the higher. */
function pipesFrom(site: Site, trap: Point): readonly { points: readonly Point[]; far: number }[] {
  const far = (point: Point | undefined) => {
    const way = point === undefined ? null : wayAlongWalls(site.kitchen, site.survey, trap, point)
    return way !== null && hasValue(way) ? way.value : Number.POSITIVE_INFINITY
  }
  const z = (point: Point | undefined) => (point !== undefined && hasValue(point.z) ? point.z.value : 0)
  return site.kitchen.walls.flatMap(({ id: wall, services }) =>
    services
      .filter(({ kind, face }) => kind === 'waste' && face === 'room')
      .map(({ points }) => {
        const run = points.map((point): Point => {
          const along = site.survey.along(wall, point.along)
          return { wall, along, z: site.onFace(wall, along, point.height) }
        })
        const [first, last] = [far(run[0]), far(run.at(-1))]
        const isTurned = last < first || (last === first && z(run.at(-1)) > z(run[0]))
        return { points: isTurned ? [...run].reverse() : run, far: Math.min(first, last) }
      }),
  )
}

function judged(site: Site, sink: Appliance): Found | null {
  const at = middleOf(site.kitchen, site.survey, site.units, sink)
  if (at === null) return null
  const z = sum('mm', rule.basis, [heightNamed(site.heights, 'worktop-top')], [sink.outlet])
  const trap: Point = { wall: at.wall, along: at.middle, z }
  const pipe = [...pipesFrom(site, trap)].sort((a, b) => a.far - b.far)[0]
  if (pipe === undefined || !Number.isFinite(pipe.far)) return null
  const common = { subjects: [sink.id], about: [sink.id, ...(sink.over === null ? [] : [sink.over])] }
  const run = [trap, ...pipe.points]
  const legs = run
    .slice(1)
    .flatMap((to, i) => legBetween(site, i === 0 ? 'to-pipe' : 'in-pipe', run[i] as Point, to) ?? [])
  const by = ({ short }: Leg) => (hasValue(short) ? short.value - short.pm : Number.NEGATIVE_INFINITY)
  const worst = [...legs].sort((a, b) => by(b) - by(a))[0]
  const stands = worst === undefined ? 'within' : overLimit(worst.short)
  if (worst === undefined || (stands !== 'over' && stands !== 'near')) {
    const from = [factId('appliances', sink.id, 'outlet')]
    const ask = {
      ...common,
      weight: 'ask',
      said: ['outlet', { sink: site.name(sink.id) }],
      from,
      ask: ['ask.outlet'],
    } as const
    return hasValue(sink.outlet) ? null : ask
  }
  const { length, drop, needed, short, from, to } = worst
  const isUphill = hasValue(drop) && drop.value < -drop.pm
  const rise = derive('mm', rule.basis, [drop], (d) => -(d as number))
  const values = {
    sink: site.name(sink.id),
    length,
    drop,
    rise,
    needed,
    short,
    fall: FALL,
    from: from.z,
    to: to.z,
    at: to.along,
    wall: site.name(to.wall),
  }
  return {
    ...common,
    weight: stands === 'over' ? 'stop' : 'ask',
    said: [stands === 'near' ? `${worst.what}-near` : isUphill ? `${worst.what}-uphill` : worst.what, values],
    figures: [length, drop, needed, short],
    where: { wall: to.wall, along: to.along, height: to.z },
    ask: ['ask'],
  }
}

/** F37: a waste that does not fall from the trap to where it leaves the room. */
export const rule: Rule = {
  id: 'waste-fall',
  heading: 'The fall of the waste pipe',
  catches: ['F37'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'heights of trap and waste pipe, and the way between them along the walls',
  },
  why: 'Water does not run uphill: the sink empties into its own trap and stays there.',
  words: {
    'to-pipe':
      'From the trap of {sink}, {from:signed} from the line, to the waste on {wall}, {to:signed} from it, the pipe falls {drop} over {length}. With {fall} a metre it has to fall {needed}: {short} is missing.',
    'to-pipe-uphill':
      'The trap of {sink} is {from:signed} from the line, and the waste on {wall} is higher, at {to:signed}. Over {length} the pipe has to fall {needed}, and it climbs {rise}.',
    'to-pipe-near':
      'From the trap of {sink} to the waste on {wall} the pipe falls {drop} over {length}, and has to fall {needed}. Readings this near cannot tell: measure both heights again, from the line.',
    'in-pipe':
      'On {wall}, as far as {at} along it, the waste of {sink} falls {drop} over {length}. With {fall} a metre it has to fall {needed}: {short} is missing.',
    'in-pipe-uphill':
      'On {wall}, as far as {at} along it, the waste of {sink} climbs {rise} over {length}, and has to fall {needed}.',
    'in-pipe-near':
      'On {wall}, as far as {at} along it, the waste of {sink} falls {drop} over {length}, and has to fall {needed}. Readings this near cannot tell: measure both ends again, from the line.',
    outlet:
      'The waste is measured, but not how far the trap of {sink} hangs below the top of the worktop. Whether the pipe falls cannot be told.',
    ask: 'Ask a plumber, before the units stand, for a lower waste, a sink nearer to it, or a trap that takes less height.',
    'ask.outlet': 'Read the sheets of sink and trap: depth of the bowl and height of the trap under it.',
  },
  check: (site) =>
    site.kitchen.appliances.filter(({ kind }) => kind === 'sink').flatMap((sink) => judged(site, sink) ?? []),
}
