import type { KitchenFile } from '../../src/core/kitchen/schema'
import { knownFacts, withoutFact } from './facts'
import { type Random, randomFrom } from './prng'
import type { Tag } from './random-room'

/** What goes wrong in invented kitchens: facts nobody read, and things that cannot be. */

/** Some of what was measured taken away again; the construction of a wall now and then. */
export function withUnknowns(random: Random, file: KitchenFile): KitchenFile {
  const facts = knownFacts(file, ['walls', 'floor', 'ceiling', 'boxes'])
  let out = file
  for (const id of random.some(facts, random.int(1, 6))) out = withoutFact(out, id)
  const walls = out.walls ?? []
  if (random.chance(0.25) && walls.length > 0) {
    const wall = random.pick(walls)
    out = {
      ...out,
      walls: walls.map((w) =>
        w === wall ? { ...w, construction: null, layers: [], studs: [], noggings: [] } : w,
      ),
    }
  }
  return out
}

export type Trouble = Extract<Tag, 'clash-order' | 'clash-heights' | 'shut-in'>

/** The kitchen with a trouble that no order of work and no height can mend; null when it has not what that takes. */
export function withTrouble(random: Random, file: KitchenFile, trouble: Trouble): KitchenFile | null {
  switch (trouble) {
    case 'clash-order':
      return clashingOrder(random, file)
    case 'clash-heights':
      return clashingHeights(random, file)
    case 'shut-in':
      return shutIn(file)
  }
}

type OrderWishes = NonNullable<NonNullable<KitchenFile['wishes']>['order']>

const PLACED: readonly string[] = ['base', 'corner-base', 'tall', 'open-end', 'island']
const HUNG_BY: readonly unknown[] = ['plates', 'rail', 'back-rail-screws', 'cleat']

/** Ids of the operations that put the units up: the same rule as "how a unit comes to be held up". */
function putUp(file: KitchenFile): readonly string[] {
  return (file.units ?? []).flatMap(({ id, kind, stands }) => {
    if (HUNG_BY.includes(stands)) return [`hang:${id}`]
    if (PLACED.includes(kind)) return [`place:${id}`]
    return kind === 'appliance-space' ? [] : [`hang:${id}`]
  })
}

function clashingOrder(random: Random, file: KitchenFile): KitchenFile | null {
  const all = putUp(file)
  if (all.length === 0) return null
  const order = wishesThatClash(random, random.shuffled(all))
  return { ...file, wishes: { ...file.wishes, order } }
}

function wishesThatClash(random: Random, operations: readonly string[]): OrderWishes {
  const wish = (id: string, before: string, after: string) => ({
    id,
    before: { operation: before },
    after: { operation: after },
  })
  const [a = '', b = '', c = ''] = operations
  if (b !== '' && random.chance(0.4)) return [wish('w1', a, b), wish('w2', b, a)]
  if (c !== '' && random.chance(0.6)) {
    return [
      { ...wish('w1', a, b), minLag: 600 },
      { ...wish('w2', b, c), minLag: 300 },
      { ...wish('w3', a, c), maxLag: 400 },
    ]
  }
  return [wish('w1', 'snag:room', a)]
}

function clashingHeights(random: Random, file: KitchenFile): KitchenFile | null {
  const low = (file.units ?? []).some(
    (u) => PLACED.includes(u.kind) && u.kind !== 'tall' && u.kind !== 'island',
  )
  if (!low) return null
  const up = -random.int(120, 160)
  const heights = [
    { id: 'not-under', of: 'base-top' as const, min: { up } },
    { id: 'not-over', of: 'base-top' as const, max: { up: up - random.int(5, 60) } },
  ]
  return { ...file, wishes: { ...file.wishes, heights } }
}

type Box = NonNullable<KitchenFile['boxes']>[number]

function firstStanding(file: KitchenFile) {
  return (file.units ?? []).find(
    (u) => u.order.left !== undefined && PLACED.includes(u.kind) && u.kind !== 'island',
  )
}

/** The unit that has a boxing in its place, in a kitchen of that trouble. */
export function shutInUnit(file: KitchenFile): string | undefined {
  return firstStanding(file)?.id
}

/** A boxing right where the first unit is to stand: nothing lets it in. */
function shutIn(file: KitchenFile): KitchenFile | null {
  const first = firstStanding(file)
  const left = first?.order.left
  if (first === undefined || typeof left?.at !== 'number' || left.from === 'right') return null
  const box: Box = {
    id: 'in-the-way',
    kind: 'boxing',
    wall: first.wall,
    left: { at: left.at + 80 },
    right: { at: left.at + 220 },
    near: 0,
    out: 300,
    bottom: { down: 1400 },
    top: { up: 1800 },
  }
  return { ...file, boxes: [box] }
}

/**
 * A room with something standing about in it: a boxing out on the floor, a beam or step across, so that ways in are
 * fewer and units are in each other's way.
 */
export function crowded(seed: number, file: KitchenFile): KitchenFile {
  const random = randomFrom(seed + 7_000_000)
  const walls = (file.walls ?? []).map((w) => w.id)
  if (walls.length === 0) return file
  const boxes = Array.from({ length: random.int(1, 2) }, (_, i): Box => {
    const left = random.int(100, 1600)
    const near = random.int(620, 1500)
    return {
      id: `thing-${i + 1}`,
      kind: 'other',
      wall: random.pick(walls),
      left: { at: left },
      right: { at: left + random.int(200, 1200) },
      near,
      out: near + random.int(100, 500),
      bottom: { down: 1400 },
      top: random.chance(0.6) ? { up: 1800 } : { down: random.int(300, 700) },
    }
  })
  return { ...file, boxes }
}
