import { expect, test } from 'vitest'
import { type Figure, known, unknown } from '../../../src/core/figure'
import { judgeHole } from '../../../src/core/holes/judge'
import { likelyLintels, openingsOn } from '../../../src/core/holes/lintels'
import { at, brickWall, exact, type Json, up, wallFile, wallUnit, worked } from '../../support/fixed-wall'

const mm = (value: number, pm = 0): Figure => known(value, pm, 'mm', ['typed'])

interface Try {
  readonly along?: Figure
  readonly height?: Figure
  readonly depth?: Figure
  readonly wall?: Json
  readonly rest?: Json
  readonly purpose?: 'plate' | 'base-bracket'
}

function judge({
  along = mm(1000),
  height = mm(0),
  depth = mm(40),
  wall = {},
  rest = {},
  purpose = 'plate',
}: Try) {
  const { kitchen, bands, survey, region } = worked(
    wallFile({ wall: { ...brickWall, ...wall }, units: [wallUnit], rest }),
  )
  const its = kitchen.walls[0]
  if (its === undefined) throw new Error('no wall')
  return judgeHole(
    { purpose, along, height, depth, beforeStud: null, objections: [] },
    {
      wall: its,
      region,
      bands: bands.bands,
      deep: bands.deep,
      openings: openingsOn(its, survey),
      likelyLintels: likelyLintels(its, survey),
    },
  )
}
const keys = (judged: ReturnType<typeof judge>) => judged.against.map((m) => m.key)

const socket = {
  id: 's',
  kind: 'socket',
  along: at(1200),
  height: up(500),
  width: exact(86),
  tall: exact(86),
}
const withSocket = { accessories: [socket] }

test('nothing known against it is only: trace first', () => {
  expect(judge({})).toMatchObject({ verdict: 'trace first', against: [], hitBands: [] })
})

// The band of a plate of 86 at 1200 with its margin is 1147 to 1253.
test.each([
  [1146.9, 0, 'trace first'],
  [1147, 0, 'refused'],
  [1200, 0, 'refused'],
  [1253, 0, 'refused'],
  [1253.1, 0, 'trace first'],
  [1253.5, 1, 'ask'],
  [1254.5, 1, 'trace first'],
])('at %d ± %d beside a band that ends at 1253: %s', (along, pm, verdict) => {
  expect(judge({ along: mm(along, pm), wall: withSocket }).verdict).toBe(verdict)
})

test('an upright band takes the full height of the wall, a level one its full length', () => {
  expect(judge({ along: mm(1200), height: mm(-900), wall: withSocket }).hitBands).toEqual([
    'accessory-vertical.a.s',
  ])
  expect(judge({ along: mm(2600), height: mm(500), wall: withSocket }).hitBands).toEqual([
    'accessory-horizontal.a.s',
  ])
})

test('off both bands, slantwise from the socket, it is still no better than trace first', () => {
  expect(judge({ along: mm(1400), height: mm(700), wall: withSocket }).verdict).toBe('trace first')
})

test('an accessory of unknown place holds up every hole on its wall', () => {
  const judged = judge({ along: mm(2000), wall: { accessories: [{ ...socket, along: { at: null } }] } })
  expect([judged.verdict, keys(judged)]).toEqual(['ask', ['holes.band-not-placed']])
})

test('within the drawn band of an accessory without a size it is refused', () => {
  expect(judge({ along: mm(1270), wall: { accessories: [{ ...socket, width: null }] } }).verdict).toBe(
    'refused',
  )
})

test('in the strip beside a corner and under the ceiling it is refused', () => {
  expect(keys(judge({ along: mm(150) }))).toEqual(['holes.in-corner'])
  expect(keys(judge({ height: mm(1350) }))).toEqual(['holes.in-ceiling'])
})

test('a ceiling nobody has read holds up a top hole, not the bracket of a base unit', () => {
  const rest = { ceiling: [] }
  expect(judge({ rest }).verdict).toBe('ask')
  expect(judge({ rest, purpose: 'base-bracket' }).verdict).toBe('trace first')
})

// The lintel 1000 to 2200 bears 150 at both ends: 850 to 2350, between 1000 and 1150 up.
const lintel = (kind: string | null) => ({
  lintels: [{ id: 'l', kind, left: at(1000), right: at(2200), bottom: up(1000), top: up(1150) }],
})
test.each([
  [850, 1100, 'steel', 'refused'],
  [2350, 1000, 'prestressed', 'refused'],
  [1500, 1150, null, 'refused'],
  [1500, 1100, 'concrete', 'ask'],
  [1500, 1100, 'timber', 'ask'],
  [849, 1100, 'steel', 'trace first'],
  [1500, 1151, 'steel', 'trace first'],
])('over a lintel, at %d along and %d up, of %s: %s', (along, height, kind, verdict) => {
  expect(judge({ along: mm(along), height: mm(height), wall: lintel(kind) }).verdict).toBe(verdict)
})

// In a framed wall it stands on studs or a post beside the opening: 900 to 2300.
test.each([
  [900, 'ask'],
  [899, 'trace first'],
  [2300, 'ask'],
  [2301, 'trace first'],
])('beside a lintel of a stud wall, at %d: %s', (along, verdict) => {
  const wall = { ...lintel('timber'), construction: 'timber-stud' }
  expect(judge({ along: mm(along), height: mm(1100), wall }).verdict).toBe(verdict)
})

const window = {
  id: 'win',
  kind: 'window',
  left: at(1000),
  right: at(2200),
  bottom: up(0),
  top: up(1000),
  boardLeft: {},
  boardRight: {},
}
test('a hole in a window is refused; over it something must carry the wall, entered or not', () => {
  const wall = { openings: [window] }
  expect(keys(judge({ along: mm(1500), height: mm(500), wall }))).toEqual(['holes.in-opening'])
  expect(keys(judge({ along: mm(900), height: mm(1200), wall }))).toEqual(['holes.over-opening'])
  expect(judge({ along: mm(1500), height: mm(1310), wall }).verdict).toBe('trace first')
  expect(keys(judge({ along: mm(1500), height: mm(1200), wall: { ...wall, ...lintel('steel') } }))).toEqual(
    [],
  )
})

// 50 mm from the face is the line; the precision counts against the hole.
test.each([
  [50, 0, false],
  [50, 1, true],
  [49, 1, false],
  [50.1, 0, true],
])('%d ± %d deep is past 50: %s', (depth, pm, past) => {
  const judged = judge({ depth: mm(depth, pm) })
  expect([judged.verdict, judged.pastDepth]).toEqual([past ? 'ask' : 'trace first', past])
})

test.each([
  ['traced through and proved dead', { tracedDepth: exact(60), provedDead: true }, 'trace first'],
  ['not proved dead', { tracedDepth: exact(60) }, 'ask'],
  ['traced less deep', { tracedDepth: exact(59), provedDead: true }, 'ask'],
  ['traced only in part', { traced: 'part', tracedDepth: exact(60), provedDead: true }, 'ask'],
])('60 deep, %s', (_, wall, verdict) => {
  expect(judge({ depth: mm(60), wall }).verdict).toBe(verdict)
})

test('a depth that is not known is asked about', () => {
  expect(keys(judge({ depth: unknown('mm', ['walls.a.layers']) }))).toEqual(['holes.depth-unknown'])
})

// The wall is 225: 176 deep leaves 49, nearer than 50 to the other face, where a socket stands at 1200 on this face.
test('a tip near the other face of a thick wall meets the bands of what is on it', () => {
  const wall = {
    accessories: [{ ...socket, face: 'other', along: { at: exact(1800), face: 'other' } }],
    otherFaceShift: exact(0),
    tracedDepth: exact(200),
    provedDead: true,
  }
  expect(judge({ along: mm(1200), depth: mm(176), wall }).hitBands).toEqual(['accessory-vertical.a.s'])
  expect(judge({ along: mm(1200), depth: mm(174), wall }).verdict).toBe('trace first')
})

test.each([
  ['a room behind, nobody has looked', { behind: 'room', thickness: exact(100), layers: [] }, 'ask'],
  ['not known what is behind', { behind: null, thickness: exact(100), layers: [] }, 'ask'],
  ['looked at', { behind: 'room', thickness: exact(100), layers: [], otherFaceChecked: true }, 'trace first'],
  ['known to be thick', { behind: 'room', thickness: exact(101), layers: [] }, 'trace first'],
  ['thickness not known', { behind: 'room', thickness: null }, 'ask'],
])('the other face: %s', (_, wall, verdict) => {
  expect(judge({ wall }).verdict).toBe(verdict)
})

test('without a country nothing can be told of bands', () => {
  expect(keys(judge({ rest: { region: null } }))).toEqual(['holes.region-not-chosen'])
})

test('a place that is not known cannot be judged', () => {
  expect(keys(judge({ along: unknown('mm', ['x']) }))).toEqual(['holes.place-unknown'])
})

test('a hole of which only one position is known is refused where the band takes up all the other may be', () => {
  const nowhere = { state: 'unknown', unit: 'mm', missing: ['units.w.hanging.plateHoleBelow'] } as never
  // Over the socket, at whatever height: the hook-on edge of the plate need not be known for that.
  const over = judge({ wall: withSocket, along: mm(1200), height: nowhere })
  expect(over.verdict).toBe('refused')
  expect(keys(over)).toContain('holes.in-accessory-vertical')
  expect(judge({ wall: withSocket, along: mm(1300), height: nowhere }).verdict).toBe('ask')
  expect(judge({ wall: withSocket, along: nowhere, height: up500() }).verdict).toBe('refused')
  expect(judge({ wall: withSocket, along: nowhere, height: nowhere }).verdict).toBe('ask')
})

test('past the end of its wall a hole is refused, at whatever height', () => {
  const nowhere = { state: 'unknown', unit: 'mm', missing: ['units.w.hanging.plateHoleBelow'] } as never
  for (const along of [mm(-1), mm(100_000)]) {
    expect(judge({ along }).verdict).toBe('refused')
    expect(keys(judge({ along, height: nowhere }))).toContain('holes.off-the-wall')
  }
})
const up500 = (): Figure => mm(500)
