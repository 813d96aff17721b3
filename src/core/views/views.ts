import type { Plan } from '../plan/types'
import { type Chosen, chooseViews, possibleViews } from './choose-view'
import { keptIn } from './kept'
import { type RoomShape, roomShape } from './room-shape'
import { viewSubject } from './subject'
import { shownAt } from './upturned'
import type { View, ViewSubject } from './view'

/** Views of a plan's operations, each chosen with those before and after it in mind. */
export interface Views {
  readonly room: RoomShape
  readonly at: (index: number) => View
  /** What that view is to show. */
  readonly about: (index: number) => ViewSubject
}

/** So many steps are thought about together, and so many of their views are kept before the next are. */
const AHEAD = 14
const KEPT = 7

/**
 * The views of a whole plan for one shape of picture. They are worked out in order, some steps at a time, and kept: the
 * same plan and shape always give the same views, wherever the user has been.
 */
export function makeViews(plan: Plan, aspect: number): Views {
  const room = roomShape(plan)
  const steps: { readonly wall: string | null; readonly possible: readonly View[] }[] = []
  const kept: Chosen[] = []
  const shown: View[] = []
  const subjects: ViewSubject[] = []
  const count = plan.operations.length + 1
  const stepAt = (i: number) => {
    const known = steps[i]
    if (known !== undefined) return known
    const subject = viewSubject(plan, shownAt(plan, i, 0), room, aspect)
    const isElsewhere = (k: number) => {
      const wall = plan.operations[k]?.wall ?? null
      return wall !== null && subject.wall !== null && wall !== subject.wall
    }
    const isAtTurn = isElsewhere(i - 1) || isElsewhere(i + 1)
    const made = { wall: subject.wall, possible: possibleViews(subject, aspect, isAtTurn) }
    steps[i] = made
    return made
  }
  const within = (index: number) => Math.max(0, Math.min(plan.operations.length, index))
  const about = (index: number) => {
    const wanted = within(index)
    const known = subjects[wanted]
    if (known !== undefined) return known
    const made = viewSubject(plan, shownAt(plan, wanted, 0), room, aspect)
    subjects[wanted] = made
    return made
  }
  return {
    room,
    about,
    at: (index) => {
      const wanted = within(index)
      while (kept.length <= wanted) {
        const from = kept.length
        const ahead = Array.from({ length: Math.min(AHEAD, count - from) }, (_, i) => stepAt(from + i))
        kept.push(...chooseViews(ahead, kept[from - 1]?.last ?? null).slice(0, KEPT))
      }
      const known = shown[wanted]
      if (known !== undefined) return known
      const { view } = kept[wanted] as Chosen
      const made = { ...view, kept: keptIn(shownAt(plan, wanted, 0), about(wanted), view) }
      shown[wanted] = made
      return made
    },
  }
}

/** Views already worked out, by plan and shape of picture. Held only as long as the plan itself. */
const worked = new WeakMap<Plan, Map<number, Views>>()

/** The views of a plan as `makeViews` gives them, worked out once however often its picture is put up again. */
export function viewsOf(plan: Plan, aspect: number): Views {
  const ofPlan = worked.get(plan) ?? new Map<number, Views>()
  worked.set(plan, ofPlan)
  const views = ofPlan.get(aspect) ?? makeViews(plan, aspect)
  ofPlan.set(aspect, views)
  return views
}

/** Picture shapes are told apart in tenths, so that a small change of size turns nothing round. */
export function roundedAspect(width: number, height: number): number {
  return height <= 0 ? 1 : Math.max(0.4, Math.round((width / height) * 10) / 10)
}
