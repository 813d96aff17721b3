import { expect, test } from 'vitest'
import {
  at,
  baseUnit,
  brickWall,
  exact,
  type Json,
  plain,
  stud,
  studWall,
  tallUnit,
  up,
  wallFile,
  wallUnit,
  worked,
} from '../../support/fixed-wall'

const places = (file: Json, purpose: string) =>
  worked(file)
    .fixings.holes.filter((h) => h.purpose === purpose)
    .map((h) => [h.id, plain(h.along), plain(h.height), h.verdict === 'refused'])
const findings = (file: Json) => worked(file).fixings.findings.map((f) => f.id)
const onStuds = (studs: readonly Json[], unit: Json, more: Json = {}) =>
  wallFile({ wall: { ...studWall, studs, ...more }, units: [unit] })
const socketAt = (along: number): Json => ({
  accessories: [
    { id: 's', kind: 'socket', along: at(along), height: up(-1200), width: exact(86), tall: exact(86) },
  ],
})

// Second fixings, by hand. Unit 600 to 1200, panels 18: studs count from 630 to 1170. The lower rail is 100 high on an
// underside at 400: its middle is at 450.
test('second fixings go to the leftmost and the rightmost stud whose centre lies within the unit', () => {
  const studs = [stud('s0', 629), stud('s1', 630), stud('s2', 900), stud('s3', 1170), stud('s4', 1171)]
  expect(places(onStuds(studs, wallUnit), 'second-fixing')).toEqual([
    ['second.w.s1', 630, 450, false],
    ['second.w.s3', 1170, 450, false],
  ])
})

// The stud at 1180 reaches from 1161 to 1199: its edge lies inside the unit, its middle does not.
test('a stud the unit only overlaps does not count, and one is not enough', () => {
  const { fixings } = worked(onStuds([stud('s1', 700), stud('s2', 1180)], wallUnit))
  expect(fixings.holes.filter((h) => h.purpose === 'second-fixing').map((h) => h.id)).toEqual(['second.w.s1'])
  const lacking = fixings.findings.find((f) => f.id === 'second-fixing-needs-timber:w')
  expect(lacking).toMatchObject({ weight: 'stop', dangerous: true })
  expect(
    fixings.neededNoggings.map((n) => [n.id, n.wall, plain(n.from), plain(n.to), plain(n.height)]),
  ).toContainEqual(['nogging-w-second-fixing', 'a', 600, 1200, 450])
})

// A stud of 38 takes a screw within 7 of its middle. From 1166 to 1170 there are just the 4 mm that a pilot is struck to.
test('a stud beside the panel takes the second one where there are 4 mm of it to aim at', () => {
  const beside = (centre: number) => onStuds([stud('s1', 700), stud('s2', centre)], wallUnit)
  expect(places(beside(1173), 'second-fixing')).toEqual([
    ['second.w.s1', 700, 450, false],
    ['second.w.s2', 1168, 450, false],
  ])
  expect(findings(beside(1173))).not.toContain('second-fixing-needs-timber:w')
  expect(places(beside(1173.1), 'second-fixing')).toEqual([['second.w.s1', 700, 450, false]])
  expect(findings(beside(1173.1))).toContain('second-fixing-needs-timber:w')
})

test('it is asked about where its place is not known to 2 mm, and passed over where two others are met in the middle', () => {
  const read = (pm: number) => ({ ...stud('s2', 1173), centre: { at: { value: 1173, pm } } })
  const verdict = (pm: number) =>
    worked(onStuds([stud('s1', 700), read(pm)], wallUnit)).fixings.holes.find((h) => h.id === 'second.w.s2')
      ?.verdict
  expect([verdict(2), verdict(2.1)]).toEqual(['trace first', 'ask'])
  const three = onStuds([stud('s1', 700), stud('s3', 1000), stud('s2', 1173)], wallUnit)
  expect(places(three, 'second-fixing').map(([id]) => id)).toEqual(['second.w.s1', 'second.w.s3'])
})

// 300 wide, 800 to 1100, panels 18: from 830 to 1070; studs at 600 centres at 600 and 1200.
test('a unit of 300 between studs has none', () => {
  const narrow = { ...wallUnit, order: { left: at(800) }, width: exact(300) }
  const file = onStuds([stud('s1', 600), stud('s2', 1200)], narrow)
  expect(places(file, 'second-fixing')).toEqual([])
  expect(findings(file)).toContain('second-fixing-needs-timber:w')
})

test('supposed, steel and unmeasured studs do not hold it', () => {
  const studs = [
    stud('s1', 700, { confirmed: 'one-beep' }),
    stud('s2', 900, { material: 'steel' }),
    stud('s3', 1100, { centre: { at: null } }),
  ]
  expect(places(onStuds(studs, wallUnit), 'second-fixing')).toEqual([])
  expect(findings(onStuds(studs, wallUnit))).toEqual(
    expect.arrayContaining([
      'stud-not-confirmed:a.s1',
      'stud-not-confirmed:a.s3',
      'second-fixing-needs-timber:w',
    ]),
  )
})

// Points over a nogging: 600 + 18 + 60 = 678 and 1200 − 78 = 1122. It lies at 450 ± 30; nearer than 12 to its edge is not
// sure to hold.
const nogging = (more: Json = {}): Json => ({
  noggings: [
    { id: 'n', kind: 'nogging', from: at(600), to: at(1200), centre: up(450), depth: exact(60), ...more },
  ],
})
test('where studs do not give two, a nogging at that height takes the rest', () => {
  expect(places(onStuds([], wallUnit, nogging()), 'second-fixing')).toEqual([
    ['second.w.n-1', 678, 450, false],
    ['second.w.n-2', 1122, 450, false],
  ])
  expect(places(onStuds([stud('s1', 700)], wallUnit, nogging()), 'second-fixing')).toEqual([
    ['second.w.s1', 700, 450, false],
    ['second.w.n-1', 1122, 450, false],
  ])
  expect(findings(onStuds([], wallUnit, nogging()))).not.toContain('second-fixing-needs-timber:w')
})

test.each([
  ['30 off its middle', { centre: up(420) }, 2],
  ['30.1 off its middle', { centre: up(419.9) }, 0],
  ['ending short of both points', { from: at(700), to: at(1100) }, 0],
  ['under the right point only', { from: at(1100) }, 1],
  ['with no height', { centre: {} }, 0],
])('a nogging %s', (_, more, count) => {
  expect(places(onStuds([], wallUnit, nogging(more)), 'second-fixing')).toHaveLength(count)
})

test.each([
  [432, 'trace first'],
  [431, 'ask'],
])('a nogging whose middle is at %d, the screw at 450: %s', (middle, verdict) => {
  const { hole } = worked(onStuds([], wallUnit, nogging({ centre: up(middle) })))
  expect(hole('second.w.n-1').verdict).toBe(verdict)
})

// The left point is at 678: a stud 60 from it leaves it free, one 59 from it does not.
test.each([
  [738, 2],
  [737, 1],
])('with a stud at %d a nogging under the left point gives %d in all', (at738, count) => {
  const file = onStuds([stud('s1', at738)], wallUnit, nogging({ to: at(800) }))
  expect(places(file, 'second-fixing')).toHaveLength(count)
})

// The band of a socket at 700 is 647 to 753; the stud at 760 is clear of it.
test('a stud in a band is passed over for the next inwards, and stays listed as refused', () => {
  const studs = [stud('s1', 700), stud('s2', 760), stud('s3', 1100)]
  expect(places(onStuds(studs, wallUnit, socketAt(700)), 'second-fixing')).toEqual([
    ['second.w.s2', 760, 450, false],
    ['second.w.s3', 1100, 450, false],
    ['second.w.s1.refused', 700, 450, true],
  ])
})

test('passed over with another left it is a note; with too few left it is what stops the work', () => {
  const refused = (...studs: readonly Json[]) =>
    worked(onStuds(studs, wallUnit, socketAt(700))).fixings.findings.find(
      ({ id }) => id === 'hole-refused:second.w.s1.refused',
    )
  expect(refused(stud('s1', 700), stud('s2', 760), stud('s3', 1100))).toMatchObject({ weight: 'note' })
  const missing = refused(stud('s1', 700), stud('s3', 1100))
  expect(missing).toMatchObject({
    weight: 'stop',
    dangerous: true,
    say: { key: expect.stringMatching(/^holes\.hole-refused \+ /) },
  })
})

test('masonry needs no second fixings', () => {
  expect(places(wallFile({ units: [wallUnit] }), 'second-fixing')).toEqual([])
})

// Base: underside −850, 720 high: top −130, bracket 40 below at −170. Along 600 + 18 + 30 = 648 and 1200 − 48 = 1152.
test('base brackets in masonry: 30 in from the panels, 40 below the top', () => {
  expect(places(wallFile({ units: [baseUnit] }), 'base-bracket')).toEqual([
    ['base-bracket.b.left', 648, -170, false],
    ['base-bracket.b.right', 1152, -170, false],
  ])
})

test('at the middle of the back rail where it has one', () => {
  const unit = { ...baseUnit, backRail: { fromTop: exact(20), height: exact(100) } }
  expect(places(wallFile({ units: [unit] }), 'base-bracket')[0]?.[2]).toBe(-200)
})

// Socket at 640: band 587 to 693. 648 is in it; 658, 668, 678, 688 too; 698 is clear.
test('a bracket in a band moves inwards to the first free place; the first choice stays, refused', () => {
  const file = wallFile({ wall: { ...brickWall, ...socketAt(640) }, units: [baseUnit] })
  expect(places(file, 'base-bracket')).toEqual([
    ['base-bracket.b.left', 698, -170, false],
    ['base-bracket.b.left.refused', 648, -170, true],
    ['base-bracket.b.right', 1152, -170, false],
  ])
  const told = worked(file).fixings.findings.filter((f) => f.rule === 'hole-refused')
  expect(told.map((f) => [f.id, f.weight])).toEqual([['hole-refused:base-bracket.b.left.refused', 'note']])
})

// A plate of 114 at 700: band 633 to 767; 648 + 120 = 768 is out of it. Of 116: to 768, which is in it.
test.each([
  [114, 768],
  [116, 648],
])('it moves up to 120: past a plate of %d it goes to %d', (width, along) => {
  const wide = { ...(socketAt(700)['accessories'] as readonly Json[])[0], width: exact(width) }
  const file = wallFile({ wall: { ...brickWall, accessories: [wide] }, units: [baseUnit] })
  expect(places(file, 'base-bracket')[0]?.[1]).toBe(along)
})

// A plate of 400 at 700: band 490 to 910. 648 + 120 = 768 is still in it.
test('where 120 does not get it clear it stays, refused, and the other side holds', () => {
  const wide = { ...(socketAt(700)['accessories'] as readonly Json[])[0], width: exact(400) }
  const file = wallFile({ wall: { ...brickWall, accessories: [wide] }, units: [baseUnit] })
  expect(places(file, 'base-bracket')[0]).toEqual(['base-bracket.b.left', 648, -170, true])
  const told = worked(file).fixings.findings.find((f) => f.id === 'hole-refused:base-bracket.b.left')
  expect(told?.weight).toBe('warn')
})

test('a bracket that may be moved has no place while a band on its wall has none', () => {
  const lost = { ...(socketAt(2000)['accessories'] as readonly Json[])[0], along: { at: null } }
  const { hole } = worked(wallFile({ wall: { ...brickWall, accessories: [lost] }, units: [baseUnit] }))
  expect(plain(hole('base-bracket.b.left').along)).toBe('lacks walls.a.accessories.s.along.at')
  expect(hole('base-bracket.b.left').verdict).toBe('ask')
})

test('on a stud wall one stud does for a base unit; none is asked about', () => {
  expect(places(onStuds([stud('s1', 900)], baseUnit), 'base-bracket')).toEqual([
    ['base-bracket.b.s1', 900, -170, false],
  ])
  expect(findings(onStuds([], baseUnit))).toContain('bracket-needs-timber:b')
})

// Board 12.5. Screw 70 less a rail of 20: its tip comes 50 behind the face; less a bracket of 2: 68.
const railed = (stands: string, more: Json = {}): Json => ({
  ...baseUnit,
  stands,
  backRail: { fromTop: exact(20), height: exact(100), thickness: exact(20) },
  ...more,
})
test.each([
  ['shims', 50, true],
  ['plinth-frame', 50, true],
  ['floor-cleat', 50, true],
  ['legs', 68, undefined],
])('a base with a back rail, on %s, is drilled %d deep', (stands, depth, through) => {
  const hole = worked(onStuds([stud('s1', 900)], railed(stands))).hole('base-bracket.b.s1')
  expect([plain(hole.depth), plain(hole.height), hole.throughRail]).toEqual([depth, -200, through])
})

// Void 10 and stand-off 5 are packed: 70 − 20 − 15 = 35 behind the face.
test('packing behind the rail shortens what reaches the wall; an unknown rail leaves the depth open', () => {
  const packed = railed('shims', { void: exact(10), standOff: exact(5) })
  expect(plain(worked(onStuds([stud('s1', 900)], packed)).hole('base-bracket.b.s1').depth)).toBe(35)
  const unmeasured = railed('shims', { backRail: { fromTop: exact(20), height: exact(100) } })
  const hole = worked(onStuds([stud('s1', 900)], unmeasured)).hole('base-bracket.b.s1')
  expect([plain(hole.depth), hole.verdict]).toEqual(['lacks units.b.backRail.thickness', 'ask'])
  expect(worked(onStuds([], packed)).fixings.findings.map((f) => f.say.key)).toContain(
    'fixings.rail-screw-needs-timber',
  )
})

// Tall: underside −850, 2100 high: top 1250, 60 below: 1190.
test('a tall unit is held at its top, like a base unit at its back', () => {
  expect(places(wallFile({ units: [tallUnit] }), 'tall-restraint')).toEqual([
    ['tall-restraint.t.left', 648, 1190, false],
    ['tall-restraint.t.right', 1152, 1190, false],
  ])
})

test('a tall unit that nothing can hold back is a stop', () => {
  const { fixings } = worked(onStuds([], tallUnit))
  expect(fixings.findings.find((f) => f.id === 'tall-not-restrained:t')).toMatchObject({
    weight: 'stop',
    dangerous: true,
  })
  expect(fixings.neededNoggings.map((n) => n.id)).toEqual(['nogging-t-tall-restraint'])
})

// Its top at 1250 + 200 = 1450 puts the restraint at 1390, in the strip under a ceiling at 1500.
test('under the ceiling, where moving it sideways does not help, it is a stop too', () => {
  expect(findings(wallFile({ units: [{ ...tallUnit, height: exact(2300) }] }))).toContain(
    'tall-not-restrained:t',
  )
})

// Screwed through the back rail: 20 below the top of 1120, 100 high: 1050.
test('a box hung by its back rail has two screws into studs, or a stop', () => {
  const box = {
    ...wallUnit,
    stands: 'back-rail-screws',
    bottomRail: {},
    backRail: { fromTop: exact(20), height: exact(100), thickness: exact(18) },
  }
  const two = onStuds([stud('s1', 700), stud('s2', 1100)], box)
  expect(places(two, 'back-rail')).toEqual([
    ['back-rail.w.s1', 700, 1050, false],
    ['back-rail.w.s2', 1100, 1050, false],
  ])
  expect(findings(two)).not.toContain('back-rail-needs-timber:w')
  expect(findings(onStuds([stud('s1', 700)], box))).toContain('back-rail-needs-timber:w')
})

test('islands and spaces for appliances are not fixed to a wall; a wall unit on nothing is asked about', () => {
  const island = { ...baseUnit, id: 'i', kind: 'island' }
  const space = { ...baseUnit, id: 'g', kind: 'appliance-space', order: { left: at(1300) } }
  expect(worked(wallFile({ units: [island, space] })).fixings.holes).toEqual([])
  expect(findings(wallFile({ units: [{ ...wallUnit, stands: null }] }))).toEqual(['hardware-not-known:w'])
})

test('nothing is planned into a wall nobody knows, beyond where plates would go', () => {
  const wall = { ...brickWall, construction: null }
  expect(findings(wallFile({ wall, units: [baseUnit] }))).toEqual(['wall-not-known:a'])
  const { hole, fixings } = worked(wallFile({ wall, units: [wallUnit] }))
  expect(hole('plate.w.left.1').verdict).toBe('ask')
  expect(plain(hole('plate.w.left.1').depth)).toBe('lacks walls.a.construction')
  expect(fixings.findings.map((f) => f.id)).toContain('wall-not-known:a')
})
