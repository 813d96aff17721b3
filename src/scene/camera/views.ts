import { standingAt } from '../../core/plan/standing-at'
import type { Plan } from '../../core/plan/types'
import { type RoomShape, roomShape } from '../room-shape'
import { chooseView, type View, type ViewSubject } from './choose-view'
import { viewSubject } from './subject'

/** Views of a plan's operations, each chosen with the one before it in mind. */
export interface Views {
  readonly room: RoomShape
  readonly at: (index: number) => View
}

/**
 * The views of a whole plan for one shape of picture. They are worked out in order and kept, because each rests on the
 * direction of the one before: the same plan and shape always give the same views, wherever the user has been.
 */
export function makeViews(plan: Plan, aspect: number): Views {
  const room = roomShape(plan)
  const kept: View[] = []
  let facing: ViewSubject['facing'] = null
  return {
    room,
    at: (index) => {
      const wanted = Math.max(0, Math.min(plan.operations.length, index))
      while (kept.length <= wanted) {
        const next = kept.length
        const subject = viewSubject(plan, standingAt(plan, next, 0), room, aspect)
        const isSame = facing?.x === subject.facing?.x && facing?.y === subject.facing?.y
        kept.push(chooseView(subject, aspect, kept[next - 1] ?? null, isSame ? 'sameWall' : 'otherWall'))
        facing = subject.facing
      }
      return kept[wanted] as View
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
