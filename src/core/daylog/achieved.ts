import { derive, type Figure, restingOn } from '../figure'
import type { HeightName } from '../kitchen/kinds'
import type { Kitchen, Unit } from '../kitchen/schema'
import type { OperationId, StandingState, UnitId } from '../plan/types'
import type { DayLog, LogEntry } from './schema'

/** What the day log says has been done, read and reached so far: it replaces what was planned. */
export interface Achieved {
  readonly done: ReadonlySet<OperationId>
  /** Underside of the carcass re the line, as reached. */
  readonly undersides: ReadonlyMap<UnitId, Figure>
  readonly states: ReadonlyMap<UnitId, StandingState>
  /** Floor under one foot as found, re the line, by `unit.foot`. */
  readonly floorAtFoot: ReadonlyMap<string, Figure>
  /** Heights whose lines are on the wall already, as they were when they were struck. */
  readonly struck: ReadonlyMap<HeightName, Figure>
}

export const nothingAchieved: Achieved = {
  done: new Set(),
  undersides: new Map(),
  states: new Map(),
  floorAtFoot: new Map(),
  struck: new Map(),
}

/** What was taken from the plan of its day: heights struck, and units levelled to their lines with no reading of their own. */
export interface Held {
  readonly struck: ReadonlyMap<HeightName, Figure>
  readonly undersides: ReadonlyMap<UnitId, Figure>
}

export const nothingHeld: Held = { struck: new Map(), undersides: new Map() }

/** Which state a finished operation leaves its unit in, by the operation's kind. */
const LEAVES: Readonly<Record<string, StandingState>> = {
  assemble: 'assembled',
  'stand-up': 'held',
  hang: 'hooked',
  place: 'standing',
  level: 'levelled',
  lock: 'locked',
  'second-fix': 'secured',
  'screw-back': 'secured',
  restrain: 'secured',
  fix: 'secured',
}

/** Entries that still hold: those that a later `correct` names are left out, and so are the corrections themselves. */
export function holdingEntries(log: DayLog): readonly LogEntry[] {
  const void_ = new Set<string>()
  for (const entry of [...log.entries].reverse()) {
    if (entry.kind === 'correct' && !void_.has(entry.id)) void_.add(entry.entry)
  }
  return log.entries.filter((e) => e.kind !== 'correct' && !void_.has(e.id))
}

/** What one log comes to. Later entries overrule earlier ones on the same thing. */
export function achievedBy(kitchen: Kitchen, log: DayLog, held: Held = nothingHeld): Achieved {
  const done = new Set<OperationId>()
  const undersides = new Map<UnitId, Figure>(held.undersides)
  const states = new Map<UnitId, StandingState>()
  const floorAtFoot = new Map<string, Figure>()
  for (const entry of holdingEntries(log)) {
    const cite = `log.${entry.id}`
    if (entry.kind === 'done') {
      done.add(entry.operation)
      const [kind = '', on = ''] = entry.operation.split(':')
      const state = LEAVES[kind]
      if (state !== undefined) states.set(on, state)
    } else if (entry.kind === 'set') {
      const unit = kitchen.units.find((u) => u.id === entry.unit)
      if (unit) undersides.set(unit.id, restingOn(undersideOf(entry, unit), [cite]))
    } else if (entry.kind === 'floor-at-foot') {
      const z = derive('mm', { kind: 'achieved' }, [entry.drop], (drop) => -drop)
      floorAtFoot.set(`${entry.unit}.${entry.foot}`, restingOn(z, [cite]))
    }
  }
  return { done, undersides, states, floorAtFoot, struck: held.struck }
}

function undersideOf(entry: LogEntry & { kind: 'set' }, unit: Unit): Figure {
  const edge =
    entry.up.state !== 'unknown'
      ? derive('mm', { kind: 'achieved' }, [entry.up], (up) => up)
      : derive('mm', { kind: 'achieved' }, [entry.down], (down) => -down)
  if (entry.edge === 'underside') return edge
  return derive('mm', { kind: 'achieved' }, [edge, unit.height], (top, height) => top - height)
}
