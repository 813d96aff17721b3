import { type Basis, type Figure, hasValue, type InputId, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Service, Wall } from '../kitchen/schema'
import type { Band } from '../plan/types'
import type { Survey } from '../survey/survey'
import { band, type Edge } from './band'

/** Room kept round a traced service, and round one that is only guessed at. */
const MARGIN = 25
const GUESSED_MARGIN = 50
/** Drawn width of a service whose own is not known. */
const UNSIZED = 50
const ON_FACE = known(0, 0, 'mm', [])

const basis: Basis = {
  kind: 'common-practice',
  why: 'a drill wanders 5 to 10 mm and a detector shows a place to 10 or 20 mm: 25 mm is kept on both sides of a known service, 50 mm where it is only guessed',
}

interface PlacedPoint {
  readonly id: string
  readonly along: Figure
  readonly height: Figure
}

/**
 * The room round each leg of every known cable, pipe or duct in the wall, on whichever face it lies: a hole in it is
 * refused. A slanting leg takes the whole rectangle it slants across.
 */
export function serviceBands(wall: Wall, survey: Pick<Survey, 'along' | 'height'>): readonly Band[] {
  return wall.services.flatMap((service) => {
    const points = service.points.map((point): PlacedPoint => {
      const along = survey.along(wall.id, point.along)
      const height = survey.height(point.height, { wall: wall.id, along, out: ON_FACE })
      return { id: point.id, along, height }
    })
    return points.length === 0
      ? [placeless(service, wall)]
      : legs(points).map((leg) => legBand(service, wall, leg))
  })
}

function legs(points: readonly PlacedPoint[]): readonly (readonly [PlacedPoint, PlacedPoint])[] {
  if (points.length === 1) {
    const only = points[0] as PlacedPoint
    return [[only, only]]
  }
  return points.slice(1).map((to, i) => [points[i] as PlacedPoint, to])
}

function legBand(service: Service, wall: Wall, [a, b]: readonly [PlacedPoint, PlacedPoint]): Band {
  const margin = service.traced === 'guessed' || service.traced === null ? GUESSED_MARGIN : MARGIN
  const half = (hasValue(service.width) ? service.width.value : UNSIZED) / 2 + margin
  const [left, right] = span(a.along, b.along, half)
  const [bottom, top] = span(a.height, b.height, half)
  return band({
    id:
      a === b
        ? `service.${wall.id}.${service.id}.${a.id}`
        : `service.${wall.id}.${service.id}.${a.id}-${b.id}`,
    wall: wall.id,
    kind: 'service',
    about: [service.id],
    face: service.face,
    left,
    right,
    bottom,
    top,
    rests: [service.width, a.along, b.along, a.height, b.height],
    lacking: faceInDoubt(service, wall),
    from: [factId('walls', wall.id, 'services', service.id, 'traced')],
    widthPm: hasValue(service.width) ? service.width.pm / 2 : 0,
    basis,
  })
}

function span(a: Figure, b: Figure, half: number): readonly [Edge, Edge] {
  if (!hasValue(a))
    return [
      { at: a, off: 0 },
      { at: a, off: 0 },
    ]
  if (!hasValue(b))
    return [
      { at: b, off: 0 },
      { at: b, off: 0 },
    ]
  const [low, high] = a.value <= b.value ? [a, b] : [b, a]
  return [
    { at: low, off: -half },
    { at: high, off: half },
  ]
}

/** A service somebody knows to be in the wall, and nothing of where. */
function placeless(service: Service, wall: Wall): Band {
  const points = factId('walls', wall.id, 'services', service.id, 'points')
  return band({
    id: `service.${wall.id}.${service.id}`,
    wall: wall.id,
    kind: 'service',
    about: [service.id],
    face: service.face,
    left: null,
    right: null,
    bottom: null,
    top: null,
    lacking: [points],
    basis,
  })
}

/** As for accessories: on the other face, yet given as measured on this one. */
function faceInDoubt(service: Service, wall: Wall): readonly InputId[] {
  return service.points
    .filter((point) => point.along.face !== service.face)
    .map((point) => factId('walls', wall.id, 'services', service.id, 'points', point.id, 'along', 'face'))
}
