import { hasValue } from '../figure'
import { finishInBays } from '../heights/context'
import type { Appliance } from '../kitchen/schema'
import { applianceLift, type PartLift } from '../lifting/part-lifts'
import type { Message } from '../message'
import type { Operation } from '../plan/types'
import { applianceSaid } from '../units/part-name'
import { drillFor, drillingCautions } from './cautions'
import type { Job } from './job'
import { aloneFigures, crewWords } from './lift'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { bayOf } from './prove'

type Kind = Appliance['kind']
/** Wired to its own circuit, as a rule, and not to a plug. */
const WIRED: readonly Kind[] = ['hob', 'oven', 'boiler', 'hood']
const PLUMBED: readonly Kind[] = ['dishwasher', 'washing-machine', 'sink']
const COLD: readonly Kind[] = ['fridge', 'freezer', 'fridge-freezer']

/** Hung on the wall by holes of its own. */
export const isHungByHoles = ({ kind }: Pick<Appliance, 'kind'>): boolean => kind === 'hood'

/** Who connects it. Gas first: a gas appliance with a plug is still the gas engineer's. */
export function tradeFor(appliance: Pick<Appliance, 'kind' | 'fuel'>): Operation['trade'] {
  if (appliance.fuel === 'gas' || appliance.fuel === 'both') return 'gas-engineer'
  if (PLUMBED.includes(appliance.kind)) return 'plumber'
  return WIRED.includes(appliance.kind) && appliance.fuel !== 'none' ? 'electrician' : null
}

/** How it is lifted or moved in: with its mass, or that it is weighed first. */
function liftSentence(appliance: string, { mass, people, aid }: PartLift): Message {
  const crew = crewWords(people)
  const words =
    aid === 'none' ? crew : aid === 'rolled' ? `rolled.${crew === 'one' ? 'one' : 'together'}` : aid
  return toldFigure('connect', `lift.${words}`, { appliance, mass })
}

/**
 * A hood hangs by holes that nothing here has worked out: where they are is on its own sheet. They are marked from it and
 * judged on the day like any other hole, so work stops here until they have been.
 */
function hoodSentences(appliance: string): readonly Message[] {
  return [told('connect', 'hood-sheet', { appliance }), told('connect', 'hood-trace')]
}

/** A floor finish that is laid into the spaces too is laid before an appliance is walked in over it. */
function floorFirst(job: Job): readonly Message[] {
  const finish = finishInBays(job)
  const comes = finish !== null && (!hasValue(finish) || finish.value > 0)
  return comes ? [toldFigure('connect', 'floor-first', { finish })] : []
}

function connect(job: Job, appliance: Appliance): Operation {
  const trade = tradeFor(appliance)
  const name = applianceSaid(appliance)
  const bay = bayOf(job.kitchen, appliance)
  const lift = applianceLift(appliance, job.context)
  const isHood = isHungByHoles(appliance)
  const wall = bay === undefined || bay.kind === 'island' ? null : bay.wall
  const unsaid = appliance.fuel === null && WIRED.includes(appliance.kind)
  return operation(job, {
    kind: 'connect',
    on: [appliance.id],
    stage: 'connect-and-test',
    title: told('connect', 'title', { appliance: name }),
    does: [
      ...(isHood ? hoodSentences(name) : []),
      ...(bay?.kind === 'appliance-space' ? floorFirst(job) : []),
      liftSentence(name, lift),
      ...when(
        lift.aid === 'rolled' && bay?.kind === 'tall',
        told('connect', 'over-its-floor', { appliance: name, bay: job.name(bay?.id ?? '') }),
      ),
      bay === undefined
        ? told('connect', 'set', { appliance: name })
        : told('connect', 'into', { appliance: name, bay: job.name(bay.id) }),
      ...when(unsaid, told('connect', 'fuel-not-said', { appliance: name })),
      told('connect', `by.${trade ?? 'anyone'}`, { appliance: name }),
      ...when(appliance.kind === 'dishwasher', told('connect', 'fastened', { appliance: name })),
      ...when(COLD.includes(appliance.kind), told('connect', 'vents')),
      told('connect', isHood ? 'test-later' : appliance.kind === 'sink' ? 'test-water' : 'test'),
    ],
    figures: [
      ...(appliance.mass.state === 'unknown' ? [] : [shown('mass', appliance.mass, 'appliance-mass')]),
      ...aloneFigures(lift.alone, name),
      ...(bay === undefined
        ? []
        : [
            shown('bay', bay.width, bay.kind === 'appliance-space' ? 'bay-width' : 'unit-width', {
              bay: job.name(bay.id),
            }),
          ]),
    ],
    checks: [
      ...when(isHood, check(`connect.${appliance.id}.holes`, 'hood-holes', { appliance: name })),
      check(
        `connect.${appliance.id}`,
        isHood ? 'hood-holds' : appliance.kind === 'sink' ? 'no-leak' : 'works',
        {
          appliance: name,
        },
      ),
      ...when(trade === 'gas-engineer', check(`connect.${appliance.id}.gas`, 'gas-certificate')),
    ],
    cautions: [
      ...(isHood ? drillingCautions(wall === null ? undefined : job.wall(wall)) : []),
      ...when(trade === 'gas-engineer', caution('P010', 'gas-fittings'), caution('P003', 'smell-of-gas')),
      ...when(trade === 'electrician', caution('W012', 'circuit-by-electrician')),
      ...when(trade === 'plumber', caution('W011', 'wet-floor')),
      ...when(trade === null, caution('M002', 'appliance-sheet')),
    ],
    tools: [
      ...(isHood
        ? (['tape', 'stepladder', ...drillFor(wall === null ? undefined : job.wall(wall))] as const)
        : []),
      ...when(lift.aid === 'rolled', 'blankets' as const, 'barrow' as const),
      ...when(lift.aid === 'prop', 'prop' as const),
      ...(trade === 'electrician' ? (['proving-unit'] as const) : (['screwdriver', 'level'] as const)),
    ],
    people: lift.people,
    holdPoint: isHood,
    trade,
    minutes: minutesFor(appliance.kind === 'sink' ? WORK.sink : WORK.appliance),
    wall,
    facts: [
      `appliances.${appliance.id}`,
      `appliances.${appliance.id}.kind`,
      `appliances.${appliance.id}.fuel`,
      ...when(bay !== undefined, `units.${bay?.id ?? ''}`),
    ],
  })
}

/** Every appliance set in and connected by whoever may. */
export function connectAppliances(job: Job): readonly Operation[] {
  return job.kitchen.appliances.map((appliance) => connect(job, appliance))
}
