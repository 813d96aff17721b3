import { letterOf } from '../../../core/plan/findings-at'
import { gravestFirst } from '../../../core/plan/gravest-first'
import type { Finding, Plan } from '../../../core/plan/types'
import { words } from '../../words'
import type { Pen } from './pen'
import { type Box, overlaps } from './spread'

/** A finding of one wall under its letter. */
export interface Found {
  readonly finding: Finding
  readonly letter: string
  readonly heading: string
}

/** What was found on one wall, the gravest first, each under a letter: small ones, for a step has its own in capitals. */
export function foundOn(plan: Pick<Plan, 'findings'>, wall: string): readonly Found[] {
  return plan.findings
    .filter((f) => f.where?.wall === wall)
    .sort(gravestFirst)
    .map((finding, i) => ({ finding, letter: letterOf(i).toLowerCase(), heading: words(finding.called) }))
}

/** The letter of a finding at its place on the drawing: a flag near it, and where exactly it is. */
export interface Flag extends Found, Box {
  readonly atX: number
  /** Null: nobody can say how high it is, and the flag stands at the foot of the wall. */
  readonly atY: number | null
}

/** Half a flag, in steps. */
const HALF = 10

/** Flags for the findings whose place along the wall is known, on nothing that has to be read. */
export function flagsFor(
  found: readonly Found[],
  pen: Pen,
  taken: readonly Box[],
  half: number = HALF,
): readonly Flag[] {
  const placed: Flag[] = []
  for (const one of found) {
    const { where } = one.finding
    if (where === null || where.along === null) continue
    const atX = Math.max(pen.span.left, Math.min(pen.span.right, where.along))
    const atY = where.height === null ? null : pen.y(where.height)
    const size = 2 * half * pen.step
    const near = atY ?? pen.y(pen.span.bottom) - 2.4 * half * pen.step
    const tries = around(atX, near, size, pen)
    const isFree = (box: Box) => ![...taken, ...placed].some((other) => overlaps(box, other))
    placed.push({ ...one, ...(tries.find(isFree) ?? (tries[0] as Box)), atX, atY })
  }
  return placed
}

/** Places round a point for a flag, nearest first, all on the wall. */
function around(x: number, y: number, size: number, { span }: Pen): readonly Box[] {
  const height = span.top - span.bottom
  return [0.75, 1.1, 1.5, 2, 2.6, 3.3, 4.1].flatMap((ring) =>
    [315, 225, 45, 135, 270, 90, 0, 180].flatMap((angle) => {
      const turn = (angle * Math.PI) / 180
      const box = {
        x: x + Math.cos(turn) * ring * size - size / 2,
        y: y + Math.sin(turn) * ring * size - size / 2,
        w: size,
        h: size,
      }
      const isOn = box.x >= 0 && box.x + size <= span.right && box.y >= 0 && box.y + size <= height
      return isOn ? [box] : []
    }),
  )
}
