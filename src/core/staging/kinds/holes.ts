import { hasValue } from '../../figure'
import { extentOf } from '../../plan/travel-path'
import type { Hole } from '../../plan/types'
import { holePlace } from '../../views/hole-place'
import {
  act,
  againstWall,
  atUnit,
  DOWN,
  holeContact,
  holesOf,
  inHand,
  type Stage,
  type Stages,
  wallOf,
  wallPoint,
} from '../stage'
import type { Act, StagedTool } from '../staging'

const drillOf = ({ operation }: Stage): StagedTool =>
  operation.tools.includes('hammer-drill') ? 'hammer-drill' : 'drill-driver'

/** The bit goes in as deep as the plan says and no deeper. */
function bored(stage: Stage, hole: Hole): Act {
  return act(drillOf(stage), `hole:${hole.id}`, holeContact(stage, hole), { kind: 'bore', by: hole.depth })
}

/** The screw is driven by its whole length. */
function driven(stage: Stage, tool: StagedTool, hole: Hole): Act {
  return act(tool, `hole:${hole.id}`, holeContact(stage, hole), { kind: 'drive', by: hole.screwLength })
}

/** Holes for a rail or plates are only bored: what they carry is fixed after. */
export const drilling: Stages = (stage) => holesOf(stage).map((h) => bored(stage, h))

/** Bored and screwed one by one, from inside the unit. */
export const throughUnit: Stages = (stage) =>
  holesOf(stage).flatMap((h) => [bored(stage, h), driven(stage, drillOf(stage), h)])

/**
 * A bracket: bored, plugged or not, and screwed by hand. A unit that only its neighbours hold has no hole of its own: it is
 * read once more.
 */
export const bracketed: Stages = (stage) => {
  const holes = holesOf(stage)
  if (holes.length > 0) return holes.flatMap((h) => [bored(stage, h), driven(stage, 'screwdriver', h)])
  return inHand(stage).map((unit) => {
    const { width, depth, height } = extentOf(unit.unit.solid)
    const top = atUnit(unit, { x: width / 2, y: depth / 2, z: height }, DOWN, { x: 1, y: 0, z: 0 })
    return act('level', `unit:${unit.unit.unit}`, top, { kind: 'rest' })
  })
}

/** A tall is plumb before it is packed and screwed back: the long level stands against its front edge first. */
export const restrained: Stages = (stage) => {
  const plumb = inHand(stage).map((unit) => {
    const { width, depth, height } = extentOf(unit.unit.solid)
    const front = { x: width - 30, y: depth, z: height / 2 }
    const contact = atUnit(unit, front, { x: 0, y: -1, z: 0 }, { x: 0, y: 0, z: 1 })
    return act('long-level', `unit:${unit.unit.unit}`, contact, { kind: 'rest' })
  })
  return [...plumb, ...packedAndScrewed(stage)]
}

/** How far outside a unit packing is before it is pushed in behind it, mm. */
const BEFORE = 70

/** Packing goes in between wall and back, never inside the unit: from below where it hangs, from above where it stands. */
function packed(stage: Stage, hole: Hole): Act {
  const frame = wallOf(stage, hole.wall)
  const unit = holePlace(stage.plan, stage.standing, hole)?.inside?.unit
  const end = ['legs', 'shims'].includes(unit?.stands ?? '') ? unit?.top : unit?.underside
  const { along, height } = hole
  if (frame === undefined || end === undefined || !hasValue(end) || !hasValue(along) || !hasValue(height)) {
    return act('packers', `hole:${hole.id}`, holeContact(stage, hole), { kind: 'press' })
  }
  const from = end.value + (end.value < height.value ? -BEFORE : BEFORE)
  const to = wallPoint(frame, along.value, height.value)
  return act('packers', `hole:${hole.id}`, againstWall(frame, along.value, from), {
    kind: 'draw',
    to,
    by: null,
  })
}

/** Packed out to the wall first, so that the screw pulls on something solid. */
export const packedAndScrewed: Stages = (stage) =>
  holesOf(stage).flatMap((h) => [packed(stage, h), bored(stage, h), driven(stage, drillOf(stage), h)])

/** Screws through plates that are being put up. */
export const platesFixed: Stages = (stage) =>
  stage.plan.holes
    .filter(
      (h) =>
        h.purpose === 'plate' && h.verdict !== 'refused' && h.for.some((u) => stage.operation.on.includes(u)),
    )
    .map((h) => driven(stage, 'screwdriver', h))

/** A rail: held to its line and read, then screwed from one end to the other. */
export const railFixed: Stages = (stage) => {
  const rails = stage.plan.rails.filter((r) => stage.operation.rails.includes(r.rail))
  return rails.flatMap((rail) => {
    const frame = wallOf(stage, rail.wall)
    const { from, to, edge } = rail
    const isKnown = from.state !== 'unknown' && to.state !== 'unknown' && edge.state !== 'unknown'
    const read =
      frame === undefined || !isKnown
        ? []
        : [
            act(
              'level',
              `rail:${rail.rail}`,
              againstWall(frame, (from.value + to.value) / 2, edge.value, 14),
              {
                kind: 'rest',
              },
            ),
          ]
    const holes = stage.plan.holes.filter(
      (h) => h.id.startsWith(`rail.${rail.rail}.`) && h.verdict !== 'refused',
    )
    return [...read, ...holes.map((h) => driven(stage, 'screwdriver', h))]
  })
}

/** A cross at every place. */
export const marked: Stages = (stage) =>
  holesOf(stage).map((h) => act('pencil', `hole:${h.id}`, holeContact(stage, h), { kind: 'tick' }))

/** Timber in the wall: for a nogging the board is cut open along it first; then it is screwed at both ends. */
export const noggingFixed: Stages = (stage) => {
  const things = (stage.plan.wallThings ?? []).filter(
    (t) => stage.operation.on.includes(t.id) || stage.operation.on.includes(`${t.wall}.${t.id}`),
  )
  const drill = drillOf(stage)
  return things.flatMap((thing) => {
    const frame = wallOf(stage, thing.wall)
    const { left, right, bottom, top } = thing
    if (frame === undefined || left.state === 'unknown' || right.state === 'unknown') return []
    if (bottom === null || top === null || bottom.state === 'unknown' || top.state === 'unknown') return []
    const height = (bottom.value + top.value) / 2
    const on = `${thing.kind}:${thing.id}`
    const to = wallPoint(frame, right.value, top.value)
    const cut = act('knife', on, againstWall(frame, left.value, top.value), { kind: 'draw', to, by: null })
    return [
      ...(thing.kind === 'nogging' ? [cut] : []),
      act(drill, on, againstWall(frame, left.value + 20, height), { kind: 'press' }),
      act(drill, on, againstWall(frame, right.value - 20, height), { kind: 'press' }),
    ]
  })
}
