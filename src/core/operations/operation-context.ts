import type { Achieved } from '../daylog/achieved'
import type { NeededNogging } from '../fixings/needed-nogging'
import type { Kitchen } from '../kitchen/schema'
import type {
  Band,
  FloorSurface,
  HeightLine,
  Heights,
  Hole,
  PlacingPath,
  RailPlan,
  UnitPlan,
  WallMark,
} from '../plan/types'
import type { RegionPack } from '../region/region'
import type { Survey } from '../survey/survey'
import type { PartPosition } from '../units/positions'

/** All that has been worked out of a kitchen before its work is listed: the operations are read off this. */
export interface OperationContext {
  readonly kitchen: Kitchen
  readonly region: RegionPack | null
  readonly survey: Pick<Survey, 'frames' | 'along' | 'height' | 'floorAt'>
  readonly floor: Pick<FloorSurface, 'highPoint' | 'fall'>
  /** Names as they are said and written: "wall unit 3", or the user's own. By unit id. */
  readonly names: ReadonlyMap<string, string>
  readonly heights: Heights
  /** Every unit with its place, legs, lift, holding, hook-on and stand-up. */
  readonly units: readonly UnitPlan[]
  readonly parts: readonly PartPosition[]
  readonly rails: readonly RailPlan[]
  readonly holes: readonly Hole[]
  readonly bands: readonly Band[]
  readonly lines: readonly HeightLine[]
  readonly marks: readonly WallMark[]
  /** The chosen path of each unit, in the order in which the plan lists them. */
  readonly paths: readonly PlacingPath[]
  /** Timber that must be let in because fixings find none where they are wanted. */
  readonly neededNoggings: readonly NeededNogging[]
  readonly achieved: Achieved
}
