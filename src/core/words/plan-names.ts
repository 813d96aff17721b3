import { legName } from '../operations/leg-name'
import type { Plan, UnitPlan } from '../plan/types'
import { footName } from '../units/foot-name'
import { studName, studsMarked } from '../units/stud-name'
import { type FactNames, factName } from './fact-name'

type Units = Pick<Plan, 'units'>
type Walls = Pick<Plan, 'walls'>
/** As much of a plan as its things are named by. */
export type Named = Units & Walls & Pick<Plan, 'marks' | 'parts'>

export function unitName(id: string, { units }: Units): string {
  return unitOf(id, { units })?.name ?? id.replaceAll('-', ' ')
}

export function wallName(id: string, { walls }: Walls): string {
  const name = walls.find((w) => w.wall === id)?.name ?? id
  return /\bwall\b|partition/i.test(name) ? name : `wall ${name}`
}

/** What a foot of a unit is called, by where the plan stands it under the unit when its id does not say it. */
export function footOf(plan: UnitPlan | undefined, foot: string): string {
  const leg = [...(plan?.legs ?? []), ...(plan?.shims ?? [])].find((l) => l.foot === foot)
  return plan === undefined || leg === undefined ? footName(foot) : legName({ plan }, leg)
}

export const unitOf = (id: string, { units }: Units) => units.find((u) => u.unit === id)

/** A fact of the kitchen or an entry of the day log in words, things called as the plan calls them. */
export function inputName(id: string, plan: Named): string {
  return factName(id, namesIn(plan))
}

function namesIn(plan: Named): FactNames {
  return {
    unit: (id) => unitName(id, plan),
    wall: (id) => wallName(id, plan),
    foot: (unit, foot) => footOf(unitOf(unit, plan), foot),
    bearsOn: (unit) => (unitOf(unit, plan)?.shims === undefined ? 'foot' : 'corner'),
    thing: (list, id, wall) => thingName(list, id, wall, plan),
  }
}

function thingName(list: string, id: string, wall: string | null, plan: Named): string | undefined {
  if (list === 'studs' && wall !== null) return `the ${studName(studsMarked(plan, wall), id)}`
  if (list === 'finishing' || list === 'worktops') return plan.parts?.find((p) => p.part === id)?.name
  return undefined
}
