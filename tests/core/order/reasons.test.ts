import { beforeAll, describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { workOutOperations } from '../../../src/core/operations/operations'
import { workOutReasons } from '../../../src/core/order/reasons'
import { workThrough } from '../../../src/core/plan/entry'
import type { Operation, OrderReason } from '../../../src/core/plan/types'
import { say } from '../../../src/core/words/say'
import { withFact } from '../../support/facts'
import { base, contextOf, hung, planOf, tall, workKitchen } from '../../support/work-kitchen'

let operations: readonly Operation[]
let reasons: readonly OrderReason[]
const found = (before: string, after: string, rule: string) =>
  reasons.find((r) => r.before === before && r.after === after && r.rule === rule)

beforeAll(() => {
  const { context } = contextOf(workKitchen())
  operations = workOutOperations(context)
  reasons = workOutReasons(context, operations)
})

describe('each rule', () => {
  test.each([
    ['check-delivery:room', 'assemble:b1', 'delivery-before-assembly', 'support'],
    ['isolate:room', 'drill-plates:w1', 'isolate-before-hole', 'safety'],
    ['asbestos-check:room', 'restrain:t1', 'isolate-before-hole', 'safety'],
    ['isolate:room', 'fit-nogging:b.nogging-w3-second-fixing', 'isolate-before-hole', 'safety'],
    ['trace:a', 'drill-plates:w1', 'trace-before-hole', 'safety'],
    ['trace:b', 'fix:b4', 'trace-before-hole', 'safety'],
    ['strike:line', 'read-floor:room', 'line-before-marks', 'datum'],
    ['strike:line', 'set-out-heights:a', 'line-before-marks', 'datum'],
    ['read-floor:room', 'set-out-heights:a', 'floor-before-heights', 'datum'],
    ['read-floor:room', 'set-legs:b1', 'floor-before-heights', 'datum'],
    ['set-out-heights:a', 'mark-holes:a', 'heights-before-holes', 'datum'],
    ['mark-holes:a', 'drill-plates:w1', 'heights-before-holes', 'datum'],
    ['set-out-heights:a', 'level:b1', 'lines-before-placing', 'datum'],
    ['set-out-widths:a', 'stand-up:t1', 'lines-before-placing', 'datum'],
    ['find-studs:b', 'mark-holes:b', 'studs-before-holes', 'datum'],
    ['fit-nogging:b.nogging-w3-second-fixing', 'second-fix:w3', 'timber-before-hole', 'support'],
    ['assemble:b1', 'set-legs:b1', 'assembled-before-placed', 'support'],
    ['set-legs:b1', 'place:b1', 'legs-before-placed', 'datum'],
    ['set-legs:t1', 'stand-up:t1', 'legs-before-placed', 'datum'],
    ['fit-hangers:w1', 'hang:w1', 'hangers-before-hung', 'support'],
    ['fix-plates:w1', 'hang:w1', 'plates-before-hung', 'support'],
    ['fix-rail:r1', 'hang:w3', 'plates-before-hung', 'support'],
    ['drill-rail:r1', 'fix-rail:r1', 'drill-before-fix', 'support'],
    ['place:b1', 'level:b1', 'placed-before-levelled', 'support'],
    ['level:w1', 'lock:w1', 'levelled-before-locked', 'datum'],
    ['level:b1', 'fix:b1', 'levelled-before-fixed', 'datum'],
    ['level:b2', 'join:b2+b3', 'levelled-before-fixed', 'datum'],
    ['restrain:t1', 'join:b1+t1', 'levelled-before-fixed', 'datum'],
    ['lock:w3', 'second-fix:w3', 'locked-before-secured', 'support'],
    ['hang:w1', 'level:w1', 'held-until-secured', 'safety'],
    ['level:t1', 'restrain:t1', 'held-until-secured', 'safety'],
    ['fix:b1', 'hang-fronts:b1', 'secured-before-fronts', 'safety'],
    ['restrain:t1', 'hang-fronts:t1', 'secured-before-fronts', 'safety'],
    ['lock:w1', 'finish:top-trim', 'secured-before-loaded', 'support'],
    ['fix:b1', 'prove:room', 'all-secured-before-hold-point', 'support'],
    ['join:b2+b3', 'prove:room', 'all-secured-before-hold-point', 'support'],
    ['prove:room', 'worktop:top', 'hold-point-before-worktop', 'safety'],
    ['worktop:top', 'connect:hob', 'worktop-before-appliance', 'support'],
    ['worktop:top', 'connect:dishwasher', 'worktop-before-appliance', 'support'],
    ['worktop:top', 'finish:back', 'worktop-before-upstand', 'support'],
    ['call-trade:gas', 'connect:hob', 'trade-before-connect', 'service'],
    ['plinth:kick', 'snag:room', 'snag-last', 'finish'],
  ])('hard: %s < %s by %s (%s)', (before, after, rule, kind) => {
    const reason = found(before, after, rule)
    expect(reason?.hard).toBe(true)
    expect(reason?.kind).toBe(kind)
    expect(reason?.cost).toBe(0)
  })

  test.each([
    ['fix:b5', 'panel:end', 'fixed-before-panel', 20],
    ['worktop:top', 'plinth:kick', 'worktop-before-plinth', 10],
    ['worktop:top', 'hang-fronts:b1', 'fronts-last', 15],
    ['connect:sink', 'plinth:kick', 'plinth-after-connect', 10],
    ['level:t1', 'hang:w1', 'tall-before-wall', 30],
    ['hang:w1', 'place:b1', 'wall-before-base', 20],
    ['place:c1', 'place:b3', 'corner-before-neighbours', 40],
    ['place:c1', 'place:b4', 'corner-before-neighbours', 40],
    ['place:b3', 'place:b2', 'outward-along-run', 15],
    ['level:c1', 'place:b3', 'levelled-before-next', 25],
    ['level:c1', 'place:b4', 'levelled-before-next', 25],
    ['level:b3', 'place:b2', 'levelled-before-next', 25],
    ['join:b3+c1', 'join:b2+b3', 'joins-outward', 5],
    ['join:b1+t1', 'fix:b1', 'join-before-fix', 10],
    ['level:c1', 'level:b4', 'outward-along-run', 15],
    ['join:b2+b3', 'fix:b2', 'join-before-fix', 10],
    ['fix:b4', 'panel:end', 'panels-after-run', 15],
    ['panel:end', 'worktop:top', 'panels-after-run', 15],
    ['stand-up:t1', 'hang-fronts:b1', 'heavy-before-fronts', 10],
    ['hang-fronts:w1', 'finish:top-trim', 'fronts-before-cornice', 5],
    ['trace:a', 'isolate:room', 'trace-while-live', 5],
  ])('preferred: %s < %s by %s, at %i min', (before, after, rule, cost) => {
    const reason = found(before, after, rule)
    expect(reason?.hard).toBe(false)
    expect(reason?.cost).toBe(cost)
  })

  test('is said in words, and nearly always with a figure of this room', () => {
    for (const reason of reasons) expect(say(reason.because)).not.toMatch(/\[no |!/)
    const cited = reasons.filter((reason) => reason.figures.some((figure) => figure.from.length > 0))
    expect(cited.length / reasons.length).toBeGreaterThanOrEqual(0.95)
  })

  test('has an id that says what it is, and rests on facts', () => {
    for (const reason of reasons) {
      expect(reason.id).toBe(`${reason.before} < ${reason.after}: ${reason.kind}.${reason.rule}`)
      expect(reason.from.length).toBeGreaterThan(0)
      expect([...reason.from].sort()).toEqual([...new Set(reason.from)])
    }
    expect(new Set(reasons.map((r) => r.id)).size).toBe(reasons.length)
  })

  test('ties only operations that are there, and holds together only one unit’s own', () => {
    const ids = new Set(operations.map((o) => o.id))
    for (const reason of reasons) {
      expect(ids).toContain(reason.before)
      expect(ids).toContain(reason.after)
      if (reason.maxLag === 0) expect(reason.before.split(':')[1]).toBe(reason.after.split(':')[1])
    }
  })
})

/** Planned again with one fact taken away or changed: the reason as it is then, or undefined. */
function again(file: KitchenFile, fact: string, typed: unknown, id: string): OrderReason | undefined {
  const outcome = workThrough(withFact(file, fact, typed))
  if (outcome.kind !== 'plan') throw new Error(`no plan: ${JSON.stringify(outcome).slice(0, 500)}`)
  return outcome.plan.reasons.find((reason) => reason.id === id)
}

describe('take away a fact a reason cites, and it goes or changes', () => {
  test.each([
    ['units.t1.kind', 'base', 'stand-up:t1 < place:t1: safety.held-until-secured'],
    ['units.w1.stands', null, 'fit-hangers:w1 < hang:w1: support.hangers-before-hung'],
    ['units.w1.stands', 'rail', 'fix-plates:w1 < hang:w1: support.plates-before-hung'],
    ['units.b1.stands', 'shims', 'set-legs:b1 < place:b1: datum.legs-before-placed'],
    ['rails.r1.units', ['w3'], 'fix-rail:r1 < hang:w4: support.plates-before-hung'],
    ['walls.b.construction', 'masonry', 'find-studs:b < mark-holes:b: datum.studs-before-holes'],
    ['walls.b.construction', 'masonry', 'lock:w3 < second-fix:w3: safety.held-until-secured'],
    ['walls.b.studs.s3.confirmed', 'one-beep', 'find-studs:b < mark-holes:b: datum.studs-before-holes'],
    ['survey.houseBuilt', 2010, 'asbestos-check:room < restrain:t1: safety.isolate-before-hole'],
    ['survey.houseBuilt', 1930, 'asbestos-check:room < restrain:t1: safety.isolate-before-hole'],
    ['appliances.hob.fuel', 'electric', 'call-trade:gas < connect:hob: service.trade-before-connect'],
    ['appliances.hob.over', null, 'worktop:top < connect:hob: support.worktop-before-appliance'],
    ['units.dw.applianceBay', null, 'worktop:top < connect:dishwasher: support.worktop-before-appliance'],
    ['worktops.top.over', ['b1'], 'worktop:top < hang-fronts:b2: finish.fronts-last'],
    ['finishing.kick.of', ['b4'], 'connect:dishwasher < plinth:kick: service.plinth-after-connect'],
    ['finishing.end.of', ['b4'], 'fix:b5 < panel:end: finish.fixed-before-panel'],
    ['units.w1.order.left.at', 2400, 'hang:w1 < place:b1: practice.wall-before-base'],
    ['units.b2.order.left.at', 1830, 'join:b2+b3 < fix:b2: practice.join-before-fix'],
    ['walls.a.layers.p.thickness', null, 'trace:a < drill-plates:w1: safety.trace-before-hole'],
    ['walls.a.layers.p.thickness', 20, 'isolate:room < drill-plates:w1: safety.isolate-before-hole'],
    ['units.w1.hanging.plateBelowTop', 60, 'mark-holes:a < drill-plates:w1: datum.heights-before-holes'],
    ['floor.readings.f1.drop', 990, 'read-floor:room < set-out-heights:a: datum.floor-before-heights'],
    ['units.b1.assembled', 'built', 'check-delivery:room < assemble:b1: support.delivery-before-assembly'],
  ])('%s → %j: %s', (fact, typed, id) => {
    const was = reasons.find((reason) => reason.id === id)
    expect(was, id).toBeDefined()
    expect(JSON.stringify(again(workKitchen(), fact, typed, id))).not.toBe(JSON.stringify(was))
  })

  test('what a reason does not rest on leaves it as it is', () => {
    const id = 'place:b1 < level:b1: support.placed-before-levelled'
    const was = reasons.find((reason) => reason.id === id)
    for (const [fact, typed] of [
      ['appliances.hob.fuel', 'electric'],
      ['walls.b.studs.s1.confirmed', 'one-beep'],
      ['finishing.end.width', 25],
    ] as const) {
      expect(was?.from).not.toContain(fact)
      expect(JSON.stringify(again(workKitchen(), fact, typed, id))).toBe(JSON.stringify(was))
    }
  })
})

describe('geometry', () => {
  /** A galley: a tall on one side, bases on the other. So narrow, the tall needs their floor to be stood up. */
  const galley = (gap: number, length = 3200): KitchenFile => {
    const corners = [
      [0, 0],
      [0, gap],
      [length, 0],
      [length, gap],
    ] as const
    const lengths = { a: length, b: gap, c: length, d: gap }
    return {
      ...workKitchen(),
      closed: true,
      walls: Object.entries(lengths).map(([id, long]) => ({
        id,
        length: long,
        cornerRight: { angle: 90 },
        construction: 'masonry' as const,
      })),
      units: [tall('t1', 'a', 0), ...[0, 1, 2, 3].map((i) => base(`b${i + 1}`, 'c', i * 600, 600))],
      rails: [],
      appliances: [],
      finishing: [],
      worktops: [],
      ceiling: corners.map(([at, out], i) => ({
        id: `c${i}`,
        at: { wall: 'a', along: { at }, out },
        height: { up: 1400 },
      })),
      floor: {
        readings: corners.map(([at, out], i) => ({
          id: `f${i}`,
          at: { wall: 'a', along: { at }, out },
          drop: 1000,
        })),
      },
    }
  }

  const geometryIn = (file: KitchenFile) => {
    const { context } = contextOf(file)
    return workOutReasons(context, workOutOperations(context)).filter((r) => r.kind === 'geometry')
  }

  test('a tall is stood up before what will stand on the floor it needs, and both bodies are cited', () => {
    const tilts = geometryIn(galley(1150)).filter((r) => r.rule === 'tilt-floor')
    expect(tilts.length).toBeGreaterThan(0)
    for (const reason of tilts) {
      expect(reason.before).toBe('stand-up:t1')
      const other = reason.after.split(':')[1]
      expect(reason.from).toEqual(
        expect.arrayContaining([
          'units.t1',
          'units.t1.height',
          `units.${other}`,
          `units.${other}.order.left.at`,
        ]),
      )
    }
  })

  test('move it out of the way and the reason goes', () => {
    expect(geometryIn(galley(2500)).filter((r) => r.rule === 'tilt-floor')).toEqual([])
  })

  test('beats the order of stages: a base that cannot come in past the tall goes in before it', () => {
    const plan = planOf(galley(1200, 2700))
    const ids = plan.operations.map((o) => o.id)
    expect(plan.reasons.find((r) => r.id === 'place:b4 < place:t1: geometry.path-blocked')?.hard).toBe(true)
    expect(ids.indexOf('place:b4')).toBeLessThan(ids.indexOf('stand-up:t1'))
    expect(ids.indexOf('place:b1')).toBeGreaterThan(ids.indexOf('restrain:t1'))
  })

  test('an island waits for the line itself, for no wall carries its height', () => {
    const island = base('i1', 'a', 600, 600, { kind: 'island', standOff: 1200 })
    const plan = planOf({
      ...workKitchen(),
      units: [island],
      rails: [],
      appliances: [],
      finishing: [],
      worktops: [],
    })
    const reason = plan.reasons.find((r) => r.id === 'strike:line < level:i1: datum.line-before-marks')
    expect(reason?.hard).toBe(true)
  })

  test('where geometry proves a habit, the habit says so', () => {
    const { context } = contextOf({
      ...workKitchen(),
      units: [tall('t1', 'a', 0), hung('w1', 'a', 600, 600), base('b1', 'a', 600, 600)],
      rails: [],
      appliances: [],
      finishing: [],
      worktops: [],
    })
    const blocked = {
      ...context,
      paths: context.paths.map((p) => (p.unit === 't1' ? { ...p, blockedBy: ['w1'] } : p)),
    }
    const made = workOutReasons(blocked, workOutOperations(blocked))
    expect(made.find((r) => r.id === 'level:t1 < hang:w1: practice.tall-before-wall')?.because.key).toBe(
      'because.tall-before-wall.proved',
    )
    expect(made.find((r) => r.id === 'place:t1 < hang:w1: geometry.path-blocked')?.hard).toBe(true)
  })
})
