import { expect, test } from 'vitest'
import { at, brickWall, exact, type Json, up, wallFile, wallUnit, worked } from '../../support/fixed-wall'

const point = (id: string, along: number, height: number): Json => ({
  id,
  along: at(along),
  height: up(height),
})
const pipe = (more: Json = {}): Json => ({
  id: 'p',
  kind: 'water-cold',
  points: [point('1', 1000, -900), point('2', 1000, 200), point('3', 1600, 200)],
  width: exact(22),
  traced: 'seen',
  ...more,
})
const bands = (service: Json) =>
  worked(wallFile({ wall: { ...brickWall, services: [service] }, units: [wallUnit] })).bands
const edges = (service: Json) =>
  bands(service)
    .bands.filter((b) => b.kind === 'service')
    .map((b) => [b.id, b.left, b.right, b.bottom, b.top])

// By hand: half of 22 and 25 round each leg is 36; where it is only guessed, 61.
test('each leg of a known pipe has its width and 25 mm round it', () => {
  expect(edges(pipe())).toEqual([
    ['service.a.p.1-2', 964, 1036, -936, 236],
    ['service.a.p.2-3', 964, 1636, 164, 236],
  ])
})

test.each([['guessed'], [null]])('a path that is %s has 50 mm round it', (traced) => {
  expect(edges(pipe({ traced }))[1]).toEqual(['service.a.p.2-3', 939, 1661, 139, 261])
})

test('one whose width is not known is drawn 50 wide', () => {
  expect(edges(pipe({ width: null }))[0]).toEqual(['service.a.p.1-2', 950, 1050, -950, 250])
})

test('a slanting leg takes the rectangle it slants across', () => {
  const slant = pipe({ points: [point('1', 1000, 300), point('2', 1500, 0)] })
  expect(edges(slant)).toEqual([['service.a.p.1-2', 964, 1536, -36, 336]])
})

test('a single point is a square round it', () => {
  expect(edges(pipe({ points: [point('1', 1000, 0)] }))).toEqual([['service.a.p.1', 964, 1036, -36, 36]])
})

test.each([
  ['no points at all', { points: [] }, 'walls.a.services.p.points'],
  [
    'a point without a place',
    { points: [{ id: '1', along: { at: null }, height: up(0) }] },
    'walls.a.services.p.points.1.along.at',
  ],
  ['no width', { width: null }, 'walls.a.services.p.width'],
])('%s: asked about, and every hole on the wall waits', (_, more, fact) => {
  const { bands: all, findings } = bands(pipe(more))
  expect(all.filter((b) => b.kind === 'service').every((b) => b.unknownBecause.includes(fact))).toBe(true)
  expect(findings.map((f) => f.id)).toEqual(['band-unknown:a.p'])
})
