import { type Figure, hasValue } from '../figure'
import { holesSaid } from '../holes/holes-said'
import { followedBy, type Message } from '../message'
import type { HeightLine, Hole, Operation, WallId } from '../plan/types'
import { studName, studPlaces } from '../units/stud-name'
import { listed } from '../words/listed'
import { frontLine } from './front-line'
import { isStudWall, type Job, unitsAlong } from './job'
import { check, distinct, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { sharedMarks } from './shared-marks'
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

/** What is drilled at a line of brackets: its id names its first hole, and a hole's id begins with what it is for. */
function lineKind(line: HeightLine): string {
  if (line.of !== 'bracket') return line.of
  if (line.throughRail === true) return 'base-rail'
  return line.id.startsWith('bracket.tall-restraint.') ? 'tall-restraint' : 'base-bracket'
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
          .map((line) => toldFigure('set-out-heights', lineKind(line), { height: line.height })),
      ],
      figures: said.map((line) => shown(line.id, line.height, `height.${lineKind(line)}`)),
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
  const front = frontLine(job, wall)
  return [
    operation(job, {
      kind: 'set-out-widths',
      on: [wall],
      stage: 'set-out',
      title: told('set-out-widths', 'title', { wall: name }),
      does: [
        told('set-out-widths', 'storey-rod', { count: units.length }),
        toldFigure('set-out-widths', 'first', { unit: first.name, left: first.left, right: first.right }),
        told('set-out-widths', 'plumb'),
        told('set-out-widths', 'sum'),
        ...(front === null ? [] : [toldFigure('set-out-widths', 'front-line', { out: front.out })]),
      ],
      figures: [
        ...sharedMarks(units, name),
        ...(front === null
          ? []
          : [
              shown('front-line.left', front.out, 'front-line-left', { unit: front.first.name, wall: name }),
              shown('front-line.right', front.out, 'front-line-right', { unit: front.last.name, wall: name }),
            ]),
      ],
      checks: [
        check(`set-out-widths.${wall}`, 'marks-add-up', { wall: name }, usual(0), TOLERANCE.mark),
        ...(front === null
          ? []
          : [
              check(
                `set-out-widths.${wall}.front`,
                'front-line-marked',
                { wall: name },
                front.out,
                TOLERANCE.straight,
              ),
            ]),
      ],
      tools: ['storey-rod', 'tape', 'level', 'pencil', ...when(front !== null, 'string-line' as const)],
      minutes: minutesFor(WORK.markWidths),
      marks: marks.map((mark) => mark.id),
      wall,
      facts: units.flatMap((u) => [`units.${u.unit}`, ...u.left.from, ...u.right.from]),
    }),
  ]
}

export function setOutAllWidths(job: Job): readonly Operation[] {
  return wallsWithUnits(job).flatMap((wall) => setOutWidths(job, wall))
}

const at = (figure: Figure) => (hasValue(figure) ? figure.value : Number.POSITIVE_INFINITY)

/** Studs of a stud wall that something is to be fixed to. */
function findStuds(job: Job, id: WallId): readonly Operation[] {
  const wall = job.wall(id)
  if (wall === undefined || !isStudWall(wall) || !job.units.some((u) => u.wall === id)) return []
  const name = job.wallName(id)
  const unsure = wall.studs.filter((s) => s.confirmed === null || s.confirmed === 'one-beep')
  const places = studPlaces(job.kitchen, job.context.survey, id)
  const centre = (at: (typeof wall.studs)[number]) => job.context.survey.along(id, at.centre)
  const called = (stud: string) => studName(places, stud)
  const short = (stud: string) => called(stud).replace(/ from the left$/, '')
  const inOrder = [...wall.studs].sort((a, b) => at(centre(a)) - at(centre(b)) || (a.id < b.id ? -1 : 1))
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
        ...when(
          unsure.length > 0,
          told('find-studs', 'unsure', { studs: listed(unsure.map((s) => called(s.id))) }),
        ),
        told('find-studs', 'usual-spacing'),
        told('find-studs', 'no-drill'),
      ],
      figures: inOrder.map((s) =>
        shown(`stud.${s.id}`, centre(s), 'stud-centre', { stud: short(s.id), wall: name }),
      ),
      checks: inOrder.map((s) =>
        check(
          `find-studs.${id}.${s.id}`,
          'stud-found',
          { stud: short(s.id), wall: name },
          centre(s),
          TOLERANCE.holePlace,
        ),
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
  const refused = all.filter((hole) => hole.verdict === 'refused')
  const open = holes.filter((hole) => hole.verdict === 'ask')
  return [
    operation(job, {
      kind: 'mark-holes',
      on: [wall],
      stage: 'set-out',
      title: told('mark-holes', 'title', { wall: name }),
      does: [
        told('mark-holes', 'count', { count: holes.length, wall: name }),
        told('mark-holes', 'from'),
        ...refused.map(crossedOff),
        ...when(open.length > 0, told('mark-holes', 'ask', { holes: holesSaid(open) })),
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

/** A place where a hole was wanted and none may be: the next person at the wall is to see it too. */
function crossedOff({ along, height, against: [why] }: Hole): Message {
  const said = toldFigure('mark-holes', 'refused', { along, height })
  return why === undefined ? said : followedBy(said, why)
}

export function markAllHoles(job: Job): readonly Operation[] {
  return job.walls.flatMap((wall) => markHoles(job, wall.id))
}
