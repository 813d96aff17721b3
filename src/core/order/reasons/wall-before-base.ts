import { hasValue } from '../../figure'
import type { FittedUnit, Job } from '../../operations/job'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 20

/** Wall units before the base units under them: one stands closer, and nothing falls on a base. */
export const wallBeforeBase: OrderRule = (job, work) => {
  const hung = job.units.filter((unit) => unit.way === 'hung')
  const bases = job.units.filter((unit) => unit.way === 'base')
  return hung.flatMap((unit) =>
    bases
      .filter((base) => isUnder(base, unit))
      .flatMap((base) => {
        const proved = inTheWay(job, unit, base)
        return reason({
          before: work.get(`hang:${unit.id}`),
          after: work.get(`place:${base.id}`),
          kind: 'practice',
          rule: 'wall-before-base',
          basis: practice('wall units before base units where possible'),
          because: because(proved ? 'wall-before-base.proved' : 'wall-before-base', {
            unit: unit.name,
            base: base.name,
            mass: unit.plan.lift.massStripped,
            depth: base.plan.depth,
          }),
          facts: [`units.${unit.id}`, `units.${base.id}`],
          figures: [unit.plan.left, unit.plan.right, base.plan.left, base.plan.right],
          cost: COST,
        })
      }),
  )
}

/** On the same wall, and over one another; where a side is not known, taken to be. */
function isUnder(base: FittedUnit, unit: FittedUnit): boolean {
  if (base.wall !== unit.wall) return false
  const { left: bl, right: br } = base.plan
  const { left: ul, right: ur } = unit.plan
  if (!hasValue(bl) || !hasValue(br) || !hasValue(ul) || !hasValue(ur)) return true
  return Math.min(br.value, ur.value) > Math.max(bl.value, ul.value)
}

function inTheWay(job: Job, mover: FittedUnit, blocker: FittedUnit): boolean {
  return job.context.paths.some((path) => path.unit === mover.id && path.blockedBy.includes(blocker.id))
}
