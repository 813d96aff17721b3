/** What an empty field is said to be taken for is what the planner takes for it, and nothing else is. */
import { expect, test } from 'vitest'
import { feetStandingIn, saidSo, standsInFor, standsInWords } from '../../../src/core/form/stands-in'
import { thingAt } from '../../../src/core/form/things'
import { assumeProductDefaults } from '../../../src/core/kitchen/assume-defaults'
import { UNIT_KINDS } from '../../../src/core/kitchen/kinds'
import { parseKitchen } from '../../../src/core/kitchen/parse-kitchen'
import { STANDS } from '../../../src/core/kitchen/schema'
import { figuresIn } from '../../../src/core/plan/figures-in'

const UNITS = UNIT_KINDS.flatMap((kind) => [{ kind }, ...STANDS.map((stands) => ({ kind, stands }))])

test('it is the planner’s own figure, field by field, for every kind of unit in every country', () => {
  for (const region of [null, 'uk', 'continental', 'north-america'] as const) {
    const units = UNITS.map((unit, i) => ({ ...unit, id: `u${i}` }))
    const file = {
      format: 'dryrun-kitchen',
      version: 1,
      name: 'Bare',
      region,
      walls: [{ id: 'a' }],
      units: units.map((unit) => ({ ...unit, wall: 'a', order: { left: { at: 0 } } })),
      finishing: ['plinth', 'filler'].map((kind) => ({
        id: kind,
        kind,
        wall: 'a',
        order: { left: { at: 0 } },
      })),
    }
    const parsed = parseKitchen(file)
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.error))
    const kitchen = assumeProductDefaults(parsed.value.kitchen, region === null ? null : { id: region })
    const figures = [...figuresIn([kitchen.units, kitchen.finishing]).values()]
    const open = figures.filter(({ from }) => from.length === 1 && !/\.feet\./.test(from[0] ?? ''))
    expect(open.length).toBeGreaterThan(100)
    for (const figure of open) {
      const path = figure.from[0] ?? ''
      if (thingAt(file, path) !== undefined) continue
      const stands = standsInFor(file, path)
      const taken = figure.state === 'assumed' ? [figure.value, figure.pm] : undefined
      expect([path, stands === undefined ? undefined : [stands.value, stands.pm]]).toEqual([path, taken])
    }
  }
})

test('feet are said to be taken where the planner takes them', () => {
  const unit = { id: 'u', kind: 'base', stands: 'legs' }
  const of = (more: object) => feetStandingIn({ region: 'uk', units: [{ ...unit, ...more }] }, 'units.u.feet')
  expect(of({})).toContain('a foot at each corner, 50 mm in from the side')
  expect(of({ feet: [{ id: 'one' }] })).toBeUndefined()
  expect(of({ returnLeft: 900 })).toBeUndefined()
  expect(of({ stands: 'shims' })).toBeUndefined()
})

test('a country without inches or with them is spoken to in its own', () => {
  const box = { value: 876.3, pm: 2, why: '' }
  expect(standsInWords(box, 'inch')).toBe('34 1/2 in')
  expect(saidSo(box, 'inch')).toBe('34 1/2 in')
  expect(standsInWords({ value: 25, pm: 0, why: '' }, 'inch')).toBe('25 mm')
  expect(standsInWords(box, 'mm')).toBe('876.3 mm ± 2')
  expect(saidSo(box, 'mm')).toBe(876.3)
})
