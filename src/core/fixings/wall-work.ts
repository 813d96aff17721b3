import type { InputId } from '../figure'
import type { WorkedBands } from '../holes/bands'
import type { Doubt } from '../holes/corner-strips'
import type { HoleSite } from '../holes/judge'
import { likelyLintels, openingDoubts, openingsOn } from '../holes/lintels'
import type { Kitchen, Wall } from '../kitchen/schema'
import type { RegionPack } from '../region/region'
import type { Survey } from '../survey/survey'
import { type LetIn, letInOf } from './noggings'
import { type Studs, studsOf } from './usable-studs'
import { type WallKind, wallKind } from './wall-kind'

/** Everything about one wall that a fixing in it is chosen and judged by. */
export interface WallWork {
  readonly kitchen: Kitchen
  readonly wall: Wall
  readonly name: string
  readonly kind: WallKind
  readonly studs: Studs
  readonly letIns: readonly LetIn[]
  /** Facts that decide which noggings can be counted on. */
  readonly letInFrom: readonly InputId[]
  readonly letInMissing: readonly InputId[]
  readonly site: HoleSite
  /** What decides whether some band or opening is there at all. */
  readonly doubts: readonly Doubt[]
}

export type SurveyForFixings = Pick<Survey, 'frames' | 'along' | 'height'>

export function wallWork(
  wall: Wall,
  kitchen: Kitchen,
  survey: SurveyForFixings,
  worked: Pick<WorkedBands, 'bands' | 'deep' | 'doubts'>,
  region: RegionPack | null,
): WallWork {
  const letIn = letInOf(wall, survey)
  const onWall = <T extends { readonly wall: string }>(things: readonly T[]) =>
    things.filter((thing) => thing.wall === wall.id)
  return {
    kitchen,
    wall,
    name: survey.frames.find((f) => f.wall === wall.id)?.name ?? wall.id,
    kind: wallKind(wall),
    studs: studsOf(wall, survey),
    letIns: letIn.placed,
    letInFrom: letIn.from,
    letInMissing: letIn.missing,
    site: {
      wall,
      region,
      bands: onWall(worked.bands),
      deep: onWall(worked.deep),
      openings: openingsOn(wall, survey),
      likelyLintels: likelyLintels(wall, survey),
    },
    doubts: [...onWall(worked.doubts), ...openingDoubts(wall, survey)],
  }
}
