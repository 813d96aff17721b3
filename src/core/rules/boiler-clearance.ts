import { derive, type Figure, hasValue } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import type { Appliance } from '../kitchen/schema'
import { type BoxOnWall, boxesOnWalls } from '../placing/boxes-on-walls'
import { lapOf, meeting } from '../placing/laps'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { prismsAt } from '../placing/solid'
import type { UnitPlan } from '../plan/types'
import { type Found, lessThan, margin, missing, type Rule, type Site } from './rule'

/** Nearer than this to a boiler, what its sheet asks there has to be known, mm. Common practice. */
const NEAR = 300
const NEAR_IN_FRONT = 800

type Side = 'side' | 'above' | 'below' | 'front'
const FIELD = { side: 'clearSide', above: 'clearAbove', below: 'clearBelow', front: 'clearFront' } as const

interface Gap {
  readonly side: Side
  readonly id: string
  readonly name: string
  readonly gap: Figure
  readonly mm: number
}

const opposite = (lap: Figure): Figure => derive('mm', rule.basis, [lap], (l) => -(l as number))
const mayMeet = (...laps: readonly Figure[]) => meeting(laps) !== 'no'

/** What of a unit comes nearest to the case beside it, over it or under it, on the same wall. */
function gapOnWall(site: Site, box: BoxOnWall, piece: RunPiece): readonly Gap[] {
  const isBase =
    piece.unit?.kind === 'base' ||
    piece.unit?.kind === 'corner-base' ||
    piece.unit?.kind === 'appliance-space'
  const worktop = heightNamed(site.heights, 'worktop-top')
  const top = isBase && hasValue(worktop) ? worktop : piece.top
  const along = lapOf({ from: piece.left, to: piece.right }, { from: box.left, to: box.right })
  const upright = lapOf({ from: piece.bottom, to: top }, { from: box.bottom, to: box.top })
  const out = lapOf({ from: piece.back, to: piece.front }, { from: box.near, to: box.out })
  const { id, name } = piece
  const at = (side: Side, gap: Figure): readonly Gap[] =>
    hasValue(gap) && gap.value >= -gap.pm ? [{ side, id, name, gap, mm: gap.value }] : []
  if (!hasValue(along) || !hasValue(upright)) return []
  if (along.value <= 0 && mayMeet(upright, out)) return at('side', opposite(along))
  if (upright.value > 0 || !mayMeet(along, out) || !hasValue(piece.bottom) || !hasValue(box.bottom)) return []
  return at(piece.bottom.value >= box.bottom.value ? 'above' : 'below', opposite(upright))
}

/** What stands in front of it, from whatever other wall. */
function gapInFront(site: Site, box: BoxOnWall, unit: UnitPlan): readonly Gap[] {
  const frame = site.survey.frame(box.wall)
  const [left, right, out, bottom, top] = [box.left, box.right, box.out, box.bottom, box.top]
  if (frame === undefined || unit.pose === null || ![left, right, out, bottom, top].every(hasValue)) return []
  const prisms = prismsAt(unit.solid, unit.pose).filter(
    (prism) => hasValue(bottom) && hasValue(top) && prism.bottom < top.value && prism.top > bottom.value,
  )
  const places = prisms.map(({ polygon }) =>
    polygon.map(({ x, y }) => {
      const [dx, dy] = [x - frame.origin.x, y - frame.origin.y]
      return {
        along: dx * frame.alongDir.x + dy * frame.alongDir.y,
        out: dx * frame.outDir.x + dy * frame.outDir.y,
      }
    }),
  )
  const facing = places.filter((corners) => {
    const alongs = corners.map(({ along }) => along)
    return (
      hasValue(left) &&
      hasValue(right) &&
      Math.min(...alongs) < right.value &&
      Math.max(...alongs) > left.value
    )
  })
  const nearest = Math.min(...facing.flatMap((corners) => corners.map((corner) => corner.out)))
  const gap = derive('mm', rule.basis, [out, unit.depth], (o) => nearest - (o as number))
  if (!Number.isFinite(nearest) || !hasValue(gap) || gap.value < 0) return []
  return [{ side: 'front', id: unit.unit, name: unit.name, gap, mm: gap.value }]
}

function judged(site: Site, boiler: Appliance, gap: Gap): Found | null {
  const asked = boiler[FIELD[gap.side]]
  const left = lessThan(gap.gap, asked, 'gap less what the sheet asks')
  const key = margin(left)
  const matters = gap.mm < (gap.side === 'front' ? NEAR_IN_FRONT : NEAR)
  if (key === null || (key === 'not-known' && !matters)) return null
  const values = {
    boiler: site.name(boiler.id),
    unit: gap.name,
    gap: gap.gap,
    ...(key === 'not-known' ? {} : { asked }),
  }
  return {
    subjects: [boiler.id, gap.side],
    about: [boiler.id, gap.id],
    weight: key === 'short' ? 'stop' : 'ask',
    said: [`${gap.side}-${key}`, key === 'short' ? { ...values, short: missing(left) } : values],
    figures: [left],
    from: [factId('appliances', boiler.id, FIELD[gap.side])],
    ask: ['ask'],
  }
}

function around(site: Site, boiler: Appliance, boxes: readonly BoxOnWall[]): readonly Found[] {
  const box = boxes.find(({ id }) => id === boiler.case)
  if (box === undefined) return []
  const gaps = [
    ...runPieces(site)
      .filter(({ wall }) => wall === box.wall)
      .flatMap((piece) => gapOnWall(site, box, piece)),
    ...site.units.filter(({ wall }) => wall !== box.wall).flatMap((unit) => gapInFront(site, box, unit)),
  ].sort((a, b) => a.mm - b.mm)
  return (['side', 'above', 'below', 'front'] as const).flatMap((side) => {
    const nearest = gaps.find((gap) => gap.side === side)
    return nearest === undefined ? [] : (judged(site, boiler, nearest) ?? [])
  })
}

const sentences = (where: string, side: Side): readonly (readonly [string, string])[] => [
  [
    `${side}-short`,
    `There are {gap} between {boiler} and {unit} ${where}, and its sheet asks for {asked}. {short} is missing.`,
  ],
  [
    `${side}-near`,
    `There are {gap} between {boiler} and {unit} ${where}, just what its sheet asks. Readings this near cannot tell: measure again.`,
  ],
  [
    `${side}-not-known`,
    `There are {gap} between {boiler} and {unit} ${where}. What its sheet asks there nobody has entered.`,
  ],
]

/** F40: units that take from a boiler the room its maker asks for. */
export const rule: Rule = {
  id: 'boiler-clearance',
  heading: 'Room round the boiler',
  catches: ['F40'],
  dangerous: true,
  basis: { kind: 'maker' },
  why: 'A boiler shut in by wall units cannot be opened for its service, and its case and flue get hot.',
  words: Object.fromEntries([
    ...sentences('beside it', 'side'),
    ...sentences('over it', 'above'),
    ...sentences('under it', 'below'),
    ...sentences('in front of it', 'front'),
    [
      'ask',
      'The installation manual of the boiler. For gas, a registered engineer confirms it before units stand about it.',
    ],
  ]),
  check: (site) => {
    const boilers = site.kitchen.appliances.filter(({ kind }) => kind === 'boiler')
    if (boilers.length === 0) return []
    const boxes = boxesOnWalls(site.kitchen, site.survey)
    return boilers.flatMap((boiler) => around(site, boiler, boxes))
  },
}
