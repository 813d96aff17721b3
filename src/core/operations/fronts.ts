import type { Operation } from '../plan/types'
import type { FittedUnit, Job } from './job'
import { caution, check, operation, told, when } from './make'
import { minutesFor, WORK } from './minutes'
import { hasNoFixing, noFixingFacts, notHeldAtFronts } from './not-held'
import { TOLERANCE, usual } from './tolerances'

const DOOR_GAP = 3

/** Drawers are fitted, doors are hung: what is done is called by what the unit has. */
function titleOf(doors: number, drawers: number): string {
  if (drawers === 0) return 'title'
  return doors === 0 ? 'title.drawers' : 'title.both'
}

function hangFronts(job: Job, unit: FittedUnit): Operation {
  const doors = unit.unit.doors.length
  const drawers = unit.unit.drawers.length
  const flap = unit.unit.doors.some((door) => door.hinge === 'top' || door.hinge === 'bottom')
  return operation(job, {
    kind: 'hang-fronts',
    on: [unit.id],
    stage: 'fronts-and-plinths',
    title: told('hang-fronts', titleOf(doors, drawers), { unit: unit.name }),
    does: [
      ...when(doors > 0, told('hang-fronts', 'doors', { count: doors })),
      ...when(
        drawers > 0,
        told('hang-fronts', 'drawers', { count: drawers }),
        told('hang-fronts', 'runners'),
      ),
      told('hang-fronts', 'gaps', { gap: usual(DOOR_GAP) }),
      told('hang-fronts', 'handles'),
      ...when(flap, told('hang-fronts', 'flap')),
    ],
    checks: [
      check(
        `hang-fronts.${unit.id}.gap`,
        'door-gap',
        { unit: unit.name },
        usual(DOOR_GAP),
        TOLERANCE.doorGap,
      ),
      check(`hang-fronts.${unit.id}.handles`, 'handle-line', { unit: unit.name }, usual(0), TOLERANCE.flush),
      ...when(drawers > 0, check(`hang-fronts.${unit.id}.drawers`, 'drawers-run', { unit: unit.name })),
    ],
    cautions: [
      ...notHeldAtFronts(job, unit),
      caution('M004', 'eyes'),
      ...when(flap, caution('W024', 'flap-springs')),
    ],
    tools: ['screwdriver', 'handle-jig', 'drill-driver'],
    minutes: minutesFor(WORK.front, doors + drawers),
    wall: unit.way === 'island' ? null : unit.wall,
    facts: [
      `units.${unit.id}`,
      ...unit.unit.doors.map((d) => `units.${unit.id}.doors.${d.id}`),
      ...unit.unit.drawers.map((d) => `units.${unit.id}.drawers.${d.id}`),
      ...(hasNoFixing(job, unit) ? noFixingFacts(job, unit) : []),
    ],
  })
}

/** Doors and drawer fronts, for every unit that has any. */
export function hangAllFronts(job: Job): readonly Operation[] {
  return job.units
    .filter(({ unit }) => unit.doors.length + unit.drawers.length > 0)
    .map((unit) => hangFronts(job, unit))
}
