import { put } from '../kitchen/edit'
import { factId } from '../kitchen/fact-id'
import { holdingEntries } from './achieved'
import type { DayLog, LogEntry } from './schema'

/**
 * The kitchen file as the day has corrected it: surveyed facts found to be otherwise, and hardware tried on one unit,
 * which then holds for every unit with the same way of hanging or standing whose own sheet does not say. The file the
 * user keeps is not touched; this is a new value with the same ids.
 */
export function withObservations(
  file: unknown,
  log: DayLog,
): { readonly file: unknown; readonly lost: readonly string[] } {
  let out = file
  const lost: string[] = []
  for (const entry of holdingEntries(log)) {
    for (const [path, value] of patchesOf(entry, out)) {
      const next = put(out, path.split('.'), value)
      if (next === undefined) lost.push(entry.id)
      else out = next
    }
  }
  return { file: out, lost }
}

function patchesOf(entry: LogEntry, file: unknown): readonly (readonly [string, unknown])[] {
  if (entry.kind === 'observed') return [[entry.fact, entry.value]]
  if (entry.kind === 'tried') return triedPatches(entry, file)
  return []
}

interface RawUnit {
  readonly id: string
  readonly stands?: string | null
  readonly legs?: Readonly<Record<string, unknown>>
  readonly hanging?: {
    readonly heightScrew?: Readonly<Record<string, unknown>>
    readonly drawInScrew?: Readonly<Record<string, unknown>>
  }
}

function triedPatches(
  entry: LogEntry & { kind: 'tried' },
  file: unknown,
): readonly (readonly [string, unknown])[] {
  const units = ((file as { units?: readonly RawUnit[] }).units ?? []) as readonly RawUnit[]
  const tried = units.find((u) => u.id === entry.unit)
  const alike = units.filter((u) => u.stands === tried?.stands)
  const perTurn =
    entry.perTurn.state === 'unknown'
      ? null
      : { value: entry.perTurn.value, pm: entry.perTurn.pm, because: `tried on ${entry.unit}` }
  return alike.flatMap((u) => {
    const where =
      entry.part === 'leg'
        ? ['units', u.id, 'legs']
        : ['units', u.id, 'hanging', entry.part === 'height-screw' ? 'heightScrew' : 'drawInScrew']
    const sheet = hardwareOf(u, entry.part)
    const says = (key: string) => u.id !== entry.unit && sheet[key] !== undefined && sheet[key] !== null
    const facts: [string, unknown][] = says('perTurn') ? [] : [[factId(...where, 'perTurn'), perTurn]]
    if (entry.part !== 'leg' && entry.place !== null && !says('place'))
      facts.push([factId(...where, 'place'), entry.place])
    if (entry.part === 'height-screw' && entry.clockwise !== null && !says('clockwise'))
      facts.push([factId(...where, 'clockwise'), entry.clockwise])
    return facts
  })
}

/** What a unit's own sheet says of a leg or a screw, as typed. */
function hardwareOf(
  unit: RawUnit,
  part: 'leg' | 'height-screw' | 'draw-in-screw',
): Readonly<Record<string, unknown>> {
  const { legs, hanging } = unit
  if (part === 'leg') return legs ?? {}
  return (part === 'height-screw' ? hanging?.heightScrew : hanging?.drawInScrew) ?? {}
}
