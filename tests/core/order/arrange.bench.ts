import { bench, describe } from 'vitest'
import { workOutOperations } from '../../../src/core/operations/operations'
import { arrange } from '../../../src/core/order/arrange'
import { workOutReasons } from '../../../src/core/order/reasons'
import { workPlaces } from '../../../src/core/plan/work-places'
import { contextOf, longKitchen } from '../../support/work-kitchen'

/** Thirty units, some 250 operations: the order is meant to take less than 8 ms. */
describe('thirty units', () => {
  const { context } = contextOf(longKitchen(30))
  const operations = workOutOperations(context)
  const reasons = workOutReasons(context, operations)
  const input = {
    operations,
    reasons,
    places: workPlaces(operations, context.units, context.survey.frames),
    overridden: new Set<string>(),
    helperIsCalled: true,
    kept: [],
  }
  bench('operations', () => {
    workOutOperations(context)
  })
  bench('reasons', () => {
    workOutReasons(context, operations)
  })
  bench('arrange', () => {
    arrange(input)
  })
})
