import type { UnitKind } from '../kitchen/kinds'
import type { LocalBox, Pose, UnitId, WallId } from '../plan/types'
import { boundsOf, type Prism, prismsAt } from './solid'
import { BLOCK_HEIGHT } from './stand-up'
import type { Side } from './sweep'

/** How a tall unit is stood up on the floor before it is moved in. */
export interface StandUpWay {
  /** Sides to try, best first. */
  readonly sides: readonly Side[]
  /** Height of the blocks under the edge it turns on, mm; the leg length when it may swing on its feet. */
  readonly blocks: number
  /** The leg length when it may swing on its feet, else 0: see `sweptStandingUp`. */
  readonly reach: number
  /** How far in from each side the foot it swings on stands; left out where it turns on its edge. */
  readonly insets?: Readonly<Record<Side, number>>
}

/** A unit with a place: all that the placing knows of it. Fronts are off. */
export interface PlacedUnit {
  readonly unit: UnitId
  readonly kind: UnitKind
  readonly wall: WallId
  /** Where it ends up. */
  readonly pose: Pose
  /** Carcass boxes; none for a mere space, which nothing is brought to. */
  readonly solid: readonly LocalBox[]
  /** Hung on the wall: it is lifted up and let down onto its hooks. */
  readonly hung: boolean
  /** How far above its place it is lifted to hook on, mm. */
  readonly hookLift: number
  /** Left out: a standing tall unit is stood up over any side on the usual blocks. Null: it comes upright. */
  readonly standUp?: StandUpWay | null
}

/** Over the back is kindest to it, then the open front; sideways it stands on an edge of one panel. */
const USUAL_WAY: StandUpWay = { sides: ['back', 'front', 'left', 'right'], blocks: BLOCK_HEIGHT, reach: 0 }

/** How it is stood up; null when it comes upright. */
export function standUpWayOf(placed: PlacedUnit): StandUpWay | null {
  if (placed.hung || placed.kind !== 'tall') return null
  return placed.standUp === undefined ? USUAL_WAY : placed.standUp
}

/** A unit that has a body, with what is asked of it again and again worked out once. */
export interface Body {
  readonly placed: PlacedUnit
  readonly bounds: LocalBox
  /** Its prisms where it ends up. */
  readonly inPlace: readonly Prism[]
}

/** The units that have a body, in the order given. */
export function bodiesOf(placed: readonly PlacedUnit[]): readonly Body[] {
  return placed.flatMap((unit) => {
    const bounds = boundsOf(unit.solid)
    return bounds === null ? [] : [{ placed: unit, bounds, inPlace: prismsAt(unit.solid, unit.pose) }]
  })
}
