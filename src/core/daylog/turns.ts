import { derive, type Figure, hasValue } from '../figure'
import type { Adjuster } from '../plan/types'

/**
 * From a level and a packer to turns of a named adjuster.
 *
 * A packer of thickness p under the low end of a level of length L says that the unit falls p in L. An adjuster that
 * stands x towards the low end from the highest one has to rise x·p/L; the highest stays, so that an end already on its
 * line stays on it. Where a rise is more than the adjuster has left, the whole unit comes down by what is lacking.
 */
export interface LevelReading {
  readonly axis: 'along' | 'out'
  readonly low: 'left' | 'right' | 'front' | 'back' | 'neither'
  readonly packer: Figure
  readonly levelLength: Figure
}

export interface TurnOrder {
  readonly adjuster: Adjuster
  /** + up, − down. */
  readonly rise: Figure
  /** Always positive; the way is in `way`. Unknown when nobody has said or tried what one turn does. */
  readonly turns: Figure
  readonly way: 'up' | 'down' | 'none' | 'not-known'
  readonly hand: 'clockwise' | 'anticlockwise' | null
  /** False when it has not that much travel left; null when its travel is not known. */
  readonly reaches: boolean | null
}

/** How far each adjuster has to go, with its turns. Level out from the wall is set with legs only: hangers have no depth. */
export function turnsFor(adjusters: readonly Adjuster[], reading: LevelReading): readonly TurnOrder[] {
  const acting = adjusters.filter((a) => reading.axis === 'along' || a.kind === 'leg')
  const rises = acting.map((a) => riseOf(a, acting, reading))
  const drop = lacking(acting, rises)
  return acting.map((a, i) => turned(a, rises[i] as Figure, drop))
}

function riseOf(adjuster: Adjuster, all: readonly Adjuster[], reading: LevelReading): Figure {
  const basis = {
    kind: 'geometry',
    why: 'packer over length of level, times the way from the highest adjuster',
  } as const
  if (reading.low === 'neither')
    return derive('mm', { kind: 'geometry', why: 'the level shows none' }, [], () => 0)
  const at = (a: Adjuster): Figure => (reading.axis === 'along' ? a.x : a.y)
  const lowIsLess = reading.low === 'left' || reading.low === 'back'
  return derive(
    'mm',
    basis,
    [reading.packer, reading.levelLength, at(adjuster), ...all.map(at)],
    (p, length, here, ...others) => {
      const high = lowIsLess ? Math.max(...others) : Math.min(...others)
      return (p / length) * Math.abs((here as number) - high)
    },
  )
}

/** By how much the travel of the worst adjuster falls short, so that all come down by it instead; 0 when all reach. */
function lacking(adjusters: readonly Adjuster[], rises: readonly Figure[]): number {
  return adjusters.reduce((worst, a, i) => {
    const rise = rises[i] as Figure
    if (!hasValue(rise) || !hasValue(a.upLeft)) return worst
    return Math.max(worst, rise.value - a.upLeft.value)
  }, 0)
}

function turned(adjuster: Adjuster, wanted: Figure, drop: number): TurnOrder {
  const rise = drop === 0 ? wanted : derive('mm', wanted.basis, [wanted], (mm) => mm - drop)
  const turns = derive(
    'turn',
    { kind: 'geometry', why: 'the rise over what one turn gives' },
    [rise, adjuster.perTurn],
    (mm, per) => Math.abs(mm) / per,
  )
  const way = wayOf(rise)
  return { adjuster, rise, turns, way, hand: handFor(adjuster, way), reaches: reaches(adjuster, rise) }
}

function wayOf(rise: Figure): TurnOrder['way'] {
  if (!hasValue(rise)) return 'not-known'
  if (Math.abs(rise.value) < 0.05) return 'none'
  return rise.value > 0 ? 'up' : 'down'
}

function handFor(adjuster: Adjuster, way: TurnOrder['way']): TurnOrder['hand'] {
  if (adjuster.clockwise === null || way === 'none' || way === 'not-known') return null
  return (adjuster.clockwise === 'raises') === (way === 'up') ? 'clockwise' : 'anticlockwise'
}

function reaches(adjuster: Adjuster, rise: Figure): boolean | null {
  if (!hasValue(rise)) return null
  const left = rise.value >= 0 ? adjuster.upLeft : adjuster.downLeft
  return hasValue(left) ? Math.abs(rise.value) <= left.value + 0.001 : null
}
