import { type Figure, hasValue, known } from '../figure'
import { massOfWorktop } from '../lifting/worktop-mass'
import type { Operation } from '../plan/types'
import type { Rule, Site } from './rule'

const DAY = 480
/** A lift in the last two hours of a working day of eight. */
const LATE = 360
const HEAVY = 25

/** What is lifted at an operation, when that is known. */
function lifted(site: Site, operation: Operation): Figure | null {
  const [on = ''] = operation.on
  if (['stand-up', 'hang'].includes(operation.kind)) return site.unit(on)?.lift.massStripped ?? null
  const worktop = site.kitchen.worktops.find(({ id }) => id === on)
  return operation.kind === 'worktop' && worktop !== undefined
    ? massOfWorktop(worktop, site).heaviestPiece
    : null
}

/** F92: the heaviest lifts at the end of a day's work. */
export const rule: Rule = {
  id: 'heavy-lift-late',
  heading: 'A heavy lift at the end of a day',
  catches: ['F92'],
  dangerous: true,
  basis: {
    kind: 'common-practice',
    why: 'days of eight hours, usual times for the work before it, and 25 kg as the mass from which tiredness tells',
  },
  why: 'Tired hands drop things.',
  words: {
    late: '{what} weighs {mass} and comes about {hours} hours into the work, at the end of a day. Rest before it, or begin the next day with it.',
  },
  check: (site) => {
    let before = 0
    return site.order.flatMap((operation) => {
      const start = before
      if (!operation.done) before += operation.minutes.typical
      const mass = lifted(site, operation)
      if (mass === null || !hasValue(mass) || mass.value < HEAVY || start % DAY < LATE) return []
      const [on = ''] = operation.on
      const hours = known(Math.round(start / 60), 1, 'count', [], {
        kind: 'common-practice',
        why: 'usual times, added up',
      })
      return [{ subjects: [on], weight: 'warn', said: ['late', { what: site.name(on), mass, hours }] }]
    })
  },
}
