import type { Plan } from '../../core/plan/types'
import { wallName } from '../../core/words/plan-names'
import { upperFirst } from '../../core/words/upper-first'
import { unitsOn } from './wall/pen'

export interface SheetName {
  readonly id: string
  readonly name: string
}

export const wallSheet = (wall: string): string => `wall:${wall}`

/** The sheets of a plan, in the order they are printed: what to know first, the heights, each wall with work on it, the work. */
export function sheetsOf(plan: Plan): readonly SheetName[] {
  const busy = plan.walls.filter(
    (w) => unitsOn(plan, w.wall).length > 0 || plan.holes.some((h) => h.wall === w.wall),
  )
  const walls = busy.length > 0 ? busy : plan.walls
  return [
    { id: 'first', name: 'First sheet' },
    ...walls.map((w) => ({ id: wallSheet(w.wall), name: upperFirst(wallName(w.wall, plan)) })),
    ...(plan.heights.values.length > 0 ? [{ id: 'heights', name: 'Heights' }] : []),
    ...(plan.operations.length > 0 ? [{ id: 'work', name: 'Order of work' }] : []),
  ]
}
