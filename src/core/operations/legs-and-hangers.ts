import { hasValue } from '../figure'
import type { Message, MessageValue } from '../message'
import type { LegPlan, NamedFigure, Operation } from '../plan/types'
import type { FittedUnit, Job } from './job'
import { legName } from './leg-name'
import { legsInTilt } from './lift'
import { check, distinct, operation, shown, told, toldFigure, when } from './make'
import { inTurn, minutesFor, WORK } from './minutes'
import { cutOutsOf } from './service-cut-outs'
import { TOLERANCE } from './tolerances'

/** Whether a tall is stood up with its legs wound in, on blocks: always, unless its maker lets it swing on its legs. */
export function legsWoundIn(unit: FittedUnit): boolean {
  return unit.way === 'tall' && unit.unit.legs.maySwing !== true
}

/** Sentences at one step at most. */
const MOST_SAID = 5

const outOfReach = (leg: LegPlan) => leg.within === 'too-short' || leg.within === 'too-long'

/** Four legs, one at each corner, can be told in one sentence. */
const CORNERS = ['back left', 'back right', 'front left', 'front right'] as const
const SHORT: Readonly<Record<string, string>> = {
  'back left': 'backLeft',
  'back right': 'backRight',
  'front left': 'frontLeft',
  'front right': 'frontRight',
}

/** How far each leg winds out; more or other legs than one at each corner are told by their figures. */
function windTo(unit: FittedUnit, isLater: boolean): Message {
  const part = isLater ? 'later' : 'wind'
  const { legs } = unit.plan
  const names = legs.map((leg) => legName(unit, leg))
  if (names.length !== CORNERS.length || !CORNERS.every((corner) => names.includes(corner))) {
    return told('set-legs', `${part}.each`)
  }
  const values = legs.map((leg, i): [string, MessageValue] => [SHORT[names[i] ?? ''] ?? '', leg.extension])
  return toldFigure('set-legs', `${part}.corners`, Object.fromEntries(values))
}

/** Nearest quarter of a turn: less than half of one is not worth a turn. */
const LEAST_TURN = 1 / 8

/** Turns from how a leg came, and which way: out makes the leg longer and lifts the unit. */
function turnFigure(unit: FittedUnit, leg: LegPlan): readonly NamedFigure[] {
  const { turns, foot } = leg
  if (!hasValue(turns)) return []
  const way = Math.abs(turns.value) < LEAST_TURN ? 'as-it-came' : turns.value > 0 ? 'out' : 'in'
  return [shown(`turns.${foot}`, turns, `leg-turns.${way}`, { foot: legName(unit, leg) })]
}

function setLegs(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const woundIn = legsWoundIn(unit)
  const missed = plan.legs.filter(outOfReach)
  const cutOuts = unit.way === 'tall' ? cutOutsOf(job, unit) : null
  const ends = distinct(plan.legs.map((leg) => leg.extension))
  return operation(job, {
    kind: 'set-legs',
    on: [unit.id],
    stage: 'assemble',
    title: told('set-legs', 'title', { unit: name }),
    does: [
      told('set-legs', unit.way === 'tall' ? 'fit-lying' : 'fit', { count: plan.legs.length, unit: name }),
      told('set-legs', unit.way === 'tall' ? 'label-lying' : 'label'),
      ...when(
        woundIn,
        legsInTilt(unit) === 'off'
          ? told('set-legs', 'without', { unit: name })
          : told('set-legs', 'wind-in'),
      ),
      ...(missed.length === 0 || !woundIn ? [windTo(unit, woundIn)] : []),
      ...missed.slice(0, 1).map((leg) => told('set-legs', 'out-of-reach', { foot: legName(unit, leg) })),
      ...(cutOuts?.does ?? []),
      ...when(!woundIn, told('set-legs', 'out-lifts')),
    ].slice(0, MOST_SAID + (cutOuts?.does.length ?? 0)),
    figures: [
      // A tall is stood up on legs wound right in: how far they come out is read where it is plumbed.
      ...(woundIn ? [] : plan.legs).flatMap((leg) => [
        shown(`leg.${leg.foot}`, leg.extension, 'leg-extension', { foot: legName(unit, leg) }),
        ...turnFigure(unit, leg),
      ]),
      ...(cutOuts?.figures ?? []),
    ],
    checks: [
      ...plan.legs.map((leg) =>
        check(
          `set-legs.${unit.id}.${leg.foot}`,
          woundIn ? 'leg-wound-in' : 'leg-set',
          { foot: legName(unit, leg) },
          woundIn ? leg.min : leg.extension,
          TOLERANCE.legLength,
        ),
      ),
      ...(cutOuts?.checks ?? []),
    ],
    tools: [
      'blankets',
      'screwdriver',
      'tape',
      'pencil',
      ...when((cutOuts?.count ?? 0) > 0, 'hole-saw' as const),
    ],
    minutes:
      (cutOuts?.count ?? 0) > 0
        ? inTurn(minutesFor(WORK.serviceCutOuts), minutesFor(WORK.legsOrHangers, ends.length > 2 ? 1.2 : 1))
        : minutesFor(WORK.legsOrHangers, ends.length > 2 ? 1.2 : 1),
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
