import { rule as builtIn } from './built-in'
import { rule as dust } from './dust'
import { rule as fewStuds } from './few-studs'
import { rule as floorChanged } from './floor-changed'
import { rule as floorFixingOverHeating } from './floor-fixing-over-heating'
import { rule as heavyLiftLate } from './heavy-lift-late'
import { rule as isolatorBehind } from './isolator-behind'
import { rule as loadOnBoards } from './load-on-boards'
import { rule as notDelivered } from './not-delivered'
import { rule as outletInUnit } from './outlet-in-unit'
import { rule as overhang } from './overhang'
import type { Rule } from './rule'
import { rule as runTooLong } from './run-too-long'
import { rule as socketBehind } from './socket-behind'
import { rule as wayIn } from './way-in'
import { rule as wrongHand } from './wrong-hand'

/** The rules of the trade that stand in a file of their own, in order of their names. */
export const RULES: readonly Rule[] = [
  builtIn,
  dust,
  fewStuds,
  floorChanged,
  floorFixingOverHeating,
  heavyLiftLate,
  isolatorBehind,
  loadOnBoards,
  notDelivered,
  outletInUnit,
  overhang,
  runTooLong,
  socketBehind,
  wayIn,
  wrongHand,
]
