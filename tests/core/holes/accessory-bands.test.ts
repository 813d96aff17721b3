import { expect, test } from 'vitest'
import { at, brickWall, exact, type Json, up, wallFile, wallUnit, worked } from '../../support/fixed-wall'

// Worked by hand. A plate 86 × 86 at 1200 along and 300 down from the line, drill margin 10:
//   upright: 1200 ± (43 + 10) = 1147 to 1253; level: −300 ± 53 = −353 to −247.
// On the other face, read there from its left end at 800, wall 3000, faces in line: 3000 + 0 − 800 = 2200 on this face:
//   upright: 2147 to 2253.
const socket = (more: Json = {}): Json => ({
  id: 's',
  kind: 'socket',
  along: at(1200),
  height: { down: exact(300) },
  width: exact(86),
  tall: exact(86),
  ...more,
})
const onWall = (accessory: Json, wall: Json = {}) =>
  worked(wallFile({ wall: { ...brickWall, accessories: [accessory], ...wall }, units: [wallUnit] })).bands
const overThere = { face: 'other', along: { at: exact(800), face: 'other' } }
const edges = (bands: ReturnType<typeof onWall>['bands'], id: string) => {
  const band = bands.find((b) => b.id === id)
  return band === undefined ? undefined : [band.left, band.right, band.bottom, band.top]
}

test('a socket makes an upright band as wide as its plate and a margin, and a level one as tall', () => {
  const { bands } = onWall(socket())
  expect(edges(bands, 'accessory-vertical.a.s')).toEqual([1147, 1253, null, null])
  expect(edges(bands, 'accessory-horizontal.a.s')).toEqual([null, null, -353, -247])
})

test('each band cites the place and the size of its accessory', () => {
  const { bands } = onWall(socket())
  const upright = bands.find((b) => b.id === 'accessory-vertical.a.s')
  const level = bands.find((b) => b.id === 'accessory-horizontal.a.s')
  expect(upright?.from).toEqual(
    expect.arrayContaining(['walls.a.accessories.s.along.at', 'walls.a.accessories.s.width']),
  )
  expect(level?.from).toEqual(
    expect.arrayContaining(['walls.a.accessories.s.height.down', 'walls.a.accessories.s.tall']),
  )
})

test('its edges are only as sure as the readings: place, and half the size', () => {
  const { bands } = onWall(socket({ along: { at: { value: 1200, pm: 2 } }, width: { value: 86, pm: 1 } }))
  expect(bands.find((b) => b.id === 'accessory-vertical.a.s')?.pm).toBe(2.5)
})

test.each([
  ['100 thick', exact(100), true],
  ['thickness not known', null, true],
  ['101 ± 2 thick, perhaps 99', { value: 101, pm: 2 }, true],
  ['101 thick', exact(101), false],
])('a socket on the other face counts here, mirrored: %s', (_, thickness, counts) => {
  const worked = onWall(socket(overThere), { thickness, layers: [], otherFaceShift: exact(0) })
  expect(edges(worked.bands, 'accessory-vertical.a.s')).toEqual(counts ? [2147, 2253, null, null] : undefined)
  expect(edges(worked.deep, 'accessory-vertical.a.s')).toEqual(counts ? undefined : [2147, 2253, null, null])
})

test('an unsized accessory is drawn 150 wide and asked about', () => {
  const { bands, findings } = onWall(socket({ width: null }))
  const band = bands.find((b) => b.id === 'accessory-vertical.a.s')
  expect([band?.left, band?.right]).toEqual([1125, 1275])
  expect(band?.unknownBecause).toEqual(['walls.a.accessories.s.width'])
  expect(findings.map((f) => [f.id, f.weight, f.dangerous])).toEqual([['band-unknown:a.s', 'ask', true]])
})

test('an accessory of unknown place has bands that say what would place them', () => {
  const { bands } = onWall(socket({ along: { at: null } }))
  const band = bands.find((b) => b.id === 'accessory-vertical.a.s')
  expect([band?.left, band?.right]).toEqual([null, null])
  expect(band?.unknownBecause).toEqual(['walls.a.accessories.s.along.at'])
})

test('on the other face, but measured on this one: drawn as given, and asked about', () => {
  const { bands, findings } = onWall(socket({ face: 'other', along: at(800) }), {
    thickness: exact(100),
    layers: [],
  })
  const band = bands.find((b) => b.id === 'accessory-vertical.a.s')
  expect([band?.left, band?.right]).toEqual([747, 853])
  expect(band?.unknownBecause).toEqual(['walls.a.accessories.s.along.face'])
  expect(findings.map((f) => f.id)).toEqual(['band-unknown:a.s'])
})

test('a region without cable bands has none from accessories', () => {
  const file = wallFile({
    wall: { ...brickWall, accessories: [socket()] },
    rest: { region: 'north-america' },
  })
  expect(worked(file).bands.bands).toEqual([])
})

test('heights of an accessory may be given up from the line', () => {
  const { bands } = onWall(socket({ height: up(150) }))
  expect(edges(bands, 'accessory-horizontal.a.s')).toEqual([null, null, 97, 203])
})
