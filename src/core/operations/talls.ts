import type { Operation } from '../plan/types'
import { drillFor, drillingCautions } from './cautions'
import type { FittedUnit, Job } from './job'
import { peopleFor, tippingCautions } from './lift'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { pathIndex } from './path-of'
import { holeFigures, holeSentences } from './say-holes'
import { TOLERANCE, usual } from './tolerances'

/** How the time for one tall, from lying to restrained, divides. */
const SHARE = { standUp: 0.25, place: 0.2, level: 0.25, restrain: 0.3 }

/** From lying to upright, on blocks, over one edge of its carcass. Somebody holds it from here until it is restrained. */
function standUp(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const plans = plan.standUp
  const impossible = plans !== null && plans.fits !== 'yes'
  return operation(job, {
    kind: 'stand-up',
    on: [unit.id],
    stage: 'talls',
    title: told('stand-up', 'title', { unit: name }),
    does: [
      toldFigure('stand-up', 'floor', { height: plan.height, width: plan.width }),
      ...(plans === null
        ? [told('stand-up', 'edge-not-known')]
        : [
            toldFigure('stand-up', `over.${plans.over}`, { blocks: plans.blocks }),
            toldFigure('stand-up', 'room', { needed: plans.needed, ceiling: plans.ceiling }),
          ]),
      ...when(impossible, told('stand-up', plans?.fits === 'no' ? 'does-not-fit' : 'not-known-to-fit')),
      told('stand-up', 'hold'),
    ],
    figures: [
      shown('mass', plan.lift.massStripped, 'mass-stripped', { unit: name }),
      ...(plan.lift.endLift === null ? [] : [shown('end-lift', plan.lift.endLift, 'end-lift')]),
      ...(plans === null
        ? []
        : [
            shown('needed', plans.needed, 'stand-up-needed'),
            shown('ceiling', plans.ceiling, 'stand-up-ceiling'),
          ]),
    ],
    checks: [check(`stand-up.${unit.id}.clear`, 'floor-clear', { unit: name }, plan.height)],
    cautions: [...tippingCautions(), caution('W024', 'under-the-edge')],
    tools: ['blocks', 'blankets', 'barrow'],
    people: peopleFor(job, unit, 2),
    minutes: minutesFor(WORK.tall, SHARE.standUp),
    holdPoint: impossible,
    changes: [{ unit: unit.id, from: 'carried', to: 'held' }],
    path: pathIndex(job, unit.id),
    holding: [unit.id],
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.kind`],
  })
}

function place(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const wall = job.wallName(unit.wall)
  return operation(job, {
    kind: 'place',
    on: [unit.id],
    stage: 'talls',
    title: told('place-tall', 'title', { unit: name }),
    does: [
      told('place-tall', 'walk', { unit: name }),
      toldFigure('place-tall', 'marks', { left: plan.left, right: plan.right, wall }),
      told('place-tall', 'lift-not-drag'),
      told('place-tall', 'hold'),
    ],
    figures: [
      shown('left', plan.left, 'left-side', { unit: name, wall }),
      shown('right', plan.right, 'right-side', { unit: name, wall }),
    ],
    checks: [check(`place.${unit.id}`, 'side-on-mark', { unit: name }, plan.left, TOLERANCE.mark)],
    cautions: tippingCautions(),
    tools: ['packers'],
    people: peopleFor(job, unit, 2),
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
      toldFigure('level-tall', plan.legs.length > 0 ? 'legs' : 'packers', { underside: plan.underside }),
      told('level-tall', 'where-the-level-lies'),
      toldFigure('level-tall', 'top', { top: plan.top }),
      told('level-tall', 'hold'),
    ],
    figures: [
      shown('underside', plan.underside, 'underside', { unit: name }),
      shown('top', plan.top, 'top', { unit: name }),
      ...plan.legs.map((leg) => shown(`leg.${leg.foot}`, leg.extension, 'leg-extension', { foot: leg.foot })),
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
  const holes = job.holesFor(unit.id, 'tall-restraint')
  const wall = job.wall(unit.wall)
  return operation(job, {
    kind: 'restrain',
    on: [unit.id],
    stage: 'talls',
    title: told('restrain', 'title', { unit: name }),
    does: [
      ...holeSentences('restrain', holes),
      told('restrain', 'pack'),
      told('restrain', 'plumb-again'),
      told('restrain', 'let-go', { unit: name }),
    ],
    figures: holeFigures(job, holes),
    checks: [
      check(`restrain.${unit.id}.plumb`, 'still-plumb', { unit: name }, usual(0), TOLERANCE.tallPlumb),
      check(`restrain.${unit.id}.firm`, 'pull-by-hand', { unit: name }),
    ],
    cautions: [...drillingCautions(wall), ...tippingCautions()],
    tools: [...drillFor(wall), 'long-level', 'packers', 'stepladder'],
    people: 2,
    minutes: minutesFor(WORK.tall, SHARE.restrain),
    holdPoint: holes.length === 0 || holes.some((hole) => hole.verdict === 'ask'),
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
