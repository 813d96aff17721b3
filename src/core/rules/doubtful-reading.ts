import { type Basis, type Figure, hasValue, known, quantise, type ValueFigure } from '../figure'
import { outOfPlane } from '../geometry/out-of-plane'
import { fitPlane, heightOn, worstOff } from '../geometry/plane'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import type { PlanPoint } from '../plan/types'
import type { Found, Rule, Site } from './rule'

/** A floor reading that stands out by more than this from all the others is looked at. Common practice. */
const STANDS_OUT = 8
/** Readings from another line that all lie off by more than this speak of another line. Common practice. */
const OFF = 3

const mirrored: Basis = {
  kind: 'geometry',
  why: 'taken the other way from the highest floor, the reading falls in with the plane through all the others',
}
const together: Basis = {
  kind: 'geometry',
  why: 'readings from one line against the plane through those from the other',
}

type Reading = Kitchen['floor']['readings'][number]
interface Point {
  readonly reading: Reading
  readonly at: PlanPoint
  readonly z: ValueFigure
}

function pointsOf({ survey, kitchen }: Site): readonly Point[] {
  return survey.points.flatMap(({ id, at, z }) => {
    const reading = kitchen.floor.readings.find((one) => one.id === id)
    return reading === undefined || !hasValue(z) ? [] : [{ reading, at, z }]
  })
}

function placeOf(site: Site, { at }: Pick<Reading, 'at'>) {
  const along = site.survey.along(at.wall, at.along)
  const values = { wall: site.name(at.wall), along, out: at.out }
  return { values, where: { wall: at.wall, along } }
}

/** Floors above the line, ceilings below it: read the wrong way. */
function onWrongSide(site: Site): readonly Found[] {
  const floors = site.kitchen.floor.readings.flatMap((reading): readonly Found[] => {
    if (!hasValue(reading.drop) || reading.drop.value >= 0) return []
    const { values, where } = placeOf(site, reading)
    const fact = factId('floor', 'readings', reading.id, 'drop')
    const edits = [{ set: fact, to: -reading.drop.value }]
    return [
      {
        subjects: [reading.id],
        about: [reading.at.wall],
        weight: 'stop',
        said: ['floor-above', { ...values, drop: reading.drop }],
        where,
        from: [fact],
        ask: ['ask'],
        waysOut: [{ said: ['turn'], cost: 'a look', edits }],
      },
    ]
  })
  const ceilings = site.kitchen.ceiling.flatMap((reading): readonly Found[] => {
    const { values, where } = placeOf(site, reading)
    const z = site.survey.height(reading.height, {
      wall: reading.at.wall,
      along: where.along,
      out: reading.at.out,
    })
    if (!hasValue(z) || z.value >= 0) return []
    const edits = [{ set: factId('ceiling', reading.id, 'height'), to: { up: -z.value } }]
    return [
      {
        subjects: [reading.id],
        about: [reading.at.wall],
        weight: 'stop',
        said: ['ceiling-below', { ...values, z }],
        where,
        ask: ['ask'],
        waysOut: [{ said: ['turn'], cost: 'a look', edits }],
      },
    ]
  })
  return [...floors, ...ceilings]
}

/** A reading that stands above all others, and would lie among them with its difference taken the other way. */
function takenTheOtherWay(site: Site, points: readonly Point[]): readonly Found[] {
  const samples = points.map(({ at, z }) => ({ at, z: z.value }))
  return points.flatMap((point, i): readonly Found[] => {
    const lie = outOfPlane(samples, i)
    if (lie === null) return []
    const { value, pm } = point.z
    const off = value - lie.expected
    const turned = 2 * lie.highest - value
    const standsOut = value > lie.highest + 2 * pm && off > Math.max(STANDS_OUT, 2 * lie.worst)
    if (!standsOut || Math.abs(turned - lie.expected) > lie.worst + 2 * pm) return []
    const { values, where } = placeOf(site, point.reading)
    const figure = (mm: number): Figure => known(quantise(mm), pm, 'mm', point.z.from, mirrored)
    const said = { ...values, off: figure(off), drop: point.reading.drop, turned: figure(-turned) }
    return [
      {
        subjects: [point.reading.id],
        about: [point.reading.at.wall],
        weight: 'ask',
        said: ['turned', said],
        where: { ...where, height: point.z },
        basis: mirrored,
        ask: ['ask'],
      },
    ]
  })
}

/** Readings from one line that all lie to the same side of those from another. */
function fromTwoLines(points: readonly Point[]): readonly Found[] {
  const ids = [...new Set(points.map(({ reading }) => reading.line))]
  const [first = ''] = [...ids].sort((a, b) => countOn(points, b) - countOn(points, a) || (a < b ? -1 : 1))
  const base = points.filter(({ reading }) => reading.line === first).map(({ at, z }) => ({ at, z: z.value }))
  const plane = fitPlane(base)
  if (plane === null) return []
  const worst = worstOff(plane, base)
  return ids
    .filter((id) => id !== first && countOn(points, id) > 1)
    .flatMap((line): readonly Found[] => {
      const own = points.filter(({ reading }) => reading.line === line)
      const offs = own.map(({ at, z }) => z.value - heightOn(plane, at))
      const [low, high] = [Math.min(...offs), Math.max(...offs)]
      const nearest = low > 0 ? low : high < 0 ? -high : 0
      const pm = Math.max(...own.map(({ z }) => z.pm))
      if (nearest <= OFF + pm + worst) return []
      const mean = offs.reduce((sum, off) => sum + off, 0) / offs.length
      const from = own.flatMap(({ z }) => z.from)
      const by = known(quantise(Math.abs(mean)), pm, 'mm', from, together)
      return [
        {
          subjects: [line],
          about: own.map(({ reading }) => reading.at.wall),
          weight: 'ask',
          said: [mean > 0 ? 'lines-high' : 'lines-low', { count: own.length, by }],
          from: [factId('lines', line, 'offset')],
          basis: together,
          ask: ['ask.lines'],
        },
      ]
    })
}

const countOn = (points: readonly Point[], line: string): number =>
  points.filter(({ reading }) => reading.line === line).length

/** F18, F19: a reading taken the wrong way, or readings that two people took from two lines. */
export const rule: Rule = {
  id: 'doubtful-reading',
  heading: 'A reading to take again',
  catches: ['F18', 'F19'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'a floor lies below the line, a ceiling above it' },
  why: 'A slip of the sign is the commonest slip there is, and it makes the lowest foot the highest.',
  words: {
    'floor-above':
      'A floor reading lies above the line: {drop} down is written for it, {along} along {wall} and {out} out. A drop is counted down, and a bigger drop is a lower floor.',
    'ceiling-below':
      'A ceiling reading lies below the line: {z:signed}, {along} along {wall} and {out} out. Up from the line is counted up.',
    turned:
      'The floor reading {along} along {wall}, {out} out, stands {off} above what all the others say: a drop of {drop}. Taken the other way from the highest floor it would be {turned}, and fall in with them. Its difference may have been taken with the wrong sign.',
    'lines-high':
      'All {count} floor readings from the second line lie about {by} higher than those from the first. The two lines may not be as far apart as was entered.',
    'lines-low':
      'All {count} floor readings from the second line lie about {by} lower than those from the first. The two lines may not be as far apart as was entered.',
    ask: 'Read it again: the tape hangs from the line, and the bigger number is the lower floor.',
    'ask.lines': 'Measure from one line to the other at two places, and enter what it is.',
    turn: 'Turn its sign round.',
  },
  check: (site) => {
    const points = pointsOf(site)
    return [...onWrongSide(site), ...takenTheOtherWay(site, points), ...fromTwoLines(points)]
  },
}
