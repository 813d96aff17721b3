import { type Figure, hasValue, type InputId, known, restingOn } from '../figure'
import type { Message } from '../message'
import type { NamedFigure, OperationCheck } from '../plan/types'
import { sum } from '../survey/sum'
import { partName } from '../units/part-name'
import type { FittedUnit, Job } from './job'
import { check, shown, told } from './make'
import { group } from './neighbours'
import { closingPairs } from './runs'
import { TOLERANCE } from './tolerances'

/** The furthest a fixed thing may be from a unit's side, mm, for the unit to close the run up to it: room for a filler. */
const REACH = 150
/** Faces no further apart than this are one, mm. */
const NEAR = 1

/** A face that does not give, and what it is called. */
interface Face {
  readonly at: Figure
  readonly name: string
}

interface LastGap {
  readonly from: Face
  readonly to: Face
  /** From face to face. */
  readonly gap: Figure
  /** The unit and the fillers or panels that go in with it. */
  readonly needs: Figure
  readonly fillers: readonly string[]
  /** By what it is known that this unit closes the run. */
  readonly by: readonly InputId[]
}

const wholeWidth = { kind: 'geometry', why: 'the unit and what goes in beside it' } as const
const faceToFace = { kind: 'geometry', why: 'from face to face along the wall' } as const
const wallEnd = { kind: 'geometry', why: 'walls are measured from their left end' } as const

type Side = 'left' | 'right'
const otherSide = (side: Side): Side => (side === 'left' ? 'right' : 'left')

/** What closes a run at the far side of its last unit: the next unit or tall there, or the end of the wall. */
function fixedBeyond(job: Job, unit: FittedUnit, side: Side): Face | null {
  const own = side === 'left' ? unit.plan.left : unit.plan.right
  if (!hasValue(own)) return null
  const faces = [
    ...job.units
      .filter((other) => other.wall === unit.wall && other.id !== unit.id)
      .filter((other) => group(other) === group(unit) || other.way === 'tall')
      .map((other): Face => ({ at: other.plan[otherSide(side)], name: other.name })),
    ...endOf(job, unit.wall, side),
  ]
  const ahead = (face: Face) =>
    hasValue(face.at) ? (side === 'left' ? own.value - face.at.value : face.at.value - own.value) : -REACH
  const near = faces.filter((face) => ahead(face) >= -NEAR && ahead(face) <= REACH)
  return near.reduce<Face | null>((a, b) => (a === null || ahead(b) < ahead(a) ? b : a), null)
}

/** The wall that this one runs into. */
function endOf(job: Job, wall: string, side: Side): readonly Face[] {
  const frames = job.context.survey.frames
  const at = frames.findIndex((frame) => frame.wall === wall)
  const frame = frames[at]
  if (frame === undefined) return []
  const next = frames[(at + (side === 'right' ? 1 : frames.length - 1)) % frames.length]
  const isOpen = job.kitchen.closed !== true && (side === 'left' ? at === 0 : at === frames.length - 1)
  if (next === undefined || isOpen) return []
  const end = side === 'left' ? known(0, 0, 'mm', [], wallEnd) : frame.length
  return [{ at: end, name: next.name }]
}

function gapFor(job: Job, unit: FittedUnit): LastGap | null {
  const pair = closingPairs(job).find(({ to }) => to.id === unit.id)
  if (pair === undefined) return null
  const { left, right } = unit.plan
  const before = pair.from.plan
  if (!hasValue(left) || !hasValue(right) || !hasValue(before.left)) return null
  const side: Side = before.left.value < left.value ? 'right' : 'left'
  const to = fixedBeyond(job, unit, side)
  // A space that is left open between the two is not closed by this unit.
  const from = fixedBeyond(job, unit, otherSide(side))
  if (to === null || from === null || from.name !== pair.from.name) return null
  const [low, high] = side === 'right' ? [from.at, to.at] : [to.at, from.at]
  const between = job.context.parts.filter(
    (p) => p.wall === unit.wall && p.part.of.some((id) => id === unit.id) && isWithin(p, low, high),
  )
  return {
    from,
    to,
    gap: sum('mm', faceToFace, [high], [low]),
    needs: sum('mm', wholeWidth, [unit.plan.width, ...between.map((p) => p.part.width)]),
    fillers: between.map((p) => partName(job.kitchen, p.part)),
    by: [...pair.by, left, right, before.left, from.at, to.at].flatMap((figure) => figure.from),
  }
}

function isWithin(part: { readonly left: Figure; readonly right: Figure }, low: Figure, high: Figure) {
  if (!hasValue(part.left) || !hasValue(part.right) || !hasValue(low) || !hasValue(high)) return false
  return part.left.value >= low.value - NEAR && part.right.value <= high.value + NEAR
}

/** What is said, shown and checked where the last unit of a run goes in between two things that cannot give. */
export interface LastGapStep {
  readonly does: readonly Message[]
  readonly figures: readonly NamedFigure[]
  readonly checks: readonly OperationCheck[]
}

const NOTHING: LastGapStep = { does: [], figures: [], checks: [] }

/** Measure before you lift: the gap that is left for the last unit against the width it takes with its fillers. */
export function lastGap(job: Job, unit: FittedUnit): LastGapStep {
  const found = gapFor(job, unit)
  if (found === null) return NOTHING
  const { from, to, fillers, by } = found
  const [gap, needs] = [restingOn(found.gap, by), restingOn(found.needs, by)]
  if (!hasValue(gap) || !hasValue(needs)) return NOTHING
  const values = { unit: unit.name, from: from.name, to: to.name, gap, needs }
  const narrow = gap.value < needs.value
  return {
    does: [
      told('last-gap', 'measure', values),
      told('last-gap', narrow ? 'too-narrow' : 'needs', values),
      ...(fillers.length === 0 ? [] : [told('last-gap', 'with-filler', { fillers: fillers.join(', ') })]),
    ],
    figures: [shown('gap-left', gap, 'gap-left', values), shown('gap-needed', needs, 'gap-needed', values)],
    checks: [check(`last-gap.${unit.id}`, 'gap-left', values, gap, restingOn(TOLERANCE.bayWidth, by))],
  }
}
