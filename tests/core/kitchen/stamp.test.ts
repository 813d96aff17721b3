import { expect, test } from 'vitest'
import type { Figure } from '../../../src/core/figure'
import { USUAL_PRECISION } from '../../../src/core/kitchen/default-precision'
import { factId } from '../../../src/core/kitchen/fact-id'
import { tape } from '../../../src/core/kitchen/quantity'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { stampFigures } from '../../../src/core/kitchen/stamp'
import { exampleFile, kitchenOf } from './example-file'

const withSurvey = (survey: KitchenFile['survey']) => kitchenOf(exampleFile({ survey }))

/** Every figure of a value with the way to it, by ids and never by position. */
function figuresIn(value: unknown, way: readonly string[] = []): readonly (readonly [string, Figure])[] {
  if (typeof value !== 'object' || value === null) return []
  if ('state' in value && 'basis' in value) return [[factId(...way), value as unknown as Figure]]
  return Object.entries(value).flatMap(([key, inner]) => {
    const id: unknown = Array.isArray(value) ? (inner as { id?: unknown } | null)?.id : undefined
    return figuresIn(inner, [...way, typeof id === 'string' ? id : key])
  })
}

test('every figure names itself, by the way to it', () => {
  const figures = figuresIn(kitchenOf(exampleFile()))
  expect(figures.length).toBeGreaterThan(200)
  for (const [way, figure] of figures) {
    expect(figure.from).toEqual([way])
    if (figure.state === 'unknown') expect(figure.missing).toEqual([way])
  }
  expect(figures.map(([way]) => way)).toContain('walls.b.studs.s2.centre.at')
  expect(new Set(figures.map(([way]) => way)).size).toBe(figures.length)
})

test('a figure as typed: known, with its own precision or the usual one of its class', () => {
  const { walls, units, floor, survey } = kitchenOf(exampleFile())
  expect(walls[1]?.length).toEqual({
    state: 'known',
    value: 2400,
    pm: 2,
    unit: 'mm',
    basis: { kind: 'survey' },
    from: ['walls.b.length'],
  })
  expect(walls[1]?.studs[1]?.centre.at).toMatchObject({ value: 800, pm: 5 })
  expect(walls[0]?.cornerRight.angle).toMatchObject({ value: 90, pm: 0.1, unit: 'deg' })
  expect(floor.readings.map(({ drop }) => drop.state === 'known' && drop.pm)).toEqual([1, 2])
  expect(units[2]?.width).toMatchObject({ value: 609.6, pm: 0.5, basis: { kind: 'maker' } })
  expect(survey.tapePrecision).toMatchObject({ state: 'unknown', missing: ['survey.tapePrecision'] })
})

test('the usual precisions, each with what it stands on', () => {
  const usual = Object.entries(USUAL_PRECISION).map(([cls, { pm }]) => [cls, pm])
  expect(Object.fromEntries(usual)).toEqual({ tape: 2, level: 1, angle: 0.1, sheet: 0.5, exact: 0 })
  for (const { why } of Object.values(USUAL_PRECISION)) expect(why).not.toBe('')
})

test('the precision the survey states goes before the usual one, and is itself exact', () => {
  const { walls, floor, units, survey } = withSurvey({ tapePrecision: 1.5, levelPrecision: '1/16 in' })
  expect(walls[1]?.length).toMatchObject({ pm: 1.5 })
  expect(walls[1]?.studs[1]?.centre.at).toMatchObject({ pm: 5 })
  expect(floor.readings[0]?.drop).toMatchObject({ pm: 1.588 })
  expect(units[1]?.height).toMatchObject({ pm: 0.5 })
  expect(survey.tapePrecision).toMatchObject({ value: 1.5, pm: 0 })
})

test('a precision of nothing is a precision', () => {
  expect(withSurvey({ tapePrecision: 0 }).walls[1]?.length).toMatchObject({ pm: 0 })
})

test('a figure left out, or null, is unknown and names itself as missing', () => {
  const { walls, units } = kitchenOf(exampleFile())
  const missing = (figure: Figure | undefined) => figure?.state === 'unknown' && figure.missing
  expect(missing(walls[1]?.studs[1]?.width)).toEqual(['walls.b.studs.s2.width'])
  expect(missing(units[0]?.hanging.heightScrew.perTurn)).toEqual(['units.base-1.hanging.heightScrew.perTurn'])
  expect(units[0]?.hanging.heightScrew.perTurn.unit).toBe('mm/turn')
})

test('a figure its owner assumes stays assumed, for the reason given', () => {
  const { units } = kitchenOf(exampleFile())
  expect(units[2]?.height).toMatchObject({
    state: 'assumed',
    value: 700,
    basis: { kind: 'common-practice', why: 'read off the plan' },
  })
  const silent = kitchenOf(exampleFile({ worktops: [{ id: 't', thickness: { value: 38, assumed: true } }] }))
  expect(silent.worktops[0]?.thickness).toMatchObject({
    state: 'assumed',
    basis: { kind: 'common-practice', why: 'assumed in the kitchen file, with no reason given' },
  })
})

test('what figures stand on: the survey, the maker, or what somebody wants', () => {
  const kitchen = kitchenOf(
    exampleFile({
      crew: { people: [{ id: 'p', own: 12 }], lifter: { rated: 60 } },
      staging: { wall: 'a', along: {} },
    }),
  )
  const { walls, units, fixings, rails, worktops, finishing, appliances, wishes, crew, staging } = kitchen
  const kinds = (figures: readonly (Figure | undefined)[]) => figures.map((figure) => figure?.basis.kind)
  const measured = [walls[1]?.length, walls[1]?.accessories[0]?.height.up, kitchen.lines[0]?.offset]
  const makers = [
    units[0]?.width,
    units[0]?.legs.min,
    fixings[0]?.length,
    rails[0]?.maxSpacing,
    worktops[0]?.thickness,
    finishing[0]?.height,
    appliances[0]?.heightMin,
    crew.lifter?.rated,
  ]
  const wanted = [
    wishes.heights[0]?.max?.aboveFloor,
    wishes.order[0]?.minLag,
    units[0]?.order.left?.at,
    units[1]?.order.gap,
    units[0]?.standOff,
    units[0]?.contents,
    crew.people[0]?.own,
    staging?.out,
  ]
  expect(new Set(kinds(measured))).toEqual(new Set(['survey']))
  expect(new Set(kinds(makers))).toEqual(new Set(['maker']))
  expect(new Set(kinds(wanted))).toEqual(new Set(['wish']))
})

test('things without an id are counted from 1, and other values are left alone', () => {
  const typed = { readings: [tape().parse(5), tape().parse(null)], words: ['a'], none: null }
  expect(stampFigures(typed, 'log.e1', { kind: 'achieved' })).toEqual({
    readings: [
      {
        state: 'known',
        value: 5,
        pm: 2,
        unit: 'mm',
        basis: { kind: 'achieved' },
        from: ['log.e1.readings.1'],
      },
      {
        state: 'unknown',
        unit: 'mm',
        basis: { kind: 'achieved' },
        from: ['log.e1.readings.2'],
        missing: ['log.e1.readings.2'],
      },
    ],
    words: ['a'],
    none: null,
  })
})
