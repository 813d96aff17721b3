import type { UnitPlan } from '../../core/plan/types'
import type { Case } from '../case'
import { isRecord } from '../json'
import { isHung } from '../positions'

const CAPACITY = new Set(['exceeds', 'below the figure you entered', 'unknown'])
/** Words no message of the plan may have for a hole, a lift or a fixing. */
const CLAIMS = /(^|\.)(safe|clear|guaranteed|approved|ok-to-drill)$/

/** Capacity is told in three ways only, and never better than the figures entered allow. */
export function checkVerdicts(c: Case): void {
  for (const unit of c.plan.units) {
    if (unit.holding !== null) checkHolding(c, unit)
    checkLegsSaid(c, unit)
  }
  walk(c.plan, (key) => {
    if (CLAIMS.test(key)) c.refuse('verdict', key, 'nothing is ever called safe or clear')
  })
}

function checkHolding(c: Case, unit: UnitPlan): void {
  const { holding } = unit
  if (holding === null) return
  const { verdict, pullPerFixing, shearPerFixing } = holding
  if (!CAPACITY.has(verdict)) {
    c.refuse('verdict', unit.unit, `"${verdict}" is not a thing to say about capacity`)
    return
  }
  const given = c.units.get(unit.unit)?.unit
  if (given === undefined) return
  const purposes = isHung(given)
    ? ['plate', 'rail', 'back-rail', 'cleat', 'second-fixing']
    : ['base-bracket', 'tall-restraint']
  const used = c.plan.holes.filter(
    (h) => h.for.includes(unit.unit) && purposes.includes(h.purpose) && h.verdict !== 'refused',
  )
  const limits = used.map((h) => c.given.fixings.find((f) => f.id === h.fixing))
  const pulls = limits.flatMap((f) => (f === undefined || f.pull.value === null ? [] : [f.pull.value]))
  const shears = limits.flatMap((f) => (f === undefined || f.shear.value === null ? [] : [f.shear.value]))
  const known = pullPerFixing.state !== 'unknown' && shearPerFixing.state !== 'unknown'
  if (verdict === 'unknown') return
  if (!known || pulls.length === 0) {
    c.refuse('verdict', unit.unit, `it is called "${verdict}" though no figure was entered to tell by`)
    return
  }
  const over =
    pullPerFixing.value > Math.max(...pulls) ||
    (shears.length > 0 && shearPerFixing.value > Math.max(...shears))
  if (verdict === 'below the figure you entered' && over) {
    c.refuse('verdict', unit.unit, 'its fixings pull harder than the figure entered')
  }
  const under =
    pullPerFixing.value <= Math.min(...pulls) &&
    (shears.length === 0 || shearPerFixing.value <= Math.min(...shears))
  if (verdict === 'exceeds' && under)
    c.refuse('verdict', unit.unit, 'its fixings pull less than the figure entered')
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
