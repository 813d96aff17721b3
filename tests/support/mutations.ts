import { valueOf } from '../../src/core/figure'
import { UNIT_KINDS } from '../../src/core/kitchen/kinds'
import { CONSTRUCTIONS, type KitchenFile, STANDS } from '../../src/core/kitchen/schema'
import type { Plan } from '../../src/core/plan/types'
import { typedAt, withFact } from './facts'

const FINISHING_KINDS = [
  'end-panel',
  'filler',
  'plinth',
  'cornice',
  'pelmet',
  'upstand',
  'splashback',
  'scribe',
] as const

/**
 * Other worlds: the same kitchen with one fact taken away, or other than it is. For a quantity it is blanked or moved
 * far; for a choice, another choice; a listed thing is taken out, with whoever speaks of it set right.
 */
export function mutantsOf(file: KitchenFile, id: string, plan: Plan): readonly KitchenFile[] {
  const path = id.split('.')
  const key = path[path.length - 1] as string
  const typed = typedAt(file, id)
  if (isThing(typed)) return [withoutThing(file, path, plan)]
  const choices = choicesFor(file, path, key)
  if (choices !== undefined) {
    const others = choices.filter((choice) => choice !== typed)
    const changed = others.map((choice) => elsewhere(withFact(lined(file, choice), id, choice), path, plan))
    return [...changed, ...withoutReading(file, path, key)]
  }
  if (typeof typed === 'boolean') return [withFact(file, id, !typed), withFact(file, id, null)]
  if (Array.isArray(typed)) return [withFact(file, id, typed.slice(1)), withFact(file, id, [])]
  const others = typed === undefined || typed === null ? PLAUSIBLE : [null, ...moved(typed)]
  return others.map((other) => withFact(file, id, other))
}

/**
 * How a reading was taken (from which end, on which face, off which line, on which wall) cannot be taken away by itself:
 * it goes with the reading.
 */
function withoutReading(file: KitchenFile, path: readonly string[], key: string): readonly KitchenFile[] {
  const about = path.slice(0, -1)
  const readings: Readonly<Record<string, readonly string[]>> = {
    from: ['at'],
    face: ['at'],
    line: ['up', 'down', 'aboveFloor', 'drop'],
    wall: ['along.at'],
  }
  return (readings[key] ?? []).flatMap((reading) => {
    const id = [...about, reading].join('.')
    const typed = typedAt(file, id)
    return typed === undefined || typed === null ? [] : [withFact(file, id, null)]
  })
}

/** A unit or part on another wall, alone: its old neighbours stay where they stood. */
function elsewhere(file: KitchenFile, path: readonly string[], plan: Plan): KitchenFile {
  const [list, id = '', key] = path
  if (path.length !== 3 || key !== 'wall' || (list !== 'units' && list !== 'finishing')) return file
  const order = { left: { at: 900 } }
  const part = file.finishing?.find((f) => f.id === id)
  const alone =
    list === 'units' || part?.order !== undefined ? withFact(file, `${list}.${id}.order`, order) : file
  const rails = (alone.rails ?? []).map((r) => ({ ...r, units: r.units.filter((u) => u !== id) }))
  return {
    ...alone,
    rails,
    units: freed(alone.units ?? [], id, plan),
    finishing: freed(alone.finishing ?? [], id, plan),
  }
}

function isThing(typed: unknown): typed is { readonly id: string } {
  return typeof typed === 'object' && typed !== null && !Array.isArray(typed) && 'id' in typed
}

/** For a figure nobody has given: one that could be. */
const PLAUSIBLE: readonly unknown[] = [12, 300]

/** Far moves, both ways, small and big: any of them may be what a rule turns on. */
const FAR: readonly number[] = [9, -9, 60, -60, 110, 300, -300]

function moved(typed: unknown): readonly unknown[] {
  if (typeof typed === 'number') return FAR.map((by) => typed + by).filter((v) => v > 0 || typed <= 0)
  if (typeof typed === 'object' && typed !== null && 'value' in typed && typeof typed.value === 'number') {
    const { value } = typed
    return FAR.map((by) => ({ ...typed, value: value + by })).filter((v) => v.value > 0)
  }
  return []
}

const OTHER_LINE = 'other-line'

/** A second line, for a fact that says which line it was read from. */
function lined(file: KitchenFile, choice: unknown): KitchenFile {
  if (choice !== OTHER_LINE) return file
  const lines = file.lines ?? []
  return {
    ...file,
    lines: [...(lines.length === 0 ? [{ id: 'line', offset: 0 }] : lines), { id: OTHER_LINE, offset: 150 }],
  }
}

function choicesFor(file: KitchenFile, path: readonly string[], key: string): readonly unknown[] | undefined {
  const walls = (file.walls ?? []).map((w) => w.id)
  const [first, id] = path
  switch (key) {
    case 'region':
      return ['continental', 'north-america', 'uk', null]
    case 'closed':
      return [true, false, null]
    case 'from':
      return typeof typedAt(file, path.join('.')) === 'object' ? undefined : ['right', 'left']
    case 'face':
      return ['other', 'room']
    case 'line':
      return [OTHER_LINE]
    case 'wall':
      return walls
    case 'construction':
      return [...CONSTRUCTIONS, null]
    case 'stands':
      return [...STANDS, null]
    case 'kind':
      return first === 'units' ? UNIT_KINDS : first === 'finishing' ? FINISHING_KINDS : undefined
    case 'confirmed':
      return ['one-beep', 'seen-open', null]
    case 'assembled':
      return ['flat-packed', 'built', null]
    case 'traced':
      return first === 'walls' ? ['whole', 'not-yet', null] : ['guessed', 'seen', null]
    case 'rightOf':
    case 'leftOf':
      return neighboursFor(file, id ?? '')
    case 'applianceBay':
      return [null]
    case 'over':
      return first === 'appliances' ? [null] : undefined
    case 'fuel':
      return ['gas', 'electric', 'none', null]
    case 'houseBuilt':
      return [1930, 2015, null]
    default:
      return undefined
  }
}

/** Other things on the same wall that it could stand beside. */
function neighboursFor(file: KitchenFile, id: string): readonly string[] {
  const all = [...(file.units ?? []), ...(file.finishing ?? []).filter((f) => f.order !== undefined)]
  const wall = all.find((u) => u.id === id)?.wall
  return all.filter((u) => u.id !== id && u.wall === wall).map((u) => u.id)
}

/** A copy without one listed thing; who stood beside it stands where it stood, who named it no longer does. */
function withoutThing(file: KitchenFile, path: readonly string[], plan: Plan): KitchenFile {
  const [list = '', id = ''] = path
  const gone = withFact(file, path.join('.'), undefined)
  if (path.length > 2 || !['units', 'rails', 'appliances', 'finishing', 'worktops', 'walls'].includes(list))
    return gone
  if (list === 'walls') return withoutWall(gone, id)
  return {
    ...gone,
    units: freed(gone.units ?? [], id, plan).map((u) =>
      u.applianceBay === id ? { ...u, applianceBay: null } : u,
    ),
    rails: (gone.rails ?? []).map((r) => ({ ...r, units: r.units.filter((u) => u !== id) })),
    finishing: freed(gone.finishing ?? [], id, plan).map((f) => ({
      ...f,
      of: (f.of ?? []).filter((u) => u !== id),
    })),
    appliances: (gone.appliances ?? []).map((a) => (a.over === id ? { ...a, over: null } : a)),
    worktops: (gone.worktops ?? []).map((w) => ({
      ...w,
      over: (w.over ?? []).filter((u) => u !== id),
      cutouts: (w.cutouts ?? []).filter((c) => c.for !== id),
    })),
  }
}

interface Ordered {
  readonly id: string
  readonly order?:
    | NonNullable<KitchenFile['units']>[number]['order']
    | NonNullable<KitchenFile['finishing']>[number]['order']
}

/** Who stood beside a thing that is gone stands where it stood. */
function freed<T extends Ordered>(items: readonly T[], gone: string, plan: Plan): T[] {
  return items.map((item) => {
    if (item.order?.rightOf !== gone && item.order?.leftOf !== gone) return item
    const unit = plan.units.find((u) => u.unit === item.id)
    return { ...item, order: { left: { at: unit === undefined ? 0 : (valueOf(unit.left) ?? 0) } } }
  })
}

/** A wall goes with everything on it. */
function withoutWall(file: KitchenFile, wall: string): KitchenFile {
  const units = (file.units ?? []).filter((u) => u.wall !== wall)
  const here = new Set(units.map((u) => u.id))
  const stay = (id: string) => here.has(id)
  return {
    ...file,
    units,
    closed: false,
    ceiling: (file.ceiling ?? []).filter((c) => c.at.wall !== wall),
    boxes: (file.boxes ?? []).filter((b) => b.wall !== wall),
    floor: { ...file.floor, readings: (file.floor?.readings ?? []).filter((r) => r.at.wall !== wall) },
    rails: (file.rails ?? []).filter((r) => r.wall !== wall),
    finishing: (file.finishing ?? [])
      .filter((f) => f.wall !== wall)
      .map((f) => ({ ...f, of: (f.of ?? []).filter(stay) })),
    appliances: (file.appliances ?? []).map((a) => ({ ...a, over: null })),
    worktops: (file.worktops ?? []).map((w) => ({
      ...w,
      over: (w.over ?? []).filter(stay),
      joints: [],
      cutouts: [],
    })),
    wishes: {},
  }
}

/** A path with the ids of listed things left out: facts of one pattern are read by the same rules. */
export function patternOf(id: string): string {
  return id
    .replace(/^(walls|units|rails|appliances|finishing|worktops|fixings|boxes|ceiling)\.[^.]+/, '$1.#')
    .replace(
      /(studs|noggings|accessories|services|openings|lintels|layers|feet|doors|drawers|readings|people|points)\.[^.]+/g,
      '$1.#',
    )
}
