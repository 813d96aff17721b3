import { rule as aisle } from './aisle'
import { rule as applianceInTall } from './appliance-in-tall'
import { rule as bayPinched } from './bay-pinched'
import { rule as beamOnTheWay } from './beam-on-the-way'
import { rule as boilerClearance } from './boiler-clearance'
import { rule as bowlAndTap } from './bowl-and-tap'
import { rule as boxOverUnit } from './box-over-unit'
import { rule as builtIn } from './built-in'
import { rule as ceilingAtFront } from './ceiling-at-front'
import { rule as cornerBinds } from './corner-binds'
import { rule as cornerOffSquare } from './corner-off-square'
import { rule as corniceTaper } from './cornice-taper'
import { rule as doorMeetsFitting } from './door-meets-fitting'
import { rule as doorStopsShort } from './door-stops-short'
import { rule as doorStrikesWall } from './door-strikes-wall'
import { rule as doubtfulReading } from './doubtful-reading'
import { rule as drawerAndTrap } from './drawer-and-trap'
import { rule as duct } from './duct'
import { rule as dust } from './dust'
import { rule as fewStuds } from './few-studs'
import { rule as fillerShort } from './filler-short'
import { rule as flapRise } from './flap-rise'
import { rule as floorChanged } from './floor-changed'
import { rule as floorFixingOverHeating } from './floor-fixing-over-heating'
import { rule as footOutsideUnit } from './foot-outside-unit'
import { rule as fridgeInCorner } from './fridge-in-corner'
import { rule as furnitureDoor } from './furniture-door'
import { rule as heavyLiftLate } from './heavy-lift-late'
import { rule as hobOffCentre } from './hob-off-centre'
import { rule as hobSide } from './hob-side'
import { rule as hoodGap } from './hood-gap'
import { rule as hoodHeight } from './hood-height'
import { rule as hoodSleeve } from './hood-sleeve'
import { rule as hoseAndLead } from './hose-and-lead'
import { rule as innerDrawerFouled } from './inner-drawer-fouled'
import { rule as isolatorBehind } from './isolator-behind'
import { rule as lineOutOfTrue } from './line-out-of-true'
import { rule as loadOnBoards } from './load-on-boards'
import { rule as meterDoor } from './meter-door'
import { rule as notDelivered } from './not-delivered'
import { rule as outOfFlat } from './out-of-flat'
import { rule as outletInUnit } from './outlet-in-unit'
import { rule as overhang } from './overhang'
import { rule as panelShort } from './panel-short'
import { rule as passage } from './passage'
import { rule as plinthHeater } from './plinth-heater'
import { rule as plinthOpening } from './plinth-opening'
import { rule as publishedPull } from './published-pull'
import { rule as roomDoorMeetsUnit } from './room-door-meets-unit'
import type { Rule } from './rule'
import { rule as runAtOpening } from './run-at-opening'
import { rule as runTooLong } from './run-too-long'
import { rule as sashMeetsTap } from './sash-meets-tap'
import { rule as sashOverWorktop } from './sash-over-worktop'
import { rule as socketBehind } from './socket-behind'
import { rule as socketTooLow } from './socket-too-low'
import { rule as splashbackGap } from './splashback-gap'
import { rule as switchBehind } from './switch-behind'
import { rule as topsOutOfLine } from './tops-out-of-line'
import { rule as trimInTheWay } from './trim-in-the-way'
import { rule as underHob } from './under-hob'
import { rule as unitInBox } from './unit-in-box'
import { rule as ventArea } from './vent-area'
import { rule as wallBellies } from './wall-bellies'
import { rule as wasteFall } from './waste-fall'
import { rule as wayIn } from './way-in'
import { rule as windowBoard } from './window-board'
import { rule as worktopTrapped } from './worktop-trapped'
import { rule as wrongHand } from './wrong-hand'

/** The rules of the trade that stand in a file of their own, in order of their names. */
export const RULES: readonly Rule[] = [
  aisle,
  applianceInTall,
  bayPinched,
  beamOnTheWay,
  boilerClearance,
  bowlAndTap,
  boxOverUnit,
  builtIn,
  ceilingAtFront,
  cornerBinds,
  cornerOffSquare,
  corniceTaper,
  doorMeetsFitting,
  doorStopsShort,
  doorStrikesWall,
  doubtfulReading,
  drawerAndTrap,
  duct,
  dust,
  fewStuds,
  fillerShort,
  flapRise,
  floorChanged,
  floorFixingOverHeating,
  footOutsideUnit,
  fridgeInCorner,
  furnitureDoor,
  heavyLiftLate,
  hobOffCentre,
  hobSide,
  hoodGap,
  hoodHeight,
  hoodSleeve,
  hoseAndLead,
  innerDrawerFouled,
  isolatorBehind,
  lineOutOfTrue,
  loadOnBoards,
  meterDoor,
  notDelivered,
  outOfFlat,
  outletInUnit,
  overhang,
  panelShort,
  passage,
  plinthHeater,
  plinthOpening,
  publishedPull,
  roomDoorMeetsUnit,
  runAtOpening,
  runTooLong,
  sashMeetsTap,
  sashOverWorktop,
  socketBehind,
  socketTooLow,
  splashbackGap,
  switchBehind,
  topsOutOfLine,
  trimInTheWay,
  underHob,
  unitInBox,
  ventArea,
  wallBellies,
  wasteFall,
  wayIn,
  windowBoard,
  worktopTrapped,
  wrongHand,
]
