import { assumed, type Basis, derive, type Figure, hasValue, unknown } from '../figure'
import { EDGE_OF_TIMBER } from '../fixings/usable-studs'
import type { Message } from '../message'
import type { Hole, NamedFigure } from '../plan/types'
import type { RegionPack } from '../region/region'
import { largest, shown, told, toldFigure, when } from './make'
import { TOLERANCE } from './tolerances'

/** Timber let in, as thick and as high on the wall as it is, or as it is usually taken. */
export interface TimberSection {
  readonly high: Figure
  readonly thick: Figure
  /** The survey has the piece; else it is still to be bought. */
  readonly isEntered: boolean
  /** How far the screws of the fixings go into it; null: a board, which they go through. */
  readonly reach: Figure | null
}

const STUDWORK: Basis = {
  kind: 'common-practice',
  why: 'common practice, no source: planed timber as stud walls are made of, 45 by 95, or 38 by 89 where it is sold in inches',
}

/** A piece nobody has entered yet is taken of the timber stud walls are made of. */
export function usualSection(
  region: Pick<RegionPack, 'display'> | null,
): Pick<TimberSection, 'high' | 'thick'> {
  const [high, thick] = region?.display === 'inch' ? [89, 38] : [95, 45]
  return { high: assumed(high, 0, 'mm', [], STUDWORK), thick: assumed(thick, 0, 'mm', [], STUDWORK) }
}

/** How far the deepest of these screws goes into timber that lies behind so much board. */
export function reachInto(holes: readonly Hole[], board: Figure | null): Figure {
  const deepest = largest(holes.map((hole) => hole.depth))
  if (deepest === null || board === null) return unknown('mm', ['fixings'])
  return derive(
    'mm',
    {
      kind: 'geometry',
      why: 'how deep its hole or screw goes from the face, less the board before the timber',
    },
    [deepest, board],
    (depth = 0, before = 0) => Math.max(0, depth - before),
  )
}

/** So high at least, that a screw stays clear of both edges wherever its mark may fall. */
const LEAST_HIGH = derive(
  'mm',
  {
    kind: 'common-practice',
    why: `a screw lies ${EDGE_OF_TIMBER} mm inside both edges, with its mark as far out as it may be`,
  },
  [TOLERANCE.holePlace],
  (out = 0) => 2 * (EDGE_OF_TIMBER + out),
)

function reachSentence(thick: Figure, reach: Figure): Message {
  const isThin = hasValue(thick) && hasValue(reach) && thick.value < reach.value
  return isThin
    ? told('fit-nogging', 'section-thin', { reach, thick })
    : toldFigure('fit-nogging', 'section-reach', { reach })
}

/** Which timber is taken: how high on the wall, how thick, and why no less. */
export function sectionSentences({ high, thick, isEntered, reach }: TimberSection): readonly Message[] {
  return [
    toldFigure('fit-nogging', isEntered ? 'section' : 'section-usual', { high, thick }),
    ...when(!isEntered, told('fit-nogging', 'section-least', { least: LEAST_HIGH, edge: EDGE_OF_TIMBER })),
    ...(reach === null ? [] : [reachSentence(thick, reach)]),
  ]
}

export function sectionFigures({ high, thick, reach }: TimberSection): readonly NamedFigure[] {
  return [
    shown('high', high, 'timber-high'),
    shown('thick', thick, 'timber-thick'),
    ...(reach === null ? [] : [shown('reach', reach, 'timber-reach')]),
  ]
}
