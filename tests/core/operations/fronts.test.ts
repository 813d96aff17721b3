/** What is said where fronts go on: what is fitted is called by its name, and a unit nothing holds yet is told of. */
import { describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { workOutOperations } from '../../../src/core/operations/operations'
import { workThrough } from '../../../src/core/plan/entry'
import type { Operation } from '../../../src/core/plan/types'
import { say } from '../../../src/core/words/say'
import { planOf, sceneFile } from '../../support/kitchens'
import { base, contextOf, workKitchen } from '../../support/work-kitchen'

type Units = NonNullable<KitchenFile['units']>

const DOOR = { id: 'd', width: 596, height: 570, thickness: 18 }
const DRAWER = { id: 'top', height: 140 }

const worksOf = (units: Units, more: Partial<KitchenFile> = {}): readonly Operation[] =>
  workOutOperations(
    contextOf({ ...workKitchen(), units, rails: [], appliances: [], finishing: [], worktops: [], ...more })
      .context,
  )

const frontsOf = (more: Partial<Units[number]>) =>
  worksOf([base('b1', 'a', 600, 600, more)]).find((o) => o.id === 'hang-fronts:b1') as Operation

describe('fronts are called by what they are', () => {
  test('drawers alone are fitted, with no word of a door', () => {
    const fronts = frontsOf({ doors: [], drawers: [DRAWER] })
    expect(say(fronts.title)).toBe('Fit the drawers of base unit 1 and their fronts')
    const all = [...fronts.does, ...fronts.checks.map((c) => c.ask)].map((m) => say(m)).join(' ')
    expect(all).not.toMatch(/\bdoor|hang the/i)
    expect(all).toMatch(/catches on both its runners/)
    expect(all).toMatch(/Does every drawer of base unit 1 run out and in/)
  })

  test('doors alone are hung, with no word of a drawer', () => {
    const fronts = frontsOf({ doors: [DOOR], drawers: [] })
    expect(say(fronts.title)).toBe('Hang the fronts of base unit 1')
    const all = [...fronts.does, ...fronts.checks.map((c) => c.ask)].map((m) => say(m)).join(' ')
    expect(all).not.toMatch(/drawer|runner/i)
  })

  test('a unit with both says both', () => {
    const fronts = frontsOf({ doors: [DOOR], drawers: [DRAWER] })
    expect(say(fronts.title)).toBe('Fit the drawers and hang the doors of base unit 1')
    const does = fronts.does.map((m) => say(m)).join(' ')
    expect(does).toMatch(/Hang the doors \(1\)\. Fit the drawers \(1\)/)
  })
})

describe('a unit for which no place to screw it has been found', () => {
  const cautionsAt = (works: readonly Operation[], id: string) =>
    (works.find((o) => o.id === id)?.cautions ?? []).map((c) => say(c.say)).join(' ')

  test('in the shipped kitchen is told of where its drawers go on and before its worktop, and no other is', () => {
    const { operations } = planOf('l-shape')
    const fronts = cautionsAt(operations, 'hang-fronts:base-3')
    expect(fronts).toMatch(
      /^Base unit 3 is not held to Hall partition yet, only to base unit 2 and corner base unit 1: put nothing in its drawers, and open one at a time\./,
    )
    expect(fronts).toMatch(/full drawers, drawn out, can pull it forward/)
    const told = operations.filter((o) => cautionsAt(operations, o.id).includes('is not held to'))
    expect(told.map((o) => o.id).sort()).toEqual(['hang-fronts:base-3', 'worktop:worktop-a'])
    expect(cautionsAt(operations, 'worktop:worktop-a')).toMatch(/settle that before this is laid over it/)
  })

  test('goes without a word when the stud behind it has been proved, or when it was secured all the same', () => {
    const file = sceneFile('l-shape') as {
      walls: { id: string; studs: { id: string; confirmed: string }[] }[]
    }
    const stud = file.walls.flatMap((wall) => wall.studs).find(({ id }) => id === 'a-s9')
    if (stud === undefined) throw new Error('the stud is gone')
    stud.confirmed = 'both-edges'
    const proved = workThrough(file)
    if (proved.kind !== 'plan') throw new Error(proved.kind)
    expect(proved.plan.operations.filter((o) => cautionsAt([o], o.id).includes('is not held to'))).toEqual([])

    const secured = base('b1', 'b', 600, 600, { drawers: [DRAWER] })
    const { context } = contextOf({
      ...workKitchen(),
      units: [secured],
      walls: workKitchen().walls?.map((wall) => ({ ...wall, studs: [] })),
      rails: [],
      appliances: [],
      finishing: [],
      worktops: [],
    })
    expect(cautionsAt(workOutOperations(context), 'hang-fronts:b1')).toMatch(
      /^Base unit 1 is not held to .* yet: put nothing in .* can pull it over/,
    )
    const achieved = { ...context.achieved, states: new Map([['b1', 'secured' as const]]) }
    expect(cautionsAt(workOutOperations({ ...context, achieved }), 'hang-fronts:b1')).not.toMatch(/not held/)
  })

  test('rests on the wall and the timber in it, so that a stud found is cited', () => {
    const fronts = planOf('l-shape').operations.find((o) => o.id === 'hang-fronts:base-3')
    expect(fronts?.from).toContain('walls.a.studs.a-s9')
    const other = planOf('l-shape').operations.find((o) => o.id === 'hang-fronts:base-2')
    expect(other?.from).not.toContain('walls.a.studs.a-s9')
  })
})
