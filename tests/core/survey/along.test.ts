import { expect, test } from 'vitest'
import { hasValue } from '../../../src/core/figure'
import type { AlongPosition, Wall } from '../../../src/core/kitchen/schema'
import { alongFromLeft } from '../../../src/core/survey/along'
import { kitchenOf, sure } from '../../support/surveyed'

const onWall = (position: object, wall: object = { otherFaceShift: sure(150) }) => {
  const studs = [{ id: 's', centre: position }]
  const [found] = kitchenOf({ walls: [{ id: 'a', length: sure(3000), ...wall, studs }] }).walls
  return alongFromLeft(found as Wall, (found as Wall).studs[0]?.centre as AlongPosition)
}

test.each([
  ['from the left as it is', { at: sure(400) }, 400],
  ['from the right: 3000 − 400', { from: 'right', at: sure(400) }, 2600],
  [
    'from the left of the other face, which starts 150 past this one: 3150 − 500',
    { face: 'other', at: sure(500) },
    2650,
  ],
  [
    'from the right of the other face, taken to be this left end',
    { face: 'other', from: 'right', at: sure(500) },
    500,
  ],
])('%s', (_, position, along) => {
  const figure = onWall(position)
  expect(hasValue(figure) && figure.value).toBe(along)
})

test('what was measured, how it was measured, and the wall where it counts, are cited', () => {
  const stud = 'walls.a.studs.s.centre'
  expect(onWall({ at: 400 }).from).toEqual([`${stud}.at`, `${stud}.face`, `${stud}.from`])
  expect(onWall({ from: 'right', at: 400 }).from).toContain('walls.a.length')
  expect(onWall({ face: 'other', at: 400 }).from).toContain('walls.a.otherFaceShift')
})

test('precisions add up from the far end: 2 for the wall and 1 for the place', () => {
  const figure = onWall({ from: 'right', at: { value: 400, pm: 1 } }, { length: { value: 3000, pm: 2 } })
  expect(figure).toMatchObject({ value: 2600, pm: 3 })
})

test('without the shift of the other face only its left end is lost', () => {
  expect(onWall({ face: 'other', at: 500 }, {})).toMatchObject({
    state: 'unknown',
    missing: ['walls.a.otherFaceShift'],
  })
  expect(onWall({ face: 'other', from: 'right', at: sure(500) }, {})).toMatchObject({ value: 500 })
})
