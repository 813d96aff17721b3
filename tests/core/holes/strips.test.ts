import { expect, test } from 'vitest'
import { at, brickWall, exact, type Json, up, wallFile, wallUnit, worked } from '../../support/fixed-wall'

const bandsOf = (file: Json) => worked(file).bands.bands.map((b) => [b.id, b.left, b.right, b.bottom, b.top])
const corners = (file: Json) => bandsOf(file).filter(([id]) => String(id).startsWith('corner'))
const wallAB = (angle: unknown, more: Json = {}): Json =>
  wallFile({
    rest: {
      walls: [
        { ...brickWall, cornerRight: { angle } },
        { ...brickWall, id: 'b', length: exact(2000) },
      ],
      ...more,
    },
  })

// By hand: 150 from each end; wall a is 3000 long, so 2850 to 3000 at its right.
test('150 mm beside each corner, on both walls of it', () => {
  expect(corners(wallAB({ value: 90, pm: 0 }))).toEqual([
    ['corner.a.left', 0, 150, null, null],
    ['corner.a.right', 2850, 3000, null, null],
    ['corner.b.left', 0, 150, null, null],
    ['corner.b.right', 1850, 2000, null, null],
  ])
})

test.each([
  ['270° is no inside corner', { value: 270, pm: 0 }, false],
  ['180° is none either', { value: 180, pm: 0 }, false],
  ['179.9° is', { value: 179.9, pm: 0 }, true],
  ['180 ± 1° may be', { value: 180, pm: 1 }, true],
  ['not known: taken for one', null, true],
])('%s', (_, angle, isCorner) => {
  const ids = corners(wallAB(angle)).map(([id]) => id)
  expect(ids.includes('corner.a.right')).toBe(isCorner)
  expect(ids.includes('corner.b.left')).toBe(isCorner)
})

test('a strip cites the angle and the length it rests on', () => {
  const { bands } = worked(wallAB({ value: 90, pm: 0 })).bands
  expect(bands.find((b) => b.id === 'corner.a.right')?.from).toEqual([
    'walls.a.cornerRight.angle',
    'walls.a.length',
  ])
})

test('150 mm under the ceiling: at 1500 up, the strip starts at 1350', () => {
  const strips = bandsOf(wallFile({})).filter(([id]) => String(id).startsWith('ceiling'))
  expect(strips).toEqual([['ceiling.a', null, null, 1350, null]])
})

test('a ceiling nobody has read leaves the strip without a place, and asks where wall units hang', () => {
  const { bands, findings } = worked(wallFile({ units: [wallUnit], rest: { ceiling: [] } })).bands
  expect(bands.find((b) => b.kind === 'ceiling')).toMatchObject({ bottom: null, unknownBecause: ['ceiling'] })
  expect(findings.map((f) => f.id)).toEqual(['band-unknown:a.ceiling'])
})

test('under a ceiling that slopes along the wall the strip goes with it', () => {
  // Readings at both ends and in the middle of a 3 m wall, 1500, 1800 and 2100 up, in two rows, so that triangles form.
  const ceiling = [0, 1500, 3000].flatMap((along, i) =>
    [0, 600].map((out) => ({
      id: `c${along}-${out}`,
      at: { wall: 'a', along: at(along), out: exact(out) },
      height: up(1500 + 300 * i),
    })),
  )
  const strips = bandsOf(wallFile({ rest: { ceiling } })).filter(([id]) => String(id).startsWith('ceiling'))
  expect(strips.length).toBeGreaterThan(1)
  expect(strips[0]?.[3]).toBe(1350)
  // The last piece begins at 2000 along, where the ceiling is 1500 + 0.2 x 2000 = 1900 up.
  expect(strips[strips.length - 1]?.[3]).toBe(1750)
})

// German practice, by hand: floor 1000 below the line everywhere: −850 to −550, and 0 to 300; 450 under 1500: 1050.
// A window 1000 to 2000: 700 to 900 on its left, 2100 to 2300 on its right.
test('a region that lays bands down at set heights and beside openings has those too', () => {
  const readings = [0, 1500, 3000].flatMap((along) =>
    [0, 600].map((out) => ({
      id: `f${along}-${out}`,
      at: { wall: 'a', along: at(along), out: exact(out) },
      drop: exact(1000),
    })),
  )
  const window = {
    id: 'win',
    kind: 'window',
    left: at(1000),
    right: at(2000),
    bottom: up(0),
    top: up(1200),
    boardLeft: {},
    boardRight: {},
  }
  const found = bandsOf(
    wallFile({
      wall: { ...brickWall, openings: [window] },
      rest: { region: 'continental', floor: { readings } },
    }),
  )
  expect(found).toContainEqual(['zone.a.floor-150', null, null, -850, -550])
  expect(found).toContainEqual(['zone.a.floor-1000', null, null, 0, 300])
  expect(found).toContainEqual(['ceiling.a', null, null, 1050, null])
  expect(found).toContainEqual(['zone.a.win-left', 700, 900, null, null])
  expect(found).toContainEqual(['zone.a.win-right', 2100, 2300, null, null])
  expect(found).toContainEqual(['corner.a.left', 0, 300, null, null])
})
