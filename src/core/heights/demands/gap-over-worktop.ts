import { message } from '../../message'
import { unitsIn } from '../context'
import { type DemandRule, demand, exactly } from './demand'

/** Room to work between worktop and hung units, as is usual in the region. Preferred: it gives way to what must be. */
export const gapOverWorktop: DemandRule = (context) => {
  const gap = context.region?.gapOverWorktop
  const units = unitsIn(context, 'wall')
  if (gap === undefined || units.length === 0 || context.kitchen.worktops.length === 0) return []
  const min = exactly(gap.min, gap.basis, ['region'])
  const max = exactly(gap.max, gap.basis, ['region'])
  return [
    demand('gap-over-worktop', {
      subject: 'wall',
      from: 'worktop-top',
      of: 'wall-underside',
      min,
      max,
      because: message('heights.gap-over-worktop', { min, max }),
      basis: gap.basis,
      about: units.map(({ id }) => id),
      hard: false,
    }),
  ]
}
