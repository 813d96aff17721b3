import { expect, test } from 'vitest'
import {
  at,
  brickWall,
  exact,
  type Json,
  plain,
  plug,
  stud,
  studWall,
  wallFile,
  wallUnit,
  woodScrew,
  worked,
} from '../../support/fixed-wall'

const findings = (file: Json) => worked(file).fixings.findings.map((f) => [f.id, f.weight])
const onBrick = (fixings: readonly Json[], wall: Json = {}) =>
  wallFile({ wall: { ...brickWall, ...wall }, units: [wallUnit], rest: { fixings } })
const plateHole = (file: Json) => worked(file).hole('plate.w.left.1')

// On brick by hand: plate 2, plaster 12, 40 held: 54 needed. Of 45, 60 and 90 the 60 is the shortest that is enough.
test('of several screws the shortest that is long enough goes in', () => {
  const of = (id: string, length: number): Json => ({ ...plug, id, length: exact(length) })
  const hole = plateHole(onBrick([of('c', 90), of('a', 45), of('b', 60)]))
  expect([hole.fixing, plain(hole.screwLength)]).toEqual(['b', 60])
  expect(plateHole(onBrick([of('a', 45), of('b', 50)])).fixing).toBe('b')
})

test('which of several cannot be told while the length of one is not known', () => {
  const hole = plateHole(onBrick([plug, { ...plug, id: 'q', length: null }]))
  expect([hole.fixing, plain(hole.depth)]).toEqual([null, 'lacks fixings.q.length'])
})

test('a screw for another use or another material does not go in', () => {
  for (const other of [{ for: ['rail'] }, { into: ['aircrete'] }]) {
    const file = onBrick([{ ...plug, ...other }])
    expect(plateHole(file)).toMatchObject({ fixing: null, verdict: 'ask' })
    expect(findings(file)).toContainEqual(['fixing-not-entered:a.plate', 'ask'])
  }
})

test('too short is a stop, and only just long enough is noted', () => {
  expect(findings(onBrick([{ ...plug, length: exact(53) }]))).toContainEqual([
    'screw-too-short:a.plate',
    'stop',
  ])
  // The plate is taken as 2 ± 1: 54 needed may be 55.
  expect(findings(onBrick([{ ...plug, length: exact(54) }]))).toContainEqual([
    'screw-length-marginal:a.plate',
    'note',
  ])
  const long = findings(onBrick([plug])).map(([id]) => String(id))
  expect(long.filter((id) => id.startsWith('screw-'))).toEqual([])
})

test('how deep it must hold not known: the hole is as deep as it is, and waits for that figure', () => {
  const file = onBrick([{ ...plug, embedment: null }])
  expect(plateHole(file).depth).toEqual(plateHole(onBrick([plug])).depth)
  expect(plateHole(file).verdict).toBe('ask')
  expect(findings(file)).toContainEqual(['screw-hold-not-known:a.plate', 'ask'])
})

// A wall 75 thick: the hole is 12 + 55 = 67 deep, 8 is left. At 77.1 more than 10 is.
test('a hole that all but comes out at the back is a stop', () => {
  expect(findings(onBrick([plug], { thickness: exact(112) })).map(([id]) => id)).not.toContain(
    'screw-out-of-back:a.plate',
  )
  const thin = { layers: [{ id: 'l', material: 'plaster', thickness: exact(12) }], construction: 'old-brick' }
  const old = { ...plug, into: ['old-brick'] }
  expect(findings(onBrick([old], { ...thin, thickness: exact(77) }))).toContainEqual([
    'screw-out-of-back:a.plate',
    'stop',
  ])
  expect(findings(onBrick([old], { ...thin, thickness: exact(77.1) })).map(([id]) => id)).not.toContain(
    'screw-out-of-back:a.plate',
  )
})

test('tiles still to come make the screw too short', () => {
  const layersToCome = [{ id: 't', material: 'tile', thickness: exact(10) }]
  expect(findings(onBrick([plug], { layersToCome }))).toContainEqual(['screw-too-short:a.plate', 'stop'])
})

const dotAndDab: Json = {
  construction: 'dot-and-dab',
  layers: [
    { id: 'board', material: 'plasterboard', thickness: exact(12.5) },
    { id: 'dabs', material: 'dabs', thickness: exact(15) },
    { id: 'block', material: 'brick', thickness: exact(100) },
  ],
}
test('board on dabs takes a stand-off fixing and no other', () => {
  expect(findings(onBrick([plug], dotAndDab))).toContainEqual(['fixing-not-entered:a.plate', 'ask'])
  const standOff = { ...plug, kind: 'stand-off', length: exact(110) }
  expect(plateHole(onBrick([standOff], dotAndDab))).toMatchObject({ fixing: 'plug', into: 'brick' })
})

test.each([
  [
    'a layer without its thickness',
    {
      layers: [
        { id: 'p', material: 'plaster', thickness: null },
        { id: 'b', material: 'brick', thickness: exact(100) },
      ],
    },
  ],
  ['no layers', { layers: [] }],
])('%s: the depth is not known, and the hole is asked about', (_, wall) => {
  const hole = plateHole(onBrick([plug], wall))
  expect([hole.depth.state, hole.verdict]).toEqual(['unknown', 'ask'])
})

test('masonry without a layer of it is asked about', () => {
  expect(findings(onBrick([plug], { layers: [] }))).toContainEqual(['base-not-known:a.plate', 'ask'])
})

// Second fixing by hand: rail 20 + void 30 + gap 0, board 12.5, 35 held: 97.5; a 100 screw comes 100 − 50 = 50 deep.
test('a second fixing goes through the lower rail and the packed void', () => {
  const unit = { ...wallUnit, void: exact(30) }
  const studs = [stud('s1', 700), stud('s2', 1100)]
  const file = (length: number) =>
    wallFile({
      wall: { ...studWall, studs },
      units: [unit],
      rest: { fixings: [{ ...woodScrew, length: exact(length) }] },
    })
  expect(plain(worked(file(100)).hole('second.w.s1').depth)).toBe(50)
  expect(findings(file(97))).toContainEqual(['screw-too-short:a.second-fixing', 'stop'])
})

// In North America: 3 in through 3/4 in of rail and 1/2 in of board: 76.2 − 19.05 = 57.15 from the face, 44.45 into the
// stud, past 1 1/4 in (31.75).
test('where cables run through studs, a screw deep into one is asked about', () => {
  const studs = [stud('s1', 700), stud('s2', 1106.4)]
  const board = { id: 'board', material: 'plasterboard', thickness: { value: '1/2 in', pm: 0 } }
  const file = (length: string) =>
    wallFile({
      wall: { ...studWall, studs, layers: [board] },
      units: [
        {
          ...wallUnit,
          stands: 'back-rail-screws',
          bottomRail: {},
          backRail: { fromTop: exact(0), height: exact(100), thickness: { value: '3/4 in', pm: 0 } },
        },
      ],
      rest: {
        region: 'north-america',
        fixings: [{ ...woodScrew, embedment: exact(25), length: { value: length, pm: 0 } }],
      },
    })
  const deep = worked(file('3 in'))
  expect(plain(deep.hole('back-rail.w.s1').depth)).toBe(57.15)
  expect(deep.hole('back-rail.w.s1').verdict).toBe('ask')
  expect(deep.fixings.findings.map((f) => f.id)).toContain('hole-past-setback:a')
  // 2 1/2 in: 63.5 − 19.05 = 44.45 from the face, 31.75 into the stud: just not past it.
  expect(worked(file('2 1/2 in')).hole('back-rail.w.s1').verdict).toBe('trace first')
})

test('deep holes are told once a wall, by their numbers, with the deepest', () => {
  const { fixings } = worked(onBrick([plug]))
  const told = fixings.findings.filter((f) => f.rule === 'hole-past-50')
  expect(told).toMatchObject([{ id: 'hole-past-50:a', weight: 'ask', dangerous: true }])
  const deep = fixings.holes.filter((h) => told[0]?.about.includes(h.id))
  expect(deep).toHaveLength(2)
  expect(told[0]?.say.values['holes']).toBe(`holes ${deep.map((h) => h.number).join(' and ')}`)
})

test('a wall with holes is traced first, whatever is known of it', () => {
  for (const traced of ['part', 'not-yet', null]) {
    expect(findings(onBrick([plug], { traced }))).toContainEqual(['trace-first:a', 'ask'])
  }
  expect(findings(onBrick([plug])).map(([id]) => id)).not.toContain('trace-first:a')
  expect(findings(wallFile({ wall: { ...brickWall, traced: null } }))).toEqual([])
})

test('the other face is looked at before there are holes', () => {
  const wall = { behind: 'room', thickness: null }
  expect(findings(onBrick([plug], wall))).toContainEqual(['other-face-not-looked-at:a', 'ask'])
})

// By along, then height: the plates at 630 and 1170, second fixings at 700 and 1100.
test('holes of a wall are numbered along it and upwards, refused ones left out', () => {
  const wall = { ...studWall, studs: [stud('s1', 630), stud('s2', 1100)] }
  const { fixings } = worked(wallFile({ wall, units: [{ ...wallUnit, order: { left: at(600) } }] }))
  expect(fixings.holes.map((h) => [h.id, h.number])).toEqual([
    ['plate.w.left.1', 2],
    ['plate.w.right.1', null],
    ['second.w.s1', 1],
    ['second.w.s2', 3],
  ])
})

test.each([
  ['blown', 'masonry', true],
  ['solid', 'timber-stud', true],
  ['hollow', 'masonry', true],
  ['hollow', 'dot-and-dab', false],
  ['hollow', 'timber-stud', false],
])('knocking says %s, the wall is entered as %s', (knock, construction, asks) => {
  const ids = findings(onBrick([plug], { knock, construction })).map(([id]) => id)
  expect(ids.includes('knock-does-not-match:a')).toBe(asks)
})
