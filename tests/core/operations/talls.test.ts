/** What is said, and what is stopped, where something heavy is stood up, hung or lifted. */
import { describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { workOutOperations } from '../../../src/core/operations/operations'
import type { Operation } from '../../../src/core/plan/types'
import { say } from '../../../src/core/words/say'
import { contextOf, hung, tall, workKitchen } from '../../support/work-kitchen'

type FileUnit = NonNullable<KitchenFile['units']>[number]

function kitchenOf(units: FileUnit[], more: Partial<KitchenFile> = {}): KitchenFile {
  return { ...workKitchen(), units, rails: [], appliances: [], finishing: [], worktops: [], ...more }
}

function step(file: KitchenFile, id: string): Operation {
  const found = workOutOperations(contextOf(file).context).find((operation) => operation.id === id)
  if (found === undefined) throw new Error(`no ${id}`)
  return found
}

const words = (operation: Operation): string => operation.does.map((m) => say(m)).join(' ')
const saidAt = (file: KitchenFile, id: string): string => words(step(file, id))

/** A screw that goes 42 mm into the brick wall: 12 mm of plaster and a hole of 30. Nothing is asked about it. */
const SHALLOW: NonNullable<KitchenFile['fixings']> = [
  {
    id: 'short',
    kind: 'screw-and-plug',
    diameter: 6,
    length: 42,
    bit: 8,
    holeDepth: 30,
    embedment: 28,
    for: ['tall-restraint', 'plate'],
    into: ['brick'],
  },
]

/** Ceiling this far over the line, level; the highest floor lies 1000 below it. */
const under = (ceiling: number): Partial<KitchenFile> => ({
  ceiling: [100, 2000, 3900].map((at, i) => ({
    id: `c${i}`,
    at: { wall: 'a', along: { at }, out: i === 1 ? 3000 : 300 },
    height: { up: ceiling },
  })),
})

describe('standing a tall up', () => {
  // 2070 × 560, legs 80 wound in: blocks 90; √(2070² + 560²) = 2144.4, and 90 + 10 make 2244.4 under 2400.
  test('legs wound in, over blocks 10 mm higher', () => {
    const said = saidAt(kitchenOf([tall('t', 'a', 0)]), 'stand-up:t')
    expect(said).toMatch(/Wind its legs right in, to 80 mm\./)
    expect(said).toMatch(/bottom edge on blocks 90 mm high/)
    expect(said).toMatch(/needs 2\u202f244 mm over the floor/)
    expect(said).toMatch(/heavy behind the blocks/)
  })

  // Under 2200 only the usual blocks fit: 2144.4 + 20 + 10 = 2174.4. The legs come off, and go on when it stands.
  test('no height for such blocks: legs off first, on again before it is moved in', () => {
    const file = kitchenOf([tall('t', 'a', 0)], under(1200))
    expect(saidAt(file, 'stand-up:t')).toMatch(
      /Take its legs off.*blocks 20 mm high.*needs? 2\u202f174 mm|needs 2\u202f174 mm.*blocks 20 mm high/,
    )
    expect(saidAt(file, 'place:t')).toMatch(/fits the legs of the raised side/)
    expect(saidAt(file, 'set-legs:t')).toMatch(/take them off again/)
    expect(saidAt(kitchenOf([tall('t', 'a', 0)]), 'place:t')).not.toMatch(/fits the legs/)
  })

  test('on its legs where its maker lets it: no blocks are spoken of', () => {
    const legs = { ...tall('t', 'a', 0).legs, maySwing: true }
    const operation = step(kitchenOf([tall('t', 'a', 0, { legs })]), 'stand-up:t')
    expect(words(operation)).toMatch(/walk it up over its back legs/)
    expect(words(operation)).not.toMatch(/bottom edge on blocks/)
    expect(operation.figures.map((f) => f.name)).not.toContain('blocks')
  })

  test('one that came built is stripped first; one that came flat was never filled', () => {
    const built = kitchenOf([tall('t', 'a', 0, { assembled: 'built' })])
    expect(saidAt(built, 'stand-up:t')).toMatch(
      /Take doors, drawers and loose shelves out of tall unit 1 first/,
    )
    expect(saidAt(kitchenOf([tall('t', 'a', 0)]), 'stand-up:t')).not.toMatch(/Take doors/)
    const bare = { doors: [], drawers: [], shelves: 0, assembled: 'built' as const }
    expect(saidAt(kitchenOf([tall('t', 'a', 0, bare)]), 'stand-up:t')).not.toMatch(/Take doors/)
  })

  // Two men at the floor: ⅔ × (10 + 10) = 13.3 kg. Half of 26 is 13; half of 42 is 21, which wants the head on blocks:
  // ⅔ × (20 + 20) = 26.7. Half of 60 is 30: more than that.
  test.each([
    [26, /Two of you lift its head end: 13 kg to begin with, half of its 26 kg\./],
    [42, /head end weighs 21 kg to begin with, half of its 42 kg: lay the head on blocks too/],
    [60, /head end weighs 30 kg to begin with, half of its 60 kg: too much for this crew/],
  ])('%d kg', (massStripped, pattern) => {
    const operation = step(kitchenOf([tall('t', 'a', 0, { massStripped, assembled: 'built' })]), 'stand-up:t')
    expect(words(operation)).toMatch(pattern)
    expect(operation.people).toBeGreaterThanOrEqual(2)
    expect(operation.figures.map((f) => f.name)).toEqual(
      expect.arrayContaining(['mass', 'end-lift', 'blocks']),
    )
  })

  test('it is moved by two at least, with its mass, and never carried alone', () => {
    const operation = step(kitchenOf([tall('t', 'a', 0)]), 'place:t')
    expect(words(operation)).toMatch(
      /Two of you move tall unit 1, 42 kg, to the wall: strapped to a sack barrow/,
    )
    expect(words(operation)).toMatch(/Nobody carries it upright alone/)
    expect(operation.people).toBe(2)
    expect(operation.tools).toContain('barrow')
  })
})

describe('nothing is stood up or hung that cannot be secured', () => {
  const settled = kitchenOf([tall('t', 'a', 1500)], { fixings: SHALLOW })

  test('a hole that nothing known speaks against does not stop it', () => {
    expect(contextOf(settled).context.holes.map((h) => h.verdict)).toEqual(['trace first', 'trace first'])
    const operation = step(settled, 'stand-up:t')
    expect(operation.holdPoint).toBe(false)
    expect(words(operation)).not.toMatch(/Do not stand it up/)
  })

  // The usual plug goes 12 + 50 deep: past 50 mm, so it is asked about.
  test('one that is still asked about does', () => {
    const operation = step(kitchenOf([tall('t', 'a', 0)]), 'stand-up:t')
    expect(operation.holdPoint).toBe(true)
    expect(words(operation)).toMatch(/still to be settled.*Never stand up what you cannot restrain/)
  })

  test('and so does none at all', () => {
    const [wall, ...others] = settled.walls ?? []
    const walls = wall === undefined ? [] : [{ ...wall, construction: null }, ...others]
    const operation = step({ ...settled, walls }, 'stand-up:t')
    expect(operation.holdPoint).toBe(true)
    expect(words(operation)).toMatch(/no hole has been found.*Never stand up what you cannot restrain/)
  })

  test('the way back is said where it is restrained, and never a screw through its back', () => {
    const said = saidAt(settled, 'restrain:t')
    expect(said).toMatch(/Lay it down again together, the way it came up/)
    expect(said).toMatch(/bracket/)
    expect(said).not.toMatch(/through its back/)
  })

  // Studs at 220, 620, 1020 …: one of 600 from 1000 has two behind it; one of 300 from 1100 has none.
  test('a wall unit without timber for its last screws is not hung', () => {
    const bare = step(kitchenOf([hung('w', 'b', 1100, 300)]), 'hang:w')
    expect(bare.holdPoint).toBe(true)
    expect(words(bare)).toMatch(/Do not hang it yet: too few holes/)
    expect(saidAt(kitchenOf([hung('w', 'b', 1100, 300)]), 'second-fix:w')).toMatch(
      /Take it down again together/,
    )
  })

  test('one with settled holes is', () => {
    const [brick, studs] = workKitchen().walls ?? []
    if (brick === undefined || studs === undefined) throw new Error('two walls')
    const file = kitchenOf([hung('w', 'b', 900, 900, { void: 0 })], {
      fixings: [
        {
          id: 'short',
          kind: 'wood-screw',
          diameter: 5,
          length: 60,
          bit: 3,
          embedment: 25,
          for: ['plate', 'second-fixing'],
          into: ['timber-stud'],
        },
      ],
    })
    const operation = step(file, 'hang:w')
    expect(words(operation)).not.toMatch(/Do not hang it/)
    expect(operation.holdPoint).toBe(false)
  })

  test('a wall unit that came built is stripped before it is hung', () => {
    expect(saidAt(kitchenOf([hung('w', 'a', 700, 600, { assembled: 'built' })]), 'hang:w')).toMatch(
      /Take doors, drawers and loose shelves out of wall unit 1 first/,
    )
  })
})

describe('appliances and worktops', () => {
  const file = (appliance: NonNullable<KitchenFile['appliances']>[number]) =>
    kitchenOf([tall('t', 'a', 0)], { appliances: [appliance] })

  test('the holes of a hood are nobody’s guess: work stops until they are marked and traced', () => {
    const operation = step(file({ id: 'x', kind: 'hood', fuel: 'electric', mass: 14 }), 'connect:x')
    expect(operation.holdPoint).toBe(true)
    expect(words(operation)).toMatch(/not worked out here\. Its own sheet says where they are/)
    expect(words(operation)).toMatch(
      /Before you drill, have the wall round those marks traced while its circuits are live.*proved dead.*do not hang it there/,
    )
    expect(words(operation)).toMatch(/14 kg, onto a prop or bench/)
    expect(operation.checks.map((c) => c.id)).toContain('connect.x.holes')
    expect(operation.cautions.map((c) => c.sign)).toContain('W012')
  })

  test.each([
    [{ kind: 'dishwasher', mass: 35 }, /walk .*35 kg, in along the floor/, 2],
    [{ kind: 'hob', mass: 12 }, /One of you lifts .*12 kg/, 1],
    [{ kind: 'oven', mass: 24 }, /Two of you lift .*24 kg/, 2],
    [{ kind: 'oven' }, /Weigh .*, or read its mass off its sheet/, 2],
  ] as const)('%o', (more, pattern, people) => {
    const operation = step(file({ id: 'x', fuel: 'electric', ...more }), 'connect:x')
    expect(words(operation)).toMatch(pattern)
    expect(operation.people).toBe(people)
    expect(operation.holdPoint).toBe(false)
  })

  // The worktop of the kitchen weighs 60 kg; two men carry 33.3: end by end, 30 at a time.
  test('a worktop too heavy to carry whole goes end by end', () => {
    const operation = step(workKitchen(), 'worktop:top')
    expect(words(operation)).toMatch(/weighs 60 kg.*lift the other end, 30 kg/)
    expect(operation.people).toBe(2)
  })
})
