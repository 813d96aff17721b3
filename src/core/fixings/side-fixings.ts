import { derive, type Figure, hasValue, restingOn } from '../figure'
import type { UnitPosition } from '../units/positions'
import { type Aimed, besideWithin, centredWithin } from './aim'
import type { FixingPurpose } from './choose-fixing'
import { type Drilled, drilled, type WantedHole } from './drill'
import { drilledOrMoved } from './move-inwards'
import { holdsAt, type LetIn } from './noggings'
import { inLetIn, inStud } from './timber'
import { EDGE_OF_TIMBER } from './usable-studs'
import type { WallWork } from './wall-work'

/** In masonry a bracket sits this far in from the inside of the side panel; over a nogging this far, for the driver. */
const BRACKET_IN = 30
const OVER_NOGGING_IN = 60
/** Two fixings nearer together than this count as one. */
const APART = 60

/** Fixings near the two sides of one unit: brackets, restraints, second fixings. */
export interface Sides {
  /** Ids of its holes begin with this. */
  readonly name: string
  readonly purpose: FixingPurpose
  readonly position: UnitPosition
  readonly height: Figure
  readonly standOff: Figure
  /** Steel studs do not count. */
  readonly onlyTimber: boolean
}

/** The part of the wall within reach from inside the unit, clear of its side panels and the edge of the timber. */
export function withinUnit(position: UnitPosition): { readonly from: Figure; readonly to: Figure } {
  return { from: inFrom(position, 'left', EDGE_OF_TIMBER), to: inFrom(position, 'right', EDGE_OF_TIMBER) }
}

function inFrom(position: UnitPosition, side: 'left' | 'right', by: number): Figure {
  const sign = side === 'left' ? 1 : -1
  return derive(
    'mm',
    { kind: 'geometry', why: 'side of the unit, its panel, and room beside it' },
    [position[side], position.unit.board],
    (edge, board) => (edge as number) + sign * ((board as number) + by),
  )
}

function wanted(sides: Sides, name: string, along: Figure): WantedHole {
  return {
    id: `${sides.name}.${name}`,
    purpose: sides.purpose,
    for: [sides.position.unit.id],
    along,
    height: sides.height,
    standOff: sides.standOff,
  }
}

/**
 * In masonry: one near each side, 30 mm in from the panel. One that lands in a band is moved towards the middle of the
 * unit in steps of 10 mm, up to 120.
 */
export function inMasonrySides(work: WallWork, sides: Sides): readonly Drilled[] {
  const at = (side: 'left' | 'right') =>
    drilledOrMoved(work, wanted(sides, side, inFrom(sides.position, side, BRACKET_IN)), [
      side === 'left' ? 1 : -1,
    ])
  return [...at('left'), ...at('right')]
}

export interface InTimber {
  readonly holes: readonly Drilled[]
  /** How many of them may be drilled. */
  readonly kept: number
}

/**
 * In a stud wall: up to two, in the leftmost and the rightmost usable stud whose centre lies within the unit; a stud
 * where the hole is refused is passed over for the next inwards. Where studs do not give `wantedCount`, timber or board
 * let in at that height takes the rest. Where two are wanted and there are still fewer, a stud beside the unit's panel
 * takes one, off its centre.
 *
 * A stud the unit only overlaps does not count: its centre, or enough of its window, must lie inside (failure modes F20,
 * F21).
 */
export function inTimberSides(work: WallWork, sides: Sides, wantedCount: 1 | 2): InTimber {
  const { from, to } = withinUnit(sides.position)
  const usable = work.studs.usable.filter((stud) => !sides.onlyTimber || stud.material === 'timber-stud')
  const studs = centredWithin(usable, from, to)
  const refused: Drilled[] = []
  const left = firstFree(work, sides, studs, refused)
  const rest = left === undefined ? [] : studs.filter(({ stud }) => stud.id !== left.hole.stud).reverse()
  const right = firstFree(work, sides, rest, refused)
  const inStuds = [left, right].filter((d): d is Drilled => d !== undefined)
  const missing = Math.max(0, wantedCount - inStuds.length)
  const inNoggings = missing === 0 ? [] : overNoggings(work, sides, inStuds, missing)
  const centred = [...inStuds, ...inNoggings.filter((d) => d.hole.verdict !== 'refused')]
  const isShort = wantedCount === 2 && centred.length < 2
  const beside = isShort ? besideWithin(usable, from, to) : []
  const kept = [...centred, ...allFree(work, sides, beside, refused).slice(0, 2 - centred.length)]
  const known = new Set(kept.map((d) => d.hole.id))
  const others = [...refused, ...inNoggings].filter((d) => !known.has(d.hole.id))
  // A stud passed over is only the place first wanted, kept so that nobody drills it after all.
  const passedOver = others.map((d) => (refused.includes(d) ? firstWanted(d) : d))
  return { holes: [...kept, ...passedOver], kept: kept.length }
}

function firstWanted(found: Drilled): Drilled {
  return { ...found, hole: { ...found.hole, id: `${found.hole.id}.refused` } }
}

function firstFree(
  work: WallWork,
  sides: Sides,
  studs: readonly Aimed[],
  refused: Drilled[],
): Drilled | undefined {
  const tried = new Set(refused.map((d) => d.hole.stud))
  for (const aimed of studs.filter(({ stud }) => !tried.has(stud.id))) {
    const found = intoStud(work, sides, aimed)
    if (found.hole.verdict !== 'refused') return found
    refused.push(found)
  }
  return undefined
}

function allFree(
  work: WallWork,
  sides: Sides,
  studs: readonly Aimed[],
  refused: Drilled[],
): readonly Drilled[] {
  const found = studs.map((aimed) => intoStud(work, sides, aimed))
  refused.push(...found.filter((d) => d.hole.verdict === 'refused'))
  return found.filter((d) => d.hole.verdict !== 'refused')
}

function intoStud(work: WallWork, sides: Sides, { stud, along }: Aimed): Drilled {
  return drilled(work, { ...wanted(sides, stud.id, along), timber: inStud(work.wall, stud) })
}

interface Point {
  readonly along: Figure
  readonly letIn: LetIn
  readonly sure: boolean
}

/** Over a nogging, at the two points near the sides that a driver reaches, left before right, apart from the rest. */
function overNoggings(
  work: WallWork,
  sides: Sides,
  inStuds: readonly Drilled[],
  missing: number,
): readonly Drilled[] {
  const used = inStuds.map((d) => placeOf(d.hole.along))
  const chosen: Point[] = []
  for (const point of pointsOver(work, sides)) {
    const others = [...used, ...chosen.map((c) => placeOf(c.along))]
    const isApart = others.every((at) => Math.abs(placeOf(point.along) - at) >= APART)
    if (isApart && chosen.length < missing) chosen.push(point)
  }
  return chosen.map(({ along, letIn, sure }, i) => {
    const number = chosen.slice(0, i + 1).filter((c) => c.letIn.id === letIn.id).length
    const want = wanted(sides, `${letIn.id}-${number}`, along)
    return drilled(work, { ...want, timber: inLetIn(work.wall, letIn, sure) })
  })
}

const placeOf = (along: Figure): number => (hasValue(along) ? along.value : 0)

function pointsOver(work: WallWork, sides: Sides): readonly Point[] {
  const { height } = sides
  if (!hasValue(height)) return []
  return (['left', 'right'] as const).flatMap((side): readonly Point[] => {
    const along = inFrom(sides.position, side, OVER_NOGGING_IN)
    if (!hasValue(along)) return []
    const pm = Math.max(along.pm, height.pm)
    for (const letIn of work.letIns) {
      const holds = holdsAt(letIn, along.value, height.value, pm)
      if (holds !== 'no') return [{ along: restingOn(along, letIn.from), letIn, sure: holds === 'sure' }]
    }
    return []
  })
}
