import { hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Found, Rule } from './rule'

/** F41: holes in a floor that has, or may have, heating or pipes in it. */
export const rule: Rule = {
  id: 'floor-fixing-over-heating',
  heading: 'Heating in the floor: drill nothing',
  catches: ['F41'],
  dangerous: true,
  basis: {
    kind: 'common-practice',
    why: 'a cleat or island is screwed to the floor; pipes and mats lie a few centimetres down and no detector finds them all',
  },
  why: 'A screw through a heating pipe is found out when the floor is wet.',
  words: {
    heated:
      'There is heating in the floor under {unit}, {depth} down, and it is to be fixed to the floor. Drill nothing there.',
    'heated-depth-unknown':
      'There is heating in the floor under {unit}, nobody knows how deep, and it is to be fixed to the floor. Drill nothing there.',
    'not-known':
      'Nobody has said whether there is heating in the floor under {unit}, which is to be fixed to it. Drill nothing there before that is known.',
    ask: 'Find the drawing of the loops, or ask whoever laid the floor. Otherwise the cleat is glued, by the glue maker’s instructions.',
  },
  check: ({ kitchen, name }) => {
    const { heating, heatingDepth } = kitchen.floor
    if (heating === false) return []
    const fixed = kitchen.units.filter(({ kind, stands }) => kind === 'island' || stands === 'floor-cleat')
    return fixed.map((unit): Found => {
      const said = heating === null ? 'not-known' : hasValue(heatingDepth) ? 'heated' : 'heated-depth-unknown'
      return {
        subjects: [unit.id],
        weight: 'ask',
        said: [said, { unit: name(unit.id), ...(said === 'heated' ? { depth: heatingDepth } : {}) }],
        from: ['floor.heating', factId('units', unit.id, 'kind'), factId('units', unit.id, 'stands')],
        ask: ['ask'],
      }
    })
  },
}
