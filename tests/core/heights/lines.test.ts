import { expect, test } from 'vitest'
import { type Figure, known } from '../../../src/core/figure'
import { workOutLines } from '../../../src/core/heights/lines'
import type { Hole, HolePurpose, RailPlan } from '../../../src/core/plan/types'
import { baseUnit, ceilingAt, wallUnit, withDishwasher } from '../../support/row-kitchen'
import { atLeft, plain, sure, workThrough } from '../../support/surveyed'

const mm = (value: number): Figure => known(value, 0, 'mm', [])
const hole = (
  id: string,
  purpose: HolePurpose,
  along: number,
  height: number,
  verdict: Hole['verdict'] = 'trace first',
): Hole => ({
  id,
  wall: 'a',
  purpose,
  for: ['w'],
  along: mm(along),
  height: mm(height),
  bit: mm(6),
  depth: mm(40),
  screwLength: mm(50),
  fixing: null,
  into: null,
  stud: null,
  verdict,
  against: [],
  hitBands: [],
  number: 1,
})
const RAIL: RailPlan = {
  rail: 'r',
  wall: 'a',
  units: ['w'],
  from: mm(20),
  to: mm(580),
  edge: mm(1079),
  studs: [],
}

function linesOf(holes: readonly Hole[] = []) {
  const studs = [
    { id: 's1', centre: { from: 'right', at: sure(5600) }, confirmed: 'both-edges' },
    { id: 's2', centre: { at: sure(900) }, confirmed: 'not-found' },
  ]
  const kitchen = withDishwasher({
    walls: [{ id: 'a', length: sure(6000), studs }],
    ceiling: ceilingAt(1400),
    units: [
      baseUnit('t', { rightOf: 'space' }, { kind: 'tall', height: sure(1970) }),
      wallUnit('w', { left: atLeft(0) }),
      wallUnit('short', { rightOf: 'w' }, { height: sure(360) }),
    ],
  })
  const { survey, positions, worked } = workThrough(kitchen)
  return workOutLines(kitchen, survey, positions, worked.heights, [RAIL], holes)
}

const written = (holes?: readonly Hole[]) =>
  linesOf(holes).lines.map(
    ({ id, of, height, from, to }) => `${id} (${of}) ${plain(height)} from ${from} to ${to}`,
  )

test('the line all along; heights as far as their units reach; the edge of the rail', () => {
  // Heights as in the test of heights with a tall unit of 1970.
  expect(written()).toEqual([
    'line.a (line) 0 from 0 to 6000',
    'base-top.a (base-top) -131 from 0 to 1200',
    'worktop-top.a (worktop-top) -93 from 0 to 1800',
    'wall-underside.a (wall-underside) 399 from 0 to 600',
    'wall-top.a (wall-top) 1119 from 0 to 1200',
    'tall-top.a (tall-top) 1119 from 1800 to 2400',
    'rail.r (rail) 1079 from 20 to 580',
  ])
})

test('one line for each height that plates or brackets are drilled at', () => {
  const lines = written([
    hole('plate.w.left.1', 'plate', 40, 1069),
    hole('plate.w.right.1', 'plate', 560, 1069),
    hole('base-bracket.base-1.left', 'base-bracket', 48, -171),
    hole('base-bracket.base-1.right', 'base-bracket', 552, -171, 'refused'),
    hole('second.w.s1', 'second-fixing', 400, 450),
  ])
  expect(lines.slice(7)).toEqual([
    'drill.plate.w.left.1 (plate) 1069 from 40 to 560',
    'drill.base-bracket.base-1.left (bracket) -171 from 48 to 48',
  ])
})

test('marks: both sides of every unit and bay, and the studs that were found', () => {
  const marks = linesOf().marks.map(({ id, kind, along }) => `${id} (${kind}) ${plain(along)}`)
  expect(marks).toContain('unit-edge.base-2.left (unit-edge) 600')
  expect(marks).toContain('bay-edge.space.right (bay-edge) 1800')
  // 5600 from the right end of 6000.
  expect(marks.filter((mark) => mark.startsWith('stud'))).toEqual(['stud.a.s1 (stud) 400'])
  expect(marks).toHaveLength(2 * 6 + 1)
})
