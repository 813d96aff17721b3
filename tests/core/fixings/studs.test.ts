import { expect, test } from 'vitest'
import { studsOf } from '../../../src/core/fixings/usable-studs'
import { at, exact, type Json, stud, studWall, wallFile, worked } from '../../support/fixed-wall'

const studs = (...list: Json[]) => {
  const { kitchen, survey } = worked(wallFile({ wall: { ...studWall, studs: list } }))
  const wall = kitchen.walls[0]
  if (wall === undefined) throw new Error('no wall')
  return studsOf(wall, survey)
}

// By hand: 38 wide, 12 left at each edge: 38/2 − 12 = 7 either side of the middle.
test('a screw may be 7 mm off the middle of a 38 mm stud', () => {
  expect(studs(stud('s', 700)).usable).toMatchObject([
    { id: 's', half: 7, sure: true, material: 'timber-stud' },
  ])
})

test('its centre rests on where it is and how wide it is', () => {
  expect(studs(stud('s', 700)).usable[0]?.centre.from).toEqual(
    expect.arrayContaining(['walls.a.studs.s.centre.at', 'walls.a.studs.s.width']),
  )
})

test.each([
  ['one-beep', 'walls.a.studs.s.confirmed'],
  ['not-found', 'walls.a.studs.s.confirmed'],
  [null, 'walls.a.studs.s.confirmed'],
])('a stud found by %s is not counted on', (confirmed, fact) => {
  const found = studs(stud('s', 700, { confirmed }))
  expect(found.usable).toEqual([])
  expect(found.doubtful).toMatchObject([{ id: 's', why: 'not-confirmed', missing: [fact] }])
})

test.each(['both-edges', 'fixings-seen', 'seen-open'])('a stud found by %s counts', (confirmed) => {
  expect(studs(stud('s', 700, { confirmed })).usable).toHaveLength(1)
})

test.each([
  ['centre', { centre: { at: null } }, 'walls.a.studs.s.centre.at'],
  ['width', { width: null }, 'walls.a.studs.s.width'],
])('a stud without its %s is not counted on, and says what it lacks', (_, more, fact) => {
  const found = studs(stud('s', 700, more))
  expect(found.usable).toEqual([])
  expect(found.doubtful).toMatchObject([{ why: 'not-measured', missing: [fact] }])
  expect(found.missing).toEqual([fact])
})

test('a stud of 24 has no window left', () => {
  expect(studs(stud('s', 700, { width: exact(24) })).doubtful).toMatchObject([{ why: 'too-narrow' }])
})

test('read to ± 8, the middle of a 38 mm stud may be past its window', () => {
  expect(studs(stud('s', 700, { centre: { at: { value: 700, pm: 8 } } })).usable[0]?.sure).toBe(false)
})

test('from left to right, however they were measured', () => {
  const found = studs(stud('s2', 1100), stud('s1', 0, { centre: { from: 'right', at: exact(2300) } }), {
    ...stud('s0', 300),
    centre: at(300),
  })
  expect(found.usable.map((s) => [s.id, s.centre.value])).toEqual([
    ['s0', 300],
    ['s1', 700],
    ['s2', 1100],
  ])
})

test('where nobody says what the studs are of, the wall says it', () => {
  const { kitchen, survey } = worked(
    wallFile({
      wall: { ...studWall, construction: 'metal-stud', studs: [stud('s', 700, { material: null })] },
    }),
  )
  expect(kitchen.walls.map((wall) => studsOf(wall, survey).usable[0]?.material)).toEqual(['metal-stud'])
})
