import { describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { readJob } from '../../../src/core/operations/job'
import { sharedStarts } from '../../../src/core/operations/runs'
import { workThrough } from '../../../src/core/plan/entry'
import type { Operation, Plan } from '../../../src/core/plan/types'
import { say } from '../../../src/core/words/say'
import { sceneFile } from '../../support/scene-sheets'
import { base, contextOf, workKitchen } from '../../support/work-kitchen'

function planOf(file: KitchenFile): Plan {
  const outcome = workThrough(file)
  if (outcome.kind !== 'plan') throw new Error('no plan')
  return outcome.plan
}
const operation = (plan: Plan, id: string): Operation => {
  const found = plan.operations.find((o) => o.id === id)
  if (found === undefined) throw new Error(`no ${id}`)
  return found
}
const said = ({ does }: Operation): string => does.map((m) => say(m)).join(' ')

const boxes = sceneFile('north-american')
const plan = planOf(boxes)
const standing = (stands: NonNullable<KitchenFile['units']>[number]['stands']): KitchenFile => ({
  ...boxes,
  units: (boxes.units ?? []).map((u) => (u.id === 'base-1' ? { ...u, stands } : u)),
})

describe('boxes on shims', () => {
  test('are shimmed corner by corner, and never wound up on legs', () => {
    const level = operation(plan, 'level:base-1')
    expect(said(level)).toContain(
      'Shim under its sides: back left 9 mm, back right 5 mm, front left 12 mm, front right 8 mm.',
    )
    expect(said(level)).not.toMatch(/\blegs?\b/i)
    expect(level.figures.filter((f) => f.name.startsWith('shim.')).map((f) => say(f.label))).toEqual([
      'shim under the back left corner',
      'shim under the back right corner',
      'shim under the front left corner',
      'shim under the front right corner',
    ])
    expect(level.checks.map((c) => c.ask.key)).toContain('check.every-shim-carries')
    expect(said(operation(plan, 'place:base-1'))).toContain('Lift it; never drag it.')
    expect(plan.operations.some((o) => o.kind === 'set-legs')).toBe(false)
  })

  test('over the high point stand on the floor itself, and that is said only there', () => {
    expect(said(operation(plan, 'level:base-2'))).toContain('Where that is 0 it stands on the floor itself.')
    expect(said(operation(plan, 'level:base-1'))).not.toContain('stands on the floor itself')
  })

  test('on a frame or a cleat are told with it', () => {
    expect(said(operation(planOf(standing('plinth-frame')), 'level:base-1'))).toContain(
      'Frame and shims together come to: back left 9 mm',
    )
    expect(said(operation(planOf(standing('floor-cleat')), 'level:base-1'))).toContain('Cleat and shims')
  })

  test('are screwed through their rails: shimmed at the stud, then screwed, with no bracket', () => {
    const words = said(operation(plan, 'fix:base-1'))
    expect(words).not.toMatch(/bracket/i)
    expect(words.indexOf('shim it solid at the stud')).toBeGreaterThan(0)
    expect(words.indexOf('shim it solid at the stud')).toBeLessThan(words.indexOf('one in each hole'))
  })

  test('with backs at the wall nobody is told to pack nothing behind them', () => {
    expect(said(operation(plan, 'second-fix:wall-1'))).not.toContain('Pack 0 mm')
    expect(said(operation(plan, 'level:wall-1'))).not.toContain('hooked')
  })
})

describe('the high point where two boxes meet', () => {
  const shares = (file: KitchenFile) =>
    sharedStarts(readJob(contextOf(file).context)).map(({ shares, to }) => `${shares.id} before ${to.id}`)

  test('both come before the run goes on to the other side', () => {
    expect(plan.reasons.map((r) => r.id)).toContain(
      'level:sink-base < place:base-1: practice.outward-along-run',
    )
    const at = (id: string) => plan.operations.findIndex((o) => o.id === id)
    expect(at('place:sink-base')).toBeLessThan(at('place:base-1'))
  })

  // The floor rises to 1300 along and falls from there.
  const readings = [1030, 1000, 1030].flatMap((drop, i) =>
    [0, 700].map((out) => ({ id: `f${i}-${out}`, at: { wall: 'a', along: { at: i * 1300 }, out }, drop })),
  )
  const crowned = (lefts: readonly number[]): KitchenFile => ({
    ...workKitchen(),
    units: lefts.map((left, i) => ({ ...base(`b${i + 1}`, 'a', left, 600), stands: 'shims', feet: [] })),
    rails: [],
    appliances: [],
    finishing: [],
    worktops: [],
    floor: { readings },
  })
  test('boxes that meet there share it, with a gap between them they do not', () => {
    expect(shares(crowned([100, 700, 1300, 1900]))).toEqual(['b3 before b1'])
    expect(shares(crowned([60, 700, 1320, 1940]))).toEqual([])
  })
})
