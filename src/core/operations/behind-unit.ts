import { type Basis, type Figure, hasValue, known, restingOn } from '../figure'
import { mergedIds } from '../ids'
import type { Accessory, AlongPosition, HeightPosition, Service } from '../kitchen/schema'
import type { UnitPlan, WallId } from '../plan/types'
import { sum } from '../survey/sum'
import type { Job } from './job'

/** A pipe end or an outlet that lies behind a unit, and where it meets the unit's back. */
export interface Behind {
  readonly id: string
  /** What it is, in words: "cold water pipe", "socket". */
  readonly what: string
  readonly isOutlet: boolean
  /** How wide it is, and of an outlet how tall: its pipe, or its faceplate. */
  readonly size: { readonly wide: Figure; readonly tall: Figure | null }
  readonly along: Figure
  /** Its middle from the unit's left side, seen from the front. */
  readonly x: Figure
  /** Its middle up from the unit's underside. */
  readonly y: Figure
}

const OUTLETS: Readonly<Partial<Record<Accessory['kind'], string>>> = {
  socket: 'socket',
  spur: 'fused spur',
  'cooker-outlet': 'cooker outlet',
  isolator: 'isolator',
  data: 'data outlet',
  aerial: 'aerial outlet',
  switch: 'switch',
  light: 'light outlet',
  other: 'outlet',
}
const PIPES: Readonly<Partial<Record<Service['kind'], string>>> = {
  'water-cold': 'cold water pipe',
  'water-hot': 'hot water pipe',
  heating: 'heating pipe',
  gas: 'gas pipe',
  waste: 'waste pipe',
  duct: 'duct',
}

const acrossTheBack: Basis = { kind: 'geometry', why: 'from the left side of the unit, seen from the front' }
const onTheWall: Figure = known(0, 0, 'mm', [], acrossTheBack)
const upTheBack: Basis = { kind: 'geometry', why: 'up from the underside of the unit' }

interface Point {
  readonly id: string
  readonly what: string
  readonly isOutlet: boolean
  readonly size: Behind['size']
  readonly along: AlongPosition
  readonly height: HeightPosition
}

/** Outlets on the room's face, and the ends of pipes there. A cable in the wall needs no hole in a back. */
function pointsOn(job: Job, id: WallId): readonly Point[] {
  const wall = job.wall(id)
  if (wall === undefined) return []
  const outlets = wall.accessories.flatMap(({ id: of, kind, face, along, height, ...plate }): Point[] => {
    const what = OUTLETS[kind]
    return what === undefined || face !== 'room'
      ? []
      : [{ id: of, what, isOutlet: true, size: { wide: plate.width, tall: plate.tall }, along, height }]
  })
  const pipes = wall.services.flatMap(({ id: of, kind, face, points, width }): Point[] => {
    const what = PIPES[kind]
    if (what === undefined || face !== 'room') return []
    const ends = points.length > 1 ? [points[0], points.at(-1)] : [points[0]]
    return ends.flatMap((end) =>
      end === undefined
        ? []
        : [{ ...end, id: `${of}.${end.id}`, what, isOutlet: false, size: { wide: width, tall: null } }],
    )
  })
  return [...outlets, ...pipes]
}

/**
 * What comes out of the wall behind a unit, from left to right. Only what the file gives a place for: what is not known
 * is asked about where the wall is traced. Each figure rests on all that says it lies there. A space for an appliance is
 * open down to the floor.
 */
export function behindUnit(
  job: Job,
  plan: UnitPlan,
  from: 'underside' | 'floor' = 'underside',
): readonly Behind[] {
  const { survey } = job.context
  return pointsOn(job, plan.wall)
    .flatMap(({ id, what, isOutlet, size, ...point }): Behind[] => {
      const along = survey.along(plan.wall, point.along)
      const height = survey.height(point.height, { wall: plan.wall, along, out: onTheWall })
      const x = sum('mm', acrossTheBack, [along], [plan.left])
      const y = sum('mm', upTheBack, [height], [plan.underside])
      if (!isWithin(x, plan.width, 0)) return []
      if (!isWithin(y, plan.height, from === 'floor' ? Number.NEGATIVE_INFINITY : 0)) return []
      const all = mergedIds([x.from, y.from, plan.width.from, plan.height.from])
      const resting = (figure: Figure) => restingOn(figure, all)
      const sized = { wide: resting(size.wide), tall: size.tall === null ? null : resting(size.tall) }
      return [{ id, what, isOutlet, size: sized, along: resting(along), x: resting(x), y: resting(y) }]
    })
    .sort((a, b) => valueIn(a.x) - valueIn(b.x) || (a.id < b.id ? -1 : 1))
}

function isWithin(figure: Figure, size: Figure, from: number): boolean {
  return hasValue(figure) && hasValue(size) && figure.value > from && figure.value < size.value
}

function valueIn(figure: Figure): number {
  return hasValue(figure) ? figure.value : 0
}
