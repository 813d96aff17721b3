import { expect, test } from 'vitest'
import { known, unknown } from '../../../src/core/figure'
import { namesOf } from '../../../src/core/plan/names-of'
import { footName } from '../../../src/core/units/foot-name'
import { ordinal, studName } from '../../../src/core/units/stud-name'
import { factName } from '../../../src/core/words/fact-name'
import { kitchenOf } from '../../support/facts'
import { workKitchen } from '../../support/work-kitchen'

test('feet by their id, else by where they stand', () => {
  expect(['fl', 'back-right', 'arm-left-outer', 'middle-front'].map((id) => footName(id))).toEqual([
    'front left',
    'back right',
    'outer corner of the left arm',
    'middle front',
  ])
  const at = (x: number, y: number) => footName('f1', { x, y, width: 900, depth: 560 })
  expect([at(50, 60), at(450, 500), at(850, 500)]).toEqual(['back left', 'front middle', 'front right'])
  expect(footName('f1', { x: null, y: 50, width: 900, depth: 560 })).toBe('f1')
})

test('studs by their number from the left, whatever their ids', () => {
  const studs = [
    { id: 'x', centre: known(600, 1, 'mm', []) },
    { id: 'a', centre: known(1000, 1, 'mm', []) },
    { id: 'z', centre: known(200, 1, 'mm', []) },
    { id: 'q', centre: unknown('mm', ['walls.a.studs.q.centre.at']) },
  ]
  expect(['z', 'x', 'a', 'q'].map((id) => studName(studs, id))).toEqual([
    'first stud from the left',
    'second stud from the left',
    'third stud from the left',
    'stud “q”',
  ])
  expect([13, 21, 22, 23, 111].map(ordinal)).toEqual(['13th', '21st', '22nd', '23rd', '111th'])
})

test.each([
  ['units.b1.legs.min', 'shortest length of the legs of base unit 1'],
  ['units.b1.feet.fr.x', 'x of the front right foot of base unit 1'],
  ['walls.b.studs.s3.centre.at', 'centre along the wall of the third stud from the left of stud wall'],
  ['walls.b.studs.s3.confirmed', 'how it was found of the third stud from the left of stud wall'],
  ['floor.finishToCome', 'thickness of the floor finish still to be laid'],
  ['floor.readings.f7.drop', 'the drop from the line of floor reading “f7”'],
  ['appliances.dishwasher.heightMin', 'height with its feet wound in of dishwasher'],
  ['walls.b.openings.w1.top.up', 'height above the line of its top of opening “w1” of stud wall'],
  ['units.b1.hanging.heightScrew.perTurn', 'millimetres the height screw moves in one turn of base unit 1'],
  // No word twice: the mark of a thing that says what it is, is not quoted after it.
  ['lines.line.closing', 'closing of the line'],
  ['lines.line-2.closing', 'closing of line 2'],
  ['walls.b.lintels.lintel-1.kind', 'kind of lintel 1 of stud wall'],
  ['walls.b.layers.layer-2.thickness', 'thickness of layer 2 of stud wall'],
  ['log.e3', 'entry e3 of the day log'],
  ['region', 'the country whose rules apply'],
])('%s is %s', (id, words) => {
  expect(factName(id, namesOf(kitchenOf(workKitchen())))).toBe(words)
})
