import { valueOf } from '../figure'
import type { NamedFigure, Operation, RailPlan } from '../plan/types'
import { listed } from '../words/listed'
import { drillFor, drillingCautions, stepsCautions } from './cautions'
import type { FittedUnit, Job } from './job'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { holeFigures, holeSentences } from './say-holes'
import { plugChecks, plugSentences, screwSentences } from './say-screws'
import { TOLERANCE, usual } from './tolerances'

/** How the time for a pair of plates, or a rail, divides. */
const SHARE = { drill: 0.6, fix: 0.4 }
const MM_PER_METRE = 1000
const SHORTEST_RAIL = 0.5

/** Where the unit will hang, whose plates these are. */
const leftSide = (job: Job, unit: FittedUnit): NamedFigure =>
  shown('left', unit.plan.left, 'left-side', { unit: unit.name, wall: job.wallName(unit.wall) })

function drillPlates(job: Job, unit: FittedUnit): Operation {
  const holes = job.holesFor(unit.id, 'plate', 'cleat')
  const wall = job.wall(unit.wall)
  return operation(job, {
    kind: 'drill-plates',
    on: [unit.id],
    stage: 'wall-units',
    title: told('drill-plates', unit.hangs === 'cleat' ? 'title.cleat' : 'title', { unit: unit.name }),
    does: [
      ...holeSentences(job, 'drill-plates', holes),
      ...when(unit.hangs === 'plates' && holes.length > 0, told('drill-plates', 'two-plates')),
      ...when(holes.length > 0, told('drill', 'no-deeper')),
    ],
    figures: [...holeFigures(job, holes), leftSide(job, unit)],
    checks: [
      check(`drill-plates.${unit.id}`, 'holes-on-marks', { unit: unit.name }, usual(0), TOLERANCE.holePlace),
    ],
    cautions: [...drillingCautions(wall), ...stepsCautions()],
    tools: [...drillFor(wall), 'tape', 'stepladder'],
    minutes: minutesFor(WORK.plates, SHARE.drill),
    holdPoint: holes.length === 0 || holes.some((h) => h.verdict === 'ask'),
    holes: holes.map((hole) => hole.id),
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.stands`],
  })
}

function fixPlates(job: Job, unit: FittedUnit): Operation {
  const { plateBelowTop } = unit.unit.hanging
  const holes = job.holesFor(unit.id, 'plate', 'cleat')
  const wall = job.wall(unit.wall)
  return operation(job, {
    kind: 'fix-plates',
    on: [unit.id],
    stage: 'wall-units',
    title: told('fix-plates', unit.hangs === 'cleat' ? 'title.cleat' : 'title', { unit: unit.name }),
    does: [
      ...plugSentences(job, wall, holes),
      ...screwSentences(job, holes),
      told('fix-plates', unit.hangs === 'cleat' ? 'screw.cleat' : 'screw'),
      toldFigure('fix-plates', 'edge', { below: plateBelowTop, top: unit.plan.top }),
      told('fix-plates', unit.hangs === 'cleat' ? 'where-the-level-lies.cleat' : 'where-the-level-lies'),
    ],
    figures: [
      shown('top', unit.plan.top, 'top', { unit: unit.name }),
      shown('plate-below-top', plateBelowTop, 'plate-below-top', { unit: unit.name }),
      leftSide(job, unit),
    ],
    checks: [
      check(
        `fix-plates.${unit.id}.level`,
        'plates-level',
        { unit: unit.name },
        usual(0),
        TOLERANCE.undersideLine,
      ),
      check(`fix-plates.${unit.id}.firm`, 'plates-firm', { unit: unit.name }),
      ...plugChecks(job, wall, holes, `fix-plates.${unit.id}`),
    ],
    cautions: stepsCautions(),
    tools: ['screwdriver', 'level', 'stepladder'],
    minutes: minutesFor(WORK.plates, SHARE.fix),
    wall: unit.wall,
    facts: [`units.${unit.id}`, `units.${unit.id}.stands`],
  })
}

/** Plates or a cleat on the wall, for every unit that hangs on its own. */
export function fitPlates(job: Job): readonly Operation[] {
  return job.units
    .filter((unit) => unit.hangs === 'plates' || unit.hangs === 'cleat')
    .flatMap((unit) => [drillPlates(job, unit), fixPlates(job, unit)])
}

function metres(rail: RailPlan): number {
  if (rail.from.state === 'unknown' || rail.to.state === 'unknown') return 1
  return Math.max(SHORTEST_RAIL, (rail.to.value - rail.from.value) / MM_PER_METRE)
}

function railFacts(rail: RailPlan): readonly string[] {
  return [`rails.${rail.rail}`, `rails.${rail.rail}.units`]
}

/** Which rail it is: the one of its wall, or where a wall has several, the one from its first unit to its last. */
function whichRail(job: Job, rail: RailPlan): { key: string; values: Readonly<Record<string, string>> } {
  const wall = job.wallName(rail.wall)
  const isOnly = job.context.rails.filter((other) => other.wall === rail.wall).length < 2
  const left = (id: string) => {
    const unit = job.unit(id)
    return unit === undefined ? 0 : (valueOf(unit.plan.left) ?? 0)
  }
  const units = [...rail.units].sort((a, b) => left(a) - left(b) || (a < b ? -1 : 1))
  const [first, last] = [units[0], units.at(-1)]
  if (isOnly || first === undefined || last === undefined) return { key: 'title', values: { wall } }
  const names = { first: job.name(first), last: job.name(last) }
  return { key: first === last ? 'title.of-one' : 'title.of-several', values: names }
}

function drillRail(job: Job, rail: RailPlan): Operation {
  const which = whichRail(job, rail)
  const holes = job.holesFor(rail.rail, 'rail')
  const wall = job.wall(rail.wall)
  return operation(job, {
    kind: 'drill-rail',
    on: [rail.rail],
    stage: 'wall-units',
    title: told('drill-rail', which.key, which.values),
    does: [...holeSentences(job, 'drill-rail', holes), ...when(holes.length > 0, told('drill', 'no-deeper'))],
    figures: holeFigures(job, holes),
    checks: [check(`drill-rail.${rail.rail}`, 'rail-holes-on-marks', {}, usual(0), TOLERANCE.holePlace)],
    cautions: [...drillingCautions(wall), ...stepsCautions()],
    tools: [...drillFor(wall), 'tape', 'stepladder'],
    minutes: minutesFor(WORK.rail, SHARE.drill * metres(rail)),
    holdPoint: holes.length === 0 || holes.some((h) => h.verdict === 'ask'),
    holes: holes.map((hole) => hole.id),
    rails: [rail.rail],
    wall: rail.wall,
    facts: railFacts(rail),
  })
}

function fixRail(job: Job, rail: RailPlan): Operation {
  const wall = job.wallName(rail.wall)
  const which = whichRail(job, rail)
  const holes = job.holesFor(rail.rail, 'rail')
  return operation(job, {
    kind: 'fix-rail',
    on: [rail.rail],
    stage: 'wall-units',
    title: told('fix-rail', which.key, which.values),
    does: [
      toldFigure('fix-rail', 'ends', { from: rail.from, to: rail.to, wall }),
      toldFigure('fix-rail', 'edge', { edge: rail.edge }),
      ...plugSentences(job, job.wall(rail.wall), holes),
      ...screwSentences(job, holes),
      told('fix-rail', 'one-end'),
      told('fix-rail', 'carries', { units: listed(rail.units.map((id) => job.name(id))) }),
    ],
    figures: [
      shown('edge', rail.edge, 'rail-edge'),
      shown('from', rail.from, 'rail-from', { wall }),
      shown('to', rail.to, 'rail-to', { wall }),
    ],
    checks: [
      check(`fix-rail.${rail.rail}.level`, 'rail-level', {}, usual(0), TOLERANCE.undersideLine),
      check(`fix-rail.${rail.rail}.edge`, 'rail-edge-to-line', {}, rail.edge, TOLERANCE.mark),
      ...plugChecks(job, job.wall(rail.wall), holes, `fix-rail.${rail.rail}`),
    ],
    cautions: [...stepsCautions(), caution('W022', 'blades'), caution('M004', 'eyes')],
    tools: ['metal-saw', 'screwdriver', 'laser', 'level', 'stepladder'],
    minutes: minutesFor(WORK.rail, SHARE.fix * metres(rail)),
    rails: [rail.rail],
    wall: rail.wall,
    facts: railFacts(rail),
  })
}

export function fitRails(job: Job): readonly Operation[] {
  const rails = [...job.context.rails].sort((a, b) => (a.rail < b.rail ? -1 : 1))
  return rails.flatMap((rail) => [drillRail(job, rail), fixRail(job, rail)])
}
