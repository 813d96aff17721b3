import type { Operation } from '../plan/types'
import { drillFor, drillingCautions } from './cautions'
import type { FittedUnit, Job } from './job'
import { liftTools, liftWords, peopleFor } from './lift'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { type Minutes, minutesFor, WORK } from './minutes'
import { pathIndex } from './path-of'
import { holeFigures, holeSentences } from './say-holes'
import { TOLERANCE, usual } from './tolerances'

/** How the time for setting one unit down and levelling it divides. */
const SHARE = { place: 0.4, level: 0.6 }
const ISLAND = { place: 0.3, level: 0.3, fix: 0.4 }

const isCorner = (unit: FittedUnit) => unit.unit.kind === 'corner-base'

function minutesOf(unit: FittedUnit, part: 'place' | 'level'): Minutes {
  if (unit.way === 'island') return minutesFor(WORK.island, ISLAND[part])
  return minutesFor(isCorner(unit) ? WORK.cornerBase : WORK.base, SHARE[part])
}

const stageOf = (unit: FittedUnit) => (isCorner(unit) ? 'corner-base' : 'base-units')

/** Lifted in, never dragged: legs are made to be stood on. */
function place(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const wall = job.wallName(unit.wall)
  return operation(job, {
    kind: 'place',
    on: [unit.id],
    stage: stageOf(unit),
    title: told('place-base', 'title', { unit: name }),
    does: [
      toldFigure('place-base', `lift.${liftWords(unit)}`, { unit: name, mass: plan.lift.massStripped }),
      told('place-base', 'never-drag'),
      unit.way === 'island'
        ? toldFigure('place-base', 'island', { width: plan.width })
        : toldFigure('place-base', 'marks', { left: plan.left, right: plan.right, wall }),
    ],
    figures: [
      shown('mass', plan.lift.massStripped, 'mass-stripped', { unit: name }),
      shown('left', plan.left, 'left-side', { unit: name, wall }),
      shown('right', plan.right, 'right-side', { unit: name, wall }),
    ],
    checks: [check(`place.${unit.id}`, 'side-on-mark', { unit: name }, plan.left, TOLERANCE.mark)],
    cautions: [caution('M008', 'feet')],
    tools: liftTools(unit),
    people: peopleFor(job, unit, 1),
    minutes: minutesOf(unit, 'place'),
    changes: [{ unit: unit.id, from: 'carried', to: 'standing' }],
    path: pathIndex(job, unit.id),
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.kind`],
  })
}

function level(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  return operation(job, {
    kind: 'level',
    on: [unit.id],
    stage: stageOf(unit),
    title: told('level-base', 'title', { unit: name }),
    does: [
      toldFigure('level-base', plan.legs.length > 0 ? 'legs' : 'packers', { top: plan.top }),
      told('level-base', 'where-the-level-lies'),
      told('level-base', isCorner(unit) ? 'corner' : 'line-up'),
      told('level-base', 'not-to-the-floor'),
    ],
    figures: [
      shown('top', plan.top, 'top', { unit: name }),
      shown('underside', plan.underside, 'underside', { unit: name }),
      ...plan.legs.map((leg) => shown(`leg.${leg.foot}`, leg.extension, 'leg-extension', { foot: leg.foot })),
    ],
    checks: [
      check(`level.${unit.id}.top`, 'top-to-line', { unit: name }, plan.top, TOLERANCE.baseTop),
      check(
        `level.${unit.id}.depth`,
        'level-front-to-back',
        { unit: name },
        usual(0),
        TOLERANCE.levelFrontToBack,
      ),
    ],
    tools: [
      'level',
      'laser',
      'string-line',
      'screwdriver',
      ...when(plan.legs.length === 0, 'packers' as const),
    ],
    minutes: minutesOf(unit, 'level'),
    changes: [{ unit: unit.id, from: 'standing', to: 'levelled' }],
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.kind`],
  })
}

function fixToWall(job: Job, unit: FittedUnit): Operation {
  const holes = job.holesFor(unit.id, 'base-bracket', 'back-rail')
  const wall = job.wall(unit.wall)
  return operation(job, {
    kind: 'fix',
    on: [unit.id],
    stage: 'base-units',
    title: told('fix', 'title', { unit: unit.name }),
    does: [
      ...holeSentences('fix', holes),
      told('fix', 'brackets'),
      told('fix', 'pack'),
      told('fix', 'level-again'),
    ],
    figures: holeFigures(job, holes),
    checks: [
      check(`fix.${unit.id}.level`, 'still-level', { unit: unit.name }, usual(0), TOLERANCE.levelFrontToBack),
      check(`fix.${unit.id}.top`, 'top-to-line', { unit: unit.name }, unit.plan.top, TOLERANCE.baseTop),
    ],
    cautions: drillingCautions(wall),
    tools: [...drillFor(wall), 'screwdriver', 'packers', 'level'],
    minutes: minutesFor(WORK.fixToWall),
    holdPoint: holes.length === 0 || holes.some((hole) => hole.verdict === 'ask'),
    changes: [{ unit: unit.id, from: 'levelled', to: 'secured' }],
    holes: holes.map((hole) => hole.id),
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.kind`],
  })
}

/** An island has no wall: it is held at the floor, and what lies in the floor decides how. */
function fixToFloor(job: Job, unit: FittedUnit): Operation {
  const { heating } = job.kitchen.floor
  return operation(job, {
    kind: 'fix',
    on: [unit.id],
    stage: 'base-units',
    title: told('fix-island', 'title', { unit: unit.name }),
    does: [
      told('fix-island', heating === false ? 'cleats' : heating === true ? 'heated' : 'heating-not-known'),
      told('fix-island', 'through-the-side'),
      told('fix', 'level-again'),
    ],
    checks: [
      check(`fix.${unit.id}.level`, 'still-level', { unit: unit.name }, usual(0), TOLERANCE.levelFrontToBack),
    ],
    cautions: [
      ...when(heating !== false, caution('W001', 'heated-floor')),
      caution('M004', 'eyes'),
      caution('P001', 'no-gloves-at-drill'),
    ],
    tools: ['drill-driver', 'screwdriver', 'level'],
    minutes: minutesFor(WORK.island, ISLAND.fix),
    holdPoint: heating !== false,
    changes: [{ unit: unit.id, from: 'levelled', to: 'secured' }],
    facts: [`units.${unit.id}`, `units.${unit.id}.kind`, 'floor.heating'],
  })
}

/** Base units and islands: set down, levelled to the line, and, once joined, fixed. */
export function fitBases(job: Job): readonly Operation[] {
  return job.units
    .filter((unit) => unit.way === 'base' || unit.way === 'island')
    .flatMap((unit) => [
      place(job, unit),
      level(job, unit),
      unit.way === 'island' ? fixToFloor(job, unit) : fixToWall(job, unit),
    ])
}
