import { expect, test } from 'vitest'
import { THEN } from '../../../src/core/message'
import { say } from '../../../src/core/words/say'
import {
  at,
  brickWall,
  exact,
  type Json,
  plain,
  stud,
  studWall,
  up,
  wallFile,
  wallUnit,
  worked,
} from '../../support/fixed-wall'

const ids = (file: Json) => worked(file).fixings.holes.map((h) => h.id)
const findings = (file: Json) => worked(file).fixings.findings.map((f) => f.id)

// By hand. Underside 400, height 720: top 1120. Plate 40 below: edge 1080. Hole 10 below that: 1070.
// Unit from 600 to 1200, hangers 30 in: plates at 630 and 1170.
test('two plates, each centred on its hanger, at the height of the hook-on edge less the hole below it', () => {
  const { fixings } = worked(wallFile({ units: [wallUnit] }))
  expect(fixings.holes.map((h) => [h.id, plain(h.along), plain(h.height)])).toEqual([
    ['plate.w.left.1', 630, 1070],
    ['plate.w.right.1', 1170, 1070],
  ])
})

// Three holes 32 apart about 630: 598, 630, 662.
test('the holes of a plate are spread evenly about its centre', () => {
  const hanging = { ...(wallUnit['hanging'] as Json), plateHoles: 3, plateHolePitch: exact(32) }
  const { fixings } = worked(wallFile({ units: [{ ...wallUnit, hanging }] }))
  expect(fixings.holes.filter((h) => h.id.includes('left')).map((h) => plain(h.along))).toEqual([
    598, 630, 662,
  ])
})

test('a hole above the edge is told by a minus', () => {
  const hanging = { ...(wallUnit['hanging'] as Json), plateHoleBelow: exact(-15) }
  expect(plain(worked(wallFile({ units: [{ ...wallUnit, hanging }] })).hole('plate.w.left.1').height)).toBe(
    1095,
  )
})

test('how many holes a plate has is taken as one until its sheet is read, and marked', () => {
  const hanging = { ...(wallUnit['hanging'] as Json), plateHoles: null }
  const { hole, fixings } = worked(wallFile({ units: [{ ...wallUnit, hanging }] }))
  expect(hole('plate.w.left.1').along).toMatchObject({ state: 'assumed', value: 630 })
  expect(fixings.holding.get('w')?.pullPerFixing.state).toBe('assumed')
})

test.each(['plateBelowTop', 'plateHoleBelow', 'hangerIn'])(
  'without %s the holes have no place, and it is asked for',
  (key) => {
    const hanging = { ...(wallUnit['hanging'] as Json), [key]: null }
    const { hole, fixings } = worked(wallFile({ units: [{ ...wallUnit, hanging }] }))
    expect(hole('plate.w.left.1').verdict).toBe('ask')
    const asked = fixings.findings.find((f) => f.id === 'hardware-not-known:w')
    expect(asked?.from).toEqual([`units.w.hanging.${key}`])
    // What is typed is not said to be unknown.
    expect(asked?.say.key.split(THEN)).toEqual(['fixings.hardware-not-known', `fixings.hardware-open.${key}`])
  },
)

test('of hangers of which nothing is known all that is missing is named, and of a cleat not how far in they sit', () => {
  const said = (unit: Json, file = wallFile({ units: [unit] })) =>
    worked(file).fixings.findings.find((f) => f.id === `hardware-not-known:${String(unit['id'])}`)?.say
  const open = (keys: readonly string[]) => keys.map((key) => `fixings.hardware-open.${key}`)
  const plates = said({ ...wallUnit, hanging: {} })
  expect(plates?.key.split(THEN).slice(1)).toEqual(open(['plateBelowTop', 'plateHoleBelow', 'hangerIn']))
  expect(plates && say(plates)).toContain(
    'How far in from the side of the unit its hanger sits is not known.',
  )
  const cleat = said({ ...wallUnit, stands: 'cleat', hanging: {} })
  expect(cleat?.key.split(THEN).slice(1)).toEqual(open(['plateBelowTop', 'plateHoleBelow']))
})

test('a plate over a socket is a stop: plates cannot be moved', () => {
  const socket = { id: 's', kind: 'socket', along: at(630), height: up(0), width: exact(86), tall: exact(86) }
  const file = wallFile({ wall: { ...brickWall, accessories: [socket] }, units: [wallUnit] })
  const { hole, fixings } = worked(file)
  expect(hole('plate.w.left.1')).toMatchObject({
    verdict: 'refused',
    hitBands: ['accessory-vertical.a.s'],
    number: null,
  })
  expect(hole('plate.w.right.1').number).toBe(1)
  expect(fixings.findings.find((f) => f.id === 'hole-refused:plate.w.left.1')).toMatchObject({
    weight: 'stop',
    dangerous: true,
  })
})

test.each([576, 684])(
  'a plate hole 1 past the band of a socket at %i is asked about: the tape cannot tell',
  (socket) => {
    // 576 + 53 = 629 and 684 - 53 = 631: 1 from the hole at 630 on either side. The socket is taped to ± 2.
    const accessory = {
      id: 's',
      kind: 'socket',
      along: { at: { value: socket, pm: 2 } },
      height: up(0),
      width: exact(86),
      tall: exact(86),
    }
    const file = wallFile({ wall: { ...brickWall, accessories: [accessory] }, units: [wallUnit] })
    const { hole, fixings } = worked(file)
    expect(hole('plate.w.left.1').verdict).toBe('ask')
    const asked = fixings.findings.find((f) => f.id === 'hole-near-band:plate.w.left.1')
    expect(asked).toMatchObject({ weight: 'ask', dangerous: true })
    expect(asked?.about).toContain('accessory-vertical.a.s')
    expect(asked?.from).toContain('walls.a.accessories.s.along.at')
    expect(findings(file).filter((id) => id.startsWith('hole-near-band'))).toHaveLength(1)
  },
)

test('on a stud wall a plate between studs holds nothing, and timber is proposed behind it', () => {
  const file = wallFile({
    wall: { ...studWall, studs: [stud('s1', 800), stud('s2', 1000)] },
    units: [wallUnit],
  })
  const { hole, fixings } = worked(file)
  expect(hole('plate.w.left.1').verdict).toBe('refused')
  expect(fixings.neededNoggings.map((n) => [n.id, plain(n.height)])).toEqual([['nogging-w-plate', 1070]])
})

test('a plate on a stud, in its window, and over a pattress, hold', () => {
  const pattress = {
    id: 'p',
    kind: 'pattress',
    from: at(1100),
    to: at(1250),
    centre: up(1070),
    depth: exact(200),
  }
  const wall = { ...studWall, studs: [stud('s1', 636)], noggings: [pattress] }
  const { hole } = worked(wallFile({ wall, units: [wallUnit] }))
  expect(hole('plate.w.left.1')).toMatchObject({ stud: 's1', into: 'timber-stud' })
  expect(hole('plate.w.left.1').verdict).not.toBe('refused')
  expect(hole('plate.w.right.1')).toMatchObject({ stud: null, into: 'plywood' })
  expect(hole('plate.w.right.1').verdict).not.toBe('refused')
})

test('8 mm off the middle of a 38 mm stud is outside its window', () => {
  const wall = { ...studWall, studs: [stud('s1', 638)] }
  expect(worked(wallFile({ wall, units: [wallUnit] })).hole('plate.w.left.1').verdict).toBe('refused')
})

// Rails. Units 600 to 1200 and 1200 to 1800: rail 620 to 1780.
const onRail = (id: string, left: number): Json => ({
  ...wallUnit,
  id,
  order: { left: at(left) },
  stands: 'rail',
})
const twoUnits = [onRail('w1', 600), onRail('w2', 1200)]
const rail = (more: Json = {}): Json => ({
  id: 'r',
  wall: 'a',
  units: ['w1', 'w2'],
  thickness: exact(5),
  ...more,
})
const railFile = (wall: Json, more: Json = {}) =>
  wallFile({ wall, units: twoUnits, rest: { rails: [rail(more)] } })

test('a rail runs from 20 inside its leftmost unit to 20 inside its rightmost', () => {
  const [plan] = worked(railFile(brickWall)).fixings.rails
  expect([plan?.from, plan?.to, plan?.edge].map((f) => f && plain(f))).toEqual([620, 1780, 1080])
})

// 1160 long, less 50 at each end: 1060 over spans of 400 at most: 3 spans of 353.333.
test('on masonry its fixings are spread evenly, no further apart than 400 unless its maker says', () => {
  const { fixings } = worked(railFile(brickWall))
  expect(fixings.holes.map((h) => [h.id, plain(h.along)])).toEqual([
    ['rail.r.1', 670],
    ['rail.r.2', 1023.333],
    ['rail.r.3', 1376.667],
    ['rail.r.4', 1730],
  ])
  expect(
    worked(railFile(brickWall, { maxSpacing: exact(600) })).fixings.holes.map((h) => plain(h.along)),
  ).toEqual([670, 1200, 1730])
})

// A stud counts when its centre is 20 inside the rail's ends: 640 to 1760.
test('on a stud wall it is fixed at every usable stud well inside it', () => {
  const studs = [stud('s1', 639), stud('s2', 640), stud('s3', 1040), stud('s4', 1440), stud('s5', 1761)]
  const { fixings } = worked(railFile({ ...studWall, studs }))
  expect(fixings.rails[0]?.studs).toEqual(['s2', 's3', 's4'])
  expect(fixings.holes.filter((h) => h.purpose === 'rail').map((h) => h.id)).toEqual([
    'rail.r.s2',
    'rail.r.s3',
    'rail.r.s4',
  ])
})

test('studs too far apart for the maker are a stop, a long overhang a warning', () => {
  const studs = [stud('s1', 800), stud('s2', 1400)]
  const found = findings(railFile({ ...studWall, studs }, { maxSpacing: exact(599), overhang: exact(300) }))
  expect(found).toContain('rail-spacing:r')
  expect(found).toContain('rail-overhang:r')
  const fine = findings(railFile({ ...studWall, studs }, { maxSpacing: exact(600), overhang: exact(380) }))
  expect(fine).not.toContain('rail-spacing:r')
  expect(fine).not.toContain('rail-overhang:r')
})

// A plate of 300 at 1023: band 863 to 1183; the hole at 1023.333 may go 120 either way, to 903 or 1143: neither is free.
test('on masonry a fixing that is lost leaves too long a span: a stop against the maker, else asked about', () => {
  const wide = { id: 's', kind: 'socket', along: at(1023), height: up(0), width: exact(300), tall: exact(86) }
  const told = (more: Json) =>
    worked(railFile({ ...brickWall, accessories: [wide] }, more)).fixings.findings.find(
      (f) => f.id === 'rail-spacing:r',
    )
  expect(told({})?.weight).toBe('ask')
  expect(told({ maxSpacing: exact(400) })?.weight).toBe('stop')
})

test('a rail with one stud is a stop', () => {
  expect(findings(railFile({ ...studWall, studs: [stud('s1', 800)] }))).toContain('rail-spacing:r')
})

// A socket at 1023: band 970 to 1076 by hand. The hole at 1023.333 may go 60 to the right (1083.333) or the left (963.333).
test('on masonry a rail fixing in a band goes to both sides of it where one would span too far', () => {
  const socket = {
    id: 's',
    kind: 'socket',
    along: at(1023),
    height: up(0),
    width: exact(86),
    tall: exact(86),
  }
  const { fixings } = worked(railFile({ ...brickWall, accessories: [socket] }))
  const row = fixings.holes.map((h) => [h.id, plain(h.along), h.verdict === 'refused'])
  expect(row).toEqual([
    ['rail.r.1', 670, false],
    ['rail.r.2', 1023.333, true],
    ['rail.r.2-left', 963.333, false],
    ['rail.r.2-right', 1083.333, false],
    ['rail.r.3', 1376.667, false],
    ['rail.r.4', 1730, false],
  ])
})

// A plate of 186 at 705: band 602 to 808. The hole at 670 would be free at 600, and the rail begins at 620.
test('a rail fixing does not go past the end of its rail', () => {
  const socket = {
    id: 's',
    kind: 'socket',
    along: at(705),
    height: up(0),
    width: exact(186),
    tall: exact(86),
  }
  const { fixings } = worked(railFile({ ...brickWall, accessories: [socket] }))
  expect(fixings.holes.map(({ id }) => id)).toEqual(['rail.r.1', 'rail.r.2', 'rail.r.3', 'rail.r.4'])
})

test.each([
  [41, false],
  [41.1, true],
])('one edge 40 below the top, the next %d: a stop is %s', (plateBelowTop, isStop) => {
  const hanging = { ...(wallUnit['hanging'] as Json), plateBelowTop: exact(plateBelowTop) }
  const lower = { ...onRail('w2', 1200), hanging }
  const file = wallFile({ units: [onRail('w1', 600), lower], rest: { rails: [rail()] } })
  expect(findings(file).includes('rail-edges-differ:r')).toBe(isStop)
})

test('a unit that hangs on a rail nobody listed is asked about', () => {
  expect(findings(wallFile({ units: [onRail('w1', 600)] }))).toContain('hardware-not-known:w1')
  expect(ids(wallFile({ units: [onRail('w1', 600)] }))).toEqual([])
})

// A cleat runs 20 inside its own unit, 620 to 1180; studs count from 640 to 1160.
test('a cleat is fixed like a rail of its own', () => {
  const unit = { ...wallUnit, stands: 'cleat', backRail: { thickness: exact(18) } }
  const studs = [stud('s0', 639), stud('s1', 640), stud('s2', 1160), stud('s3', 1161)]
  expect(
    ids(wallFile({ wall: { ...studWall, studs }, units: [unit] })).filter((id) => id.startsWith('cleat')),
  ).toEqual(['cleat.w.s1', 'cleat.w.s2'])
  expect(findings(wallFile({ wall: { ...studWall, studs: [stud('s1', 700)] }, units: [unit] }))).toContain(
    'cleat-needs-timber:w',
  )
})
