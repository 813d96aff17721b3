import { hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Found, Rule } from './rule'

const CORNERS: readonly string[] = ['corner-base', 'corner-wall']

/** F09: a corner unit of the other hand. */
export const rule: Rule = {
  id: 'wrong-hand',
  heading: 'A corner unit of the wrong hand',
  catches: ['F09'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'the nearer end of its wall is the corner it stands in' },
  why: 'A left-handed corner unit opens into the wall when it is put in a right-hand corner.',
  words: {
    wrong:
      '{unit} is made for a corner on its {hand}, and the corner of {wall} is on its {side}, {gap} away. It is the wrong hand.',
    ask: 'Open its box and look which side has no door, before the run is marked. Some can be turned over: their sheet says.',
    turned: 'It is the other hand after all, or can be made so: say so.',
  },
  check: ({ kitchen, unit: planOf, survey, name }) =>
    kitchen.units.flatMap((unit): readonly Found[] => {
      const plan = planOf(unit.id)
      const length = survey.frame(unit.wall)?.length
      const stated = unit.hand === 'left' || unit.hand === 'right'
      if (!stated || !CORNERS.includes(unit.kind) || plan === undefined || length === undefined) return []
      if (!hasValue(plan.left) || !hasValue(plan.right) || !hasValue(length)) return []
      const atLeft = plan.left.value < length.value - plan.right.value
      const side = atLeft ? 'left' : 'right'
      if (side === unit.hand) return []
      const gap = atLeft ? plan.left : { ...length, value: length.value - plan.right.value }
      return [
        {
          subjects: [unit.id],
          weight: 'stop',
          said: ['wrong', { unit: name(unit.id), hand: unit.hand, wall: name(unit.wall), side, gap }],
          from: [factId('units', unit.id, 'hand'), ...plan.right.from, ...length.from],
          where: { wall: unit.wall, along: plan.left },
          ask: ['ask'],
          waysOut: [
            {
              said: ['turned'],
              cost: 'a look',
              edits: [{ set: factId('units', unit.id, 'hand'), to: side }],
            },
          ],
        },
      ]
    }),
}
