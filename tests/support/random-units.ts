import type { KitchenFile } from '../../src/core/kitchen/schema'
import type { Random } from './prng'
import type { Tag } from './random-room'

/** Invented units in runs along walls, with what goes with them: rails, appliances, parts, worktops. */

export type UnitFile = NonNullable<KitchenFile['units']>[number]
/** Chance, and whether something is known from a product's sheet: all of it, or each thing likely. */
interface Drawer extends Random {
  readonly sheet: (likelihood: number) => boolean
}

type Kind = UnitFile['kind']
type Stands = UnitFile['stands']

/** A stretch of wall that is to carry a run. */
export interface RunSpace {
  readonly wall: string
  readonly from: number
  readonly to: number
  readonly length: number
  /** Whether the run goes right up to a corner with another run beyond it. */
  readonly toCorner: boolean
  readonly ceiling: number
}

interface Standing {
  readonly unit: UnitFile
  readonly left: number
  readonly right: number
}

export interface RandomUnits {
  readonly units: UnitFile[]
  readonly rails: NonNullable<KitchenFile['rails']>
  readonly appliances: NonNullable<KitchenFile['appliances']>
  readonly finishing: NonNullable<KitchenFile['finishing']>
  readonly worktops: NonNullable<KitchenFile['worktops']>
  readonly tags: readonly Tag[]
}

const LEGS = { min: 100, max: 175, delivered: 150, perTurn: 1.5 }

function feetOf(width: number, depth: number): NonNullable<UnitFile['feet']> {
  return [
    { id: 'bl', x: 40, y: 50 },
    { id: 'br', x: width - 40, y: 50 },
    { id: 'fl', x: 40, y: depth - 60 },
    { id: 'fr', x: width - 40, y: depth - 60 },
  ]
}

/** The same way of standing for a whole kitchen, mostly. */
function standsFor(random: Drawer, usual: Stands): Stands {
  if (random.chance(0.85)) return usual
  return random.sheet(0.6) ? random.pick(['legs', 'shims', 'plinth-frame', 'floor-cleat'] as const) : null
}

function standing(random: Drawer, usual: Stands, width: number, depth: number): Partial<UnitFile> {
  const stands = standsFor(random, usual)
  if (stands !== 'legs') return { stands, ...(random.chance(0.5) ? { feet: feetOf(width, depth) } : {}) }
  return {
    stands,
    feet: random.chance(0.75) ? feetOf(width, depth) : [],
    legs: { ...LEGS, ...(random.chance(0.1) ? { maySwing: true } : {}) },
  }
}

function fronts(random: Drawer, width: number, height: number): Partial<UnitFile> {
  if (random.chance(0.25))
    return { drawers: [{ id: 'drawer-1', travel: 450, height: 280, mass: 9, handle: 30 }] }
  if (random.chance(0.1)) return {}
  const door = {
    hinge: random.pick(['left', 'right'] as const),
    width: width - 3,
    height: height - 5,
    thickness: 18,
  }
  return {
    doors: [{ id: 'door-1', ...door, ...(random.chance(0.7) ? { mass: 5 } : {}), opens: 110, handle: 30 }],
  }
}

function carcass(random: Drawer): Partial<UnitFile> {
  return {
    board: 18,
    ...(random.sheet(0.8) ? { back: random.pick([3, 8]), void: random.pick([16, 40, 50]), front: 19 } : {}),
    ...(random.chance(0.8) ? { contents: random.int(10, 80) } : {}),
    ...(random.chance(0.2) ? { massStripped: random.int(8, 45) } : {}),
    assembled: random.pick(['flat-packed', 'built', null]),
    delivered: random.pick([true, true, false, null]),
    shelves: random.int(0, 3),
  }
}

interface Sized {
  readonly kind: Kind
  readonly width: number
  readonly height: number | null
  readonly depth: number | null
}

function sized(random: Drawer, kind: Kind, room: number, ceiling: number): Sized | null {
  const widths =
    kind === 'tall' ? [400, 500, 600] : kind === 'corner-base' ? [900, 1000] : [300, 400, 450, 500, 600, 800]
  const fitting = widths.filter((w) => w <= room)
  if (fitting.length === 0) return null
  const width = random.pick(fitting)
  if (kind === 'tall') {
    const height = Math.min(random.step(1800, 2150, 10), ceiling - 220)
    return { kind, width, height, depth: 560 }
  }
  if (kind === 'appliance-space') return { kind, width: Math.min(600, room), height: 720, depth: 580 }
  return { kind, width, height: random.sheet(0.8) ? 720 : null, depth: random.sheet(0.8) ? 560 : null }
}

const KINDS: readonly (readonly [Kind, number])[] = [
  ['base', 10],
  ['tall', 2],
  ['appliance-space', 1],
  ['open-end', 1],
]

/** A row of units that stand beside each other from the left end of a stretch to its right. */
function standingRun(
  random: Drawer,
  space: RunSpace,
  count: number,
  usual: Stands,
  first: number,
  tallFirst: boolean,
): readonly Standing[] {
  const out: Standing[] = []
  let at = space.from
  while (out.length < count) {
    const room = space.to - at
    const isLast = out.length === count - 1
    const toCorner = isLast && space.toCorner && room >= 900
    const kind = tallFirst && out.length === 0 ? 'tall' : toCorner ? 'corner-base' : random.weighted(KINDS)
    const size = sized(random, kind, room, space.ceiling)
    if (size === null) break
    const id = `${size.kind}-${first + out.length}`
    const previous = out[out.length - 1]
    const gap = previous !== undefined && random.chance(0.08) ? random.int(2, 40) : 0
    if (gap > room - size.width) break
    const left = at + gap
    out.push({
      unit: standingUnit(random, space, id, size, usual, previous?.unit.id, left, gap),
      left,
      right: left + size.width,
    })
    at = left + size.width
  }
  return out
}

function standingUnit(
  random: Drawer,
  space: RunSpace,
  id: string,
  size: Sized,
  usual: Stands,
  previous: string | undefined,
  left: number,
  gap: number,
): UnitFile {
  const { kind, width } = size
  const [height, depth] = [size.height ?? 720, size.depth ?? 560]
  const isSpace = kind === 'appliance-space'
  const order: UnitFile['order'] =
    previous !== undefined && random.chance(0.8)
      ? { rightOf: previous, ...(gap > 0 ? { gap } : {}) }
      : { left: random.chance(0.2) ? { at: Math.round(space.length - left), from: 'right' } : { at: left } }
  const arm =
    kind === 'corner-base' && random.chance(0.3)
      ? { returnRight: 900, returnDepth: 560, feet: feetOf(width, depth) }
      : {}
  return {
    id,
    kind,
    wall: space.wall,
    order,
    width,
    ...(size.height === null ? {} : { height }),
    ...(size.depth === null ? {} : { depth }),
    ...(isSpace
      ? { stands: 'nothing' as const }
      : { ...carcass(random), ...standing(random, usual, width, depth) }),
    ...(isSpace ? {} : fronts(random, width, height)),
    ...arm,
  }
}

const HARDWARE: NonNullable<UnitFile['hanging']> = {
  plateBelowTop: 40,
  plateHoleBelow: 10,
  plateHoles: 2,
  plateHolePitch: 32,
  hangerIn: 38,
  hookLift: 12,
  up: 6,
  down: 8,
  heightScrew: { place: 'lower', perTurn: 1.25, clockwise: 'raises' },
  antiLift: true,
  ratedPerHanger: 60,
}

/** Wall units over the bases, beside each other, between the talls. */
function hungRun(
  random: Drawer,
  space: RunSpace,
  run: readonly Standing[],
  count: number,
  first: number,
): readonly Standing[] {
  const clear = clearStretch(space, run)
  if (clear === null) return []
  const usual = random.pick(['plates', 'rail', 'rail', 'back-rail-screws', 'cleat'] as const)
  const tallest = random.pick([500, 600, 720, 720])
  const out: Standing[] = []
  let at = clear.from + (random.chance(0.5) ? 0 : random.int(0, 200))
  while (out.length < count) {
    const width = random.pick([300, 400, 500, 600])
    if (at + width > clear.to) break
    const kind: Kind = random.chance(0.07) ? 'bridging' : 'wall'
    const previous = out[out.length - 1]
    const stands = random.chance(0.92) ? usual : random.sheet(0.5) ? 'plates' : null
    const height = random.chance(0.85) ? tallest : tallest - 120
    out.push({
      unit: {
        id: `${kind}-${first + out.length}`,
        kind,
        wall: space.wall,
        order: previous === undefined ? { left: { at } } : { rightOf: previous.unit.id },
        width,
        height,
        depth: random.pick([300, 330]),
        ...carcass(random),
        ...fronts(random, width, height),
        stands,
        hanging: random.sheet(0.7) ? HARDWARE : { hookLift: 12 },
        ...(random.chance(0.5) ? { backRail: { fromTop: 30, height: 80, thickness: 16 } } : {}),
        ...(random.chance(0.5) ? { bottomRail: { fromBottom: 30, height: 60, thickness: 16 } } : {}),
      },
      left: at,
      right: at + width,
    })
    at += width
  }
  return out
}

function clearStretch(
  space: RunSpace,
  run: readonly Standing[],
): { readonly from: number; readonly to: number } | null {
  const talls = run.filter(({ unit }) => unit.kind === 'tall')
  const ends = [space.from, ...talls.flatMap(({ left, right }) => [left, right]), space.to]
  let best: { from: number; to: number } | null = null
  for (let i = 0; i + 1 < ends.length; i += 2) {
    const [from, to] = [ends[i] as number, ends[i + 1] as number]
    if (to - from > (best === null ? 299 : best.to - best.from)) best = { from, to }
  }
  return best
}

export interface UnitOptions {
  readonly spaces: readonly RunSpace[]
  readonly count: number
  readonly withTall: boolean
  readonly region: KitchenFile['region']
  /** Some of what a product's sheet says is not known. */
  readonly isVague: boolean
  /** Room for an island: the wall, and where along and how far out. */
  readonly island: { readonly wall: string; readonly along: number; readonly out: number } | null
}

export function randomUnits(
  chance: Random,
  { spaces, count, withTall, region, island, isVague }: UnitOptions,
): RandomUnits {
  const random: Drawer = { ...chance, sheet: (likelihood) => !isVague || chance.chance(likelihood) }
  const usual: Stands =
    region === 'north-america'
      ? random.pick(['shims', 'plinth-frame'])
      : random.pick(['legs', 'legs', 'legs', 'plinth-frame', 'shims'])
  const inRuns = island !== null && count > 1 ? count - 1 : count
  const units: UnitFile[] = []
  const rails: RandomUnits['rails'] = []
  const finishing: RandomUnits['finishing'] = []
  const worktops: RandomUnits['worktops'] = []
  const appliances: RandomUnits['appliances'] = []
  for (const space of spaces) {
    const left = inRuns - units.length
    if (left <= 0) break
    const standingCount =
      spaces.length === 1 || random.chance(0.5) ? Math.max(1, Math.ceil(left * 0.6)) : Math.ceil(left / 2)
    const run = standingRun(
      random,
      space,
      standingCount,
      usual,
      units.length + 1,
      withTall && units.length === 0,
    )
    units.push(...run.map(({ unit }) => unit))
    const over = hungRun(random, space, run, Math.min(5, inRuns - units.length), units.length + 1)
    units.push(...over.map(({ unit }) => unit))
    rails.push(...railsFor(random, space.wall, over))
    furnish(random, space, run, over, { finishing, worktops, appliances, units })
  }
  if (island !== null && units.length < count) units.push(islandUnit(random, island, units.length + 1))
  return { units, rails, appliances, finishing, worktops, tags: tagsOf(units) }
}

function islandUnit(random: Drawer, island: NonNullable<UnitOptions['island']>, number: number): UnitFile {
  return {
    id: `island-${number}`,
    kind: 'island',
    wall: island.wall,
    order: { left: { at: island.along } },
    standOff: island.out,
    width: 600,
    height: 720,
    depth: 560,
    ...carcass(random),
    ...standing(random, 'legs', 600, 560),
  }
}

function railsFor(random: Drawer, wall: string, over: readonly Standing[]): RandomUnits['rails'] {
  const on = over.filter(({ unit }) => unit.stands === 'rail').map(({ unit }) => unit.id)
  if (on.length === 0) return []
  return [
    {
      id: `rail-${wall}`,
      wall,
      units: random.chance(0.95) ? on : on.slice(1),
      ...(random.sheet(0.7) ? { thickness: 2 } : {}),
      overhang: 150,
      ...(random.chance(0.7) ? { maxSpacing: random.pick([400, 500, 600]) } : {}),
    },
  ]
}

interface Lists {
  readonly finishing: RandomUnits['finishing']
  readonly worktops: RandomUnits['worktops']
  readonly appliances: RandomUnits['appliances']
  readonly units: UnitFile[]
}

const LOW: readonly Kind[] = ['base', 'corner-base', 'appliance-space', 'open-end']

function furnish(
  random: Drawer,
  { wall, length }: RunSpace,
  run: readonly Standing[],
  over: readonly Standing[],
  { finishing, worktops, appliances, units }: Lists,
): void {
  const low = run.filter(({ unit }) => LOW.includes(unit.kind)).map(({ unit }) => unit.id)
  if (low.length > 0 && random.chance(0.85)) {
    worktops.push({
      id: `worktop-${wall}`,
      over: low,
      ...(random.sheet(0.6) ? { thickness: random.pick([22, 28, 38, 40]) } : {}),
      depth: 600,
    })
  }
  if (low.length > 0 && random.chance(0.6)) {
    const height = random.sheet(0.6) ? { height: random.pick([150, 175, 200]) } : {}
    finishing.push({ id: `plinth-${wall}`, kind: 'plinth', wall, of: low, setBack: 40, ...height })
  }
  const last = run[run.length - 1]
  if (last !== undefined && last.right + 20 < length && random.chance(0.3)) {
    const kind = random.pick(['end-panel', 'filler'] as const)
    finishing.push({
      id: `${kind}-${wall}`,
      kind,
      wall,
      of: [last.unit.id],
      order: { rightOf: last.unit.id },
      width: 18,
      height: 720,
    })
  }
  if (over.length > 0 && random.chance(0.3)) {
    const kind = random.pick(['cornice', 'pelmet'] as const)
    finishing.push({ id: `${kind}-${wall}`, kind, wall, of: over.map(({ unit }) => unit.id) })
  }
  for (const { unit } of run) {
    if (unit.kind === 'appliance-space') {
      const at = units.findIndex((u) => u.id === unit.id)
      const id = `appliance-${unit.id}`
      units[at] = { ...unit, applianceBay: id }
      appliances.push({
        id,
        kind: random.pick(['dishwasher', 'washing-machine', 'fridge', 'freezer'] as const),
        fuel: 'electric',
        ...(random.sheet(0.6) ? { heightMin: 820, heightMax: 890 } : {}),
        workingGap: 5,
        mass: 40,
        over: unit.id,
      })
    }
  }
  const base = run.find(({ unit }) => unit.kind === 'base')
  if (base !== undefined && random.chance(0.4)) {
    const kind = random.pick(['sink', 'hob', 'oven'] as const)
    const fuel = kind === 'sink' ? 'none' : random.pick(['electric', 'gas', 'both'] as const)
    appliances.push({ id: `${kind}-${wall}`, kind, fuel, mass: 9, over: base.unit.id })
  }
}

function tagsOf(units: readonly UnitFile[]): readonly Tag[] {
  const tags: Tag[] = []
  if (units.some((u) => u.kind === 'tall')) tags.push('tall')
  if (units.some((u) => u.kind === 'island')) tags.push('island')
  if (units.some((u) => u.returnRight !== undefined)) tags.push('arm')
  if (units.some((u) => u.kind === 'wall' || u.kind === 'bridging')) tags.push('hung')
  return tags
}
