import type { Plan } from '../core/plan/types'
import { buildCase, type Case } from './case'
import { factBook } from './facts'
import { buildLevels, floorReadings, trianglesById } from './levels'
import { checkAdjusters } from './obligations/adjusters'
import { checkBands } from './obligations/bands'
import { checkChanges } from './obligations/changes'
import { checkFigures } from './obligations/figures'
import { checkHeights } from './obligations/heights'
import { checkHeld } from './obligations/held'
import { checkHoldPoints } from './obligations/hold-points'
import { checkHoles } from './obligations/holes'
import { checkLegs } from './obligations/legs'
import { checkLines } from './obligations/lines'
import { checkOperations } from './obligations/operations'
import { checkOrder } from './obligations/order'
import { checkPaths } from './obligations/paths'
import { checkPublishedPull } from './obligations/published-pull'
import { checkRails } from './obligations/rails'
import { checkReach } from './obligations/reach'
import { checkShims } from './obligations/shims'
import { checkStanding } from './obligations/standing'
import { checkSurvey } from './obligations/survey'
import { checkUnits } from './obligations/units'
import { checkVerdicts } from './obligations/verdicts'
import { PLAN_SHAPE } from './plan-shape'
import { readKitchen } from './read-kitchen'
import { readLog } from './read-log'
import { type CheckReport, type Refuse, refusalList } from './report'
import { buildRoom } from './room'
import { triangulationFault } from './surface'

const OBLIGATIONS: readonly ((c: Case) => void)[] = [
  checkSurvey,
  checkUnits,
  checkHeights,
  checkLegs,
  checkShims,
  checkAdjusters,
  checkLines,
  checkRails,
  checkBands,
  checkHoles,
  checkOperations,
  checkChanges,
  checkHeld,
  checkStanding,
  checkReach,
  checkPaths,
  checkOrder,
  checkVerdicts,
  checkPublishedPull,
  checkHoldPoints,
  checkFigures,
]

/**
 * Judges a plan against its kitchen file, by other means than it was made: the room is rebuilt from the file, every way
 * in is gone over again, and what has to come before what is worked out anew. A plan is accepted when nothing is refused.
 */
export function checkPlan(kitchenJson: unknown, plan: unknown, dayLog?: unknown): CheckReport {
  const { refuse, report } = refusalList()
  const fault = PLAN_SHAPE(plan)
  if (fault !== null) {
    refuse('shape', 'plan', `plan${fault}`)
    return report()
  }
  // The shape has just been proved field by field.
  const c = caseFor(kitchenJson, plan as Plan, dayLog, refuse)
  for (const check of OBLIGATIONS) check(c)
  return report()
}

function caseFor(kitchenJson: unknown, plan: Plan, dayLog: unknown, refuse: Refuse): Case {
  const achieved = readLog(dayLog)
  const given = readKitchen(kitchenJson, achieved.observed)
  const room = buildRoom(given)
  const facts = factBook(kitchenJson, achieved.observed, achieved.entries)
  const readings = floorReadings(given, room)
  const ids = plan.floor.triangles.map((t) => t.readings)
  const triangles = trianglesById(readings, ids) ?? []
  // Triangles that are no Delaunay triangulation are refused; then the checker goes on with its own.
  const fault = triangulationFault(readings, triangles)
  const sound = triangles.length === ids.length && fault === null
  const levels = buildLevels(given, room, sound ? ids : null)
  return buildCase(given, room, levels, achieved, facts, plan, fault, refuse)
}
