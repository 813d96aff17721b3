import type { Figure } from '../figure'
import type { Message } from '../message'
import { besideItsPlace } from '../placing/beside-its-place'
import type { LegsInTheTilt } from '../placing/stand-up'
import type { Hole, Operation } from '../plan/types'
import { sum } from '../survey/sum'
import { bracketSentences } from './brackets'
import { drillFor, drillingCautions } from './cautions'
import type { FittedUnit, Job } from './job'
import {
  crewWords,
  headWords,
  holdingOpen,
  holesToSettle,
  legsInTilt,
  peopleFor,
  stripFirst,
  tippingCautions,
} from './lift'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { pathIndex } from './path-of'
import { hiddenMarks, holeFigures, holeSentences } from './say-holes'
import { plugChecks, plugSentences, screwSentences } from './say-screws'
import { shimFigures, shimSentences } from './shims'
import { TOLERANCE, usual } from './tolerances'

/** How the time for one tall, from lying to restrained, divides. */
const SHARE = { standUp: 0.25, place: 0.2, level: 0.25, restrain: 0.3 }

/** What holds it back at its top, once it stands. Two are drilled for where two are found; one holds it. */
const LEAST_HOLES = 1

const restraintHoles = (job: Job, unit: FittedUnit): readonly Hole[] =>
  job.holesFor(unit.id, 'tall-restraint')

/** Why it may not be stood up yet: no height for it, or nothing to restrain it by. */
function notYet(job: Job, unit: FittedUnit): readonly Message[] {
  const fits = unit.plan.standUp?.fits
  const holes = restraintHoles(job, unit)
  const open = holdingOpen(holes, LEAST_HOLES)
  return [
    ...when(fits === 'no', told('stand-up', 'does-not-fit')),
    ...when(fits === 'not-known', told('stand-up', 'not-known-to-fit')),
    ...when(open === 'none', told('stand-up', 'no-restraint')),
    ...when(open === 'ask', told('stand-up', 'restraint-open', { holes: holesToSettle(holes) })),
  ]
}

/** How much floor it takes while it lies, on the edge it is turned over; legs that stay on reach out past its bottom. */
function lying({ plan, unit }: FittedUnit, legs: LegsInTheTilt | null): { long: Figure; wide: Figure } {
  const over = plan.standUp?.over ?? 'back'
  const onSide = over === 'left' || over === 'right'
  const reach = legs === 'wound-in' || legs === 'swing' ? [unit.legs.min] : []
  return {
    long: sum('mm', { kind: 'geometry', why: 'its height, and legs that stay on' }, [plan.height, ...reach]),
    wide: onSide ? plan.depth : plan.width,
  }
}

/** What becomes of its legs before it is turned on its edge, and the blocks that follow from it. */
function legsBefore(unit: FittedUnit): readonly Message[] {
  const legs = legsInTilt(unit)
  if (legs === null || legs === 'none') return []
  if (legs === 'off') return [told('stand-up', 'legs.off')]
  return [toldFigure('stand-up', 'legs.wound-in', { shortest: unit.unit.legs.min })]
}

/** Which edge it turns on, over which blocks, and how high it swings. */
function overTheEdge(unit: FittedUnit): readonly Message[] {
  const { standUp: way } = unit.plan
  if (way === null) return [told('stand-up', 'edge-not-known')]
  const legs = legsInTilt(unit)
  return [
    toldFigure('stand-up', 'room', { needed: way.needed, ceiling: way.ceiling }),
    legs === 'swing'
      ? told('stand-up', `swing.${way.over}`)
      : toldFigure('stand-up', `over.${way.over}`, { blocks: way.blocks }),
    ...when(legs === 'wound-in', told('stand-up', 'blocks-stopped'), told('stand-up', 'blocks-beyond')),
  ]
}

/** Where it is to be laid, told by where it stands once it is up: hardly ever right before its own place. */
function spotToStandUp(job: Job, unit: FittedUnit): readonly Message[] {
  const index = pathIndex(job, unit.id)
  const path = index === null ? undefined : job.context.paths[index]
  const turn = path?.segments.find((segment) => segment.kind === 'stand-up')
  if (turn === undefined || unit.plan.pose === null) return []
  const { way, aside, out } = besideItsPlace(unit.plan.pose, turn.upright)
  return [toldFigure('stand-up', `spot.${way}`, { aside, out })]
}

/** Ways of lifting the head end by which it is walked up. */
const RISES: readonly string[] = ['two', 'three', 'head-on-blocks', 'not-known']

/** From lying to upright, over one edge of its carcass. Somebody holds it from here until it is restrained. */
function standUp(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const { massStripped: mass, endLift } = plan.lift
  const way = plan.standUp
  const stops = notYet(job, unit)
  return operation(job, {
    kind: 'stand-up',
    on: [unit.id],
    stage: 'talls',
    title: told('stand-up', 'title', { unit: name }),
    does: [
      ...stops,
      ...when(stops.length > 0, told('lift', 'only-then')),
      ...stripFirst(unit),
      ...legsBefore(unit),
      toldFigure('stand-up', 'floor', lying(unit, legsInTilt(unit))),
      ...spotToStandUp(job, unit),
      ...overTheEdge(unit),
      toldFigure('stand-up', `lift.${headWords(unit)}`, { unit: name, mass, end: endLift ?? mass }),
      ...when(RISES.includes(headWords(unit)), told('stand-up', 'beside')),
      told('stand-up', 'hold'),
    ],
    figures: [
      shown('mass', mass, 'mass-stripped', { unit: name }),
      ...(endLift === null ? [] : [shown('end-lift', endLift, 'end-lift')]),
      ...(way === null
        ? []
        : [
            ...when(way.pivot === 'carcass-edge', shown('blocks', way.blocks, 'stand-up-blocks')),
            shown('needed', way.needed, 'stand-up-needed'),
            shown('ceiling', way.ceiling, 'stand-up-ceiling'),
          ]),
      shown('left', plan.left, 'left-side', { unit: name, wall: job.wallName(unit.wall) }),
    ],
    checks: [
      check(`stand-up.${unit.id}.clear`, 'floor-clear', { unit: name }, lying(unit, legsInTilt(unit)).long),
      check(`stand-up.${unit.id}.restraint`, 'restraint-ready', { unit: name }),
    ],
    cautions: [...tippingCautions(), caution('W024', 'under-the-edge')],
    tools: ['blocks', 'blankets', 'barrow'],
    people: peopleFor(job, unit, 2),
    minutes: minutesFor(WORK.tall, SHARE.standUp),
    holdPoint: stops.length > 0,
    changes: [{ unit: unit.id, from: 'carried', to: 'held' }],
    path: pathIndex(job, unit.id),
    holding: [unit.id],
    wall: unit.wall,
    facts: [
      `units.${unit.id}`,
      `units.${unit.id}.kind`,
      `units.${unit.id}.stands`,
      `units.${unit.id}.assembled`,
    ],
  })
}

/** On a barrow or from corner to corner, by two at least: upright and full height it is nobody's load alone. */
function place(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const wall = job.wallName(unit.wall)
  const people = peopleFor(job, unit, 2)
  const mass = plan.lift.massStripped
  return operation(job, {
    kind: 'place',
    on: [unit.id],
    stage: 'talls',
    title: told('place-tall', 'title', { unit: name }),
    does: [
      ...hiddenMarks(job, unit),
      ...when(legsInTilt(unit) === 'off', told('place-tall', 'legs-on')),
      ...when(legsInTilt(unit) === 'wound-in', told('place-tall', 'off-blocks')),
      toldFigure('place-tall', `walk.${crewWords(people)}`, { unit: name, mass }),
      told('place-tall', 'never-alone'),
      toldFigure('place-tall', 'marks', { left: plan.left, right: plan.right, wall }),
      told('place-tall', 'hold'),
    ],
    figures: [
      shown('mass', mass, 'mass-stripped', { unit: name }),
      shown('left', plan.left, 'left-side', { unit: name, wall }),
      shown('right', plan.right, 'right-side', { unit: name, wall }),
    ],
    checks: [check(`place.${unit.id}`, 'side-on-mark', { unit: name }, plan.left, TOLERANCE.mark)],
    cautions: [
      ...tippingCautions(),
      ...when(legsInTilt(unit) === 'wound-in', caution('W024', 'under-the-edge')),
    ],
    tools: ['barrow', 'packers'],
    people,
    minutes: minutesFor(WORK.tall, SHARE.place),
    changes: [{ unit: unit.id, from: 'held', to: 'standing' }],
    path: pathIndex(job, unit.id),
    holding: [unit.id],
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.kind`],
  })
}

function level(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  return operation(job, {
    kind: 'level',
    on: [unit.id],
    stage: 'talls',
    title: told('level-tall', 'title', { unit: name }),
    does: [
      ...shimSentences(unit),
      toldFigure('level-tall', plan.legs.length > 0 ? 'legs' : 'packers', { underside: plan.underside }),
      told('level-tall', 'where-the-level-lies'),
      toldFigure('level-tall', 'top', { top: plan.top }),
      told('level-tall', 'hold'),
    ],
    figures: [
      shown('underside', plan.underside, 'underside', { unit: name }),
      shown('top', plan.top, 'top', { unit: name }),
      ...plan.legs.map((leg) => shown(`leg.${leg.foot}`, leg.extension, 'leg-extension', { foot: leg.foot })),
      ...shimFigures(unit),
    ],
    checks: [
      check(`level.${unit.id}.side`, 'tall-plumb-side', { unit: name }, usual(0), TOLERANCE.tallPlumb),
      check(`level.${unit.id}.front`, 'tall-plumb-front', { unit: name }, usual(0), TOLERANCE.tallPlumb),
      check(`level.${unit.id}.top`, 'top-to-line', { unit: name }, plan.top, TOLERANCE.undersideLine),
    ],
    cautions: tippingCautions(),
    tools: ['long-level', 'laser', 'screwdriver', 'packers'],
    people: 2,
    minutes: minutesFor(WORK.tall, SHARE.level),
    changes: [{ unit: unit.id, from: 'standing', to: 'levelled' }],
    holding: [unit.id],
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.kind`],
  })
}

function restrain(job: Job, unit: FittedUnit): Operation {
  const { name } = unit
  const holes = restraintHoles(job, unit)
  const wall = job.wall(unit.wall)
  return operation(job, {
    kind: 'restrain',
    on: [unit.id],
    stage: 'talls',
    title: told('restrain', 'title', { unit: name }),
    does: [
      ...holeSentences(job, 'restrain', holes, unit),
      ...bracketSentences(unit, holes),
      ...plugSentences(job, wall, holes),
      ...when(holes.length > 0, told('restrain', 'pack')),
      ...screwSentences(job, holes),
      ...when(holes.length > 0, told('restrain', 'plumb-again'), told('restrain', 'let-go', { unit: name })),
      told('restrain', 'lay-down-again'),
    ],
    figures: holeFigures(job, holes, unit),
    checks: [
      check(`restrain.${unit.id}.plumb`, 'still-plumb', { unit: name }, usual(0), TOLERANCE.tallPlumb),
      check(`restrain.${unit.id}.firm`, 'pull-by-hand', { unit: name }),
      ...plugChecks(job, wall, holes, `restrain.${unit.id}`),
    ],
    cautions: [...drillingCautions(wall), ...tippingCautions()],
    tools: [...drillFor(wall), 'long-level', 'packers', 'stepladder'],
    people: 2,
    minutes: minutesFor(WORK.tall, SHARE.restrain),
    holdPoint: holdingOpen(holes, LEAST_HOLES) !== null,
    changes: [{ unit: unit.id, from: 'levelled', to: 'secured' }],
    holding: [unit.id],
    holes: holes.map((hole) => hole.id),
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.kind`],
  })
}

/** A tall is stood up, walked in, plumbed and restrained in one go: it is held all the way. */
export function fitTalls(job: Job): readonly Operation[] {
  return job.units
    .filter((unit) => unit.way === 'tall')
    .flatMap((unit) => [standUp(job, unit), place(job, unit), level(job, unit), restrain(job, unit)])
}
