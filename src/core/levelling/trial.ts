import { type LevelReading, type TurnOrder, turnsFor } from '../daylog/turns'
import { derive, type Figure, hasValue, known } from '../figure'
import type { Adjuster, UnitPlan } from '../plan/types'
import { chanceFrom } from './chance'
import { bearingsOf, type Heights, isHung, type Lie, lieOf } from './lie'
import { heightsNow, movedBy, screwOf, type Trial } from './trial-heights'
import { type Axis, ENDS } from './vial'

/** Rises in the unit's length, both ways. */
type Slopes = Pick<Lie, 'along' | 'out'>

/** A unit out of level to begin with. */
export function beginTrial(operation: string, unit: UnitPlan): Trial {
  const trial: Trial = { operation, axis: 'along', vial: 'fine', seed: 0, start: {}, turns: {} }
  return givenReading(trial, unit)
}

/** Heights of the adjusters with which a unit lies so; the highest stays at 0, as `turnsFor` leaves the highest alone. */
function heightsLying(unit: UnitPlan, { along, out }: Slopes): Heights {
  const bearings = bearingsOf(unit) ?? []
  const rise = (b: { readonly x: number; readonly y: number }) => along * b.x + out * b.y
  const most = Math.max(...bearings.map(rise))
  return Object.fromEntries(bearings.map((b) => [b.id, rise(b) - most]))
}

/** Another reading both ways, of some thousandths; at every third, one leg is short as well. */
export function givenReading(trial: Trial, unit: UnitPlan): Trial {
  const seed = trial.seed + 1
  const chance = chanceFrom(seed)
  const slope = () => (chance() < 0.5 ? -1 : 1) * (2.2 + Math.round(chance() * 30) / 10) * 0.001
  const along = slope()
  const out = isHung(unit) ? 0 : slope()
  const flat = heightsLying(unit, { along, out })
  const ids = Object.keys(flat)
  const short = ids[Math.floor(chance() * ids.length)]
  const isShort = seed % 3 === 0 && !isHung(unit) && short !== undefined
  const start = isShort ? { ...flat, [short]: (flat[short] ?? 0) - 2 } : flat
  return { ...trial, seed, start, turns: {} }
}

/** The reading of one way set by hand; the other way stays as it is. */
export function withReading(trial: Trial, unit: UnitPlan, slope: number): Trial {
  const lie = lieOf(unit, heightsNow(trial, unit))
  const slopes = { along: lie?.along ?? 0, out: lie?.out ?? 0, [trial.axis]: slope }
  return { ...trial, start: heightsLying(unit, slopes), turns: {} }
}

/** Whether an adjuster has travel left for so many turns more, + up; true where its travel is not known. */
export function canTurn(trial: Trial, adjuster: Adjuster, by: number): boolean {
  const after = movedBy(trial, adjuster) + by * screwOf(trial, adjuster).perTurn
  const left = after >= 0 ? adjuster.upLeft : adjuster.downLeft
  return !hasValue(left) || Math.abs(after) <= left.value + 0.001
}

/** One adjuster turned by so many turns, + up; left as it is where it has no travel for them. */
export function withTurn(trial: Trial, unit: UnitPlan, id: string, by: number): Trial {
  const adjuster = unit.adjusters.find((a) => a.id === id)
  if (adjuster === undefined || !canTurn(trial, adjuster, by)) return trial
  return { ...trial, turns: { ...trial.turns, [id]: (trial.turns[id] ?? 0) + by } }
}

/** A leg that bears nothing wound out until it grips. */
export function withGrip(trial: Trial, unit: UnitPlan, id: string): Trial {
  const adjuster = unit.adjusters.find((a) => a.id === id)
  const gap = lieOf(unit, heightsNow(trial, unit))?.hanging.find((h) => h.id === id)?.gap
  if (adjuster === undefined || gap === undefined) return trial
  return withTurn(trial, unit, id, gap / screwOf(trial, adjuster).perTurn)
}

/** Less out of level than this over the level, mm, is read as level. */
const READ_AS_LEVEL = 0.05

/** What is read off a level of this length: exactly, for it is a trial. */
export function readingOf(slope: number, axis: Axis, length: number): LevelReading {
  const off = Math.abs(slope) * length
  const { more, less } = ENDS[axis]
  return {
    axis,
    low: off < READ_AS_LEVEL ? 'neither' : slope > 0 ? less : more,
    packer: known(off, 0, 'mm', ['this reading']),
    levelLength: known(length, 0, 'mm', ['this reading']),
  }
}

/** What to turn, with the travel that is left after the turns made. */
export function ordersNow(trial: Trial, unit: UnitPlan, reading: LevelReading): readonly TurnOrder[] {
  const less = (left: Figure, by: number): Figure =>
    derive('mm', { kind: 'geometry', why: 'what is left of its travel' }, [left], (mm) => mm - by)
  const adjusters = unit.adjusters.map((a) => {
    const moved = movedBy(trial, a)
    return { ...a, upLeft: less(a.upLeft, moved), downLeft: less(a.downLeft, -moved) }
  })
  return turnsFor(adjusters, reading)
}
