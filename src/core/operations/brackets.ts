import { hasValue } from '../figure'
import type { Message } from '../message'
import type { Hole } from '../plan/types'
import { listed } from '../words/listed'
import { insideUnit } from './inside-unit'
import type { FittedUnit } from './job'
import { told, when } from './make'

/**
 * An L bracket on the side panel of a unit reaches the wall this far from the inside of that panel at most; further off
 * it sits on the rail or panel at the back instead. Common practice.
 */
const REACH = 50

function atSide(unit: FittedUnit, hole: Hole): 'yes' | 'no' | 'not-known' {
  const { across } = insideUnit(unit, hole)
  const { board, width } = unit.unit
  if (!hasValue(across) || !hasValue(board) || !hasValue(width)) return 'not-known'
  const fromRight = width.value - 2 * board.value - across.value
  return Math.min(across.value, fromRight) <= REACH ? 'yes' : 'no'
}

/**
 * Where the L brackets of a unit sit: at its sides, as is usual, or at the studs where those are not at its sides. Nothing
 * is said of brackets where no hole has been found for them, nor where the screws go through the unit's own rail.
 */
export function bracketSentences(unit: FittedUnit, all: readonly Hole[]): readonly Message[] {
  const holes = all.filter((hole) => hole.throughRail !== true)
  if (holes.length === 0) return []
  const places = holes.map((hole) => ({ hole, at: atSide(unit, hole) }))
  const off = places.filter(({ at }) => at !== 'yes')
  if (off.length === 0) return [told('bracket', holes.length === 1 ? 'one-side' : 'each-side')]
  return [
    told('bracket', off.length === 1 ? 'one-off-side' : 'off-side', {
      holes: listed(off.map(({ hole }) => String(hole.number ?? hole.id))),
    }),
    ...when(off.length < holes.length, told('bracket', 'others-at-side')),
  ]
}
