import { describe, expect, test } from 'vitest'
import { findingsAt, letterOf, operationOf, placesOf, toSettle } from '../../../src/core/plan/findings-at'
import type { Operation } from '../../../src/core/plan/types'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const operation = (id: string): Operation => {
  const found = plan.operations.find((o) => o.id === id)
  if (found === undefined) throw new Error(`no operation ${id}`)
  return found
}
const idsAt = (id: string) => findingsAt(plan, operation(id)).map((f) => f.id)
const finding = (id: string) => {
  const found = plan.findings.find((f) => f.id === id)
  if (found === undefined) throw new Error(`no finding ${id}`)
  return found
}

describe('what is told at a step', () => {
  test('what stops it, and what bears on its unit; the gravest first', () => {
    const at = findingsAt(plan, operation('stand-up:tall-1'))
    for (const id of operation('stand-up:tall-1').stops) expect(at.map((f) => f.id)).toContain(id)
    expect(at.map((f) => f.id)).toContain('lift-over-filter:tall-1')
    const rank = at.map((f) => ['stop', 'ask', 'warn', 'note'].indexOf(f.weight))
    expect(rank).toEqual([...rank].sort((a, b) => a - b))
  })

  test('of a hole where it is marked and made, not at every step of its unit', () => {
    const refused = 'hole-refused:rail.rail-1.a-s4'
    expect(idsAt('drill-rail:rail-1')).toContain(refused)
    expect(idsAt('drill-rail:rail-2')).not.toContain(refused)
    expect(idsAt('hang:wall-1')).not.toContain(refused)
    expect(idsAt('restrain:tall-1')).toContain('hole-past-50:a')
    expect(idsAt('level:tall-1')).not.toContain('hole-past-50:a')
  })

  test('of a lift where it is lifted', () => {
    const at = plan.operations.filter((o) =>
      findingsAt(plan, o).some((f) => f.id === 'lift-near-filter:wall-1'),
    )
    expect(at.map((o) => o.id)).toEqual(['hang:wall-1'])
  })

  test('every finding that stops a step is told there, in every step', () => {
    for (const o of plan.operations) {
      const told = new Set(findingsAt(plan, o).map((f) => f.id))
      expect(o.stops.filter((id) => !told.has(id))).toEqual([])
    }
  })
})

describe('what holds the work', () => {
  test('what stops a step; where nothing does, the asks about what it drills', () => {
    expect(toSettle(plan, operation('stand-up:tall-1')).map((f) => f.id)).toEqual(
      expect.arrayContaining([...operation('stand-up:tall-1').stops]),
    )
    expect(toSettle(plan, operation('restrain:tall-1')).map((f) => f.id)).toEqual(['hole-past-50:a'])
    expect(toSettle(plan, operation('hang:wall-1'))).toEqual([])
  })

  test('tracing is not held by what tracing settles', () => {
    expect(operation('trace:a').holdPoint).toBe(true)
    expect(toSettle(plan, operation('trace:a'))).toEqual([])
  })
})

describe('where a finding is looked at', () => {
  test('at the step it stops, else at the work it bears on', () => {
    expect(operationOf(plan, finding('trace-first:a'))?.id).toBe('fit-nogging:a.nogging-1')
    expect(operationOf(plan, finding('hole-refused:rail.rail-1.a-s4'))?.id).toBe('drill-rail:rail-1')
    expect(operationOf(plan, finding('lift-over-filter:worktop-a'))?.id).toBe('worktop:worktop-a')
    expect(operationOf(plan, finding('assumed-figures:kitchen'))).toBeUndefined()
  })

  test('a finding with a place on a wall is looked at somewhere, whatever it is about', () => {
    for (const f of plan.findings) if (f.where !== null) expect(operationOf(plan, f), f.id).toBeDefined()
  })

  test('at its holes, its spot, its unit, its part, or all of its wall', () => {
    expect(placesOf(plan, finding('hole-past-50:a')).map((p) => p.kind)).toEqual(['hole', 'hole'])
    expect(placesOf(plan, finding('bracket-needs-timber:base-3'))).toEqual([
      { kind: 'spot', wall: 'a', along: 2140, height: expect.closeTo(-178, 0) },
    ])
    expect(placesOf(plan, finding('lift-over-filter:tall-1'))).toEqual([{ kind: 'unit', unit: 'tall-1' }])
    expect(placesOf(plan, finding('lift-over-filter:worktop-a'))).toEqual([
      { kind: 'part', part: 'worktop-a' },
    ])
    expect(placesOf(plan, finding('trace-first:b'))).toEqual([{ kind: 'wall', wall: 'b' }])
    expect(placesOf(plan, finding('wish-from-bare-floor:worktop-height'))).toEqual([])
  })

  test('without a height it is at the middle of its unit', () => {
    const tall = plan.units.find((u) => u.unit === 'tall-1')
    const [spot] = placesOf(plan, finding('door-strikes-wall:tall-1'))
    if (spot?.kind !== 'spot' || tall?.top.state === 'unknown' || tall?.underside.state === 'unknown')
      throw new Error()
    expect(spot.height).toBe(((tall?.top.value ?? 0) + (tall?.underside.value ?? 0)) / 2)
  })
})

test('letters go on after Z', () => {
  expect([0, 1, 25, 26, 27, 52].map(letterOf)).toEqual(['A', 'B', 'Z', 'AA', 'AB', 'BA'])
})
