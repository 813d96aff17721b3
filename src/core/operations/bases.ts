import type { Basis, Figure } from '../figure'
import { screwedThroughRail } from '../fixings/base-brackets'
import type { NamedFigure, Operation } from '../plan/types'
import { sum } from '../survey/sum'
import { tippingFacts, tipsOnItsFeet } from '../units/tips'
import { bracketSentences } from './brackets'
import { drillFor, drillingCautions } from './cautions'
import { frontLine } from './front-line'
import type { FittedUnit, Job } from './job'
import { lastGap } from './last-gap'
import { legName } from './leg-name'
import { aloneFigures, liftTools, liftWords, peopleFor, stripFirst } from './lift'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { inTurn, type Minutes, minutesFor, WORK } from './minutes'
import { cornerEnd, wallRound } from './neighbours'
import { pathIndex } from './path-of'
import { hiddenMarks, holeFigures, holeSentences } from './say-holes'
import { plugChecks, plugSentences, screwSentences } from './say-screws'
import { cutOutsOf } from './service-cut-outs'
import { packedWith, shimFigures, shimSentences } from './shims'
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
  const cutOuts = cutOutsOf(job, unit)
  const gap = lastGap(job, unit)
  const tips = tipsOnItsFeet(unit.unit, plan)
  return operation(job, {
    kind: 'place',
    on: [unit.id],
    stage: stageOf(unit),
    title: told('place-base', 'title', { unit: name }),
    does: [
      ...stripFirst(unit),
      ...cutOuts.does,
      ...hiddenMarks(job, unit),
      ...gap.does,
      toldFigure('place-base', `lift.${liftWords(unit)}`, { unit: name, mass: plan.lift.massStripped }),
      told('place-base', unit.unit.stands === 'legs' ? 'never-drag' : 'never-drag-box'),
      unit.way === 'island'
        ? toldFigure('place-base', 'island', { width: plan.width })
        : toldFigure('place-base', 'marks', { left: plan.left, right: plan.right, wall }),
      ...when(tips, told('place-base', 'tips')),
    ],
    figures: [
      shown('mass', plan.lift.massStripped, 'mass-stripped', { unit: name }),
      ...aloneFigures(plan.lift.alone, name),
      shown('left', plan.left, 'left-side', { unit: name, wall }),
      shown('right', plan.right, 'right-side', { unit: name, wall }),
      ...cutOuts.figures,
      ...gap.figures,
    ],
    checks: [
      ...cutOuts.checks,
      ...gap.checks,
      check(`place.${unit.id}`, 'side-on-mark', { unit: name }, plan.left, TOLERANCE.mark),
    ],
    cautions: [
      caution('M008', 'feet'),
      ...when(tips, caution('W001', 'tips-on-feet')),
      ...when(cutOuts.count > 0, caution('M004', 'eyes')),
    ],
    tools: [
      ...when(tips, 'packers' as const),
      ...when(cutOuts.count > 0, 'hole-saw' as const, 'tape' as const),
      ...liftTools(unit),
    ],
    people: peopleFor(job, unit, tips ? 2 : 1),
    minutes:
      cutOuts.count > 0
        ? inTurn(minutesFor(WORK.serviceCutOuts), minutesOf(unit, 'place'))
        : minutesOf(unit, 'place'),
    changes: [{ unit: unit.id, from: 'carried', to: 'standing' }],
    path: pathIndex(job, unit.id),
    holding: when(tips, unit.id),
    wall: unit.wall,
    facts: [
      `units.${unit.id}`,
      `units.${unit.id}.kind`,
      `units.${unit.id}.assembled`,
      ...(tips ? tippingFacts(unit.unit) : []),
    ],
  })
}

const fromTheCorner: Basis = { kind: 'geometry', why: 'from the face of the other wall, along this one' }

/** A corner unit is set from two walls: its own, and the one round the corner, which its side faces. */
interface CornerWall {
  readonly wall: string
  readonly off: Figure
}

function otherWall(job: Job, unit: FittedUnit): CornerWall | null {
  const end = isCorner(unit) ? cornerEnd(job, unit) : null
  const wall = end === null ? undefined : wallRound(job, unit.wall, end)
  if (end === null || wall === undefined) return null
  const name = job.wallName(wall)
  if (end === 'left') return { wall: name, off: unit.plan.left }
  const length = job.wall(unit.wall)?.length
  return length === undefined
    ? null
    : { wall: name, off: sum('mm', fromTheCorner, [length], [unit.plan.right]) }
}

/** Where its front edge comes: on the string line of its wall, and for a corner unit how far it stands off the other wall. */
function frontFigures(job: Job, unit: FittedUnit, other: CornerWall | null): readonly NamedFigure[] {
  const line = unit.way === 'island' ? null : frontLine(job, unit.wall)
  return [
    ...(line === null
      ? []
      : [shown('front', line.out, 'front-edge', { unit: unit.name, wall: job.wallName(unit.wall) })]),
    ...(other === null
      ? []
      : [shown('off-other-wall', other.off, 'off-other-wall', { unit: unit.name, wall: other.wall })]),
  ]
}

/** How its front is brought into line, and how the level lies on it. */
function linedUp(job: Job, unit: FittedUnit, other: CornerWall | null): Operation['does'] {
  const wall = job.wallName(unit.wall)
  const line = unit.way === 'island' ? null : frontLine(job, unit.wall)
  if (other !== null) {
    return [
      told('level-base', 'level-corner', { wall, other: other.wall }),
      toldFigure('level-base', 'corner', { other: other.wall, off: other.off }),
    ]
  }
  return [
    told('level-base', 'where-the-level-lies'),
    line === null
      ? told('level-base', 'line-up-island')
      : toldFigure('level-base', 'line-up', { front: line.out }),
  ]
}

function level(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const other = otherWall(job, unit)
  const onLegs = plan.legs.length > 0
  const packed = packedWith(unit)
  const carries = onLegs
    ? 'every-leg-carries'
    : packed === 'shims'
      ? 'every-shim-carries'
      : 'every-corner-carries'
  return operation(job, {
    kind: 'level',
    on: [unit.id],
    stage: stageOf(unit),
    title: told('level-base', 'title', { unit: name }),
    does: [
      ...shimSentences(unit),
      toldFigure('level-base', onLegs ? 'legs' : packed === null ? 'packers' : 'shims', { top: plan.top }),
      ...linedUp(job, unit, other),
      told('level-base', carries),
    ],
    figures: [
      shown('top', plan.top, 'top', { unit: name }),
      shown('underside', plan.underside, 'underside', { unit: name }),
      ...frontFigures(job, unit, other),
      ...plan.legs.map((leg) =>
        shown(`leg.${leg.foot}`, leg.extension, 'leg-extension', { foot: legName(unit, leg) }),
      ),
      ...shimFigures(unit),
    ],
    checks: [
      check(`level.${unit.id}.top`, 'top-to-line-at-back', { unit: name }, plan.top, TOLERANCE.baseTop),
      check(`level.${unit.id}.width`, 'level-left-to-right', { unit: name }, usual(0), TOLERANCE.levelAcross),
      check(
        `level.${unit.id}.depth`,
        'level-front-to-back',
        { unit: name },
        usual(0),
        TOLERANCE.levelFrontToBack,
      ),
      check(`level.${unit.id}.carries`, carries, { unit: name }),
    ],
    tools: ['level', 'laser', 'string-line', 'screwdriver', ...when(!onLegs, 'packers' as const)],
    minutes: minutesOf(unit, 'level'),
    changes: [{ unit: unit.id, from: 'standing', to: 'levelled' }],
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.kind`],
  })
}

function fixToWall(job: Job, unit: FittedUnit): Operation {
  const holes = job.holesFor(unit.id, 'base-bracket', 'back-rail')
  const wall = job.wall(unit.wall)
  const through = screwedThroughRail(unit.unit)
  const way = through ? 'fix-through-rail' : 'fix'
  return operation(job, {
    kind: 'fix',
    on: [unit.id],
    stage: 'base-units',
    title: told('fix', 'title', { unit: unit.name }),
    does: [
      ...holeSentences(job, way, holes, unit),
      // Packed before a bracket or a screw closes on the gap, or it draws the unit out of level.
      ...when(holes.length > 0, told(way, 'pack')),
      ...bracketSentences(unit, holes),
      ...plugSentences(job, wall, holes),
      ...screwSentences(job, holes),
      ...when(holes.length > 0, told('fix', 'level-again')),
    ],
    figures: holeFigures(job, holes, unit),
    checks: [
      ...when(
        holes.length > 0,
        check(
          `fix.${unit.id}.level`,
          'still-level',
          { unit: unit.name },
          usual(0),
          TOLERANCE.levelFrontToBack,
        ),
      ),
      check(`fix.${unit.id}.top`, 'top-to-line', { unit: unit.name }, unit.plan.top, TOLERANCE.baseTop),
      ...plugChecks(job, wall, holes, `fix.${unit.id}`),
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
