import { type Basis, type Figure, hasValue, type InputId, known, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { FinishingPart, Kitchen, Unit } from '../kitchen/schema'
import type { WallId } from '../plan/types'
import { citing, sum } from '../survey/sum'
import type { Survey } from '../survey/survey'

/** From where to where a unit, panel or filler stands along its wall, from the wall's left end. */
export interface Extent {
  readonly wall: WallId | null
  readonly left: Figure
  readonly right: Figure
}

type Order = Unit['order'] | NonNullable<FinishingPart['order']>

/** Anything that takes up width along a wall. */
interface Standing {
  readonly path: InputId
  readonly wall: WallId | null
  readonly order: Order | undefined
  readonly width: Figure
}

const besideNeighbour: Basis = { kind: 'geometry', why: 'beside its neighbour along the wall' }
const touching: Basis = { kind: 'geometry', why: 'neighbours touch where no gap is given' }

/** Unit and part ids share one list of neighbours: the file refuses an id used for both. */
function standingById(kitchen: Kitchen): ReadonlyMap<string, Standing> {
  const all = new Map<string, Standing>()
  for (const { id, wall, order, width } of kitchen.finishing) {
    all.set(id, { path: factId('finishing', id), wall, order, width })
  }
  for (const { id, wall, order, width } of kitchen.units) {
    all.set(id, { path: factId('units', id), wall, order, width })
  }
  return all
}

/**
 * Finds where things stand along their walls, following neighbours through units and finishing parts. A place that
 * runs in a ring, or beside something on another wall or nowhere, is unknown.
 */
export function extentsOn(kitchen: Kitchen, survey: Survey): (id: string) => Extent | undefined {
  const standing = standingById(kitchen)
  const found = new Map<string, Extent>()
  const onTheWay = new Set<string>()

  const extentOf = (id: string): Extent | undefined => {
    const one = standing.get(id)
    const ready = found.get(id)
    if (one === undefined || ready !== undefined || onTheWay.has(id)) return ready
    onTheWay.add(id)
    const extent = place(one)
    onTheWay.delete(id)
    found.set(id, extent)
    return extent
  }

  const place = (one: Standing): Extent => {
    const { order } = one
    if (order?.left !== undefined) {
      if (one.wall === null) return nowhere(one, [factId(one.path, 'wall')])
      const left = citing(survey.along(one.wall, order.left), [factId(one.path, 'wall')])
      return rightwards(one, one.wall, left)
    }
    if (order?.rightOf !== undefined) return toTheRight(one, extentOf(order.rightOf))
    if (order?.leftOf !== undefined) return toTheLeft(one, extentOf(order.leftOf))
    return nowhere(one, [factId(one.path, 'order', 'left', 'at')])
  }

  return extentOf
}

function wallOf(one: Standing, neighbour: Extent | undefined): WallId | null | undefined {
  if (neighbour === undefined) return undefined
  const wall = one.wall ?? neighbour.wall
  // A neighbour whose wall nobody has given has no place yet: what is beside it waits for that.
  return neighbour.wall === null || wall === neighbour.wall ? wall : undefined
}

function toTheRight(one: Standing, neighbour: Extent | undefined): Extent {
  const fact = factId(one.path, 'order', 'rightOf')
  const wall = wallOf(one, neighbour)
  if (neighbour === undefined || wall === undefined) return nowhere(one, [fact])
  const left = sum('mm', besideNeighbour, [neighbour.right, gapOf(one)])
  return rightwards(one, wall, citing(left, [fact]))
}

function toTheLeft(one: Standing, neighbour: Extent | undefined): Extent {
  const fact = factId(one.path, 'order', 'leftOf')
  const wall = wallOf(one, neighbour)
  if (neighbour === undefined || wall === undefined) return nowhere(one, [fact])
  const right = citing(sum('mm', besideNeighbour, [neighbour.left], [gapOf(one)]), [fact])
  return { wall, left: sum('mm', besideNeighbour, [right], [one.width]), right }
}

function rightwards(one: Standing, wall: WallId | null, left: Figure): Extent {
  return { wall, left, right: sum('mm', besideNeighbour, [left, one.width]) }
}

/** No gap given means that they touch: 0, exactly. Finishing parts always touch. */
function gapOf({ order }: Standing): Figure {
  const gap = order !== undefined && 'gap' in order ? order.gap : undefined
  return gap !== undefined && hasValue(gap) ? gap : known(0, 0, 'mm', [], touching)
}

function nowhere(one: Standing, missing: readonly InputId[]): Extent {
  const figure = unknown('mm', missing, missing, besideNeighbour)
  return { wall: one.wall, left: figure, right: figure }
}
