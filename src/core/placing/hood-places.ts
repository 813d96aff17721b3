import type { Basis, Figure, InputId } from '../figure'
import { derive, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Appliance, Kitchen } from '../kitchen/schema'
import type { UnitPlan, WallId } from '../plan/types'
import { highestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
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
 * hood with neither has no place. Under a hood with a place of its own is the nearest hob of its wall.
 */
export function hoodPlaces(
  kitchen: Pick<Kitchen, 'worktops' | 'appliances' | 'units'>,
  survey: Pick<Survey, 'along'>,
  units: readonly UnitPlan[],
): readonly HoodOverHob[] {
  const ofKind = (kind: Appliance['kind']) => kitchen.appliances.filter((one) => one.kind === kind)
  const [hoods, hobs] = [ofKind('hood'), ofKind('hob')]
  const only = hobs.length === 1 && hoods.length === 1 ? (hobs[0] ?? null) : null
  const hobsAt = hobs.flatMap((hob) => {
    const at = middleOf(kitchen, survey, units, hob)
    return at === null ? [] : [{ hob, ...at }]
  })
  return hoods.flatMap((hood): readonly HoodOverHob[] => {
    const bay = kitchen.units.find(({ applianceBay }) => applianceBay === hood.id)?.id ?? hood.over
    const own = bay === null ? null : middleOf(kitchen, survey, units, { id: hood.id, over: bay })
    const place = own ?? (only === null ? null : middleOf(kitchen, survey, units, only))
    if (place === null) return []
    const hob = only ?? nearest(hobsAt, place)?.hob ?? null
    return [{ ...place, hood, hob, within: own === null ? null : bay }]
  })
}

function nearest<T extends ApplianceMiddle>(all: readonly T[], { wall, middle }: ApplianceMiddle): T | null {
  const away = (one: T) =>
    hasValue(one.middle) && hasValue(middle) ? Math.abs(one.middle.value - middle.value) : Infinity
  const here = all.filter((one) => one.wall === wall)
  return here.reduce<T | null>((best, one) => (best === null || away(one) < away(best) ? one : best), null)
}

const bySheets: Basis = { kind: 'geometry', why: 'the greater of what hood and hob ask' }
const NOTHING = known(0, 0, 'mm', [], bySheets)

/** How far above the worktop a hood has to hang, as far as the sheets of hood and hob have been read. */
export interface LeastOverWorktop {
  /** The greatest that is known to be asked; null when nothing is. While some of it is unread it may be more. */
  readonly least: Figure | null
  /** Facts of the sheets nobody has entered. */
  readonly unread: readonly InputId[]
}

/** The stricter of both sheets, each counted from where it says: the worktop, or the pan supports above it. */
export function leastOverWorktop({ hood, hob }: Pick<HoodOverHob, 'hood' | 'hob'>): LeastOverWorktop {
  const pans = hob?.panSupports ?? NOTHING
  const sheets = [hood, ...(hob === null ? [] : [hob])]
  const asked = sheets.flatMap(({ clearAbove, clearFrom }) => {
    if (!hasValue(clearAbove)) return []
    return clearFrom === 'pan-supports' && hasValue(pans)
      ? [sum('mm', bySheets, [clearAbove, pans])]
      : [clearAbove]
  })
  const unread = sheets.flatMap(({ id, clearAbove, clearFrom }) => {
    if (!hasValue(clearAbove)) return clearAbove.missing
    if (clearFrom === null) return [factId('appliances', id, 'clearFrom')]
    return clearFrom === 'pan-supports' && !hasValue(pans) ? pans.missing : []
  })
  return { least: asked.length === 0 ? null : highestOf('mm', bySheets, asked), unread }
}
