import type { Basis } from '../../figure'
import { message } from '../../message'
import { unitsIn } from '../context'
import { type DemandRule, demand, exactly } from './demand'

const oneLine: Basis = { kind: 'common-practice', why: 'tops of hung and tall units are set in one line' }

/** The tops of hung units line up with the tops of tall ones. Preferred. */
export const topLine: DemandRule = (context) => {
  const units = [...unitsIn(context, 'tall'), ...unitsIn(context, 'wall')]
  if (new Set(units.map(({ group }) => group)).size < 2) return []
  const level = exactly(0, oneLine)
  return [
    demand('top-line', {
      subject: 'wall-tall',
      from: 'tall-top',
      of: 'wall-top',
      min: level,
      max: level,
      because: message('heights.top-line'),
      basis: oneLine,
      about: units.map(({ id }) => id),
      hard: false,
    }),
  ]
}
