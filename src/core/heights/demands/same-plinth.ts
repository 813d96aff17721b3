import type { Basis } from '../../figure'
import { message } from '../../message'
import { unitsIn } from '../context'
import { type DemandRule, demand, exactly } from './demand'

const onePlinth: Basis = { kind: 'common-practice', why: 'tall and base units stand on one plinth line' }

/** Tall units stand as high as base units, so that one plinth runs along both. Preferred. */
export const samePlinth: DemandRule = (context) => {
  const units = [...unitsIn(context, 'tall'), ...unitsIn(context, 'base')]
  if (new Set(units.map(({ group }) => group)).size < 2) return []
  const level = exactly(0, onePlinth)
  return [
    demand('same-plinth', {
      subject: 'tall-base',
      from: 'base-underside',
      of: 'tall-underside',
      min: level,
      max: level,
      because: message('heights.same-plinth'),
      basis: onePlinth,
      about: units.map(({ id }) => id),
      hard: false,
    }),
  ]
}
