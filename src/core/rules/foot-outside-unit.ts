import { type Figure, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Unit } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import { sum } from '../survey/sum'
import { footName } from '../units/foot-name'
import type { Rule } from './rule'

const basis = { kind: 'geometry', why: 'a leg stands under the box that it carries' } as const
const nothing: Figure = known(0, 0, 'mm', [], basis)

/** The arms of an L-shaped unit reach further out than it is deep. */
const hasArms = ({ returnLeft, returnRight }: Unit): boolean =>
  returnLeft.state !== 'unknown' || returnRight.state !== 'unknown'

/** F11: a foot entered where the unit is not, so that its leg is worked out for another place of the floor. */
export const rule: Rule = {
  id: 'foot-outside-unit',
  heading: 'A foot that is not under its unit',
  catches: ['F11'],
  dangerous: false,
  basis,
  why: 'A leg is as long as the floor under its foot is low: at another place it is another length.',
  words: {
    beside:
      'The {foot} foot of {unit} is entered {at} from its left side, and that is {by} past a side: {unit} is {size} wide.',
    before:
      'The {foot} foot of {unit} is entered {at} from its back, and that is {by} past its front or back: {unit} is {size} deep.',
    ask: 'Measure where the feet of {unit} are, each from its left side and from its back.',
  },
  check: ({ kitchen, name }) =>
    kitchen.units.flatMap((unit) =>
      unit.feet.flatMap((foot) =>
        (
          [
            ['beside', 'x', foot.x, unit.width],
            ['before', 'y', foot.y, unit.depth],
          ] as const
        )
          .filter(([, axis]) => axis === 'x' || !hasArms(unit))
          .flatMap(([said, axis, at, size]) => {
            const past = [sum('mm', basis, [at], [size]), sum('mm', basis, [nothing], [at])]
            const by = past.find((over) => overLimit(over) === 'over')
            if (by === undefined) return []
            return [
              {
                subjects: [unit.id, foot.id, axis],
                about: [unit.id],
                weight: 'ask' as const,
                said: [said, { foot: footName(foot.id), unit: name(unit.id), at, by, size }] as const,
                figures: [at, size],
                from: [factId('units', unit.id, 'feet', foot.id, axis)],
                ask: ['ask', { unit: name(unit.id) }] as const,
              },
            ]
          }),
      ),
    ),
}
