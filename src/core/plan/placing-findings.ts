import type { Basis } from '../figure'
import { type Message, message } from '../message'
import type { CandidatePaths, Overlap } from '../placing/paths'
import type { UnitPosition } from '../units/positions'
import { finding } from './finding'
import type { Finding } from './types'

const geometry: Basis = { kind: 'geometry', why: 'solids as measured, moved along the way in' }

const beyondReadings: Basis = {
  kind: 'geometry',
  why: 'outside the readings: the least-squares plane through all of them',
}

/** What bringing the units in has shown: what there is no floor to stand up on, what stands in what. */
export function placingFindings(
  paths: CandidatePaths,
  units: readonly UnitPosition[],
  nameOf: ReadonlyMap<string, string>,
  judgedElsewhere: (unit: string, box: string) => boolean,
): readonly Finding[] {
  const wallOf = new Map(units.map((u) => [u.unit.id, u.unit.wall]))
  const where = (unit: string) => ({ wall: wallOf.get(unit) ?? '' })
  return [
    ...paths.notStoodUp.map((t) =>
      finding({
        rule: 'no-floor-to-stand-up',
        subjects: [t.unit],
        weight: 'stop',
        dangerous: true,
        where: where(t.unit),
        say: withNames(t.say, nameOf),
        basis: geometry,
      }),
    ),
    ...paths.overlaps
      .filter((o) => o.with.kind !== 'obstacle' || !judgedElsewhere(o.unit, o.with.id))
      .map((o) => overlapFinding(o, nameOf)),
    ...paths.guessedFloor.map(({ unit, by }) =>
      finding({
        rule: 'floor-not-read-under',
        subjects: [unit],
        weight: 'ask',
        where: where(unit),
        say: message('floor-not-read-under', {
          unit: nameOf.get(unit) ?? unit,
          by: Math.round(by * 10) / 10,
        }),
        from: ['floor.readings', `units.${unit}.width`],
        basis: beyondReadings,
        ask: message('floor-not-read-under.ask', { unit: nameOf.get(unit) ?? unit }),
      }),
    ),
  ]
}

/** Out of square by no more than this, a wall only wants a gap or a filler; deeper, something was measured or planned wrong. */
const SCRIBE = 15

function overlapFinding(o: Overlap, nameOf: ReadonlyMap<string, string>): Finding {
  const other = nameOf.get(o.with.id) ?? o.with.id
  const slight = o.with.kind === 'wall' && o.by <= SCRIBE
  return finding({
    rule: o.with.kind === 'unit' ? 'units-overlap' : 'unit-in-something-fixed',
    subjects: [o.unit, o.with.id],
    weight: slight ? 'warn' : 'stop',
    say: message(slight ? 'wall-cuts-in' : 'in-one-another', {
      unit: nameOf.get(o.unit) ?? o.unit,
      other,
      by: Math.round(o.by * 10) / 10,
    }),
    from: [`units.${o.unit}.width`],
    basis: geometry,
  })
}

/** The same message with names in place of ids. */
export function withNames(said: Message, nameOf: ReadonlyMap<string, string>): Message {
  const values = Object.fromEntries(
    Object.entries(said.values).map(([key, v]) => [key, typeof v === 'string' ? (nameOf.get(v) ?? v) : v]),
  )
  return { key: said.key, values }
}
