import { type Figure, hasValue, type InputId, known } from '../figure'
import type { Nogging, Wall } from '../kitchen/schema'
import type { Survey } from '../survey/survey'
import type { Material } from './base-material'
import { EDGE_OF_TIMBER } from './usable-studs'

/** Timber or board let in between or over the studs, whose place is known. */
export interface LetIn {
  readonly id: string
  readonly material: Material
  /** Materials a fixing may be made for to hold in it. */
  readonly accepts: readonly Material[]
  readonly left: number
  readonly right: number
  readonly middle: number
  /** Up and down from the middle to its edges. */
  readonly half: number
  readonly pm: number
  readonly from: readonly InputId[]
}

const ON_FACE = known(0, 0, 'mm', [])

/** Noggings and pattresses of a wall, from left to right. One whose place or height is not known holds nothing yet. */
export function letInOf(
  wall: Wall,
  survey: Pick<Survey, 'along' | 'height'>,
): {
  readonly placed: readonly LetIn[]
  readonly from: readonly InputId[]
  readonly missing: readonly InputId[]
} {
  const each = wall.noggings.map((nogging) => figuresOf(nogging, wall, survey))
  const figures = each.flatMap((f) => [f.from, f.to, f.centre, f.nogging.depth])
  return {
    placed: each.flatMap(placed).sort((a, b) => a.left - b.left || (a.id < b.id ? -1 : 1)),
    from: figures.flatMap((f) => f.from),
    missing: figures.flatMap((f) => (f.state === 'unknown' ? f.missing : [])),
  }
}

interface NoggingFigures {
  readonly nogging: Nogging
  readonly from: Figure
  readonly to: Figure
  readonly centre: Figure
}

function figuresOf(nogging: Nogging, wall: Wall, survey: Pick<Survey, 'along' | 'height'>): NoggingFigures {
  const from = survey.along(wall.id, nogging.from)
  const to = survey.along(wall.id, nogging.to)
  const centre = survey.height(nogging.centre, { wall: wall.id, along: from, out: ON_FACE })
  return { nogging, from, to, centre }
}

function placed({ nogging, from, to, centre }: NoggingFigures): readonly LetIn[] {
  const { depth } = nogging
  if (!hasValue(from) || !hasValue(to) || !hasValue(centre) || !hasValue(depth)) return []
  const isBoard = nogging.kind === 'pattress'
  return [
    {
      id: nogging.id,
      material: isBoard ? 'plywood' : 'timber-stud',
      accepts: isBoard ? ['plywood', 'osb', 'timber-stud'] : ['timber-stud'],
      left: Math.min(from.value, to.value),
      right: Math.max(from.value, to.value),
      middle: centre.value,
      half: depth.value / 2,
      pm: Math.max(from.pm, to.pm, centre.pm + depth.pm / 2),
      from: [...from.from, ...to.from, ...centre.from, ...depth.from],
    },
  ]
}

/**
 * Does a hole at this place land in it? Not sure: nearer than 12 mm to its upper or lower edge, or only within what the
 * readings hold.
 */
export function holdsAt(letIn: LetIn, along: number, height: number, pm: number): 'sure' | 'not-sure' | 'no' {
  const sideways = Math.max(letIn.left - along, along - letIn.right)
  const upright = Math.abs(height - letIn.middle) - letIn.half
  if (Math.max(sideways, upright) > 0) return 'no'
  const slack = letIn.pm + pm
  return sideways + slack <= 0 && upright + slack + EDGE_OF_TIMBER <= 0 ? 'sure' : 'not-sure'
}
