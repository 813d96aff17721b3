import type { UnitPlan } from '../../core/plan/types'
import type { Case } from '../case'
import { isRecord } from '../json'
import { checkCapacity } from './capacity'

/** Words no message of the plan may have for a hole, a lift or a fixing. */
const CLAIMS = /(^|\.)(safe|clear|guaranteed|approved|ok-to-drill)$/

/** Capacity is told in three ways only, and never better than the figures entered allow. */
export function checkVerdicts(c: Case): void {
  for (const unit of c.plan.units) {
    if (unit.holding !== null) checkCapacity(c, unit.unit, unit.holding)
    checkLegsSaid(c, unit)
  }
  walk(c.plan, (key) => {
    if (CLAIMS.test(key)) c.refuse('verdict', key, 'nothing is ever called safe or clear')
  })
}

/** A leg that does not reach stops the work. */
function checkLegsSaid(c: Case, unit: UnitPlan): void {
  for (const leg of unit.legs) {
    const outside = leg.within === 'too-short' || leg.within === 'too-long'
    const said = c.plan.findings.some((f) => f.rule === 'leg-out-of-reach' && f.weight === 'stop')
    if (outside && !said)
      c.refuse('finding missing', `${unit.unit}.${leg.foot}`, 'a leg out of reach stops the work')
  }
}

function walk(node: unknown, visit: (key: string) => void): void {
  if (Array.isArray(node)) {
    if (typeof node[0] === 'string') return
    for (const item of node) walk(item, visit)
    return
  }
  if (!isRecord(node) || 'missing' in node || 'pm' in node) return
  if (typeof node['key'] === 'string' && isRecord(node['values'])) visit(node['key'])
  for (const inner of Object.values(node)) walk(inner, visit)
}
