import { type Figure, known, unknown, valueOf } from '../../../core/figure'
import { listAt, thingAt } from '../../../core/form/things'
import { mmTyped } from '../../../core/form/typed'
import { alongFromLeft } from '../../../core/survey/along'
import { unitNames } from '../../../core/units/names'

/**
 * The walls unrolled into one long strip, as they are seen from inside: what is typed, straight from the file, so that the
 * drawing follows every letter. Millimetres; `x` along the strip, `up` from the line. Heights nobody has measured are
 * only sketched, and what is sketched is marked.
 */
export interface Strip {
  readonly walls: readonly StripWall[]
  readonly width: number
  /** How high it is drawn, mm from the line. */
  readonly top: number
}

export interface StripWall {
  readonly id: string
  readonly name: string
  readonly x: number
  readonly width: number
  /** False: a stand-in, for the length is not known yet. */
  readonly isKnown: boolean
  readonly openings: readonly Patch[]
  readonly outlets: readonly Spot[]
  readonly studs: readonly number[]
  readonly units: readonly StripUnit[]
  /** Where the ceiling was read on this wall, left to right; none: it is only sketched. */
  readonly ceiling: readonly CeilingMark[]
  /** Marks of what belongs to this wall and is not drawn: where it is does not follow from what is typed so far. */
  readonly missing: readonly string[]
}

export interface CeilingMark {
  readonly x: number
  readonly up: number
}

/** A rectangle on the wall. */
export interface Patch {
  readonly id: string
  readonly x: number
  readonly width: number
  readonly up: number
  readonly height: number
  /** False: its height is only sketched. */
  readonly hasHeight: boolean
}

export interface Spot {
  readonly id: string
  readonly x: number
  readonly up: number
  readonly isOnOtherSide: boolean
}

export interface StripUnit extends Patch {
  readonly level: 'standing' | 'hung'
  /** False: its width is a stand-in. */
  readonly isKnown: boolean
  /** Whether its left and right sides follow from what is typed, no stand-in among it. */
  readonly sides: Sides
}

interface Sides {
  readonly left: boolean
  readonly right: boolean
}

/** What stands in for a length nobody has given, mm. */
export const STAND_IN = { wall: 2400, unit: 600, filler: 50 } as const
/** Where things are sketched whose heights are not known: mm from the line. */
export const SKETCH = { floor: -1000, ceiling: 1400, legs: 150, top: 720, hung: 420, tall: 1970 } as const

type Thing = Readonly<Record<string, unknown>>

const figure = (typed: unknown): Figure => {
  const mm = mmTyped(typed)
  return mm === undefined ? unknown('mm', []) : known(mm, 0, 'mm', [])
}

/** A place along a wall, from its left end as seen from inside; undefined where it does not follow from what is typed. */
function placeOn(wall: Thing, along: unknown): number | undefined {
  const at = thingAt(along, 'at')
  if (mmTyped(at) === undefined) return undefined
  return valueOf(
    alongFromLeft(
      { length: figure(wall['length']), otherFaceShift: figure(wall['otherFaceShift']) },
      {
        from: thingAt(along, 'from') === 'right' ? 'right' : 'left',
        face: thingAt(along, 'face') === 'other' ? 'other' : 'room',
        at: figure(at),
      },
    ),
  )
}

/** A height from the line; the floor taken where it is sketched, where it was measured from there. */
function heightOf(typed: unknown): number | undefined {
  const [up, down, above] = ['up', 'down', 'aboveFloor'].map((key) => mmTyped(thingAt(typed, key)))
  if (up !== undefined) return up
  if (down !== undefined) return -down
  return above === undefined ? undefined : SKETCH.floor + above
}

function openingsOf(wall: Thing): readonly Patch[] {
  return listAt(wall, 'openings').flatMap((opening) => {
    const [left, right] = [placeOn(wall, opening['left']), placeOn(wall, opening['right'])]
    if (left === undefined || right === undefined || right <= left) return []
    const isDoor = opening['kind'] === 'door' || opening['kind'] === 'arch'
    const [bottom, over] = [heightOf(opening['bottom']), heightOf(opening['top'])]
    const up = bottom ?? (isDoor ? SKETCH.floor : 50)
    const height = Math.max(0, (over ?? 1000) - up)
    const hasHeight = over !== undefined && (isDoor || bottom !== undefined)
    return [{ id: String(opening['id']), x: left, width: right - left, up, height, hasHeight }]
  })
}

function outletsOf(wall: Thing): readonly Spot[] {
  return listAt(wall, 'accessories').flatMap((outlet) => {
    const x = placeOn(wall, outlet['along'])
    if (x === undefined) return []
    const up = heightOf(outlet['height']) ?? 100
    return [{ id: String(outlet['id']), x, up, isOnOtherSide: outlet['face'] === 'other' }]
  })
}

const HUNG: ReadonlySet<unknown> = new Set(['wall', 'corner-wall', 'bridging'])

/** From where to where a thing in a row reaches, and which of its sides rest on no stand-in. */
interface Reach {
  readonly from: number
  readonly to: number
  readonly sides: Sides
}

/** Where a thing reaches, as far as it follows from the wall's end or from a neighbour that is placed. */
function reachOf(wall: Thing, thing: Thing, own: number | undefined, placed: ReadonlyMap<string, Reach>) {
  const order = thing['order']
  const gap = mmTyped(thingAt(order, 'gap')) ?? 0
  const wide = own ?? (thing['kind'] === 'filler' ? STAND_IN.filler : STAND_IN.unit)
  const hasWidth = own !== undefined
  const onward = (from: number, left: boolean): Reach => ({
    from,
    to: from + wide,
    sides: { left, right: left && hasWidth },
  })
  const at = placeOn(wall, thingAt(order, 'left'))
  if (at !== undefined) return onward(at, true)
  const beside = placed.get(String(thingAt(order, 'rightOf')))
  if (beside !== undefined) return onward(beside.to + gap, beside.sides.right)
  const ahead = placed.get(String(thingAt(order, 'leftOf')))
  if (ahead === undefined) return undefined
  const [to, right] = [ahead.from - gap, ahead.sides.left]
  return { from: to - wide, to, sides: { left: right && hasWidth, right } }
}

/** Things in a row at a wall, units and fillers alike, as far as they follow from their neighbours. */
function reaches(file: unknown, wall: Thing): ReadonlyMap<string, Reach> {
  const row = [...listAt(file, 'units'), ...listAt(file, 'finishing')].filter((t) => t['wall'] === wall['id'])
  const placed = new Map<string, Reach>()
  // Each round places what stands beside something that is placed; a ring of neighbours is never placed.
  let before = -1
  while (placed.size > before) {
    before = placed.size
    for (const thing of row) {
      const id = String(thing['id'])
      const reach = placed.has(id) ? undefined : reachOf(wall, thing, mmTyped(thing['width']), placed)
      if (reach !== undefined) placed.set(id, reach)
    }
  }
  return placed
}

function unitsOf(file: unknown, wall: Thing): readonly StripUnit[] {
  const placed = reaches(file, wall)
  return listAt(file, 'units').flatMap((unit): readonly StripUnit[] => {
    const id = String(unit['id'])
    const reach = unit['wall'] === wall['id'] ? placed.get(id) : undefined
    if (reach === undefined) return []
    const isHung = HUNG.has(unit['kind'])
    const typed = mmTyped(unit['height'])
    const height = typed ?? (unit['kind'] === 'tall' ? SKETCH.tall : SKETCH.top)
    return [
      {
        id,
        x: reach.from,
        width: reach.to - reach.from,
        isKnown: mmTyped(unit['width']) !== undefined,
        sides: reach.sides,
        hasHeight: typed !== undefined,
        up: isHung ? SKETCH.hung : SKETCH.floor + SKETCH.legs,
        height,
        level: isHung ? 'hung' : 'standing',
      },
    ]
  })
}

/** Readings of the ceiling on a wall, left to right; what hangs on another line than the first is left to the sheets. */
function ceilingOf(file: unknown, wall: Thing): readonly CeilingMark[] {
  const line = listAt(thingAt(file, 'lines'), '')[0]?.['id'] ?? 'line'
  return listAt(file, 'ceiling')
    .filter((r) => thingAt(r, 'at.wall') === wall['id'] && (thingAt(r, 'height.line') ?? 'line') === line)
    .flatMap((reading): readonly CeilingMark[] => {
      const [x, up] = [placeOn(wall, thingAt(reading, 'at.along')), mmTyped(thingAt(reading, 'height.up'))]
      return x === undefined || up === undefined ? [] : [{ x, up }]
    })
    .sort((a, b) => a.x - b.x)
}

const marksOf = (list: readonly Thing[]): readonly string[] => list.map((thing) => String(thing['id']))

function wallOf(file: unknown, wall: Thing, x: number): StripWall {
  const [length, called] = [mmTyped(wall['length']), wall['name']]
  const isKnown = length !== undefined && length > 0
  const [openings, outlets, units] = [openingsOf(wall), outletsOf(wall), unitsOf(file, wall)]
  const studs = listAt(wall, 'studs').flatMap((stud) => placeOn(wall, stud['centre']) ?? [])
  const drawn = new Set([...openings, ...outlets, ...units].map(({ id }) => id))
  const owned = [
    ...marksOf(listAt(wall, 'openings')),
    ...marksOf(listAt(wall, 'accessories')),
    ...marksOf(listAt(file, 'units').filter((unit) => unit['wall'] === wall['id'])),
  ]
  // A stand-in is long enough for what is known to be on it.
  const furthest = Math.max(
    0,
    ...[...openings, ...units].map((o) => o.x + o.width),
    ...outlets.map((o) => o.x),
  )
  const names = unitNames({ units: listAt(file, 'units') as never })
  return {
    id: String(wall['id']),
    name: typeof called === 'string' && called !== '' ? called : `Wall ${String(wall['id'])}`,
    x,
    width: Math.min(isKnown ? length : Math.max(STAND_IN.wall, furthest), 100_000),
    isKnown,
    openings,
    outlets,
    studs,
    units,
    ceiling: ceilingOf(file, wall),
    missing: owned.filter((id) => !drawn.has(id)).map((id) => names.get(id) ?? id),
  }
}

/** The strip of a kitchen file, whatever is in it so far. */
export function stripOf(file: unknown): Strip {
  let x = 0
  const walls = listAt(file, 'walls').map((wall) => {
    const one = wallOf(file, wall, x)
    x += one.width
    return one
  })
  const tops = walls.flatMap((wall) => wall.ceiling.map(({ up }) => up))
  return { walls, width: x, top: Math.min(Math.max(SKETCH.ceiling, ...tops), 10_000) }
}

/** What stands or hangs on a wall, its widths together, against the length of the wall; undefined where one is not known. */
export interface Sum {
  readonly units: number | undefined
  /** Less than nothing: longer than the wall by so much. */
  readonly rest: number | undefined
}

export function sumOf(wall: StripWall, level: StripUnit['level']): Sum | null {
  const row = wall.units.filter((unit) => unit.level === level)
  if (row.length === 0) return null
  if (row.some(({ isKnown }) => !isKnown)) return { units: undefined, rest: undefined }
  const units = row.reduce((mm, { width }) => mm + width, 0)
  return { units, rest: wall.isKnown ? wall.width - units : undefined }
}

/** One piece of a dimension string: a unit, or what is left over before, between and after them. */
export interface Piece {
  readonly from: number
  readonly to: number
  readonly unit: string | null
  readonly isKnown: boolean
}

/** The dimension string of a wall at one level, from corner to corner: units in order, and the rest left between them. */
export function piecesOf(wall: StripWall, level: StripUnit['level']): readonly Piece[] {
  const row = wall.units.filter((u) => u.level === level).sort((a, b) => a.x - b.x)
  if (row.length === 0) return []
  const pieces: Piece[] = []
  // How far it has come, and whether that rests on no stand-in.
  let [at, isSure] = [0, true]
  const rest = (to: number, isToSure: boolean) => {
    if (to > at) pieces.push({ from: at, to, unit: null, isKnown: isSure && isToSure })
  }
  for (const unit of row) {
    rest(unit.x, unit.sides.left)
    const to = unit.x + unit.width
    pieces.push({ from: unit.x, to, unit: unit.id, isKnown: unit.isKnown })
    if (to >= at) [at, isSure] = [to, unit.sides.right]
  }
  rest(wall.width, wall.isKnown)
  return pieces
}
