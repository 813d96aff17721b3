import { valueOf } from '../figure'
import type { LegPlan } from '../plan/types'
import { footName } from '../units/foot-name'
import type { FittedUnit } from './job'

/** What a leg, or a corner of a box without legs, is called: left and right as the unit stands, seen from the front. */
export function legName({ plan }: Pick<FittedUnit, 'plan'>, leg: Pick<LegPlan, 'foot' | 'x' | 'y'>): string {
  const [width, depth] = [valueOf(plan.width) ?? null, valueOf(plan.depth) ?? null]
  return footName(leg.foot, { x: leg.x, y: leg.y, width, depth })
}
