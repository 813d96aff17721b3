import { type Basis, derive, type Figure, hasValue, known } from '../figure'
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
export function doorsAtCorners(fitted: Fitted): readonly DoorAtCorner[] {
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
}

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

/**
 * The angle at which an opening leaf or its handle meets the bare wall round the corner; 180 if it never does. Looked for
 * in steps and then halved to a hundredth of a degree; its precision is that of every figure it rests on, moved in turn.
 */
export function meetsWallAt(side: CornerSide, leaf: HungLeaf): Figure {
  const figures = [leaf.edge, leaf.face, leaf.width, leaf.handle, side.angle]
  return derive('deg', hung, figures, (...values) => {
    const [x, y, w, h, t] = values as [number, number, number, number, number]
    const turn = (t * Math.PI) / 180
    const out = ([px, py]: readonly [number, number]) => px * Math.sin(turn) - py * Math.cos(turn)
    const isIn = (angle: number) =>
      [onLeaf(x, y, w, 0, angle), onLeaf(x, y, back(w), h, angle), onLeaf(x, y, fore(w), h, angle)].some(
        (point) => out(point) < 0,
      )
    let [open, met] = [0, STEP]
    while (met < FURTHEST && !isIn(met)) [open, met] = [met, met + STEP]
    if (met >= FURTHEST) return FURTHEST
    while (met - open > 0.01) {
      const middle = (open + met) / 2
      if (isIn(middle)) met = middle
      else open = middle
    }
    return open
  })
}
