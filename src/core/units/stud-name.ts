import { type Figure, hasValue } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import type { Plan, WallId } from '../plan/types'
import type { Survey } from '../survey/survey'

const ORDINALS = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
] as const

/** 1 → "first", 13 → "13th". */
export function ordinal(n: number): string {
  const word = ORDINALS[n - 1]
  if (word !== undefined) return word
  const tens = n % 100
  const ending = tens >= 11 && tens <= 13 ? 'th' : ({ 1: 'st', 2: 'nd', 3: 'rd' }[n % 10] ?? 'th')
  return `${n}${ending}`
}

export interface StudPlace {
  readonly id: string
  readonly centre: Figure
}

/**
 * What a stud is called on site: "ninth stud from the left". Counted from the left corner among the studs whose centre is
 * known; one whose centre is not known is called by its own id, for there is nothing else to call it by.
 */
export function studName(studs: readonly StudPlace[], id: string): string {
  const placed = studs
    .flatMap((stud) => (hasValue(stud.centre) ? [{ id: stud.id, at: stud.centre.value }] : []))
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
  const at = placed.findIndex((stud) => stud.id === id)
  return at < 0 ? `stud “${id}”` : `${ordinal(at + 1)} stud from the left`
}

/** The studs of a wall with their centres from its left corner. */
export function studPlaces(
  kitchen: Pick<Kitchen, 'walls'>,
  survey: Pick<Survey, 'along'>,
  wall: WallId,
): readonly StudPlace[] {
  const studs = kitchen.walls.find(({ id }) => id === wall)?.studs ?? []
  return studs.map(({ id, centre }) => ({ id, centre: survey.along(wall, centre) }))
}

/** The studs of a wall as a plan marks them on it, with their centres from its left corner. */
export function studsMarked({ marks }: Pick<Plan, 'marks'>, wall: WallId): readonly StudPlace[] {
  return marks
    .filter((mark) => mark.kind === 'stud' && mark.wall === wall)
    .map((mark) => ({ id: mark.about.split('.').at(-1) ?? '', centre: mark.along }))
}
