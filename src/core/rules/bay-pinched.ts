import { type Basis, derive, type Figure, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import { HUNG_KINDS } from '../kitchen/kinds'
import type { Appliance } from '../kitchen/schema'
import { bayOf } from '../placing/appliance-doors'
import { type CornerSide, cornerSides, fromCorner } from '../placing/corners'
import { overLimit } from '../placing/over-limit'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { highestOf, lowestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const between: Basis = { kind: 'geometry', why: 'from what stands on its left to what stands on its right' }

interface Bay {
  readonly piece: RunPiece
  readonly left: Figure | null
  readonly right: Figure | null
}

/** What stands on either side of a space, in its height; null: nothing does as far as the corner. */
function bayAt(pieces: readonly RunPiece[], piece: RunPiece): Bay {
  const isLow = (one: RunPiece) => {
    const [low, high] = [one.bottom, one.top]
    if (!hasValue(low) || !hasValue(high) || !hasValue(piece.bottom) || !hasValue(piece.top)) return true
    return low.value < piece.top.value && high.value > piece.bottom.value
  }
  const others = pieces.filter((one) => one.wall === piece.wall && one.id !== piece.id && isLow(one))
  const middle =
    hasValue(piece.left) && hasValue(piece.right) ? (piece.left.value + piece.right.value) / 2 : 0
  const lefts = others.map(({ right }) => right).filter((f) => hasValue(f) && f.value <= middle)
  const rights = others.map(({ left }) => left).filter((f) => hasValue(f) && f.value >= middle)
  return {
    piece,
    left: lefts.length === 0 ? null : highestOf('mm', between, lefts),
    right: rights.length === 0 ? null : lowestOf('mm', between, rights),
  }
}

/** What a wall beside the space takes off its width that far out; less than nothing where it leans away. */
function leaningIn(side: CornerSide, out: Figure): Figure {
  return derive('mm', rule.basis, [side.angle, out], (t, o) => {
    const turn = ((t as number) * Math.PI) / 180
    return ((o as number) * Math.cos(turn)) / Math.sin(turn)
  })
}

/** The width of the space at its back and at its front, wherever a wall is one of its sides. */
function widths(site: Site, bay: Bay, deep: Figure): readonly { at: 'back' | 'front'; width: Figure }[] {
  const sides = cornerSides(site.kitchen, site.survey).filter(({ own }) => own === bay.piece.wall)
  const [left, right] = (['left', 'right'] as const).map((end) => sides.find((side) => side.end === end))
  const frame = site.survey.frame(bay.piece.wall)
  if (frame === undefined) return []
  const to = bay.right ?? frame.length
  const back = bay.left === null ? to : sum('mm', between, [to], [bay.left])
  const walls = [bay.left === null ? left : undefined, bay.right === null ? right : undefined]
  const off = walls.flatMap((side) => (side === undefined ? [] : [leaningIn(side, deep)]))
  const front = sum('mm', rule.basis, [back], off)
  return [{ at: 'back', width: back }, ...(off.length === 0 ? [] : [{ at: 'front' as const, width: front }])]
}

/** A wall so far off that the appliance does not stand against it, mm. Common practice. */
const FAR = 60

/** Which sides of the space a wall stands at; those far away stand at none. */
function beside(site: Site, bay: Bay): Bay {
  const sides = cornerSides(site.kitchen, site.survey).filter(({ own }) => own === bay.piece.wall)
  const isFar = (end: 'left' | 'right') => {
    const side = sides.find((one) => one.end === end)
    const gap = side === undefined ? null : fromCorner(side, 'own', bay.piece[end])
    return gap === null || !hasValue(gap) || gap.value > FAR
  }
  return {
    piece: bay.piece,
    left: bay.left ?? (isFar('left') ? bay.piece.left : null),
    right: bay.right ?? (isFar('right') ? bay.piece.right : null),
  }
}

/** How much the run as planned is longer than its alcove, at the back and at the front: the space pays for it. */
function pinchOf(
  site: Site,
  wall: string,
  depth: 'back' | 'front',
  pieces: readonly RunPiece[],
): Figure | null {
  const measured = (site.wall(wall)?.widths ?? []).filter(
    (one) => one.at !== 'wall-unit' && (one.depth === null || one.depth === depth),
  )
  const rooms = measured.map(({ width }) => width).filter(hasValue)
  const ends = pieces
    .filter((one) => one.wall === wall && !HUNG_KINDS.includes(one.unit?.kind ?? 'base'))
    .map(({ right }) => right)
  if (rooms.length === 0 || !ends.every(hasValue)) return null
  const over = sum('mm', between, [highestOf('mm', between, ends)], [lowestOf('mm', between, rooms)])
  return hasValue(over) && over.value > 0 ? over : null
}

function judged(site: Site, pieces: readonly RunPiece[], appliance: Appliance): Found | null {
  const piece = pieces.find(({ id }) => id === bayOf(site.kitchen, appliance))
  if (piece?.unit?.kind !== 'appliance-space' || !hasValue(appliance.widthNeeded)) return null
  const deep = hasValue(appliance.depthNeeded) ? appliance.depthNeeded : piece.unit.depth
  const at = widths(site, beside(site, bayAt(pieces, piece)), deep)
  const planned = {
    at: 'plan',
    width: piece.unit.width,
    short: sum('mm', rule.basis, [appliance.widthNeeded], [piece.unit.width]),
  }
  const both = (['back', 'front'] as const).flatMap((where) => {
    const there = at.find((one) => one.at === where) ?? at[0]
    if (there === undefined) return []
    const pinch = pinchOf(site, piece.wall, where, pieces)
    const width = pinch === null ? there.width : sum('mm', rule.basis, [there.width], [pinch])
    const isPlain = pinch === null && there.at === 'back' && at.length === 1
    return isPlain
      ? []
      : [{ at: where, width, short: sum('mm', rule.basis, [appliance.widthNeeded], [width]) }]
  })
  const shorts = [planned, ...both].flatMap((one) =>
    hasValue(one.short) ? [{ ...one, by: one.short.value, pm: one.short.pm }] : [],
  )
  const worst = shorts.sort((a, b) => b.by - a.by)[0]
  // Between two units the fitter sets the width by what is written: equal is enough.
  if (worst === undefined || worst.by <= 0) return null
  const key = worst.at === 'plan' || overLimit(worst.short) === 'over' ? worst.at : `${worst.at}-near`
  const values = {
    appliance: site.name(appliance.id),
    bay: piece.name,
    width: worst.width,
    needed: appliance.widthNeeded,
    short: worst.short,
  }
  return {
    subjects: [appliance.id, piece.id],
    about: [appliance.id, piece.id],
    weight: key.endsWith('-near') ? 'ask' : 'stop',
    said: [key, values],
    where: { wall: piece.wall, along: piece.left },
    ask: ['ask'],
    waysOut:
      worst.at === 'plan'
        ? [
            {
              said: ['wider', { bay: piece.name, needed: appliance.widthNeeded }],
              cost: 'minutes',
              edits: [{ set: factId('units', piece.id, 'width'), to: appliance.widthNeeded.value }],
            },
          ]
        : [],
  }
}

/** F42: a space narrower at its back or at its front than the appliance asks, for a run or a wall that pinches it. */
export const rule: Rule = {
  id: 'bay-pinched',
  heading: 'Too little room for an appliance',
  catches: ['F42'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the space measured at its back and at its front against what the sheet asks',
  },
  why: 'Units pushed together one by one take the last millimetres from the dishwasher, at the back where nobody looks.',
  words: {
    plan: '{bay} is planned {width} wide, and {appliance} asks for {needed}. {short} is missing.',
    back: '{bay} is only {width} wide at its back, and {appliance} asks for {needed}. {short} is missing.',
    front: '{bay} is only {width} wide at its front, and {appliance} asks for {needed}. {short} is missing.',
    'back-near':
      '{bay} is {width} wide at its back, and {appliance} asks for {needed}. Readings this near cannot tell: measure there again.',
    'front-near':
      '{bay} is {width} wide at its front, and {appliance} asks for {needed}. Readings this near cannot tell: measure there again.',
    ask: 'Measure the space at its back and at its front, low and high, before the next unit is screwed down. A narrower filler gives what is missing.',
    wider: 'Make {bay} {needed} wide.',
  },
  check: (site) => {
    const pieces = runPieces(site)
    return site.kitchen.appliances.flatMap((appliance) => judged(site, pieces, appliance) ?? [])
  },
}
