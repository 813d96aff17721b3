import { expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import type { Operation, Plan } from '../../src/core/plan/types'
import { handBuiltPlan, kitchen, mm } from './hand-built'

const rules = (plan: unknown, kitchenJson: unknown = kitchen, log?: unknown): readonly string[] =>
  checkPlan(kitchenJson, plan, log).refusals.map((r) => `${r.rule} | ${r.what}`)

function reordered(plan: Plan, move: (ops: readonly Operation[]) => readonly Operation[]): Plan {
  return { ...plan, operations: move(plan.operations) }
}

/** Takes one operation out and puts it in again right before another. */
function moved(plan: Plan, id: string, before: string): Plan {
  return reordered(plan, (ops) => {
    const op = ops.filter((o) => o.id === id)
    return ops.filter((o) => o.id !== id).flatMap((o) => (o.id === before ? [...op, o] : [o]))
  })
}

test('the plan worked out by hand is accepted', () => {
  expect(checkPlan(kitchen, handBuiltPlan())).toEqual({ ok: true, refusals: [] })
})

test('what is no plan is refused and does not throw', () => {
  for (const nonsense of [null, 3, 'plan', [], {}, { ...handBuiltPlan(), floor: 7 }]) {
    const report = checkPlan(kitchen, nonsense)
    expect(report.ok).toBe(false)
    expect(report.refusals[0]?.rule).toBe('shape')
  }
})

test.each(handBuiltPlan().operations.map((op) => op.id))('without %s it is refused', (id) => {
  const plan = handBuiltPlan()
  const without = reordered(
    { ...plan, reasons: plan.reasons.filter((r) => r.before !== id && r.after !== id) },
    (ops) => ops.filter((op) => op.id !== id),
  )
  expect(rules(without)).toContain(`operation missing | ${id}`)
})

test.each(handBuiltPlan().reasons.map((r) => r.id))(
  'swapped across %s it is refused, reason or no reason',
  (id) => {
    const plan = handBuiltPlan()
    const reason = plan.reasons.find((r) => r.id === id)
    const swapped = moved(plan, reason?.after ?? '', reason?.before ?? '')
    expect(rules(swapped).length).toBeGreaterThan(0)
    const untold = { ...swapped, reasons: plan.reasons.filter((r) => r.id !== id) }
    expect(rules(untold).length).toBeGreaterThan(0)
  },
)

test('an operation twice, or one nobody asked for', () => {
  const plan = handBuiltPlan()
  const [first] = plan.operations
  if (first === undefined) throw new Error('no operations')
  expect(rules(reordered(plan, (ops) => [first, ...ops]))).toContain('operation twice | check-delivery:room')
  const other = { ...first, id: 'paint:room', kind: 'paint' }
  expect(rules(reordered(plan, (ops) => [other, ...ops]))).toContain('operation unknown | paint:room')
})

test('a millimetre is noticed in lines, marks, legs, holes and poses', () => {
  const plan = handBuiltPlan()
  const shifted: readonly (readonly [string, Plan])[] = [
    [
      'line',
      {
        ...plan,
        lines: plan.lines.map((l) => (l.of === 'plate' ? { ...l, height: mm(1049, 'lines.line') } : l)),
      },
    ],
    [
      'mark',
      { ...plan, marks: plan.marks.map((m, i) => (i === 0 ? { ...m, along: mm(301, 'lines.line') } : m)) },
    ],
    [
      'leg',
      {
        ...plan,
        units: plan.units.map((u) => ({
          ...u,
          legs: u.legs.map((leg, i) => (i === 0 ? { ...leg, extension: mm(152, 'lines.line') } : leg)),
        })),
      },
    ],
    [
      'hole',
      { ...plan, holes: plan.holes.map((h, i) => (i === 0 ? { ...h, along: mm(341, 'lines.line') } : h)) },
    ],
    [
      'hole',
      { ...plan, holes: plan.holes.map((h, i) => (i === 3 ? { ...h, height: mm(-171, 'lines.line') } : h)) },
    ],
    [
      'pose',
      {
        ...plan,
        units: plan.units.map((u) => (u.pose === null ? u : { ...u, pose: { ...u.pose, x: u.pose.x + 1 } })),
      },
    ],
  ]
  for (const [rule, bent] of shifted) {
    expect(rules(bent).some((r) => r.startsWith(rule))).toBe(true)
  }
})

test('a hole in a band must be called refused, and one in no band must not', () => {
  const plan = handBuiltPlan()
  const socketOverHole = {
    ...kitchen,
    walls: kitchen.walls.map((w) => ({
      ...w,
      accessories: w.accessories.map((a) => ({ ...a, along: { at: 345 } })),
    })),
  }
  expect(rules(plan, socketOverHole)).toContain('verdict | plate.w1.left.1')
  const refused = {
    ...plan,
    holes: plan.holes.map((h, i) => (i === 0 ? { ...h, verdict: 'refused' as const, number: null } : h)),
  }
  expect(rules(refused)).toContain('verdict | plate.w1.left.1')
  // It is refused, and an operation drills it all the same.
  expect(rules(refused)).toContain('hole | plate.w1.left.1')
})

test('an accessory on the other face counts in a thin wall, mirrored', () => {
  const other = (thickness: number) => ({
    ...kitchen,
    walls: kitchen.walls.map((w) => ({
      ...w,
      thickness,
      otherFaceShift: 0,
      accessories: [
        // 2060 from the left end as seen from the other face: 340 from the left end as seen from here.
        {
          id: 'socket',
          kind: 'socket',
          face: 'other',
          along: { at: 2060, face: 'other' },
          height: { up: 60 },
          width: 86,
          tall: 86,
        },
      ],
    })),
  })
  const plan = { ...handBuiltPlan(), bands: [] }
  expect(rules(plan, other(100))).toContain('verdict | plate.w1.left.1')
  expect(rules(plan, other(101))).toEqual([])
})

test('a hole past 50 mm must be asked about until the wall is traced that deep and proved dead', () => {
  const long = { ...kitchen, fixings: kitchen.fixings.map((f) => ({ ...f, length: 60 })) }
  const deep = (verdict: 'trace first' | 'ask'): Plan => {
    const plan = handBuiltPlan()
    return {
      ...plan,
      holes: plan.holes.map((h) => ({
        ...h,
        depth: mm(58, 'fixings.plug.length'),
        verdict,
      })),
    }
  }
  expect(rules(deep('trace first'), long)).toContain('verdict | plate.w1.left.1')
  expect(rules(deep('ask'), long)).toEqual([])
  const proved = { ...long, walls: long.walls.map((w) => ({ ...w, tracedDepth: 70, provedDead: true })) }
  expect(rules(deep('trace first'), proved)).toEqual([])
})

test('something put in the way is run into', () => {
  const boxAt = (near: number, bottom: number) => ({
    ...kitchen,
    boxes: [
      {
        id: 'box',
        kind: 'boxing',
        wall: 'a',
        left: { at: 850 },
        right: { at: 1000 },
        near,
        out: near + 100,
        bottom: { up: bottom },
        top: { up: bottom + 200 },
      },
    ],
  })
  expect(rules(handBuiltPlan(), boxAt(400, 500))).toContain('path blocked | path of w1')
  expect(rules(handBuiltPlan(), boxAt(700, -600))).toContain('path blocked | path of b1')
  expect(rules(handBuiltPlan(), boxAt(700, 1200))).toEqual([])
})

test('a wall unit hung where the base unit is in its way must come first', () => {
  const deep = { ...kitchen, units: kitchen.units.map((u) => (u.id === 'w1' ? { ...u, depth: 500 } : u)) }
  const low = handBuiltPlan()
  const path = low.paths[0]
  if (path === undefined) throw new Error('no path')
  // Lifted straight up through where the base unit will stand.
  const through: Plan = {
    ...low,
    units: low.units.map((u) =>
      u.unit === 'w1'
        ? { ...u, depth: mm(500, 'units.w1.depth'), solid: u.solid.map((b) => ({ ...b, y1: 500 })) }
        : u,
    ),
    paths: [
      {
        ...path,
        blockedBy: ['b1'],
        segments: [
          {
            kind: 'move',
            from: { x: 300, y: -400, z: -990, yaw: 0 },
            to: { x: 300, y: -400, z: 380, yaw: 0 },
          },
          { kind: 'move', from: { x: 300, y: -400, z: 380, yaw: 0 }, to: { x: 300, y: 0, z: 380, yaw: 0 } },
          { kind: 'move', from: { x: 300, y: 0, z: 380, yaw: 0 }, to: { x: 300, y: 0, z: 368, yaw: 0 } },
        ],
      },
      ...low.paths.slice(1),
    ],
  }
  expect(rules(through, deep)).toContain('reason missing | hang:w1 < place:b1')
  const told: Plan = {
    ...through,
    reasons: [
      ...through.reasons,
      {
        ...(through.reasons[0] as Plan['reasons'][number]),
        id: 'hang:w1 < place:b1: geometry.path-blocked',
        before: 'hang:w1',
        after: 'place:b1',
        kind: 'geometry',
        rule: 'path-blocked',
      },
    ],
  }
  expect(rules(told, deep)).toEqual([])
})

test('a reason that says geometry where nothing is in the way is refused', () => {
  const plan = handBuiltPlan()
  const claimed = {
    ...(plan.reasons[0] as Plan['reasons'][number]),
    id: 'hang:w1 < place:b1: geometry.path-blocked',
    before: 'hang:w1',
    after: 'place:b1',
    kind: 'geometry' as const,
    rule: 'path-blocked',
  }
  expect(rules({ ...plan, reasons: [...plan.reasons, claimed] })).toEqual([`geometry | ${claimed.id}`])
})

test('nobody lets go before a unit is secured', () => {
  const plan = handBuiltPlan()
  expect(rules(moved(plan, 'assemble:b1', 'level:w1'))).toContain('let go | assemble:b1')
  const alone = reordered(plan, (ops) =>
    ops.map((op) => (op.id === 'level:w1' ? { ...op, holding: [] } : op)),
  )
  expect(rules(alone)).toContain('let go | level:w1')
})

test('nothing is live again before the last hole, nor left off', () => {
  const plan = handBuiltPlan()
  expect(rules(moved(plan, 'restore-supply:room', 'fix:b1'))).toContain('order | restore-supply:room')
  const off = reordered(plan, (ops) => ops.filter((op) => op.id !== 'restore-supply:room'))
  expect(rules(off)).toContain('operation missing | restore-supply:room')
})

test('states follow on one another', () => {
  const plan = handBuiltPlan()
  const jumped = reordered(plan, (ops) =>
    ops.map((op) =>
      op.id === 'lock:w1'
        ? { ...op, changes: [{ unit: 'w1', from: 'hooked' as const, to: 'secured' as const }] }
        : op,
    ),
  )
  expect(rules(jumped)).toContain('state | lock:w1')
})

test('a leg that does not reach is not called reaching', () => {
  const short = {
    ...kitchen,
    units: kitchen.units.map((u) => (u.id === 'b1' ? { ...u, legs: { ...u.legs, min: 170, max: 190 } } : u)),
  }
  const found = rules(handBuiltPlan(), short)
  expect(found).toContain('height demand | leg-reach:b1.bl')
  expect(found).toContain('leg | b1.bl min')
})

test('a unit whose weight is not over its feet is not left standing', () => {
  const behind = {
    ...kitchen,
    units: kitchen.units.map((u) =>
      'feet' in u ? { ...u, feet: u.feet.map((f) => ({ ...f, y: f.y / 4 })) } : u,
    ),
  }
  expect(rules(handBuiltPlan(), behind)).toContain('standing | b1')
})

test('what is not known stays unknown, and what is known is not called unknown', () => {
  const unread = {
    ...kitchen,
    floor: { readings: kitchen.floor.readings.map((r) => (r.id === 'r1' ? { ...r, drop: null } : r)) },
  }
  const found = rules(handBuiltPlan(), unread)
  expect(found).toContain('unknown | base-underside')
  expect(found).toContain('leg | b1.bl floor')
  const plan = handBuiltPlan()
  const shy: Plan = {
    ...plan,
    units: plan.units.map((u) => ({
      ...u,
      left: {
        state: 'unknown',
        unit: 'mm',
        basis: { kind: 'survey' },
        from: [],
        missing: ['units.b1.order.left.at'],
      },
    })),
  }
  const refused = rules(shy)
  expect(refused).toContain('unit | b1 left')
  expect(refused).toContain('figure | plan.units.b1.left')
})

test('figures cite facts of this kitchen', () => {
  const plan = handBuiltPlan()
  const cites = (...from: readonly string[]): readonly string[] =>
    rules({ ...plan, lines: plan.lines.map((l, i) => (i === 1 ? { ...l, height: mm(-130, ...from) } : l)) })
  expect(cites('units.b1.height', 'walls.a.layers.plaster.thickness', 'ceiling.c1.height')).toEqual([])
  expect(cites('units.b9.height')).toEqual(['figure | plan.lines.a.base-top.height'])
  expect(cites('units.b1.colour')).toEqual(['figure | plan.lines.a.base-top.height'])
  expect(cites()).toEqual(['figure | plan.lines.a.base-top.height'])
})

test('what was read on the day replaces what was planned', () => {
  const log = {
    format: 'dryrun-daylog',
    version: 1,
    entries: [
      { id: 'e1', kind: 'done', operation: 'strike:line' },
      { id: 'e2', kind: 'set', unit: 'b1', edge: 'underside', down: 848 },
      { id: 'e3', kind: 'done', operation: 'isolate:room' },
      { id: 'e4', kind: 'correct', entry: 'e3' },
    ],
  }
  const found = rules(handBuiltPlan(), kitchen, log)
  expect(found).toContain('height | b1')
  expect(found).toContain('done | strike:line')
  expect(found).not.toContain('done | isolate:room')
})
