import type { Operation } from '../plan/types'
import { assembleUnits } from './assemble'
import { fitBases } from './bases'
import { checkDelivery } from './check-delivery'
import { connectAppliances } from './connect'
import { fitFinishing } from './finishing'
import { hangAllFronts } from './fronts'
import { hangUnits } from './hang'
import type { Job } from './job'
import { joinNeighbours } from './join'
import { fitAllHangers, setAllLegs } from './legs-and-hangers'
import { asbestosCheck, callTrade, isolate, restoreSupply } from './make-safe'
import { fitNoggings } from './noggings'
import { fitPlates, fitRails } from './plates-and-rails'
import { proveRoom } from './prove'
import { findAllStuds, markAllHoles, setOutAllHeights, setOutAllWidths } from './set-out'
import { snag } from './snag'
import { readFloor, strikeLine } from './survey-room'
import { fitTalls } from './talls'
import { traceWalls } from './trace'
import { layWorktops } from './worktops'

/** What lists the work of one kind: none where nothing in this kitchen calls for it. */
export type OperationMaker = (job: Job) => readonly Operation[]

/** Every kind of work the tool knows. */
export const OPERATION_MAKERS: readonly OperationMaker[] = [
  checkDelivery,
  callTrade,
  asbestosCheck,
  traceWalls,
  isolate,
  strikeLine,
  readFloor,
  setOutAllHeights,
  setOutAllWidths,
  findAllStuds,
  markAllHoles,
  fitNoggings,
  assembleUnits,
  setAllLegs,
  fitAllHangers,
  fitTalls,
  fitRails,
  fitPlates,
  hangUnits,
  fitBases,
  joinNeighbours,
  fitFinishing,
  proveRoom,
  layWorktops,
  restoreSupply,
  connectAppliances,
  hangAllFronts,
  snag,
]
