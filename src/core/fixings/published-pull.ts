import { type Basis, derive, type Figure, hasValue, known, restingOn } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Fixing, Wall } from '../kitchen/schema'
import type { PublishedPull } from '../plan/types'
import { withdrawalFormula } from '../region/withdrawal'
import type { Drilled } from './drill'
import { isPlainScrew, nominal } from './pilot'
import { characteristicDensity, type Formula, isTimberEntered } from './stud-timber'
import type { WallWork } from './wall-work'
import { americanPull, eurocodeLimit, eurocodePull } from './withdrawal'

const BASIS: Readonly<Record<Formula, Basis>> = {
  eurocode: {
    kind: 'standard',
    source: 'EN 1995-1-1:2004+A1:2008 (Eurocode 5)',
    where:
      '8.7.2, characteristic pull of one screw square to the grain, before the code’s own factors; secondary copies',
  },
  american: {
    kind: 'standard',
    source: 'NDS (National Design Specification for Wood Construction)',
    where: '12.2, allowable pull of one screw in side grain, before the code’s own factors; secondary copies',
  },
}

const NO_TIP = known(0, 0, 'mm', [], { kind: 'geometry', why: 'no tip is left out' })
/** Deeper than any screw: a wall none of whose layers is the stud. */
const ANY_DEPTH = known(1000, 0, 'mm', [], {
  kind: 'geometry',
  why: 'how deep the stud is has not been entered',
})

/**
 * What the published formula gives for the screw planned in the studs of a wall, in the timber somebody has entered.
 * Null where nobody has, where the screw is none that goes straight into timber, or where no hole of the row is in a
 * stud. Outside the limits of the formula there is no figure, and the limit is named.
 */
export function publishedPull(
  { wall, site }: Pick<WallWork, 'wall' | 'site'>,
  holes: readonly Drilled[],
): PublishedPull | null {
  const formula = withdrawalFormula(site.region?.id ?? null)
  if (formula === null || !isTimberEntered(wall, formula)) return null
  const inStud = holes.find(
    ({ hole, screw }) => screw !== null && hole.stud !== null && hole.into === 'timber-stud',
  )
  const screw = inStud?.screw ?? null
  if (inStud === undefined || screw === null || !isPlainScrew(screw.kind)) return null
  const thread = threadIn(wall, inStud, screw, formula)
  return formula === 'eurocode' ? byEurocode(wall, screw, thread) : byAmerican(wall, screw, thread)
}

/**
 * Millimetres of thread that bite in the stud: from its face, or where the thread begins, to its back, or the point of
 * the screw; the tapered tip of a lag screw does not count.
 */
function threadIn(wall: Wall, { standOff, inFront }: Drilled, screw: Fixing, formula: Formula): Figure {
  const stud = wall.layers.find((layer) => layer.material === 'timber-stud')
  const basis: Basis = {
    kind: 'geometry',
    why: 'the thread of the screw between the face of the stud and its back, a tapered tip not counted',
  }
  const hasTip = formula === 'american' && screw.kind === 'lag-screw'
  return derive(
    'mm',
    basis,
    [
      screw.thread,
      screw.length,
      standOff,
      inFront,
      hasTip ? screw.tip : NO_TIP,
      stud === undefined ? ANY_DEPTH : stud.thickness,
    ],
    (thread = 0, length = 0, off = 0, front = 0, tip = 0, depth = 0) => {
      const point = length - off - front
      return Math.max(0, Math.min(depth, point - tip) - Math.max(0, point - thread))
    },
  )
}

function byAmerican(wall: Wall, screw: Fixing, thread: Figure): PublishedPull {
  const timber = wall.studTimber.specificGravity
  const kind = screw.kind === 'lag-screw' ? 'lag' : 'wood'
  const pull = derive('N', BASIS.american, [timber, nominal(screw.diameter), thread], (g = 0, d = 0, l = 0) =>
    americanPull(kind, g, d, l),
  )
  return { screw: screw.id, wall: wall.id, formula: 'american', pull, thread, timber, outside: null }
}

function byEurocode(wall: Wall, screw: Fixing, thread: Figure): PublishedPull {
  const timber = characteristicDensity(wall)
  const [diameter, core] = [nominal(screw.diameter), nominal(screw.core)]
  const shared = { screw: screw.id, wall: wall.id, formula: 'eurocode', thread, timber } as const
  const outside = limitMissed(diameter, core, thread)
  if (outside !== null) return { ...shared, pull: null, outside }
  const worked = derive('N', BASIS.eurocode, [diameter, thread, timber, core], (d = 0, l = 0, rho = 0) =>
    eurocodePull(d, l, rho),
  )
  return { ...shared, pull: restingOn(worked, [factId('fixings', screw.id, 'kind')]), outside: null }
}

/** The limit that is missed, told as soon as what it limits is known. Thread that only may be long enough is not. */
function limitMissed(diameter: Figure, core: Figure, thread: Figure): PublishedPull['outside'] {
  if (!hasValue(diameter)) return null
  const d = diameter.value
  const sound = 0.7 * d
  const deep = 12 * d
  const byDiameter = eurocodeLimit(d, sound, deep)
  if (byDiameter !== null) return byDiameter
  const byCore = hasValue(core) ? eurocodeLimit(d, core.value, deep) : null
  if (byCore !== null) return byCore
  return hasValue(thread) ? eurocodeLimit(d, sound, thread.value - thread.pm) : null
}
