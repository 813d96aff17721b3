import { known } from '../figure'
import { isFound } from '../fixings/usable-studs'
import { wallKind } from '../fixings/wall-kind'
import { factId } from '../kitchen/fact-id'
import type { Rule } from './rule'

/** Below this many found, the spacing of studs is a guess. */
const LEAST = 3

/** F22: a spacing of studs assumed from too few of them. */
export const rule: Rule = {
  id: 'few-studs',
  heading: 'Too few studs found',
  catches: ['F22'],
  dangerous: true,
  basis: {
    kind: 'common-practice',
    why: 'spacings of 400, 406 and 600 drift apart by 6 mm a bay or more, and two studs cannot tell them apart',
  },
  why: 'A spacing read off two studs and carried along the wall misses the fifth one.',
  words: {
    few: 'Only {found} of the studs in {wall} have been found for certain, and units are fixed to it. Their spacing cannot be told from fewer than {least}.',
    ask: 'Run the detector over {wall} both ways, mark both edges of at least {least} studs, and measure each to its middle.',
  },
  check: ({ kitchen, units, name }) =>
    kitchen.walls.flatMap((wall) => {
      const isFixedTo = units.some((unit) => unit.wall === wall.id && unit.kind !== 'appliance-space')
      if (wallKind(wall) !== 'studs' || !isFixedTo) return []
      const certain = wall.studs.filter(isFound)
      if (certain.length >= LEAST) return []
      const from = [
        factId('walls', wall.id, 'construction'),
        ...wall.studs.map((stud) => factId('walls', wall.id, 'studs', stud.id, 'confirmed')),
      ]
      const found = known(certain.length, 0, 'count', from, { kind: 'geometry', why: 'counted' })
      return [
        {
          subjects: [wall.id],
          weight: 'ask',
          said: ['few', { found, wall: name(wall.id), least: LEAST }],
          from,
          where: { wall: wall.id },
          ask: ['ask', { wall: name(wall.id), least: LEAST }],
        },
      ]
    }),
}
