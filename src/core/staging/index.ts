import type { Plan } from '../plan/types'
import { remembered } from '../remember'
import { hookedOn, liftedIn, stoodUp } from './kinds/carrying'
import {
  asbestosAsked,
  called,
  deliveryChecked,
  proved,
  provedDead,
  restored,
  snagged,
} from './kinds/checking'
import {
  assembled,
  connected,
  finished,
  frontsHung,
  joined,
  panelFitted,
  plinthClipped,
  worktopLaid,
} from './kinds/fitting'
import {
  bracketed,
  drilling,
  marked,
  noggingFixed,
  packedAndScrewed,
  platesFixed,
  railFixed,
  restrained,
  throughUnit,
} from './kinds/holes'
import { hangersFitted, legsSet, levelled, locked } from './kinds/levelling'
import { floorRead, heightsSetOut, lineStruck, studsFound, wallTraced, widthsSetOut } from './kinds/marking'
import { type Stages, stageOf } from './stage'
import type { Staging } from './staging'

/** Each kind of operation, and how it is shown being done. */
export const STAGINGS: Readonly<Record<string, Stages>> = {
  'check-delivery': deliveryChecked,
  'asbestos-check': asbestosAsked,
  'call-trade': called,
  isolate: provedDead,
  'restore-supply': restored,
  trace: wallTraced,
  strike: lineStruck,
  'read-floor': floorRead,
  'set-out-heights': heightsSetOut,
  'set-out-widths': widthsSetOut,
  'find-studs': studsFound,
  'mark-holes': marked,
  'fit-nogging': noggingFixed,
  assemble: assembled,
  'set-legs': legsSet,
  'fit-hangers': hangersFitted,
  'drill-plates': drilling,
  'drill-rail': drilling,
  'fix-plates': platesFixed,
  'fix-rail': railFixed,
  hang: hookedOn,
  level: levelled,
  lock: locked,
  'second-fix': packedAndScrewed,
  'screw-back': throughUnit,
  'stand-up': stoodUp,
  place: liftedIn,
  restrain: restrained,
  join: joined,
  fix: bracketed,
  panel: panelFitted,
  prove: proved,
  worktop: worktopLaid,
  connect: connected,
  'hang-fronts': frontsHung,
  plinth: plinthClipped,
  finish: finished,
  snag: snagged,
}

/** What was worked out of a plan, by the places asked for: the picture and whoever runs through it ask for the same. */
const askedOf = remembered((_plan: Plan) => new Map<number, Staging | null>())

/** How the operation at a place of the plan is shown being done. Past the last there is none. */
export function stagingAt(plan: Plan, index: number): Staging | null {
  const asked = askedOf(plan)
  const found = asked.get(index)
  if (found !== undefined) return found
  const staging = workOut(plan, index)
  asked.set(index, staging)
  return staging
}

function workOut(plan: Plan, index: number): Staging | null {
  const stage = stageOf(plan, index)
  if (stage === null) return null
  const { id, kind } = stage.operation
  return { operation: id, kind, acts: STAGINGS[kind]?.(stage) ?? [] }
}
