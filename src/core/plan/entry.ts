import { achievedBy, type Held, nothingAchieved, nothingHeld } from '../daylog/achieved'
import { heldBy } from '../daylog/held'
import { withObservations } from '../daylog/observed'
import { parseDayLog } from '../daylog/parse-log'
import type { DayLog } from '../daylog/schema'
import { canonicalHash } from '../hash'
import { assumeProductDefaults } from '../kitchen/assume-defaults'
import { normalise } from '../kitchen/normalise'
import { parseKitchen } from '../kitchen/parse-kitchen'
import type { Problem } from '../kitchen/problem'
import { whatIsSaid } from '../kitchen/what-is-said'
import { regionPack } from '../region/region'
import { withPartNames } from '../units/part-name'
import { changesBetween } from './changes'
import { plan, RULES_VERSION } from './plan'
import type { NoPlan, Plan } from './types'

/** What comes of a kitchen file and a day log: the one door for the command line, the worker and the tests. */
export type Outcome =
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'plan'; readonly plan: Plan }
  | { readonly kind: 'no-order'; readonly noPlan: NoPlan }

/**
 * Works a kitchen through: reads it, lays the day log over it, plans, and says what the log has changed.
 *
 * @param kitchenValue a kitchen file, as parsed JSON
 * @param logValue a day log, as parsed JSON; null: nothing done yet
 */
export function workThrough(kitchenValue: unknown, logValue: unknown = null): Outcome {
  const log = logValue === null ? null : parseDayLog(logValue)
  if (log !== null && !log.ok) return { kind: 'refused', problems: log.error }
  const before = planFile(kitchenValue, null)
  if (log === null || log.value.entries.length === 0 || before.kind === 'refused') return before
  const held = heldBy(log.value, (entries, so) => {
    const then = planFile(kitchenValue, entries, so)
    return then.kind === 'plan' ? then.plan : null
  })
  const after = planFile(kitchenValue, log.value, held)
  if (after.kind !== 'plan' || before.kind !== 'plan') return after
  return { kind: 'plan', plan: { ...after.plan, changes: changesBetween(before.plan, after.plan) } }
}

function planFile(kitchenValue: unknown, log: DayLog | null, held: Held = nothingHeld): Outcome {
  const observed = log === null ? { file: kitchenValue, lost: [] } : withObservations(kitchenValue, log)
  const parsed = parseKitchen(observed.file)
  if (!parsed.ok) return { kind: 'refused', problems: parsed.error }
  const region = regionPack(parsed.value.kitchen.region)
  const kitchen = assumeProductDefaults(withPartNames(normalise(parsed.value.kitchen)), region)
  const achieved = log === null ? nothingAchieved : achievedBy(kitchen, log, held)
  const hash = canonicalHash({
    file: whatIsSaid(normalise(observed.file)),
    log,
    region: region?.asOf ?? null,
    rules: RULES_VERSION,
  })
  const planned = plan({ kitchen, achieved, region, hash })
  return planned.ok ? { kind: 'plan', plan: planned.value } : { kind: 'no-order', noPlan: planned.error }
}
