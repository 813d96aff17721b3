import { hasValue, known } from '../figure'
import type { HeightName } from '../kitchen/kinds'
import type { Plan, UnitId } from '../plan/types'
import { type Held, holdingEntries } from './achieved'
import type { DayLog, LogEntry } from './schema'

/** A line is struck, and a unit set to it, to within this, mm. Common practice: a good base top lies within 1 of its line. */
const SET_TO = 1

/** Once it is levelled a unit stands where the plan of that moment put it, unless its height was read. */
const LEVELS = new Set(['level', 'lock', 'fix', 'second-fix', 'screw-back', 'restrain'])

/**
 * What the work done so far holds fast although nobody read it: lines struck, and units levelled to them, at the heights
 * of the plan as it stood when the work was done. A reading made later does not move what is on the wall already.
 *
 * @param planAt the plan that the entries before a moment, and what they held fast, came to; null where there was none
 */
export function heldBy(log: DayLog, planAt: (before: DayLog, held: Held) => Plan | null): Held {
  const struck = new Map<HeightName, ReturnType<typeof known>>()
  const undersides = new Map<UnitId, ReturnType<typeof known>>()
  const before: LogEntry[] = []
  let plan: Plan | null | undefined
  const now = () => {
    plan ??= planAt(
      { ...log, entries: before.slice() },
      { struck: new Map(struck), undersides: new Map(undersides) },
    )
    return plan
  }
  for (const entry of holdingEntries(log)) {
    if (entry.kind === 'done') {
      const [kind = '', on = ''] = entry.operation.split(':')
      const cite = [`log.${entry.id}`]
      if (kind === 'set-out-heights') {
        for (const { of, height } of now()?.heights.values ?? []) {
          if (hasValue(height) && !struck.has(of))
            struck.set(of, known(height.value, SET_TO, 'mm', cite, { kind: 'achieved' }))
        }
      } else if (LEVELS.has(kind) && !undersides.has(on)) {
        const unit = now()?.units.find((u) => u.unit === on)
        if (unit !== undefined && hasValue(unit.underside)) {
          undersides.set(on, known(unit.underside.value, SET_TO, 'mm', cite, { kind: 'achieved' }))
        }
      }
    } else if (entry.kind !== 'level') plan = undefined
    before.push(entry)
  }
  return { struck, undersides }
}
