import { hasValue } from '../figure'
import { message } from '../message'
import { finding } from '../plan/finding'
import type { Finding, UnitPlan } from '../plan/types'
import type { RegionPack } from '../region/region'
import { listed } from '../words/listed'
import { basisAlone } from './guidance'
import { covers, isNear } from './team'

type Lifted = Pick<UnitPlan, 'unit' | 'name' | 'lift'>

/**
 * What the weight recommended for one person is for, and what not, said once for the whole kitchen, with the units that
 * are or may be over it. Nothing where the region has a filter instead.
 */
export function guidanceNote(
  region: Pick<RegionPack, 'lifting'> | null,
  units: readonly Lifted[],
): readonly Finding[] {
  const basis = basisAlone(region)
  const judged = units.flatMap(({ name, lift }) =>
    lift.alone === undefined ? [] : [{ name, mass: lift.massStripped, lower: lift.alone.lower }],
  )
  if (basis === null || judged.length === 0) return []
  const over = judged.filter(
    ({ mass, lower }) => hasValue(mass) && (!covers(lower, mass) || isNear(lower, mass)),
  )
  const say =
    over.length === 0
      ? message('lifting.guidance')
      : message('lifting.guidance.over', { units: listed(over.map(({ name }) => name)) })
  const figures = judged.map(({ lower }) => lower)
  return [finding({ rule: 'lifting-guidance', subjects: ['kitchen'], weight: 'note', say, figures, basis })]
}
