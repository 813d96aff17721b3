import type { Figure } from '../figure'
import { derive } from '../figure'
import type { Appliance, Kitchen } from '../kitchen/schema'
import type { UnitPlan, WallId } from '../plan/types'
import type { Survey } from '../survey/survey'

/** Where the middle of a hob or hood is along its wall. */
interface ApplianceMiddle {
  readonly wall: WallId
  readonly middle: Figure
}

/** The middle of an appliance by the hole cut for it, else by the unit it is in or over. */
export function middleOf(
  { worktops }: Pick<Kitchen, 'worktops'>,
  { along }: Pick<Survey, 'along'>,
  units: readonly UnitPlan[],
  { id, over }: Pick<Appliance, 'id' | 'over'>,
): ApplianceMiddle | null {
  const hole = worktops.flatMap(({ cutouts }) => cutouts).find((cutout) => cutout.for === id)
  if (hole !== undefined) {
    const middle = derive(
      'mm',
      { kind: 'geometry', why: 'half the width of its cut-out from the left end of that' },
      [along(hole.wall, hole.left), hole.width],
      (left, width) => (left as number) + (width as number) / 2,
    )
    return { wall: hole.wall, middle }
  }
  const unit = units.find((one) => one.unit === over)
  if (unit === undefined) return null
  const middle = derive(
    'mm',
    { kind: 'geometry', why: 'half-way between the sides of its unit' },
    [unit.left, unit.right],
    (left, right) => ((left as number) + (right as number)) / 2,
  )
  return { wall: unit.wall, middle }
}

/** A hood and the hob it hangs over. */
export interface HoodOverHob extends ApplianceMiddle {
  readonly hood: Appliance
  readonly hob: Appliance | null
  /** The space or unit it is stated to go in, by id. */
  readonly within: string | null
}

/**
 * Where hoods hang: in the space or unit they are stated to go in, else over the hob when there is just one of each. A
 * hood with neither has no place.
 */
export function hoodPlaces(
  kitchen: Pick<Kitchen, 'worktops' | 'appliances' | 'units'>,
  survey: Pick<Survey, 'along'>,
  units: readonly UnitPlan[],
): readonly HoodOverHob[] {
  const ofKind = (kind: Appliance['kind']) => kitchen.appliances.filter((one) => one.kind === kind)
  const [hoods, hobs] = [ofKind('hood'), ofKind('hob')]
  const hob = hobs.length === 1 && hoods.length === 1 ? (hobs[0] ?? null) : null
  return hoods.flatMap((hood): readonly HoodOverHob[] => {
    const bay = kitchen.units.find(({ applianceBay }) => applianceBay === hood.id)?.id ?? hood.over
    const own = bay === null ? null : middleOf(kitchen, survey, units, { id: hood.id, over: bay })
    const place = own ?? (hob === null ? null : middleOf(kitchen, survey, units, hob))
    return place === null ? [] : [{ ...place, hood, hob, within: own === null ? null : bay }]
  })
}
