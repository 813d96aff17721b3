import type { LegPlan, Operation } from '../plan/types'
import type { FittedUnit, Job } from './job'
import { check, distinct, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { TOLERANCE } from './tolerances'

/** Whether a tall is stood up with its legs wound in, on blocks: always, unless its maker lets it swing on its legs. */
export function legsWoundIn(unit: FittedUnit): boolean {
  return unit.way === 'tall' && unit.unit.legs.maySwing !== true
}

const outOfReach = (leg: LegPlan) => leg.within === 'too-short' || leg.within === 'too-long'

function setLegs(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const woundIn = legsWoundIn(unit)
  const missed = plan.legs.filter(outOfReach)
  const ends = distinct(plan.legs.map((leg) => leg.extension))
  return operation(job, {
    kind: 'set-legs',
    on: [unit.id],
    stage: 'assemble',
    title: told('set-legs', 'title', { unit: name }),
    does: [
      told('set-legs', 'fit', { count: plan.legs.length }),
      ...when(woundIn, told('set-legs', 'wind-in')),
      ...plan.legs
        .slice(0, woundIn ? 1 : 4)
        .map((leg) =>
          toldFigure('set-legs', woundIn ? 'later' : 'wind', { foot: leg.foot, extension: leg.extension }),
        ),
      ...missed.slice(0, 1).map((leg) => told('set-legs', 'out-of-reach', { foot: leg.foot })),
    ],
    figures: plan.legs.flatMap((leg) => [
      shown(`leg.${leg.foot}`, leg.extension, 'leg-extension', { foot: leg.foot }),
      ...(leg.turns.state === 'unknown'
        ? []
        : [shown(`turns.${leg.foot}`, leg.turns, 'leg-turns', { foot: leg.foot })]),
    ]),
    checks: plan.legs.map((leg) =>
      check(
        `set-legs.${unit.id}.${leg.foot}`,
        woundIn ? 'leg-wound-in' : 'leg-set',
        { foot: leg.foot },
        woundIn ? leg.min : leg.extension,
        TOLERANCE.legLength,
      ),
    ),
    tools: ['screwdriver', 'tape'],
    minutes: minutesFor(WORK.legsOrHangers, ends.length > 2 ? 1.2 : 1),
    facts: [
      `units.${unit.id}`,
      `units.${unit.id}.stands`,
      ...plan.legs.map((leg) => `units.${unit.id}.feet.${leg.foot}`),
      ...when(unit.way === 'tall', `units.${unit.id}.legs.maySwing`),
    ],
  })
}

/** Legs on and wound to their figures, for every unit that stands on legs. */
export function setAllLegs(job: Job): readonly Operation[] {
  return job.units.filter((u) => u.way !== 'hung' && u.plan.legs.length > 0).map((u) => setLegs(job, u))
}

function fitHangers(job: Job, unit: FittedUnit): Operation {
  const { hangerIn, plateBelowTop } = unit.unit.hanging
  return operation(job, {
    kind: 'fit-hangers',
    on: [unit.id],
    stage: 'assemble',
    title: told('fit-hangers', 'title', { unit: unit.name }),
    does: [
      toldFigure('fit-hangers', 'corners', { hangerIn }),
      told('fit-hangers', 'mid-travel'),
      told('fit-hangers', `height-screw.${unit.unit.hanging.heightScrew.place ?? 'not-said'}`),
    ],
    figures: [
      shown('hanger-in', hangerIn, 'hanger-in', { unit: unit.name }),
      shown('plate-below-top', plateBelowTop, 'plate-below-top', { unit: unit.name }),
    ],
    checks: [check(`fit-hangers.${unit.id}`, 'hangers-alike', { unit: unit.name })],
    tools: ['screwdriver'],
    minutes: minutesFor(WORK.legsOrHangers),
    facts: [`units.${unit.id}`, `units.${unit.id}.stands`, `units.${unit.id}.hanging.heightScrew.place`],
  })
}

/** A hanger in each top corner, for every unit that hangs on plates or a rail. */
export function fitAllHangers(job: Job): readonly Operation[] {
  return job.units
    .filter((u) => u.hangs === 'plates' || u.hangs === 'rail')
    .map((unit) => fitHangers(job, unit))
}
