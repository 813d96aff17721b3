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

function linesOf(holes: readonly Hole[] = [], undersides?: ReadonlyMap<string, Figure>) {
  const studs = [
    { id: 's1', centre: { from: 'right', at: sure(5600) }, confirmed: 'both-edges' },
    { id: 's2', centre: { at: sure(900) }, confirmed: 'not-found' },
  ]
  const hanging = { hookLift: sure(25), plateBelowTop: sure(40) }
  const kitchen = withDishwasher({
    walls: [{ id: 'a', length: sure(6000), studs }],
    ceiling: ceilingAt(1400),
    units: [
      baseUnit('t', { rightOf: 'space' }, { kind: 'tall', height: sure(1970) }),
      wallUnit('w', { left: atLeft(0) }, { hanging }),
      wallUnit('short', { rightOf: 'w' }, { height: sure(360), hanging }),
    ],
  })
  const { survey, positions, worked } = workThrough(kitchen)
  return workOutLines(kitchen, survey, positions, worked.heights, [RAIL], holes, undersides)
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
    'plate.w (plate) 1079 from 0 to 1200',
  ])
})

test('one line for each height that brackets or restraints are drilled at', () => {
  const lines = written([
    hole('base-bracket.base-1.left', 'base-bracket', 48, -171),
    hole('base-bracket.base-1.right', 'base-bracket', 552, -171, 'refused'),
    hole('base-bracket.base-2.left', 'base-bracket', 648, -171),
    hole('tall-restraint.t.left', 'tall-restraint', 1900, 1059),
    hole('second.w.s1', 'second-fixing', 400, 450),
  ])
  expect(lines.slice(8)).toEqual([
    'bracket.base-bracket.base-1.left (bracket) -171 from 48 to 648',
    'bracket.tall-restraint.t.left (bracket) 1059 from 1900 to 1900',
  ])
})

test('plates hook on below the top of their units, of each where it was set for itself', () => {
  const plates = (undersides?: ReadonlyMap<string, Figure>) =>
    linesOf([], undersides)
      .lines.filter(({ of }) => of === 'plate')
      .map(({ id, height, from, to }) => `${id} ${plain(height)} from ${from} to ${to}`)
  // 1119 − 40.
  expect(plates()).toEqual(['plate.w 1079 from 0 to 1200'])
  // 400 + 720 − 40 for the one, 759 + 360 − 40 for the other.
  expect(
    plates(
      new Map([
        ['w', mm(400)],
        ['short', mm(759)],
      ]),
    ),
  ).toEqual(['plate.w 1080 from 0 to 600', 'plate.short 1079 from 600 to 1200'])
})

test('marks: both sides of every unit and bay, and the studs that were found', () => {
  const marks = linesOf().marks.map(({ id, kind, along }) => `${id} (${kind}) ${plain(along)}`)
  expect(marks).toContain('unit-edge.base-2.left (unit-edge) 600')
  expect(marks).toContain('bay-edge.space.right (bay-edge) 1800')
  // 5600 from the right end of 6000.
  expect(marks.filter((mark) => mark.startsWith('stud'))).toEqual(['stud.a.s1 (stud) 400'])
  expect(marks).toHaveLength(2 * 6 + 1)
})
