import { hasValue } from '../figure'
import { woundDownToHookOn } from '../heights/hooking-on'
import type { Message } from '../message'
import type { Hole, Operation, StandingState } from '../plan/types'
import { drillFor, drillingCautions, overheadCautions, stepsCautions } from './cautions'
import type { FittedUnit, Job } from './job'
import { lastGap } from './last-gap'
import { leftSlack } from './left-slack'
import {
  aloneFigures,
  holdingOpen,
  holesToSettle,
  liftTools,
  liftWords,
  peopleFor,
  peopleHolding,
  stripFirst,
} from './lift'
import { check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { pathIndex } from './path-of'
import { hiddenMarks, holeFigures, holeSentences } from './say-holes'
import { plugChecks, plugSentences, screwSentences } from './say-screws'
import { TOLERANCE, usual } from './tolerances'

/** How the time for hanging one unit divides. */
const SHARE = { hang: 0.5, level: 0.35, lock: 0.15 }

/** Second fixings into timber that a unit on a stud wall gets at least: common practice. */
const LEAST_SCREWS = 2

/** The last fixing of a hung unit: what it is called, and its holes. Null: the lock is the last. */
export function lastFixing(job: Job, unit: FittedUnit): { kind: string; holes: readonly Hole[] } | null {
  const holes = job.holesFor(unit.id, 'second-fixing', 'back-rail')
  if (unit.wantsSecondFixing) return { kind: 'second-fix', holes }
  return holes.length > 0 ? { kind: 'screw-back', holes } : null
}

/** Whether hooks carry it while it is levelled. A unit screwed through its back rail is held until the screws are in. */
const hooks = (unit: FittedUnit) => unit.hangs !== 'back-rail-screws'

function hookOnWords(unit: FittedUnit): readonly Message[] {
  const { hookOn } = unit.plan
  if (hookOn === null) return []
  const { needed, there, fits } = hookOn
  if (fits === 'no') return [told('hang', 'no-room', { needed, there })]
  const down = woundDownToHookOn(unit.unit, hookOn)
  return down === null
    ? [toldFigure('hang', 'room', { needed, there })]
    : [told('hang', 'wind-down', { needed, there, down }), told('hang', 'wind-up')]
}

/** How it comes onto what it hangs by. */
function bringOn(unit: FittedUnit): Message {
  if (unit.hangs === 'not-said') return told('hang', 'not-said', { unit: unit.name })
  // Wound down it is lifted over a lower place than that it ends in, which no mark shows.
  if (woundDownToHookOn(unit.unit, unit.plan.hookOn) !== null) return told('hang', 'hook.unknown')
  return hooks(unit)
    ? toldFigure('hang', 'hook', { lift: unit.unit.hanging.hookLift })
    : toldFigure('hang', 'offer', { underside: unit.plan.underside })
}

/** What is still open of the screws that hold it at last: it is not hung before, for nobody holds it for long. */
function lastScrewsOpen(job: Job, unit: FittedUnit): 'none' | 'ask' | null {
  const last = lastFixing(job, unit)
  return last === null ? null : holdingOpen(last.holes, last.kind === 'second-fix' ? LEAST_SCREWS : 1)
}

/** Why it may not be hung yet: nothing to screw it home by. */
function notYet(job: Job, unit: FittedUnit): readonly Message[] {
  const open = lastScrewsOpen(job, unit)
  if (open === null) return []
  const holes = holesToSettle(lastFixing(job, unit)?.holes ?? [])
  return [
    open === 'none' ? told('hang', 'no-fixing') : told('hang', 'fixing-open', { holes }),
    told('lift', 'only-then'),
  ]
}

/** Whether arms lift it: not a lifter, and not before a way has been found. */
function byHand(unit: FittedUnit): boolean {
  const words = liftWords(unit)
  return words !== 'lifter' && words !== 'too-heavy'
}

function hang(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const open = lastScrewsOpen(job, unit)
  const gap = lastGap(job, unit)
  return operation(job, {
    kind: 'hang',
    on: [unit.id],
    stage: 'wall-units',
    title: told('hang', 'title', { unit: name }),
    does: [
      ...notYet(job, unit),
      ...stripFirst(unit),
      ...hiddenMarks(job, unit),
      ...hookOnWords(unit),
      ...gap.does,
      toldFigure('hang', `lift.${liftWords(unit)}`, { unit: name, mass: plan.lift.massStripped }),
      ...when(byHand(unit), told('hang', 'together')),
      bringOn(unit),
      ...when(unit.hangs !== 'not-said' && hooks(unit), told('hang', 'tug')),
      told('hang', hooks(unit) ? 'hooked-is-not-secured' : 'held-until-screwed'),
    ],
    figures: [
      shown('mass', plan.lift.massStripped, 'mass-stripped', { unit: name }),
      ...aloneFigures(plan.lift.alone, name),
      shown('underside', plan.underside, 'underside', { unit: name }),
      ...(plan.hookOn === null ? [] : [shown('hook-on-room', plan.hookOn.there, 'hook-on-room')]),
      shown('left', plan.left, 'left-side', { unit: name, wall: job.wallName(unit.wall) }),
      ...gap.figures,
    ],
    checks: [...gap.checks, ...when(hooks(unit), check(`hang.${unit.id}`, 'both-hooks-in', { unit: name }))],
    cautions: [...overheadCautions(), ...stepsCautions()],
    tools: ['stepladder', ...liftTools(unit)],
    people: peopleFor(job, unit, 1),
    minutes: minutesFor(WORK.hang, SHARE.hang),
    holdPoint:
      open !== null ||
      plan.hookOn?.fits === 'no' ||
      liftWords(unit) === 'too-heavy' ||
      unit.hangs === 'not-said',
    changes: [{ unit: unit.id, from: 'carried', to: hooks(unit) ? 'hooked' : 'held' }],
    path: pathIndex(job, unit.id),
    holding: [unit.id],
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.stands`, `units.${unit.id}.assembled`],
  })
}

function level(job: Job, unit: FittedUnit): Operation {
  const { plan, name } = unit
  const screw = unit.unit.hanging.heightScrew
  return operation(job, {
    kind: 'level',
    on: [unit.id],
    stage: 'wall-units',
    title: told('level-hung', 'title', { unit: name }),
    does: [
      toldFigure('level-hung', 'underside', { underside: plan.underside }),
      hooks(unit)
        ? toldFigure('level-hung', `height-screw.${screw.place ?? 'not-said'}`, { perTurn: screw.perTurn })
        : told('level-hung', 'shim'),
      told('level-hung', 'where-the-level-lies'),
      told('level-hung', 'bear'),
      told(
        'level-hung',
        hooks(unit) ? (peopleHolding(unit) > 1 ? 'hold.two' : 'hold') : 'hold-until-screwed',
      ),
    ],
    figures: [
      shown('underside', plan.underside, 'underside', { unit: name }),
      shown('left', plan.left, 'left-side', { unit: name, wall: job.wallName(unit.wall) }),
    ],
    checks: [
      check(
        `level.${unit.id}.underside`,
        'underside-to-line',
        { unit: name },
        plan.underside,
        TOLERANCE.undersideLine,
      ),
      check(`level.${unit.id}.plumb`, 'wall-unit-plumb', { unit: name }, usual(0), TOLERANCE.wallUnitPlumb),
      check(`level.${unit.id}.side`, 'side-on-mark', { unit: name }, plan.left, TOLERANCE.mark),
    ],
    cautions: overheadCautions(),
    tools: ['screwdriver', 'level', 'packers', 'stepladder'],
    people: peopleHolding(unit),
    minutes: minutesFor(WORK.hang, SHARE.level),
    changes: [{ unit: unit.id, from: hooks(unit) ? 'hooked' : 'held', to: 'levelled' }],
    holding: [unit.id],
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.stands`, `units.${unit.id}.hanging.heightScrew.place`],
  })
}

function lock(job: Job, unit: FittedUnit): Operation {
  const last = lastFixing(job, unit) === null
  const { antiLift, ratedPerHanger } = unit.unit.hanging
  return operation(job, {
    kind: 'lock',
    on: [unit.id],
    stage: 'wall-units',
    title: told('lock', 'title', { unit: unit.name }),
    does: [
      told('lock', 'draw-in'),
      told(
        'lock',
        antiLift === true ? 'anti-lift' : antiLift === false ? 'no-anti-lift' : 'anti-lift-not-said',
      ),
      told('lock', last ? 'let-go' : peopleHolding(unit) > 1 ? 'hold.two' : 'hold', { unit: unit.name }),
    ],
    figures: ratedPerHanger.state === 'unknown' ? [] : [shown('rated', ratedPerHanger, 'rated-per-hanger')],
    checks: [
      check(`lock.${unit.id}`, antiLift === false ? 'drawn-in-tight' : 'does-not-lift-off', {
        unit: unit.name,
      }),
    ],
    cautions: overheadCautions(),
    tools: ['screwdriver', 'level', 'stepladder'],
    people: peopleHolding(unit),
    minutes: minutesFor(WORK.hang, SHARE.lock),
    changes: [{ unit: unit.id, from: 'levelled', to: last ? 'secured' : 'locked' }],
    holding: [unit.id],
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.stands`, `units.${unit.id}.hanging.antiLift`],
  })
}

function screwHome(job: Job, unit: FittedUnit): readonly Operation[] {
  const last = lastFixing(job, unit)
  if (last === null) return []
  const { kind, holes } = last
  const wall = job.wall(unit.wall)
  const from: StandingState = hooks(unit) ? 'locked' : 'levelled'
  const packing = unit.unit.void
  // A back that lies at the wall has nothing behind it to pack.
  const isPacked = !hasValue(packing) || packing.value > 0
  const slack = leftSlack(job, unit)
  return [
    operation(job, {
      kind,
      on: [unit.id],
      stage: 'wall-units',
      title: told(kind, 'title', { unit: unit.name }),
      does: [
        ...when(wall?.construction === null, told('second-fix', 'wall-not-known')),
        ...when(
          holes.length > 0 && peopleHolding(unit) > 1,
          told('second-fix', 'one-holds', { unit: unit.name }),
        ),
        ...when(holes.length > 0 && isPacked, toldFigure('second-fix', 'packing', { packing })),
        ...holeSentences(job, 'second-fix', holes, unit),
        ...plugSentences(job, wall, holes),
        ...screwSentences(job, holes),
        ...when(
          holes.length > 0,
          told(
            'second-fix',
            kind === 'screw-back' ? 'into-wall' : holes.length === 1 ? 'one-only' : 'two-at-least',
          ),
          ...when(slack, told('second-fix', 'slack', { unit: unit.name })),
          told('second-fix', slack ? 'let-go-slack' : 'let-go', { unit: unit.name }),
        ),
        told('second-fix', 'take-down-again'),
      ],
      figures: [...holeFigures(job, holes, unit), ...when(isPacked, shown('packing', packing, 'packing'))],
      checks: [
        check(`${kind}.${unit.id}.firm`, slack ? 'stays-on' : 'pull-by-hand', { unit: unit.name }),
        check(
          `${kind}.${unit.id}.level`,
          'still-level',
          { unit: unit.name },
          usual(0),
          TOLERANCE.undersideLine,
        ),
        ...plugChecks(job, wall, holes, `${kind}.${unit.id}`),
      ],
      cautions: [...drillingCautions(wall), ...overheadCautions()],
      tools: [...drillFor(wall), 'packers', 'stepladder'],
      people: peopleHolding(unit),
      minutes: minutesFor(WORK.fixToWall),
      holdPoint: lastScrewsOpen(job, unit) !== null,
      changes: [{ unit: unit.id, from, to: 'secured' }],
      holding: [unit.id],
      holes: holes.map((hole) => hole.id),
      wall: unit.wall,
      facts: [`units.${unit.id}`, `walls.${unit.wall}.construction`, `units.${unit.id}.stands`],
    }),
  ]
}

/**
 * A hung unit is hooked on, levelled, locked and screwed to the wall in one go: hooked is not secured. The last quarter
 * turn waits until it is joined to its neighbours.
 */
export function hangUnits(job: Job): readonly Operation[] {
  return job.units
    .filter((unit) => unit.way === 'hung')
    .flatMap((unit) => [
      hang(job, unit),
      level(job, unit),
      ...when(hooks(unit), lock(job, unit)),
      ...screwHome(job, unit),
    ])
}
