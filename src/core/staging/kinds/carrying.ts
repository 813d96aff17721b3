import { hasValue } from '../../figure'
import { type StandingUnit, segmentsOf } from '../../plan/standing-at'
import { extentOf } from '../../plan/travel-path'
import type { PathSegment } from '../../plan/types'
import { act, atUnit, inHand, type Stage, type Stages, UP } from '../stage'
import type { Act, Contact } from '../staging'

const RIGHT = { x: 1, y: 0, z: 0 }
const OUT = { x: 0, y: 1, z: 0 }
/** How far beside a side panel a hand is shown, mm. */
const BESIDE = 40

/** How far a unit is let down at the end of its way: onto its hooks, or onto its feet. */
export function letDown(segments: readonly PathSegment[]): number {
  const last = segments.at(-1)
  return last?.kind === 'move' ? Math.max(0, last.from.z - last.to.z) : 0
}

/** Where two hands have hold of a unit. */
interface Hold {
  readonly contact: Contact
  readonly spread: number
}

/** Hands under the bottom edge: a unit is lifted, never dragged on its legs. */
function underBottom(unit: StandingUnit): Hold {
  const { width, depth } = extentOf(unit.unit.solid)
  const contact = atUnit(unit, { x: width / 2, y: depth / 2, z: 0 }, UP, RIGHT)
  return { contact: { ...contact, into: UP }, spread: width + 2 * BESIDE }
}

function carried(stage: Stage, held: (unit: StandingUnit) => Hold): readonly Act[] {
  const { plan, operation } = stage
  const segments = segmentsOf(plan, operation)
  const unit = operation.path === null ? undefined : plan.paths[operation.path]?.unit
  const standing = stage.standing.units.find((u) => u.unit.unit === unit)
  if (standing === undefined || segments.length === 0) return []
  const { contact, spread } = held(standing)
  const lift = letDown(segments)
  return [
    act('hands', `unit:${standing.unit.unit}`, contact, {
      kind: 'carry',
      unit: standing.unit.unit,
      segments,
      lift,
      spread,
    }),
  ]
}

/** Lifted in and let down on its feet. */
export const liftedIn: Stages = (stage) => carried(stage, underBottom)

/** Lifted over its hooks, let down on them, and tugged, to see that both have caught. */
export const hookedOn: Stages = (stage) => {
  const [unit] = inHand(stage)
  if (unit === undefined) return []
  const home = { ...unit, pose: unit.unit.pose ?? unit.pose, tilt: null }
  const { width, depth, height } = extentOf(unit.unit.solid)
  const pull = atUnit(home, { x: width / 2, y: depth, z: height * 0.1 }, { x: 0, y: -1, z: 0 }, RIGHT)
  return [...carried(stage, underBottom), act('hands', `unit:${unit.unit.unit}`, pull, { kind: 'tug' })]
}

/** Stood up about a bottom edge that lies on blocks: lifted at the other end. */
export const stoodUp: Stages = (stage) => {
  const [unit] = inHand(stage)
  if (unit === undefined) return []
  const { width, depth, height } = extentOf(unit.unit.solid)
  const over = unit.tilt?.over ?? unit.unit.standUp?.over ?? 'back'
  const isSideways = over === 'left' || over === 'right'
  const [w, d] = [width / 2, depth / 2]
  const foot = {
    back: { x: w, y: 0, z: 0 },
    front: { x: w, y: depth, z: 0 },
    left: { x: 0, y: d, z: 0 },
    right: { x: width, y: d, z: 0 },
  }[over]
  const upright = { ...unit, tilt: null }
  const blocks = unit.unit.standUp?.blocks ?? null
  const edge = atUnit(upright, foot, { x: 0, y: 0, z: 1 }, isSideways ? OUT : RIGHT)
  // The axis it turns about keeps its way whatever the unit leans.
  const head = atUnit(unit, { x: w, y: d, z: height - BESIDE }, UP, isSideways ? OUT : RIGHT)
  const spread = (isSideways ? depth : width) + 2 * BESIDE
  return [
    ...(blocks !== null && hasValue(blocks) && blocks.value > 0
      ? [act('blocks', `unit:${unit.unit.unit}`, edge, { kind: 'rest' })]
      : []),
    ...carried(stage, () => ({ contact: { ...head, into: UP }, spread })),
  ]
}
