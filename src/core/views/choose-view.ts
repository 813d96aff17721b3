import type { RoomPoint } from '../plan/types'
import { type Direction, towardEye } from './frame-view'
import { azimuthOf, showsAll, tryView } from './try-view'
import type { View, ViewSubject } from './view'

/** Directions tried: 15° steps, because people hardly tell finer ones apart (Niimi and Yokosawa 2009). */
export const STEP = 15
const USUAL = [20, 5, 35] as const
/** From very high up or from below: only where the others show too little. */
const UNUSUAL = [-10, 50] as const
export const ELEVATIONS = [...USUAL, ...UNUSUAL]
/** So many directions that show everything are enough to choose among. */
const ENOUGH = 4
/** Furthest from straight on that a wall is looked at, degrees. */
const WIDEST = 75
/** Further than this is a turn that loses one's bearings (methods B.4, B5), degrees; half a degree of it is spare. */
const FAR = 45.3
/** One of so many steps on end may turn so far. */
const SPAN = 6
/** What turning costs, in points of a view: any turn at all, and degrees of it to the point. */
const TURN = { sameWall: { any: 0.3, perPoint: 90 }, otherWall: { any: 0.1, perPoint: 200 } }
/** What a turn costs that must not be: more than all a view can be better by, short of showing what it must. */
const FORBIDDEN = 7
/** Views of one operation that are so much worse than its best are not thought about again. */
const HOPELESS = 12

/** All directions worth trying, in a fixed order so that equal scores always give the same one. */
export function candidates(
  subject: ViewSubject,
  elevations: readonly number[] = ELEVATIONS,
): readonly Direction[] {
  const straight = subject.facing === null ? null : azimuthOf(subject.facing)
  const turns = straight === null ? 360 / STEP : (2 * WIDEST) / STEP + 1
  const first = straight === null ? 0 : straight - WIDEST
  return elevations.flatMap((elevation) =>
    Array.from({ length: turns }, (_, i) => ({ azimuth: first + i * STEP, elevation })),
  )
}

/** The step before the first of those that are chosen for: how it was looked at, and how long ago the view turned far. */
export interface Last {
  readonly view: Direction
  readonly wall: string | null
  /** Steps since the view turned far; no more than can matter. */
  readonly since: number
}

/** A view chosen, and what the next choice must know of it. */
export interface Chosen {
  readonly view: View
  readonly last: Last
}

/** From one end of the room and from high up, walls that face each other are looked at without turning far. */
const FROM_THE_END = { off: [45, 52.5, 60, 65], elevations: [38, 42, 50] }

function fromTheEnd({ facing }: ViewSubject): readonly Direction[] {
  if (facing === null) return []
  const straight = azimuthOf(facing)
  return FROM_THE_END.elevations.flatMap((elevation) =>
    FROM_THE_END.off.flatMap((off) => [
      { azimuth: straight - off, elevation },
      { azimuth: straight + off, elevation },
    ]),
  )
}

/**
 * The views worth thinking about for one operation: every one that comes near the best it can have. Where the work goes on
 * along another wall, before it or after it, there are more.
 */
export function possibleViews(subject: ViewSubject, aspect: number, isAtTurn = false): readonly View[] {
  const attempt = (d: Direction) => tryView(subject, aspect, d, true)
  const usual = candidates(subject, USUAL)
  const atEnd = isAtTurn ? fromTheEnd(subject).map((d) => tryView(subject, aspect, d, true, true)) : []
  const unusual = candidates(subject, UNUSUAL)
  const tried = [...usual.map(attempt), ...atEnd]
  const few = tried.filter(showsAll).length < ENOUGH
  const all = few ? [...tried, ...unusual.map(attempt)] : tried
  const best = bestOf(all)
  // Finer steps round the best, for a mark that a board's edge just cuts.
  const finer = showsAll(best) ? all : [...all, ...near(best).map((d) => tryView(subject, aspect, d))]
  const least = bestOf(finer).score - HOPELESS
  return finer.filter((v) => v.score >= least)
}

/** The best view; of equal ones the first. */
function bestOf(views: readonly View[]): View {
  return views.reduce((a, b) => (b.score > a.score + 1e-9 ? b : a))
}

function near({ azimuth, elevation }: Direction): readonly Direction[] {
  return [0, -5, 5].flatMap((up) =>
    [0, -5, 5, -10, 10].map((turn) => ({ azimuth: azimuth + turn, elevation: elevation + up })),
  )
}

/** One way of having looked at the steps so far, kept for each view of the last and each count since a far turn. */
interface Way {
  readonly score: number
  readonly view: View
  readonly since: number
  readonly before: Way | null
}

/**
 * The views of successive operations, chosen together: each shows its part and all its fixings, three-quarter, and the
 * way one looks changes as little as may be; far, no more than once in six steps and never along one wall.
 */
export function chooseViews(
  steps: readonly { readonly wall: string | null; readonly possible: readonly View[] }[],
  last: Last | null,
): readonly Chosen[] {
  let ways: readonly Way[] = []
  let wall = last?.wall ?? null
  const spare = SPAN - 1
  for (const [i, step] of steps.entries()) {
    const isSame = step.wall !== null && step.wall === wall
    const from = i > 0 ? ways : []
    const eyes = from.map((w) => towardEye(w.view))
    const next: Way[] = []
    for (const view of step.possible) {
      if (i === 0) {
        next.push(firstWay(view, last, isSame))
        continue
      }
      const best: (Way | null)[] = Array.from({ length: SPAN }, () => null)
      const eye = towardEye(view)
      for (const [k, before] of from.entries()) {
        const turned = stepTo(angleBetween(eyes[k] as RoomPoint, eye), before.since, isSame)
        const score = before.score + view.score - turned.cost
        const known = best[turned.since]
        if (known == null || score > known.score + 1e-9) {
          best[turned.since] = { score, view, since: turned.since, before }
        }
      }
      for (const way of best) if (way !== null) next.push(way)
    }
    ways = next
    wall = step.wall
  }
  return unrolled(ways, steps, spare)
}

function firstWay(view: View, last: Last | null, isSame: boolean): Way {
  if (last === null) return { score: view.score, view, since: SPAN - 1, before: null }
  const turned = stepTo(angleBetween(towardEye(last.view), towardEye(view)), last.since, isSame)
  return { score: view.score - turned.cost, view, since: turned.since, before: null }
}

/** What a turn costs, and how many steps after it the last far turn lies back. */
function stepTo(
  angle: number,
  since: number,
  isSame: boolean,
): { readonly cost: number; readonly since: number } {
  const { any, perPoint } = isSame ? TURN.sameWall : TURN.otherWall
  const cost = angle < 0.5 ? 0 : any + angle / perPoint
  if (angle <= FAR) return { cost, since: Math.min(SPAN - 1, since + 1) }
  const isForbidden = isSame || since < SPAN - 1
  return { cost: cost + (isForbidden ? FORBIDDEN : 0), since: 0 }
}

function unrolled(
  ways: readonly Way[],
  steps: readonly { readonly wall: string | null }[],
  spare: number,
): readonly Chosen[] {
  let way: Way | null = ways.reduce<Way | null>(
    (a, b) => (a === null || b.score > a.score + 1e-9 ? b : a),
    null,
  )
  const chosen: Chosen[] = []
  for (let i = steps.length - 1; way !== null && i >= 0; i -= 1) {
    const { view, since } = way
    const { azimuth, elevation } = view
    chosen.unshift({
      view,
      last: { view: { azimuth, elevation }, wall: steps[i]?.wall ?? null, since: Math.min(spare, since) },
    })
    way = way.before
  }
  return chosen
}

/** Degrees between two directions of length 1. */
function angleBetween(a: RoomPoint, b: RoomPoint): number {
  return (Math.acos(Math.max(-1, Math.min(1, a.x * b.x + a.y * b.y + a.z * b.z))) * 180) / Math.PI
}
