import { withEdits } from '../kitchen/edit'
import { workThrough } from './entry'
import type { Cost, Finding, Plan, WayOut } from './types'

const CHEAPEST_FIRST: readonly Cost[] = ['a look', 'minutes', 'an hour', 'a part to buy', 'a day or more']

const stopsWork = (finding: Finding): boolean =>
  finding.weight === 'stop' || (finding.weight === 'ask' && finding.dangerous)

/**
 * A way out with its plan made: null when it changes nothing, the finding is still there, something worse comes, or there
 * is no plan.
 */
function tried(way: WayOut, of: Finding, before: Plan, kitchen: unknown, log: unknown): WayOut | null {
  if (way.edits.length === 0) return null
  const file = withEdits(kitchen, way.edits)
  if (file === undefined) return null
  const outcome = workThrough(file, log)
  if (outcome.kind !== 'plan') return null
  const there = new Set(before.findings.map((finding) => finding.id))
  const after = outcome.plan.findings
  if (after.some((finding) => finding.id === of.id)) return null
  const fresh = after.filter((finding) => !there.has(finding.id) && finding.weight !== 'note')
  if (fresh.some(stopsWork)) return null
  return { ...way, planned: 'holds', brings: fresh.map((finding) => finding.id) }
}

const rank = (way: WayOut): number => CHEAPEST_FIRST.indexOf(way.cost) * 100 + way.brings.length

/**
 * The ways out of one finding that hold: each was planned again with its edits made, and only those under which the
 * finding goes and nothing worse comes are kept, cheapest first.
 *
 * @param kitchen the kitchen file the plan was made from, as parsed JSON
 * @param log its day log, or null
 */
export function waysOutOf(
  finding: Finding,
  plan: Plan,
  kitchen: unknown,
  log: unknown = null,
): readonly WayOut[] {
  const ways = finding.waysOut.flatMap((way) => tried(way, finding, plan, kitchen, log) ?? [])
  return ways.sort((a, b) => rank(a) - rank(b))
}

/** The plan with the ways out of all its findings planned: those that do not hold are gone. */
export function withWaysOut(plan: Plan, kitchen: unknown, log: unknown = null): Plan {
  const findings = plan.findings.map((finding) =>
    finding.waysOut.length === 0 ? finding : { ...finding, waysOut: waysOutOf(finding, plan, kitchen, log) },
  )
  return { ...plan, findings }
}
