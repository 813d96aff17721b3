import { hasValue } from '../../figure'
import type { HeightLine, WallMark } from '../../plan/types'
import { endsOf } from '../../views/line-ends'
import { act, againstWall, DOWN, elsewhere, type Stage, type Stages, wallOf, wallPoint } from '../stage'
import type { Act, StagedTool } from '../staging'

/** Drawn along a line from one end of it to the other. */
function along(stage: Stage, tool: StagedTool, line: HeightLine): readonly Act[] {
  const frame = wallOf(stage, line.wall)
  const { height } = line
  if (frame === undefined || height.state === 'unknown') return []
  const [from, to] = endsOf(line, frame)
  return [
    act(tool, `line:${line.id}`, againstWall(frame, from, height.value, 4), {
      kind: 'draw',
      to: wallPoint(frame, to, height.value, 4),
      by: null,
    }),
  ]
}

const linesOf = ({ plan, operation }: Stage): readonly HeightLine[] =>
  plan.lines.filter((l) => operation.lines.includes(l.id))
const marksOf = ({ plan, operation }: Stage): readonly WallMark[] =>
  plan.marks.filter((m) => operation.marks.includes(m.id))

/** The line goes round the room: a laser or a long level carries it, a pencil leaves it there. */
export const lineStruck: Stages = (stage) => linesOf(stage).flatMap((l) => along(stage, 'pencil', l))

/** Every height is read up or down from the line with a tape, then drawn. */
export const heightsSetOut: Stages = (stage) =>
  linesOf(stage).flatMap((line) => {
    const frame = wallOf(stage, line.wall)
    const { height } = line
    if (frame === undefined || height.state === 'unknown') return []
    const [from] = endsOf(line, frame)
    return [
      act('level', `line:${line.id}`, againstWall(frame, from, 0, 4), {
        kind: 'measure',
        to: wallPoint(frame, from, height.value, 4),
        by: height,
      }),
      ...along(stage, 'pencil', line),
    ]
  })

/** Every mark is read off from the left end of its wall with one tape that stays where it is, so that no error adds up. */
export const widthsSetOut: Stages = (stage) =>
  marksOf(stage).flatMap((mark) => {
    const frame = wallOf(stage, mark.wall)
    if (frame === undefined || !hasValue(mark.along)) return []
    return [
      act('tape', `mark:${mark.id}`, againstWall(frame, 0, 0, 4), {
        kind: 'measure',
        to: wallPoint(frame, mark.along.value, 0, 4),
        by: mark.along,
      }),
    ]
  })

/** A stud is heard and felt for on both its edges, and marked. */
export const studsFound: Stages = (stage) =>
  marksOf(stage).flatMap((mark) => {
    const frame = wallOf(stage, mark.wall)
    if (frame === undefined || !hasValue(mark.along)) return []
    const at = mark.along.value
    return [
      act('detector', `mark:${mark.id}`, againstWall(frame, Math.max(0, at - EITHER_SIDE), 0, 6), {
        kind: 'measure',
        to: wallPoint(frame, at + EITHER_SIDE, 0, 6),
        by: mark.along,
      }),
    ]
  })
/** How far to either side of a stud's middle the detector goes, mm. */
const EITHER_SIDE = 120

/** The floor is read down from the line at every place of the survey. */
export const floorRead: Stages = ({ plan }) =>
  plan.floor.points.flatMap((p) =>
    hasValue(p.z)
      ? [
          act(
            'tape',
            'floor',
            { at: { ...p.at, z: 0 }, into: DOWN, across: { x: 1, y: 0, z: 0 } },
            {
              kind: 'measure',
              to: { ...p.at, z: p.z.value },
              by: p.z,
            },
          ),
        ]
      : [],
  )

/** Heights nearer each other than this are gone over in one pass of the detector, mm. */
const ONE_PASS = 60

/** Over the wall at the height of every hole that is planned on it, from end to end. */
export const wallTraced: Stages = (stage) => {
  const wall = stage.operation.wall
  const frame = wallOf(stage, wall)
  if (frame === undefined || !hasValue(frame.length)) return [elsewhere('detector', `wall:${wall ?? 'room'}`)]
  const heights = stage.plan.holes
    .filter((h) => h.wall === wall && h.verdict !== 'refused')
    .flatMap((h) => (hasValue(h.height) ? [h.height.value] : []))
    .sort((a, b) => b - a)
  const passes = heights.filter((z, i) => i === 0 || (heights[i - 1] as number) - z > ONE_PASS)
  const end = frame.length.value
  return (passes.length > 0 ? passes : [0]).map((z) =>
    act('detector', `wall:${wall}`, againstWall(frame, 0, z, 6), {
      kind: 'draw',
      to: wallPoint(frame, end, z, 6),
      by: null,
    }),
  )
}
