/** Each kind of operation is shown being done: with a tool it lists, at a place, moved by the figures of the plan. */
import { describe, expect, test } from 'vitest'
import { type Figure, hasValue } from '../../../src/core/figure'
import type { Plan } from '../../../src/core/plan/types'
import { STAGINGS, stagingAt } from '../../../src/core/staging'
import { type Act, momentAt, type Staging, secondsOf } from '../../../src/core/staging/staging'
import { planOf } from '../../support/kitchens'

const plans = (['one-wall', 'l-shape', 'galley', 'north-american'] as const).map((scene) => ({
  scene,
  plan: planOf(scene),
}))
const all = plans.flatMap(({ scene, plan }) =>
  plan.operations.map((operation, i) => ({ scene, plan, operation, staging: stagingAt(plan, i) as Staging })),
)

/** What is done where no picture can show it, or is not to be acted out, and why. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'isolate lamp': 'the supply is switched off at a board that no survey places',
  'isolate proving-unit': 'for whoever may prove a supply dead',
  'restore-supply proving-unit': 'for whoever may put a supply on again',
  'connect proving-unit': 'for whoever may connect it',
  'connect screwdriver': 'for whoever may connect it',
}

test('it is worked out once for a plan and a place of it, however often it is asked for', () => {
  const [first, second] = plans
  expect(stagingAt(first?.plan as Plan, 3)).toBe(stagingAt(first?.plan as Plan, 3))
  expect(stagingAt(first?.plan as Plan, 3)).not.toBe(stagingAt(second?.plan as Plan, 3))
  const past = first?.plan.operations.length ?? 0
  expect([stagingAt(first?.plan as Plan, past), stagingAt(first?.plan as Plan, past)]).toEqual([null, null])
})

describe('in the four kitchens', () => {
  test('every operation has one, and every kind of operation has its own', () => {
    expect(all.filter(({ staging }) => staging.acts.length === 0).map((x) => x.operation.id)).toEqual([])
    for (const { operation } of all) expect(Object.keys(STAGINGS)).toContain(operation.kind)
  })

  test('every tool is one the operation lists; everything is done at a place of the room', () => {
    const wrong = all.flatMap(({ operation, staging }) =>
      staging.acts
        .filter((a) => a.tool !== 'hands' && !operation.tools.includes(a.tool))
        .map((a) => `${operation.id}: ${a.tool}`),
    )
    expect(wrong).toEqual([])
    const away = all.flatMap(({ operation, staging }) =>
      staging.acts.filter((a) => a.contact === null).map((a) => `${operation.kind} ${a.tool}`),
    )
    expect([...new Set(away)].sort()).toEqual(Object.keys(ELSEWHERE).sort())
  })

  test('a bit goes as deep as the figure of its step says, and a screw as far as it is long', () => {
    let bored = 0
    for (const { plan, operation, staging } of all)
      for (const act of staging.acts) {
        const hole = plan.holes.find((h) => `hole:${h.id}` === act.on)
        if (act.motion.kind === 'bore' && hole !== undefined) {
          const shown = operation.figures.find((f) => f.name === `${hole.id}.depth`)?.figure
          if (shown !== undefined) expect(act.motion.by).toEqual(shown)
          expect(act.motion.by).toBe(hole.depth)
          bored += 1
        }
        if (act.motion.kind === 'drive' && hole !== undefined) expect(act.motion.by).toBe(hole.screwLength)
      }
    expect(bored).toBeGreaterThan(50)
  })

  test('a refused place is never under a tool', () => {
    for (const { plan, staging } of all) {
      const refused = new Set(plan.holes.filter((h) => h.verdict === 'refused').map((h) => `hole:${h.id}`))
      expect(staging.acts.filter((a) => refused.has(a.on))).toEqual([])
    }
  })

  test('no saw is put to a worktop that lies in its place', () => {
    const laid = all.filter(({ operation }) => operation.kind === 'worktop')
    expect(laid.length).toBeGreaterThan(3)
    for (const { staging } of laid) expect(staging.acts.map((a) => a.tool)).toEqual(['level', 'sealant-gun'])
  })

  test('legs are turned as often, and to that length, as the figures of their step say', () => {
    const legs = all.filter(({ operation }) => operation.kind === 'set-legs')
    expect(legs.length).toBeGreaterThan(10)
    for (const { operation, staging } of legs)
      for (const { on, motion } of staging.acts) {
        if (motion.kind !== 'turn') throw new Error(`${operation.id}: ${motion.kind}`)
        const foot = on.split('.').at(-1)
        const named = (name: string) => operation.figures.find((f) => f.name === name)?.figure
        // A tall's are wound right in, to what its step asks to see; turns from how it came are no help then.
        const asked = operation.checks.find((c) => c.id.endsWith(`.${foot}`))?.target
        expect(motion.raises).toEqual(named(`leg.${foot}`) ?? asked)
        if (named(`leg.${foot}`) === undefined) expect(motion.turns).toBeNull()
        const turns = named(`turns.${foot}`)
        if (turns !== undefined) expect(motion.turns).toEqual(turns)
      }
  })

  test('a unit is let down by what the plan says: onto its hooks by their lift, onto its feet by the last of its way', () => {
    for (const { plan, operation, staging } of all) {
      if (operation.path === null) continue
      const carry = staging.acts.find((a) => a.motion.kind === 'carry')?.motion
      if (carry?.kind !== 'carry') throw new Error(`${operation.id} carries nothing`)
      const last = plan.paths[operation.path]?.segments.at(-1)
      if (operation.kind === 'stand-up') continue
      if (last?.kind !== 'move') throw new Error(operation.id)
      expect(carry.lift).toBeCloseTo(last.from.z - last.to.z, 9)
      const hookLift = operation.does.find((m) => m.key === 'operation.hang.hook')?.values['lift']
      if (typeof hookLift === 'object' && 'state' in hookLift && hasValue(hookLift))
        expect(carry.lift).toBeCloseTo(hookLift.value, 9)
    }
  })

  test('heights are measured from the line by the height of each line that is struck', () => {
    const measured = all.filter(({ operation }) => operation.kind === 'set-out-heights')
    expect(measured.length).toBeGreaterThan(3)
    for (const { plan, staging } of measured)
      for (const { on, contact, motion } of staging.acts) {
        if (motion.kind !== 'measure') continue
        const line = plan.lines.find((l) => `line:${l.id}` === on)
        if (line === undefined || !hasValue(line.height) || contact === null) throw new Error(on)
        expect(motion.by).toBe(line.height)
        expect([contact.at.z, motion.to.z]).toEqual([0, line.height.value])
      }
  })
})

/** What a staging is made of: its tools, what they meet and how they move, each once. */
function manner({ acts }: Staging): string {
  const one = (a: Act) => `${a.tool} ${a.on.split(':')[0]} ${a.motion.kind}`
  return [...new Set(acts.map(one))].join(', ')
}

/** Kinds that are shown alike, and why that is right. */
const ALIKE: readonly (readonly [readonly string[], string])[] = [
  [['connect', 'restore-supply'], 'an electrician proves what nobody else may touch: neither is acted out'],
  [['drill-plates', 'drill-rail'], 'holes for what is fixed after are bored the same, whatever it is'],
]

test('no kind shares the staging of another unnoticed', () => {
  const kinds = new Map<string, Set<string>>()
  for (const { operation, staging } of all) {
    const how = manner(staging)
    kinds.set(how, (kinds.get(how) ?? new Set()).add(operation.kind))
  }
  const shared = [...kinds.values()].filter((k) => k.size > 1).map((k) => [...k].sort())
  const unnoticed = shared.filter((k) => !ALIKE.some(([alike]) => k.every((kind) => alike.includes(kind))))
  expect(unnoticed).toEqual([])
})

describe('the moments of it', () => {
  const drilling = all.find(({ operation }) => operation.kind === 'drill-rail')?.staging as Staging

  test('acts follow one another, each from its start to its end', () => {
    const seen: Act[] = []
    let before = -1
    for (let t = 0; t < 1; t += 0.001) {
      const { act, progress } = momentAt(drilling, t)
      if (act === null) throw new Error(`nothing is done at ${t}`)
      if (seen.at(-1) !== act) {
        seen.push(act)
        before = -1
      }
      expect(progress).toBeGreaterThan(before)
      before = progress
    }
    expect(seen).toEqual(drilling.acts)
    expect(momentAt(drilling, 1)).toEqual({ carried: 1, act: null, progress: 1 })
  })

  test('a unit is on its way while hands have it, and in its place for what comes after', () => {
    const hang = all.find(({ operation }) => operation.kind === 'hang')?.staging as Staging
    expect(hang.acts.map((a) => a.motion.kind)).toEqual(['carry', 'tug'])
    expect(momentAt(hang, 0).carried).toBe(0)
    expect(momentAt(hang, 0.3).carried).toBeGreaterThan(0.3)
    expect(momentAt(hang, 0.9)).toMatchObject({ carried: 1, act: { motion: { kind: 'tug' } } })
  })

  test('however many holes there are, nobody watches for longer than eight seconds', () => {
    for (const { staging } of all) expect(secondsOf(staging)).toBeLessThanOrEqual(8)
  })
})

test('packing goes in behind the back from outside: from below where a unit hangs, from above where it stands', () => {
  const packed = (id: string, unitId: string) => {
    const plan = planOf('l-shape')
    const unit = plan.units.find((u) => u.unit === unitId)
    const staging = stagingAt(
      plan,
      plan.operations.findIndex((o) => o.id === id),
    )
    const act = staging?.acts.find((a) => a.tool === 'packers')
    if (unit === undefined || act?.contact == null || act.motion.kind !== 'draw') throw new Error(id)
    return { unit, from: act.contact.at, to: act.motion.to }
  }
  const valueOf = (f: Figure) => (f.state === 'unknown' ? Number.NaN : f.value)
  const hung = packed('second-fix:wall-3', 'wall-3')
  expect(hung.from.z).toBeLessThan(valueOf(hung.unit.underside))
  expect(hung.to.z).toBeGreaterThan(valueOf(hung.unit.underside))
  const standing = packed('restrain:tall-1', 'tall-1')
  expect(standing.from.z).toBeGreaterThan(valueOf(standing.unit.top))
  expect(standing.to.z).toBeLessThan(valueOf(standing.unit.top))
  // Wall a runs along y = 0: both are against it, behind the back.
  for (const { from, to } of [hung, standing])
    for (const { y } of [from, to]) expect(Math.abs(y)).toBeLessThan(5)
})
