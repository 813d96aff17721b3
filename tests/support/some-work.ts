import type { ArrangeInput } from '../../src/core/order/arrange'
import type { Operation, OrderReason, Stage } from '../../src/core/plan/types'

/** Operations and reasons by hand, for trying the order without a kitchen. */

export function work(id: string, more: Partial<Operation> = {}): Operation {
  const [kind = id, on = ''] = id.split(':')
  return {
    id,
    kind,
    on: on === '' ? [] : on.split('+'),
    stage: 'base-units',
    title: { key: 'test', values: {} },
    does: [],
    figures: [],
    checks: [],
    cautions: [],
    tools: [],
    people: 1,
    trade: null,
    minutes: { low: 5, typical: 10, high: 20 },
    holdPoint: false,
    stops: [],
    changes: [],
    path: null,
    holding: [],
    lines: [],
    marks: [],
    holes: [],
    rails: [],
    wall: null,
    from: [],
    done: false,
    ...more,
  }
}

export const atStage = (id: string, stage: Stage, more: Partial<Operation> = {}) =>
  work(id, { stage, ...more })

export function must(before: string, after: string, more: Partial<OrderReason> = {}): OrderReason {
  const kind = more.kind ?? 'support'
  const rule = more.rule ?? 'test'
  return {
    id: `${before} < ${after}: ${kind}.${rule}`,
    before,
    after,
    kind,
    rule,
    hard: true,
    cost: 0,
    basis: { kind: 'geometry', why: 'test' },
    from: [],
    figures: [],
    because: { key: 'test', values: {} },
    minLag: 0,
    maxLag: null,
    ...more,
  }
}

/** Nobody lets go between the two. */
export const held = (before: string, after: string) =>
  must(before, after, { kind: 'safety', rule: 'held-until-secured', maxLag: 0 })

export const rather = (before: string, after: string, cost: number) =>
  must(before, after, { kind: 'practice', rule: 'rather', hard: false, cost })

export function input(
  operations: readonly Operation[],
  reasons: readonly OrderReason[],
  more: Partial<ArrangeInput> = {},
): ArrangeInput {
  return {
    operations,
    reasons,
    places: new Map(),
    overridden: new Set(),
    helperIsCalled: true,
    kept: [],
    ...more,
  }
}
