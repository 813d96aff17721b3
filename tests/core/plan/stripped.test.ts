import { describe, expect, test } from 'vitest'
import { standingAt } from '../../../src/core/plan/standing-at'
import type { Plan } from '../../../src/core/plan/types'
import { planOf } from '../../support/kitchens'

const mill = planOf('l-shape')

function found(plan: Plan, operation: string, unit: string, t = 0) {
  const index = plan.operations.findIndex((o) => o.id === operation)
  if (index < 0) throw new Error(`no operation ${operation}`)
  const standing = standingAt(plan, index, t).units.find((u) => u.unit.unit === unit)
  if (standing === undefined) throw new Error(`${unit} is not there at ${operation}`)
  return standing
}

describe('a unit is as its step says it is', () => {
  test('a tall lies stripped on its edge, its legs wound in, and ends upright', () => {
    const start = found(mill, 'stand-up:tall-1', 'tall-1', 0)
    expect(start).toMatchObject({ tilt: { over: 'left', angle: 90 }, shelves: 'out', legs: 'wound-in' })
    expect(found(mill, 'stand-up:tall-1', 'tall-1', 1)).toMatchObject({ tilt: null, shelves: 'out' })
    expect(found(mill, 'place:tall-1', 'tall-1', 1)).toMatchObject({
      tilt: null,
      shelves: 'out',
      legs: 'set',
    })
  })

  test('what came whole keeps its shelves until it is to be lifted', () => {
    expect(found(mill, 'set-legs:tall-1', 'tall-1')).toMatchObject({ shelves: 'in', legs: 'wound-in' })
    expect(found(mill, 'fit-hangers:wall-1', 'wall-1').shelves).toBe('in')
    expect(found(mill, 'hang:wall-1', 'wall-1').shelves).toBe('out')
  })

  test('what is put together here goes up without them', () => {
    expect(found(mill, 'assemble:base-3', 'base-3').shelves).toBe('out')
    expect(found(mill, 'place:base-3', 'base-3', 1).shelves).toBe('out')
  })

  test('they go back in with the fronts, and nobody has them in before', () => {
    for (const [index, operation] of mill.operations.entries()) {
      for (const u of standingAt(mill, index, 1).units) {
        const isLifted = mill.operations
          .slice(0, index + 1)
          .some((o) => o.path !== null && mill.paths[o.path]?.unit === u.unit.unit)
        const isFronted = u.fronts !== 'off'
        if (isLifted)
          expect([operation.id, u.unit.unit, u.shelves]).toEqual([
            operation.id,
            u.unit.unit,
            isFronted ? 'in' : 'out',
          ])
      }
    }
    const end = standingAt(mill, mill.operations.length, 0)
    expect(new Set(end.units.map((u) => u.shelves))).toEqual(new Set(['in']))
  })

  test('no leg is on before it is fitted, nor while it would hold the unit off its blocks', () => {
    expect(found(mill, 'assemble:base-3', 'base-3').legs).toBe('off')
    const units = mill.units.map((u) =>
      u.standUp === null
        ? u
        : { ...u, standUp: { ...u.standUp, blocks: { ...u.standUp.blocks, value: 100 } } },
    ) as Plan['units']
    expect(found({ ...mill, units }, 'stand-up:tall-1', 'tall-1').legs).toBe('off')
  })
})
