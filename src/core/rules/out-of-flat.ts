import { type Basis, derive, type Figure, hasValue, known, type ValueFigure } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Wall } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import { type Flatness, flatnessOf, type GapTable } from '../region/flatness'
import { type Gap, gapsAmong, shareOf } from '../survey/gaps'
import { permittedGap } from '../survey/permitted-gap'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const acrossReadings: Basis = {
  kind: 'geometry',
  why: 'the straight line between two readings, less the reading between them',
}
const underEdge: Basis = { kind: 'geometry', why: 'what the straightedge shows, whichever way' }

/** What a region publishes of this house; null: nothing, or only for newer homes. */
function heldTo({ region, kitchen }: Site): Flatness | null {
  const flatness = flatnessOf(region?.id ?? null)
  const built = kitchen.survey.houseBuilt
  const isHeld = flatness?.builtFrom == null || (built !== null && built >= flatness.builtFrom)
  return isHeld ? flatness : null
}

interface Reading {
  readonly id: string
  readonly along: ValueFigure
  readonly out: ValueFigure
  readonly z: ValueFigure
}

/** Floor readings taken from one wall: their places need no other wall's length or corner. */
function readingsFrom({ survey, kitchen }: Site, wall: string): readonly Reading[] {
  return kitchen.floor.readings.flatMap(({ id, at }) => {
    const z = survey.points.find((point) => point.id === id)?.z
    const along = at.wall === wall ? survey.along(wall, at.along) : undefined
    if (z === undefined || along === undefined) return []
    return hasValue(z) && hasValue(along) && hasValue(at.out) ? [{ id, along, out: at.out, z }] : []
  })
}

interface Judged {
  readonly gap: Gap
  readonly limit: number
}

/** The gap furthest past what is allowed over its distance; none where all are within. */
function worstOf(gaps: readonly Gap[], table: GapTable): Judged | undefined {
  return gaps
    .flatMap((gap): readonly Judged[] => {
      const limit = permittedGap(table, gap.distance)
      return limit === null || Math.abs(gap.gap) <= limit ? [] : [{ gap, limit }]
    })
    .sort((a, b) => past(b) - past(a) || a.gap.distance - b.gap.distance)[0]
}

const past = ({ gap, limit }: Judged): number => Math.abs(gap.gap) - limit

interface Said {
  readonly gap: Figure
  readonly span: Figure
  readonly limit: Figure
  readonly over: Figure
}

/** The figures of a gap, when it is past its limit by more than the readings can be out. */
function saidOf(gap: Figure, span: Figure, permitted: number, basis: Basis): Said | null {
  const limit = known(permitted, 0, 'mm', [], basis)
  const over = sum('mm', basis, [gap], [limit])
  return overLimit(over) === 'over' ? { gap, span, limit, over } : null
}

/** From the three readings anew, so that the figure carries how far each may be out. */
function floorGap(readings: readonly Reading[], { gap, limit }: Judged, basis: Basis): Said | null {
  const three = [gap.from, gap.to, gap.at].map((i) => readings[i] as Reading)
  const inputs = three.flatMap(({ along, out, z }) => [along, out, z])
  const place = (values: readonly number[], i: number) => ({
    x: values[3 * i] ?? 0,
    y: values[3 * i + 1] ?? 0,
  })
  const deep = derive('mm', acrossReadings, inputs, (...values) => {
    const [a, b, at] = [place(values, 0), place(values, 1), place(values, 2)]
    const [za = 0, zb = 0, z = 0] = [values[2], values[5], values[8]]
    return Math.abs(za + shareOf(a, b, at) * (zb - za) - z)
  })
  const ends = inputs.slice(0, 6)
  const span = derive('mm', acrossReadings, ends, (...values) => {
    const [a, b] = [place(values, 0), place(values, 1)]
    return Math.hypot(b.x - a.x, b.y - a.y)
  })
  return saidOf(deep, span, limit, basis)
}

function floors(site: Site, { floors: tables, basis }: Flatness): readonly Found[] {
  const finish = site.kitchen.floor.finishToCome
  const isFinished = hasValue(finish) && finish.value === 0
  // Where a finish is still to come, or nobody has said, it is held to what holds of a bare floor: the wider.
  const table = isFinished ? tables.finished : tables.bare
  if (table === null) return []
  const worst = site.kitchen.walls
    .flatMap(({ id: wall }) => {
      const readings = readingsFrom(site, wall)
      const spots = readings.map(({ along, out, z }) => ({ x: along.value, y: out.value, z: z.value }))
      const judged = worstOf(gapsAmong(spots), table)
      const said = judged === undefined ? null : floorGap(readings, judged, basis)
      return judged === undefined || said === null ? [] : [{ wall, readings, judged, said }]
    })
    .sort((a, b) => past(b.judged) - past(a.judged) || (a.wall < b.wall ? -1 : 1))[0]
  if (worst === undefined) return []
  const { wall, readings, judged, said } = worst
  const middle = readings[judged.gap.at] as Reading
  const key = `floor.${judged.gap.gap > 0 ? 'hollow' : 'hump'}.${isFinished ? 'finished' : 'bare'}`
  return [
    {
      subjects: ['floor'],
      about: [wall],
      weight: 'warn',
      said: [key, { ...said, along: middle.along, out: middle.out, wall: site.name(wall) }],
      from: ['floor.finishToCome', 'survey.houseBuilt'],
      where: { wall, along: middle.along, height: middle.z },
      basis,
      ask: ['ask.floor'],
    },
  ]
}

/** What a straightedge showed on a wall, where somebody said how long it was. */
function walls(site: Site, { walls: tables, basis }: Flatness): readonly Found[] {
  return site.kitchen.walls.flatMap((wall): readonly Found[] => {
    const isFinished = wall.layersToCome.length === 0
    const table = isFinished ? tables.finished : tables.bare
    const worst = table === null ? undefined : worstOnWall(wall, table, basis)
    if (worst === undefined) return []
    const along = site.survey.along(wall.id, worst.reading.along)
    const key = `wall.${worst.isBelly ? 'belly' : 'hollow'}.${isFinished ? 'finished' : 'bare'}`
    return [
      {
        subjects: [wall.id],
        weight: 'warn',
        said: [key, { ...worst.said, along, wall: site.name(wall.id) }],
        from: [factId('walls', wall.id, 'layersToCome'), 'survey.houseBuilt'],
        where: { wall: wall.id, along, height: site.onFace(wall.id, along, worst.reading.height) },
        basis,
        ask: ['ask.wall'],
      },
    ]
  })
}

function worstOnWall(wall: Wall, table: GapTable, basis: Basis) {
  return wall.straightness
    .flatMap((reading) => {
      const { bow, over } = reading
      const limit = hasValue(over) ? permittedGap(table, over.value) : null
      if (!hasValue(bow) || limit === null) return []
      const gap = derive('mm', underEdge, [bow], (b = 0) => Math.abs(b))
      const said = saidOf(gap, over, limit, basis)
      return said === null ? [] : [{ reading, said, isBelly: bow.value < 0, by: Math.abs(bow.value) - limit }]
    })
    .sort((a, b) => b.by - a.by || (a.reading.id < b.reading.id ? -1 : 1))[0]
}

/** A floor or wall further out of flat than its builder may leave it: somebody else may have to put it right. */
export const rule: Rule = {
  id: 'out-of-flat',
  heading: 'Further out of flat than a builder may leave it',
  catches: ['F11', 'F47'],
  dangerous: false,
  basis: {
    kind: 'standard',
    source: 'DIN 18202; NHBC Standards 2020 in Britain',
    where: 'gap under a straightedge between two points',
  },
  why: 'What a builder has left further out than the tolerance is the builder’s to put right, and before the units stand on it.',
  words: {
    'floor.hollow.finished':
      'The floor is hollow {along} along {wall}, {out} out: {gap} under a straight line {span} long. The tolerance of a finished floor over that length is {limit}; it is {over} more. Whoever laid it may have to put it right, before the units come.',
    'floor.hump.finished':
      'The floor stands {gap} above a straight line {span} long, {along} along {wall} and {out} out. The tolerance of a finished floor over that length is {limit}; it is {over} more. Whoever laid it may have to put it right, before the units come.',
    'floor.hollow.bare':
      'The floor is hollow {along} along {wall}, {out} out: {gap} under a straight line {span} long. The tolerance even of a bare floor over that length is {limit}; it is {over} more. Whoever laid it may have to put it right, before the units come.',
    'floor.hump.bare':
      'The floor stands {gap} above a straight line {span} long, {along} along {wall} and {out} out. The tolerance even of a bare floor over that length is {limit}; it is {over} more. Whoever laid it may have to put it right, before the units come.',
    'wall.hollow.finished':
      '{wall} is hollow {along} along it: {gap} under a straightedge {span} long. The tolerance of a finished wall over that length is {limit}; it is {over} more. Whoever plastered it may have to put it right, before the units come.',
    'wall.belly.finished':
      '{wall} bellies out {along} along it: {gap} over a straightedge {span} long. The tolerance of a finished wall over that length is {limit}; it is {over} more. Whoever plastered it may have to put it right, before the units come.',
    'wall.hollow.bare':
      '{wall} is hollow {along} along it: {gap} under a straightedge {span} long. The tolerance even of a bare wall over that length is {limit}; it is {over} more. Whoever built it may have to put it right, before the units come.',
    'wall.belly.bare':
      '{wall} bellies out {along} along it: {gap} over a straightedge {span} long. The tolerance even of a bare wall over that length is {limit}; it is {over} more. Whoever built it may have to put it right, before the units come.',
    'ask.floor':
      'Lay a straightedge there and show it to whoever laid the floor. A builder answers for new work; in an old house it is yours to level, or to take up with legs and packing.',
    'ask.wall':
      'Lay the straightedge there again and show it to whoever plastered the wall. A builder answers for new work; in an old house it is yours to straighten, or to pack out.',
  },
  check: (site) => {
    const flatness = heldTo(site)
    return flatness === null ? [] : [...floors(site, flatness), ...walls(site, flatness)]
  },
}
