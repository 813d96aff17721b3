import { type Figure, hasValue } from '../../figure'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { type DemandRule, demand, exactly } from './demand'

const reached = { kind: 'achieved' } as const

/** What stands, stands: the height a unit was set to on the day is no longer chosen, and overrules the other demands. */
export const achieved: DemandRule = ({ achieved: { undersides }, units, nameOf }) =>
  units.flatMap(({ id, underside }): Demand[] => {
    const height = undersides.get(id)
    if (height === undefined || !hasValue(height)) return []
    const end = (sign: 1 | -1): Figure => exactly(height.value + sign * height.pm, reached, height.from)
    return [
      demand('achieved', {
        subject: id,
        of: underside,
        min: end(-1),
        max: end(1),
        because: message('heights.achieved', { unit: nameOf(id), height }),
        basis: reached,
        about: [id],
      }),
    ]
  })
