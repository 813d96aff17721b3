import { hasValue } from '../figure'
import type { Message, MessageValue } from '../message'
import type { NamedFigure, ShimPlan } from '../plan/types'
import type { FittedUnit } from './job'
import { legName } from './leg-name'
import { shown, told, toldFigure, when } from './make'

/** What the box is packed up with, by how it stands. */
const WORDS: Readonly<Record<string, string>> = {
  shims: 'shims',
  nothing: 'shims',
  'plinth-frame': 'frame',
  'floor-cleat': 'cleat',
}

/** Four corners can be told in one sentence; more or others are told by their figures. */
const CORNERS: Readonly<Record<string, string>> = {
  'back left': 'backLeft',
  'back right': 'backRight',
  'front left': 'frontLeft',
  'front right': 'frontRight',
}

/** Less than this, mm, is no shim: the thinnest card that is sold. Common practice. */
const NO_SHIM = 0.3
/** Higher than this, mm, a stack of shims gives: a block goes under it. Common practice. */
const BLOCK_FROM = 20

/** How it is packed up; null for a unit on legs, or with nothing known of its corners. */
export function packedWith(unit: FittedUnit): string | null {
  return (unit.plan.shims ?? []).length === 0 ? null : (WORDS[unit.plan.stands ?? ''] ?? null)
}

const isBare = ({ height }: ShimPlan): boolean => hasValue(height) && Math.abs(height.value) < NO_SHIM

/** What goes under each corner, and how a stack of shims is made solid. */
export function shimSentences(unit: FittedUnit): readonly Message[] {
  const shims = unit.plan.shims ?? []
  const way = packedWith(unit)
  if (way === null) return []
  const names = shims.map((shim) => legName(unit, shim))
  const four = shims.length === 4 && Object.keys(CORNERS).every((corner) => names.includes(corner))
  const values = shims.map(({ height }, i): [string, MessageValue] => [CORNERS[names[i] ?? ''] ?? '', height])
  const high = shims.some(({ height }) => hasValue(height) && height.value > BLOCK_FROM)
  return [
    four
      ? toldFigure('shim', `${way}.corners`, Object.fromEntries(values))
      : told('shim', shims.every(({ height }) => hasValue(height)) ? `${way}.each` : `${way}.each.unknown`),
    ...when(way === 'shims' && shims.some(isBare), told('shim', 'bare')),
    ...when(way === 'shims', told('shim', high ? 'solid-on-block' : 'solid')),
  ]
}

/** The same by corner. */
export function shimFigures(unit: FittedUnit): readonly NamedFigure[] {
  const way = packedWith(unit)
  if (way === null) return []
  return (unit.plan.shims ?? []).map((shim) =>
    shown(`shim.${shim.foot}`, shim.height, `under-corner.${way}`, { corner: legName(unit, shim) }),
  )
}
