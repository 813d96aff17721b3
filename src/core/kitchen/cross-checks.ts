import { contradictions } from './checks/contradictions'
import { corners } from './checks/corners'
import { heights } from './checks/heights'
import { orderAlongWalls } from './checks/order-along-walls'
import { outline } from './checks/outline'
import { references } from './checks/references'
import { repeatedIds } from './checks/repeated-ids'
import type { Problem } from './problem'
import type { Kitchen } from './schema'

/** Every check of what one part of the kitchen file says about another, in the order their problems are told. */
const CHECKS: readonly ((kitchen: Kitchen) => readonly Problem[])[] = [
  repeatedIds,
  references,
  orderAlongWalls,
  heights,
  corners,
  outline,
  contradictions,
]

/** What does not hold together in a kitchen whose every part is well formed. */
export function crossCheck(kitchen: Kitchen): readonly Problem[] {
  return CHECKS.flatMap((check) => check(kitchen))
}
