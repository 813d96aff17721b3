import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const basis = practice('a unit is brought to marks that are there')

/** The marks of its wall are there before a unit is brought to them: its sides before it comes, its height before it is levelled. */
export const linesBeforePlacing: OrderRule = (job, work) =>
  job.units.flatMap((unit) => {
    if (unit.way === 'island') return []
    const { plan, wall } = unit
    const facts = [`units.${unit.id}`, `units.${unit.id}.wall`]
    const height = unit.way === 'hung' ? plan.underside : plan.top
    return [
      ...reason({
        before: work.get(`set-out-widths:${wall}`),
        after: work.bringIn(unit.id),
        kind: 'datum',
        rule: 'lines-before-placing',
        basis,
        because: because('lines-before-placing.side', {
          unit: unit.name,
          left: plan.left,
          right: plan.right,
        }),
        facts,
      }),
      ...reason({
        before: work.get(`set-out-heights:${wall}`),
        after: work.get(`level:${unit.id}`),
        kind: 'datum',
        rule: 'lines-before-placing',
        basis,
        because: because(`lines-before-placing.${unit.way === 'hung' ? 'underside' : 'top'}`, {
          unit: unit.name,
          height,
        }),
        facts,
      }),
    ]
  })
