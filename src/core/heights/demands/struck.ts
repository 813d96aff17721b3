import { hasValue } from '../../figure'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { heightWords } from '../height-words'
import { type DemandRule, demand, exactly } from './demand'

const onTheWall = { kind: 'achieved' } as const

/** A line that is on the wall stays where it is as long as everything else can live with it. Preferred, before all practice. */
export const struck: DemandRule = ({ achieved }) =>
  [...achieved.struck].flatMap(([of, height]): Demand[] => {
    if (!hasValue(height)) return []
    const there = exactly(height.value, onTheWall, height.from)
    return [
      demand('struck', {
        subject: of,
        of,
        min: there,
        max: there,
        because: message('heights.struck', { height, of: heightWords(of) }),
        basis: onTheWall,
        about: [of],
        hard: false,
      }),
    ]
  })
