import type { FinishingPart, Kitchen } from '../kitchen/schema'
import { unitNames } from './names'

export type NamingKitchen = Pick<Kitchen, 'finishing' | 'units' | 'walls'>

/** Parts that run along under, over or behind several units, and how they lie to them. */
const ALONG: Readonly<Partial<Record<FinishingPart['kind'], string>>> = {
  plinth: 'under',
  cornice: 'over',
  pelmet: 'under',
  upstand: 'behind',
  splashback: 'behind',
}

/** Whether a part runs along units: plinths, cornices, upstands. Panels and fillers stand beside one. */
export function runsAlong(part: Pick<FinishingPart, 'kind'>): boolean {
  return ALONG[part.kind] !== undefined
}

/**
 * Where a finishing part is, in words: "between base unit 1 and base unit 2", "on the right of base unit 3", "along
 * Hall partition". Read off the file alone, so that a part is called the same whatever else is known.
 */
export function partPlace(kitchen: NamingKitchen, part: FinishingPart): string | null {
  const along = ALONG[part.kind]
  return along === undefined ? besidePlace(kitchen, part) : alongPlace(kitchen, part, along)
}

/** What a panel or filler has on its left and on its right, by id: as it says, or as its neighbours do. */
function besides(kitchen: NamingKitchen, part: FinishingPart): { left?: string; right?: string } {
  const says = [...kitchen.units, ...kitchen.finishing]
  const left = part.order?.rightOf ?? says.find((one) => one.order?.leftOf === part.id)?.id
  const right = part.order?.leftOf ?? says.find((one) => one.order?.rightOf === part.id)?.id
  return { ...(left === undefined ? {} : { left }), ...(right === undefined ? {} : { right }) }
}

function besidePlace(kitchen: NamingKitchen, part: FinishingPart): string | null {
  const names = unitNames(kitchen)
  const { left, right } = besides(kitchen, part)
  const [onLeft, onRight] = [left, right].map((id) => (id === undefined ? undefined : names.get(id)))
  if (onLeft !== undefined && onRight !== undefined) return `between ${onLeft} and ${onRight}`
  if (onRight !== undefined) return `on the left of ${onRight}`
  if (onLeft !== undefined) return `on the right of ${onLeft}`
  const own = part.of.flatMap((id) => names.get(id) ?? [])
  return own[0] === undefined ? wallPlace(kitchen, part.wall) : `at ${own[0]}`
}

function wallPlace(kitchen: NamingKitchen, wall: string | null): string | null {
  if (wall === null) return null
  return `along ${kitchen.walls.find((one) => one.id === wall)?.name ?? `wall ${wall}`}`
}

function alongPlace(kitchen: NamingKitchen, part: FinishingPart, lies: string): string | null {
  const walls = new Set(kitchen.units.filter((u) => part.of.includes(u.id)).map((u) => u.wall))
  const [only] = [...walls]
  const wall = part.wall ?? (walls.size === 1 ? (only ?? null) : null)
  const alike = kitchen.finishing.filter((one) => one.kind === part.kind && one.wall === part.wall)
  if (wall !== null && alike.length === 1) return wallPlace(kitchen, wall)
  const names = unitNames(kitchen)
  const own = part.of.flatMap((id) => names.get(id) ?? [])
  if (own.length === 0) return wallPlace(kitchen, wall)
  return `${lies} ${someOf(own)}`
}

/** So many are named one by one; of more, the first and how many others. */
const NAMED = 3

function someOf(names: readonly string[]): string {
  if (names.length > NAMED) return `${names[0]} and ${names.length - 1} more`
  const last = names.at(-1) ?? ''
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`
}
