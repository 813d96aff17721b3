import type { HeightLine, Operation, WallId } from '../plan/types'
import { isStudWall, type Job, listed, unitsAlong } from './job'
import { check, distinct, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { TOLERANCE, usual } from './tolerances'

/** Sentences at one step at most; the rest stands among its figures and on the wall drawing. */
const MOST_SAID = 4

function wallsWithUnits(job: Job): readonly WallId[] {
  const wanted = new Set(job.kitchen.units.filter((unit) => unit.kind !== 'island').map((unit) => unit.wall))
  return job.walls.filter((wall) => wanted.has(wall.id)).map((wall) => wall.id)
}

/** One line of each height, for a height that is struck in several pieces is said once. */
function eachHeight(lines: readonly HeightLine[]): readonly HeightLine[] {
  return lines.filter(
    (line, i) =>
      lines.findIndex((l) => l.of === line.of && distinct([l.height, line.height]).length === 1) === i,
  )
}

/** Every height of one wall, marked at its ends from the line. */
function setOutHeights(job: Job, wall: WallId, share: number): readonly Operation[] {
  const lines = job.context.lines.filter((line) => line.wall === wall && line.of !== 'line')
  if (lines.length === 0) return []
  const name = job.wallName(wall)
  const said = eachHeight(lines)
  return [
    operation(job, {
      kind: 'set-out-heights',
      on: [wall],
      stage: 'set-out',
      title: told('set-out-heights', 'title', { wall: name }),
      does: [
        told('set-out-heights', 'from-the-line'),
        ...said
          .slice(0, MOST_SAID)
          .map((line) => toldFigure('set-out-heights', line.of, { height: line.height })),
      ],
      figures: said.map((line) => shown(line.id, line.height, `height.${line.of}`)),
      checks: [
        check(`set-out-heights.${wall}`, 'marks-at-both-ends', { wall: name }, usual(0), TOLERANCE.mark),
      ],
      tools: ['laser', 'level', 'pencil'],
      minutes: minutesFor(WORK.markHeights, share),
      lines: lines.map((line) => line.id),
      wall,
      facts: [`walls.${wall}`],
    }),
  ]
}

export function setOutAllHeights(job: Job): readonly Operation[] {
  const walls = wallsWithUnits(job)
  return walls.flatMap((wall) => setOutHeights(job, wall, 1 / walls.length))
}

/** Sides of every unit and bay of one wall, marked from its left corner. */
function setOutWidths(job: Job, wall: WallId): readonly Operation[] {
  const marks = job.context.marks.filter((mark) => mark.wall === wall && mark.kind !== 'stud')
  const units = unitsAlong(job, wall)
  const name = job.wallName(wall)
  const [first] = units
  if (first === undefined) return []
  return [
    operation(job, {
      kind: 'set-out-widths',
      on: [wall],
      stage: 'set-out',
      title: told('set-out-widths', 'title', { wall: name }),
      does: [
        told('set-out-widths', 'storey-rod', { units: listed(units.map((u) => u.name)) }),
        toldFigure('set-out-widths', 'first', { unit: first.name, left: first.left, right: first.right }),
        told('set-out-widths', 'plumb'),
        told('set-out-widths', 'sum'),
      ],
      figures: units.flatMap((u) => [
        shown(`${u.unit}.left`, u.left, 'left-side', { unit: u.name, wall: name }),
        shown(`${u.unit}.right`, u.right, 'right-side', { unit: u.name, wall: name }),
      ]),
      checks: [check(`set-out-widths.${wall}`, 'marks-add-up', { wall: name }, usual(0), TOLERANCE.mark)],
      tools: ['storey-rod', 'tape', 'level', 'pencil'],
      minutes: minutesFor(WORK.markWidths),
      marks: marks.map((mark) => mark.id),
      wall,
      facts: units.map((u) => `units.${u.unit}`),
    }),
  ]
}

export function setOutAllWidths(job: Job): readonly Operation[] {
  return wallsWithUnits(job).flatMap((wall) => setOutWidths(job, wall))
}

/** Studs of a stud wall that something is to be fixed to. */
function findStuds(job: Job, id: WallId): readonly Operation[] {
  const wall = job.wall(id)
  if (wall === undefined || !isStudWall(wall) || !job.units.some((u) => u.wall === id)) return []
  const name = job.wallName(id)
  const unsure = wall.studs.filter((s) => s.confirmed === null || s.confirmed === 'one-beep')
  const centre = (at: (typeof wall.studs)[number]) => job.context.survey.along(id, at.centre)
  return [
    operation(job, {
      kind: 'find-studs',
      on: [id],
      stage: 'set-out',
      title: told('find-studs', 'title', { wall: name }),
      does: [
        told('find-studs', 'both-edges'),
        wall.studs.length === 0
          ? told('find-studs', 'none-yet')
          : told('find-studs', 'expected', { count: wall.studs.length }),
        ...when(unsure.length > 0, told('find-studs', 'unsure', { studs: listed(unsure.map((s) => s.id)) })),
        told('find-studs', 'usual-spacing'),
        told('find-studs', 'no-drill'),
      ],
      figures: wall.studs.map((s) =>
        shown(`stud.${s.id}`, centre(s), 'stud-centre', { stud: s.id, wall: name }),
      ),
      checks: wall.studs.map((s) =>
        check(`find-studs.${id}.${s.id}`, 'stud-found', { stud: s.id }, centre(s), TOLERANCE.holePlace),
      ),
      tools: ['magnet', 'detector', 'tape', 'pencil'],
      minutes: minutesFor(WORK.findStuds),
      marks: job.context.marks.filter((m) => m.wall === id && m.kind === 'stud').map((m) => m.id),
      wall: id,
      facts: [
        `walls.${id}.construction`,
        ...wall.studs.flatMap((s) => [`walls.${id}.studs.${s.id}`, `walls.${id}.studs.${s.id}.confirmed`]),
      ],
    }),
  ]
}

export function findAllStuds(job: Job): readonly Operation[] {
  return job.walls.flatMap((wall) => findStuds(job, wall.id))
}

/** Holes of one wall marked, by number, as its drawing shows them. A refused hole is not marked. */
function markHoles(job: Job, wall: WallId): readonly Operation[] {
  const all = job.holesIn(wall)
  const holes = all.filter((hole) => hole.verdict !== 'refused')
  if (all.length === 0) return []
  const name = job.wallName(wall)
  const refused = all.length - holes.length
  return [
    operation(job, {
      kind: 'mark-holes',
      on: [wall],
      stage: 'set-out',
      title: told('mark-holes', 'title', { wall: name }),
      does: [
        told('mark-holes', 'count', { count: holes.length, wall: name }),
        told('mark-holes', 'from'),
        ...when(refused > 0, told('mark-holes', 'refused', { refused })),
        ...when(
          holes.some((hole) => hole.verdict === 'ask'),
          told('mark-holes', 'ask', { count: holes.filter((h) => h.verdict === 'ask').length }),
        ),
        told('mark-holes', holes.some((hole) => hole.stud !== null) ? 'in-timber' : 'tolerance'),
      ],
      figures: holes.flatMap((hole) => [
        shown(`${hole.id}.along`, hole.along, 'hole-along', { hole: hole.number ?? hole.id, wall: name }),
        shown(`${hole.id}.height`, hole.height, 'hole-height', { hole: hole.number ?? hole.id }),
      ]),
      checks: [check(`mark-holes.${wall}`, 'holes-marked', { wall: name }, usual(0), TOLERANCE.holePlace)],
      tools: ['tape', 'laser', 'pencil'],
      minutes: minutesFor(WORK.markHole, Math.max(3, holes.length)),
      holes: holes.map((hole) => hole.id),
      wall,
      facts: [`walls.${wall}`],
    }),
  ]
}

export function markAllHoles(job: Job): readonly Operation[] {
  return job.walls.flatMap((wall) => markHoles(job, wall.id))
}
