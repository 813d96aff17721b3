import { assembledBeforePlaced } from './assembled-before-placed'
import { cornerBeforeNeighbours } from './corner-before-neighbours'
import { deliveryBeforeAssembly } from './delivery-before-assembly'
import { drillBeforeFix } from './drill-before-fix'
import { fillerBeforeNext } from './filler-before-next'
import { fixedBeforePanel } from './fixed-before-panel'
import { floorBeforeHeights } from './floor-before-heights'
import { frontsBeforeCornice } from './fronts-before-cornice'
import { frontsLast } from './fronts-last'
import { hangersBeforeHung } from './hangers-before-hung'
import { heavyBeforeFronts } from './heavy-before-fronts'
import { heightsBeforeHoles } from './heights-before-holes'
import { heldUntilSecured } from './held-until-secured'
import { holdPointBeforeWorktop } from './hold-point-before-worktop'
import { isolateBeforeHole } from './isolate-before-hole'
import { joinBeforeFix } from './join-before-fix'
import { joinsOutward } from './joins-outward'
import { legsBeforePlaced } from './legs-before-placed'
import { levelledBeforeJoined } from './levelled-before-joined'
import { levelledBeforeNext } from './levelled-before-next'
import { lineBeforeMarks } from './line-before-marks'
import { linesBeforePlacing } from './lines-before-placing'
import { outwardAlongRun } from './outward-along-run'
import { ownSteps } from './own-steps'
import { panelCarriesWorktop } from './panel-carries-worktop'
import { panelsAfterRun } from './panels-after-run'
import { pathBlocked } from './path-blocked'
import { platesBeforeHung } from './plates-before-hung'
import { plinthAfterConnect } from './plinth-after-connect'
import type { OrderRule } from './rule'
import { securedBeforeFronts } from './secured-before-fronts'
import { securedBeforeHoldPoint } from './secured-before-hold-point'
import { securedBeforeLoaded } from './secured-before-loaded'
import { sinkBeforeMachine } from './sink-before-machine'
import { snagLast } from './snag-last'
import { studsBeforeHoles } from './studs-before-holes'
import { supplyRestored } from './supply-restored'
import { tallBeforeWall } from './tall-before-wall'
import { tiltFloor } from './tilt-floor'
import { timberBeforeHole, timberBeforeMarks } from './timber-before-hole'
import { traceBeforeHole } from './trace-before-hole'
import { traceWhileLive } from './trace-while-live'
import { tradeBeforeConnect } from './trade-before-connect'
import { wallBeforeBase } from './wall-before-base'
import { worktopBeforeAppliance } from './worktop-before-appliance'
import { worktopBeforePlinth } from './worktop-before-plinth'
import { worktopBeforeUpstand } from './worktop-before-upstand'

/** Every rule of order there is. */
export const ORDER_RULES: readonly OrderRule[] = [
  deliveryBeforeAssembly,
  isolateBeforeHole,
  traceBeforeHole,
  lineBeforeMarks,
  floorBeforeHeights,
  heightsBeforeHoles,
  linesBeforePlacing,
  studsBeforeHoles,
  timberBeforeHole,
  timberBeforeMarks,
  assembledBeforePlaced,
  legsBeforePlaced,
  hangersBeforeHung,
  platesBeforeHung,
  drillBeforeFix,
  ownSteps,
  levelledBeforeJoined,
  heldUntilSecured,
  securedBeforeFronts,
  securedBeforeLoaded,
  pathBlocked,
  tiltFloor,
  securedBeforeHoldPoint,
  holdPointBeforeWorktop,
  worktopBeforeAppliance,
  worktopBeforeUpstand,
  fixedBeforePanel,
  worktopBeforePlinth,
  frontsLast,
  plinthAfterConnect,
  tradeBeforeConnect,
  supplyRestored,
  sinkBeforeMachine,
  snagLast,
  traceWhileLive,
  tallBeforeWall,
  wallBeforeBase,
  cornerBeforeNeighbours,
  outwardAlongRun,
  levelledBeforeNext,
  joinsOutward,
  fillerBeforeNext,
  joinBeforeFix,
  panelCarriesWorktop,
  panelsAfterRun,
  heavyBeforeFronts,
  frontsBeforeCornice,
]
