import type { Achieved } from '../daylog/achieved'
import { workOutFixings } from '../fixings/fixings'
import { workOutHeights } from '../heights/heights'
import { workOutLines } from '../heights/lines'
import { workOutBands } from '../holes/bands'
import type { Kitchen } from '../kitchen/schema'
import { liftOf } from '../lifting/lifting'
import { workOutOperations } from '../operations/operations'
import { arrange } from '../order/arrange'
import type { RegionPack } from '../region/region'
import type { Result } from '../result'
import { workOutSurvey } from '../survey/survey'
import { workOutPositions } from '../units/positions'
import type { NoPlan, Plan } from './types'

/** Raised whenever a rule or a figure changes, so that a sheet printed under other rules can be told apart. */
export const RULES_VERSION = '1'

/** What a plan is made of: facts, the day so far, the region's data, and the stamp over all of it. */
export interface PlanInput {
  readonly kitchen: Kitchen
  readonly achieved: Achieved
  readonly region: RegionPack | null
  readonly hash: string
}
