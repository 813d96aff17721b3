import { convexHull } from '../geometry/convex-hull'
import type { PlanPoint, RoomPoint } from '../plan/types'
import { ontoPicture } from './covered-by'
import { FIELD } from './frame-view'
import type { View, ViewSubject } from './view'

/** Something that lies over a picture, as buttons do: shares of its width and height, from its top left. */
export interface Cover {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}
/** The picture that is covered: what lies over it, its shape, and half the size of a round mark as a share of its height. */
export interface CoveredPicture {
  readonly covers: readonly Cover[]
  readonly aspect: number
  readonly mark: number
}

/** Kept clear at the top, as a share of the height. */
const TOP = 0.02
/** A picture is raised by so much at a time, and no further than it can be without standing on its head. */
const RISE = { by: 0.01, most: 0.3 }
/** Where raising alone does not do, the eye goes back by so much, at most so often. */
const BACK = { by: 1.04, times: 12 }

/**
 * The same view with its picture raised, as one shifts the film and not the camera, so that neither the part in hand nor
 * a fixing is under what lies over it; from further back only where there is too little room above. The eye stays on its
 * line: what hides what is as it was chosen. A view in which that cannot be stays as it is.
 */
export function clearOf(
  view: View,
  subject: Pick<ViewSubject, 'bodies' | 'fixings' | 'place'>,
  picture: CoveredPicture,
): View {
  if (picture.covers.length === 0 || subject.bodies.length + subject.fixings.length === 0) return view
  let tried = view
  for (let i = 0; i <= BACK.times; i += 1) {
    const raised = riseIn(tried, subject, picture)
    if (raised !== null) return raised === 0 && i === 0 ? view : { ...tried, raised }
    tried = steppedBack(tried)
  }
  return view
}

function steppedBack(view: View): View {
  const { eye, target } = view
  const away = (e: number, t: number) => t + (e - t) * BACK.by
  return { ...view, eye: { x: away(eye.x, target.x), y: away(eye.y, target.y), z: away(eye.z, target.z) } }
}

/** By how much the picture has to be raised, as a share of its height; null: there is no room for it. */
function riseIn(
  { eye, target }: View,
  { bodies, fixings, place }: Pick<ViewSubject, 'bodies' | 'fixings' | 'place'>,
  { covers, aspect, mark }: CoveredPicture,
): number | null {
  const tall = 2 * Math.tan((FIELD * Math.PI) / 360)
  const onto = ontoPicture(eye, target)
  const spot = (p: RoomPoint): PlanPoint => {
    const { x, y } = onto(p)
    return { x: 0.5 + x / (tall * aspect), y: 0.5 - y / tall }
  }
  const round = ({ at }: { readonly at: RoomPoint }) => {
    const { x, y } = spot(at)
    return [-1, 1].flatMap((a) => [-1, 1].map((b) => ({ x: x + (a * mark) / aspect, y: y + b * mark })))
  }
  const outlines = [
    ...bodies.map((body) => convexHull(body.map(spot))),
    ...fixings.map(round).map(convexHull),
  ]
  const top = Math.min(...outlines.flat().map((p) => p.y), ...place.map(({ at }) => spot(at).y))
  const most = Math.min(RISE.most, Math.max(0, top - TOP))
  for (let rise = 0; rise <= most + 1e-9; rise += RISE.by) {
    const isClear = outlines.every((outline) =>
      covers.every((c) => areApart(outline, { ...c, y0: c.y0 + rise, y1: c.y1 + rise })),
    )
    if (isClear) return rise
  }
  return null
}

/** Whether a convex outline and a rectangle have nothing in common: some straight line goes between them. */
function areApart(outline: readonly PlanPoint[], { x0, x1, y0, y1 }: Cover): boolean {
  const corners = [x0, x1].flatMap((x) => [y0, y1].map((y) => ({ x, y })))
  const sides = outline.map((p, i) => {
    const q = outline[(i + 1) % outline.length] ?? p
    return { x: q.y - p.y, y: p.x - q.x }
  })
  return [...sides, { x: 1, y: 0 }, { x: 0, y: 1 }].some((way) => {
    const along = (p: PlanPoint) => p.x * way.x + p.y * way.y
    const [a, b] = [outline.map(along), corners.map(along)]
    return Math.max(...a) <= Math.min(...b) || Math.max(...b) <= Math.min(...a)
  })
}
