import { valueOf } from '../../../core/figure'
import { demandsOnHeights } from '../../../core/heights/lower-units'
import type { HeightName } from '../../../core/kitchen/kinds'
import type { Demand, HeightValue, Plan } from '../../../core/plan/types'
import { type Bar, barsFor } from '../../paper/heights/bars'
import type { Scale, Stretch, Wanted } from './scale'

/** One demand, or several of a kind, as it stands in the picture. */
export interface PictureBar extends Bar {
  /** What it is called in the picture and in the list beside it: a, b, c. */
  readonly letter: string
  /** Between two heights of the kitchen: it moves as the other one moves. */
  readonly isTied: boolean
  /** Which end of the room it sets. */
  readonly sets: readonly ('lower' | 'upper')[]
}

/** One height of the kitchen, and everything that wants something from it. */
export interface Block {
  readonly of: HeightName
  readonly value: HeightValue
  /** As the plan has it, mm from the line. */
  readonly at: number
  /** Heights near each other stand side by side: 0 on the left, 1 on the right. */
  readonly column: 0 | 1
  readonly bars: readonly PictureBar[]
}

const ON_THE_RIGHT: ReadonlySet<HeightName> = new Set(['tall-underside', 'worktop-top', 'tall-top'])
const LETTERS = 'abcdefghijklmnopqrstuvwxyz'

/** The heights that are known, each with its demands; one that is not known has no place on a scale. */
export function blocksOf(plan: Plan): readonly Block[] {
  const demands = demandsOnHeights(plan.heights.demands)
  const told = { ...plan, heights: { ...plan.heights, demands } }
  return plan.heights.values.flatMap((value): readonly Block[] => {
    const at = valueOf(value.height)
    if (at === undefined) return []
    const bars = barsFor(told, value).map((bar, i) => pictureBar(bar, value, i))
    return [{ of: value.of, value, at, column: ON_THE_RIGHT.has(value.of) ? 1 : 0, bars }]
  })
}

function pictureBar(bar: Bar, { lowestBy, highestBy }: HeightValue, i: number): PictureBar {
  const isAmong = (ids: readonly string[]) => bar.parts.some(({ demand }) => ids.includes(demand.id))
  return {
    ...bar,
    letter: LETTERS[i] ?? `${i + 1}`,
    isTied: bar.parts.some(({ demand }) => demand.from !== 'line' && demand.to !== 'line'),
    sets: [
      ...(isAmong(lowestBy) ? (['lower'] as const) : []),
      ...(isAmong(highestBy) ? (['upper'] as const) : []),
    ],
  }
}

const AROUND_HEIGHT = 30
const AROUND_END = 12

/** What has to be on the scale: the line, the floor, each height, and every end of every demand on it. */
export function wantedOn(
  blocks: readonly Block[],
  others: readonly number[],
  wished: readonly number[],
): readonly Wanted[] {
  const ends = blocks.flatMap(({ bars, value }) => [
    value.lowest,
    value.highest,
    ...bars.flatMap(({ parts }) => parts.flatMap(({ min, max }) => [min, max])),
  ])
  return [
    ...others.map((at) => ({ at, air: AROUND_END })),
    ...[...blocks.map(({ at }) => at), ...wished].map((at) => ({ at, air: AROUND_HEIGHT })),
    ...ends.flatMap((at) => (at === null ? [] : [{ at, air: AROUND_END }])),
  ]
}

/** Past an end that is open a demand is drawn to the end of the stretch its height stands in. */
const OPEN = 20

/** From where to where a demand is drawn, mm from the line. */
export function drawnFrom(
  { min, max }: Pick<Bar, 'min' | 'max'>,
  at: number,
  scale: Scale,
): readonly [number, number] {
  const own = stretchAt(at, scale)
  const lowest = min ?? Math.min(own?.bottom ?? at, (max ?? at) - OPEN)
  const highest = max ?? Math.max(own?.top ?? at, (min ?? at) + OPEN)
  return [lowest, highest]
}

export function stretchAt(mm: number, { stretches }: Scale): Stretch | undefined {
  return stretches.find(({ bottom, top }) => mm >= bottom && mm <= top)
}

/** Demands from the line that a height would miss: by their own figures, before anything is worked out again. */
export function missedAt({ bars }: Block, mm: number): readonly PictureBar[] {
  return bars.filter(
    ({ isTied, min, max, parts }) =>
      !isTied && parts.every(isNoWish) && ((min !== null && mm < min) || (max !== null && mm > max)),
  )
}

const isNoWish = ({ demand }: { readonly demand: Demand }): boolean => demand.basis.kind !== 'wish'
