/** Small kitchens for tests of the survey, of places and of heights, worked through from their files. */
import { type Achieved, nothingAchieved } from '../../src/core/daylog/achieved'
import { type Figure, hasValue, unknown } from '../../src/core/figure'
import { type HeightsWorkedOut, workOutHeights } from '../../src/core/heights/heights'
import type { HeightName } from '../../src/core/kitchen/kinds'
import { parseKitchen } from '../../src/core/kitchen/parse-kitchen'
import type { Kitchen } from '../../src/core/kitchen/schema'
import { regionPack } from '../../src/core/region/region'
import { type Survey, workOutSurvey } from '../../src/core/survey/survey'
import { type Positions, workOutPositions } from '../../src/core/units/positions'

type Json = Readonly<Record<string, unknown>>

/** A figure typed with no doubt about it. */
export const sure = (value: number) => ({ value, pm: 0 })
export const atLeft = (value: number) => ({ at: sure(value) })
export const placeOn = (wall: string, along: number, out: number) => ({
  wall,
  along: atLeft(along),
  out: sure(out),
})

export function kitchenOf(parts: Json): Kitchen {
  const file = { format: 'dryrun-kitchen', version: 1, name: 'Test', lines: [{ id: 'line' }], ...parts }
  const parsed = parseKitchen(file)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error, null, 2))
  return parsed.value.kitchen
}

/** Walls of exact lengths and corners, in order, named a, b, c … The last needs no corner. */
export function wallsOf(...sizes: readonly (readonly [number, number?])[]): readonly Json[] {
  return sizes.map(([length, angle], i) => ({
    id: 'abcdefgh'.charAt(i),
    length: sure(length),
    ...(angle === undefined ? {} : { cornerRight: { angle: sure(angle) } }),
  }))
}

export function readingOf(id: string, wall: string, along: number, out: number, drop: number, pm = 0): Json {
  return { id, at: placeOn(wall, along, out), drop: { value: drop, pm } }
}

export interface WorkedThrough {
  readonly kitchen: Kitchen
  readonly survey: Survey
  readonly positions: Positions
  readonly worked: HeightsWorkedOut
}

export function workThrough(kitchen: Kitchen, achieved: Achieved = nothingAchieved): WorkedThrough {
  const region = regionPack(kitchen.region)
  const survey = workOutSurvey(kitchen, region)
  const positions = workOutPositions(kitchen, survey)
  const worked = workOutHeights(kitchen, survey, positions, region, achieved)
  return { kitchen, survey, positions, worked }
}

/** A height's value, "unknown", or "none" when nothing speaks of it. */
export function heightIn({ worked }: WorkedThrough, of: HeightName): number | 'unknown' | 'none' {
  const found = worked.heights.values.find((value) => value.of === of)
  return found === undefined ? 'none' : plain(found.height)
}

export function plain(figure: Figure | undefined): number | 'unknown' {
  return figure !== undefined && hasValue(figure) ? figure.value : 'unknown'
}

/** The kitchen without one fact: the figure with this id, wherever it stands, becomes unknown. */
export function without<T>(value: T, id: string): T {
  if (Array.isArray(value)) return value.map((item) => without(item, id)) as T
  if (value === null || typeof value !== 'object') return value
  if (isFigure(value)) {
    return (
      value.from.length === 1 && value.from[0] === id ? unknown(value.unit, [id], [id], value.basis) : value
    ) as T
  }
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, without(inner, id)])) as T
}

/** Ids of all facts of a kitchen that are figures with a value. */
export function knownFacts(value: unknown, into: Set<string> = new Set()): ReadonlySet<string> {
  if (Array.isArray(value)) for (const item of value) knownFacts(item, into)
  else if (value !== null && typeof value === 'object') {
    if (!isFigure(value)) for (const inner of Object.values(value)) knownFacts(inner, into)
    else if (hasValue(value) && value.from[0] !== undefined) into.add(value.from[0])
  }
  return into
}

function isFigure(value: object): value is Figure {
  return 'state' in value && 'unit' in value && 'from' in value
}
