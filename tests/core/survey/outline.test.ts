import { expect, test } from 'vitest'
import { workOutSurvey } from '../../../src/core/survey/survey'
import { kitchenOf, sure, wallsOf } from '../../support/surveyed'

const surveyOf = (walls: readonly object[], closed: boolean | null = true) =>
  workOutSurvey(kitchenOf({ walls, closed }), null)

test('a room of 3000 by 2000: clockwise from above, the room on the right of each wall', () => {
  const survey = surveyOf(wallsOf([3000, 90], [2000, 90], [3000, 90], [2000, 90]))
  expect(survey.frames.map(({ origin }) => origin)).toEqual([
    { x: 0, y: 0 },
    { x: 3000, y: 0 },
    { x: 3000, y: -2000 },
    { x: 0, y: -2000 },
  ])
  expect(survey.frames.map(({ alongDir, outDir }) => [alongDir, outDir])).toEqual([
    [
      { x: 1, y: 0 },
      { x: 0, y: -1 },
    ],
    [
      { x: 0, y: -1 },
      { x: -1, y: 0 },
    ],
    [
      { x: -1, y: 0 },
      { x: 0, y: 1 },
    ],
    [
      { x: 0, y: 1 },
      { x: 1, y: 0 },
    ],
  ])
  expect(survey.outline).toHaveLength(4)
  expect(survey.findings).toEqual([])
  // 500 along wall b from (3000, 0), 400 out of it.
  expect(survey.toRoom('b', 500, 400)).toEqual({ x: 2600, y: -500 })
})

test('an outer corner turns the other way', () => {
  // Up to a chimney breast: right 1000, out 400, right 800.
  const survey = surveyOf(wallsOf([1000, 90], [400, 270], [800]), false)
  expect(survey.frames.map(({ origin }) => origin)).toEqual([
    { x: 0, y: 0 },
    { x: 1000, y: 0 },
    { x: 1000, y: -400 },
  ])
  expect(survey.outline?.at(-1)).toEqual({ x: 1800, y: -400 })
})

test.each([
  ['by 10: usual', 2010, 0, 0],
  ['by 15: asked', 2015, 0, 1],
  ['by 15 with walls good to 3 mm each: within 10 + 6', 2015, 3, 0],
  ['by 17 with walls good to 3 mm each', 2017, 3, 1],
])('walls that miss their start %s', (_, last, pm, count) => {
  const walls = wallsOf([3000, 90], [2000, 90], [3000, 90], [2000, 90])
  const length = (value: number) => ({ value, pm })
  const changed = [
    walls[0],
    { ...walls[1], length: length(2000) },
    walls[2],
    { ...walls[3], length: length(last) },
  ]
  const { findings } = surveyOf(changed as object[])
  expect(findings.map(({ id, weight }) => [id, weight])).toEqual(
    count === 0 ? [] : [['outline-does-not-close:room', 'ask']],
  )
  expect(surveyOf(changed as object[], null).findings).toEqual([])
})

test('after an unknown length or corner a wall has no place in the room', () => {
  const noLength = surveyOf(
    [
      { id: 'a', cornerRight: { angle: sure(90) } },
      { id: 'b', length: sure(2000) },
    ],
    null,
  )
  expect(noLength.frames.map(({ placed }) => placed)).toEqual([true, false])
  expect(noLength.toRoom('a', 10, 0)).toEqual({ x: 10, y: 0 })
  expect(noLength.toRoom('b', 10, 0)).toBeNull()
  expect(noLength.outline).toBeNull()
  const noCorner = surveyOf(
    [
      { id: 'a', length: sure(3000) },
      { id: 'b', length: sure(2000) },
    ],
    null,
  )
  expect(noCorner.frames.map(({ placed }) => placed)).toEqual([true, false])
})

test('walls are called by their names, or by their ids', () => {
  const survey = surveyOf([{ id: 'a', length: 3000, name: 'Window side' }, { id: 'b' }], null)
  expect(survey.frames.map(({ name }) => name)).toEqual(['Window side', 'wall b'])
  expect(survey.frame('b')?.wall).toBe('b')
  expect(survey.frame('z')).toBeUndefined()
})
