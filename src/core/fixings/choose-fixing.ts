import { derive, type Figure, hasValue, type InputId, unknown } from '../figure'
import type { Fixing, Kitchen } from '../kitchen/schema'
import type { Backing } from './base-material'
import { lengthNeeded } from './screw-length'

export type FixingPurpose = Fixing['for'][number]

export interface Choice {
  /** Null: none was entered for this, or which of several cannot be told yet. */
  readonly fixing: Fixing | null
  readonly because: 'chosen' | 'none-entered' | 'no-stand-off' | 'not-settled' | 'base-not-known'
  /** Facts the choice between several rests on. */
  readonly from: readonly InputId[]
  readonly missing: readonly InputId[]
}

/**
 * Which of the screws and plugs that were entered goes here: made for this use and for this material, and of several
 * the shortest that is long enough; if none is, the longest. Board on dabs takes only stand-off fixings: others crush
 * the board and bend in the void. Nothing is proposed that was not entered: capacity is the maker's, not ours.
 */
export function chooseFixing(
  kitchen: Kitchen,
  purpose: FixingPurpose,
  backing: Backing,
  standOff: Figure,
): Choice {
  if (backing.material === null) return none('base-not-known', backing.inFront)
  const made = kitchen.fixings.filter(
    (f) => f.for.includes(purpose) && f.into.some((material) => backing.accepts.includes(material)),
  )
  const fitting = made.filter((f) => !backing.needsStandOff || f.kind === 'stand-off')
  if (fitting.length === 0) return none(made.length > 0 ? 'no-stand-off' : 'none-entered', null)
  if (fitting.length === 1) return { fixing: fitting[0] as Fixing, because: 'chosen', from: [], missing: [] }
  return shortestLongEnough(fitting, backing, standOff)
}

function none(because: Choice['because'], lacking: Figure | null): Choice {
  const missing = lacking?.state === 'unknown' ? lacking.missing : ['fixings']
  return { fixing: null, because, from: missing, missing }
}

function shortestLongEnough(fitting: readonly Fixing[], backing: Backing, standOff: Figure): Choice {
  const spares = fitting.map((fixing) => ({ fixing, spare: spareLength(fixing, backing, standOff) }))
  const from = spares.flatMap(({ fixing, spare }) => [...spare.from, ...fixing.length.from])
  const missing = spares.flatMap(({ spare }) => (spare.state === 'unknown' ? spare.missing : []))
  if (missing.length > 0) return { fixing: null, because: 'not-settled', from, missing }
  const sorted = [...spares].sort(
    (a, b) => lengthOf(a.fixing) - lengthOf(b.fixing) || (a.fixing.id < b.fixing.id ? -1 : 1),
  )
  const enough = sorted.find(({ spare }) => hasValue(spare) && spare.value >= 0)
  const fixing = (enough ?? sorted[sorted.length - 1])?.fixing ?? null
  return { fixing, because: 'chosen', from, missing: [] }
}

const lengthOf = (fixing: Fixing): number => (hasValue(fixing.length) ? fixing.length.value : 0)

/** Length of the screw less what it needs: below nothing it is too short. */
export function spareLength(fixing: Fixing | null, backing: Backing, standOff: Figure): Figure {
  if (fixing === null) return unknown('mm', ['fixings'])
  return derive(
    'mm',
    { kind: 'geometry', why: 'length of the screw less what it has to go through and hold in' },
    [fixing.length, lengthNeeded(standOff, backing.inFront, fixing.embedment)],
    (length, needed) => (length as number) - (needed as number),
  )
}
