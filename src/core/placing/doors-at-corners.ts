import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { remembered } from '../remember'
import { sum } from '../survey/sum'
import { type Block, type CornerSide, cornerSides, fromCorner, gapToBlock, type Piece } from './corners'
import { type Door, type Fitted, type Front, frontsInRoom, HANDLE_BACK, HANDLE_EDGE } from './fronts-in-room'

/** A leaf that is hung on the side of its unit towards a corner of the room, in places from that corner. */
export interface DoorAtCorner {
  readonly side: CornerSide
  readonly front: Front
  readonly door: Door
  readonly leaf: HungLeaf
}

export interface HungLeaf {
  /** Its hinge edge from the corner. */
  readonly edge: Figure
  /** Its face, shut, out from its own wall. */
  readonly face: Figure
  readonly width: Figure
  /** Nought where nobody has said: whoever asks about handles looks at the front itself. */
  readonly handle: Figure
}

/**
 * A leaf hung on the front corner of its carcass, over the edge of the side (overlay), stands square with its outer face
 * in line with where its edge was: what concealed hinges do, within a millimetre or two. Common practice.
 */
const hung: Basis = {
  kind: 'geometry',
  why: 'a leaf turning about the front corner of its carcass (an overlay door, common practice)',
}

/** Doors whose hinges are towards a corner; one whose hinge side is not known, at both. */
export const doorsAtCorners: (fitted: Fitted) => readonly DoorAtCorner[] = remembered((fitted: Fitted) => {
  const sides = cornerSides(fitted.kitchen, fitted.survey)
  return frontsInRoom(fitted).flatMap((front): readonly DoorAtCorner[] => {
    const { door, box, plan } = front
    if (door === null || door.hinge === 'top' || door.hinge === 'bottom') return []
    return sides
      .filter(({ own, end }) => own === plan.wall && (door.hinge === null || door.hinge === end))
      .map((side) => {
        const at = known(side.end === 'left' ? box.x0 : box.x1, 0, 'mm', [], hung)
        const leaf: HungLeaf = {
          edge: fromCorner(side, 'own', sum('mm', hung, [plan.left, at])),
          face: front.face,
          width: hasValue(door.width) ? door.width : known(box.x1 - box.x0, 1, 'mm', [], hung),
          handle: hasValue(door.handle) ? door.handle : known(0, 0, 'mm', [], hung),
        }
        return { side, front, door, leaf }
      })
  })
})

/** A place `along` the leaf and `ahead` of its face when it has opened by `angle`, from the corner. */
function onLeaf(x: number, y: number, along: number, ahead: number, angle: number) {
  const turn = (angle * Math.PI) / 180
  const [sine, cosine] = [Math.sin(turn), Math.cos(turn)]
  return [x + along * cosine - ahead * sine, y + along * sine + ahead * cosine] as const
}

/** The stretch of the leaf that its handle may be on. */
const back = (width: number) => Math.max(0, width - HANDLE_BACK)
const fore = (width: number) => Math.max(0, width - HANDLE_EDGE)

/** The gap between an opened leaf, its handle included, and a block round the corner; null where it does not pass it. */
export function leafGap(side: CornerSide, leaf: HungLeaf, block: Block, angle: Figure): Figure | null {
  const figures = [leaf.edge, leaf.face, leaf.width, leaf.handle, angle]
  type Five = [number, number, number, number, number]
  const pieces: readonly ((...values: number[]) => Piece)[] = [
    (...v) => {
      const [x, y, w, h, a] = v as Five
      return [onLeaf(x, y, back(w), h, a), onLeaf(x, y, fore(w), h, a)]
    },
    (...v) => {
      const [x, y, w, , a] = v as Five
      return [onLeaf(x, y, 0, 0, a), onLeaf(x, y, w, 0, a)]
    },
  ]
  const gaps = pieces.flatMap((piece) => gapToBlock(side, block, hung, figures, piece) ?? [])
  const least = Math.min(...gaps.map((gap) => (hasValue(gap) ? gap.value : Number.POSITIVE_INFINITY)))
  return gaps.find((gap) => hasValue(gap) && gap.value === least) ?? null
}

/** The bare wall round a corner. */
export function bareWall(side: CornerSide): Block {
  const nothing = known(0, 0, 'mm', [], hung)
  return { from: nothing, to: side.otherLength, reach: nothing }
}

/** Furthest any door goes, degrees. */
const FURTHEST = 180
/** How finely the angle is looked for before it is halved down, degrees. */
const STEP = 1

interface Turn {
  readonly sine: number
  readonly cosine: number
}

function turnBy(angle: number): Turn {
  const turn = (angle * Math.PI) / 180
  return { sine: Math.sin(turn), cosine: Math.cos(turn) }
}

/** The turn at each step of the angle. */
const TURNS: readonly Turn[] = Array.from({ length: FURTHEST / STEP }, (_, i) => turnBy(i * STEP))

/**
 * The angle at which an opening leaf or its handle meets the bare wall round the corner; 180 if it never does. Looked for
 * in steps and then halved to a hundredth of a degree; its precision is that of every figure it rests on, moved in turn.
 */
export function meetsWallAt(side: CornerSide, leaf: HungLeaf): Figure {
  return wallMetBy(leaf)(side)
}

const wallMetBy = remembered((leaf: HungLeaf) =>
  remembered((side: CornerSide) =>
    derive('deg', hung, [leaf.edge, leaf.face, leaf.width, leaf.handle, side.angle], (...values) =>
      wallMetAt(...(values as [number, number, number, number, number])),
    ),
  ),
)

/** A leaf as bare numbers, and the turn of the wall round the corner. */
interface Hung {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly handle: number
  readonly wall: Turn
}

/** Whether a place along a leaf, and ahead of its face, is in the wall round the corner when it has opened by a turn. */
function isInWall({ x, y, wall }: Hung, along: number, ahead: number, { sine, cosine }: Turn): boolean {
  const px = x + along * cosine - ahead * sine
  const py = y + along * sine + ahead * cosine
  return px * wall.sine - py * wall.cosine < 0
}

function meetsAt(leaf: Hung, turn: Turn): boolean {
  const { width, handle } = leaf
  return (
    isInWall(leaf, width, 0, turn) ||
    isInWall(leaf, back(width), handle, turn) ||
    isInWall(leaf, fore(width), handle, turn)
  )
}

function wallMetAt(x: number, y: number, width: number, handle: number, corner: number): number {
  const leaf: Hung = { x, y, width, handle, wall: turnBy(corner) }
  const step = TURNS.findIndex((turn, i) => i > 0 && meetsAt(leaf, turn))
  if (step < 0) return FURTHEST
  let open = (step - 1) * STEP
  let met = step * STEP
  while (met - open > 0.01) {
    const middle = (open + met) / 2
    if (meetsAt(leaf, turnBy(middle))) met = middle
    else open = middle
  }
  return open
}
