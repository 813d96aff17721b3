import { type Figure, hasValue } from '../../figure'
import { factId } from '../../kitchen/fact-id'
import type { HeightPosition, HeightWish } from '../../kitchen/schema'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import type { HeightsContext } from '../context'
import { heightWords } from '../height-words'
import { type DemandRule, demand, exactly, notKnown } from './demand'

const wished = { kind: 'wish' } as const

/** What the user wishes of a height: not lower than, not higher than, or in line with another height. */
export const wish: DemandRule = (context) =>
  context.kitchen.wishes.heights.flatMap((one) => [...limitsOf(context, one), ...levelWith(one)])

function limitsOf(context: HeightsContext, one: HeightWish): readonly Demand[] {
  if (one.min === undefined && one.max === undefined) return []
  const limit = (height: HeightPosition | undefined) =>
    height === undefined ? null : heightWished(context, one, height)
  const [min, max] = [limit(one.min), limit(one.max)]
  const key = wishKey(min, max)
  const because = message(key, {
    height: heightWords(one.of),
    ...(min === null ? {} : { min }),
    ...(max === null ? {} : { max }),
  })
  return [demand('wish', { subject: one.id, of: one.of, min, max, because, basis: wished, about: [one.id] })]
}

function wishKey(min: Figure | null, max: Figure | null): string {
  if (min === null) return 'heights.wish.max'
  if (max === null) return 'heights.wish.min'
  const isOne = hasValue(min) && hasValue(max) && min.value === max.value
  return isOne ? 'heights.wish.at' : 'heights.wish.between'
}

/** A height above the floor is wished at a place; without one it cannot be told. */
function heightWished({ survey }: HeightsContext, { id, place }: HeightWish, height: HeightPosition): Figure {
  if (place !== undefined) {
    const along = survey.along(place.wall, place.along)
    return survey.height(height, { wall: place.wall, along, out: place.out })
  }
  if (hasValue(height.aboveFloor)) return notKnown([factId('wishes', 'heights', id, 'place')], wished)
  return survey.height(height)
}

function levelWith(one: HeightWish): readonly Demand[] {
  if (one.equals === undefined || one.equals === one.of) return []
  const level = exactly(0, wished, [factId('wishes', 'heights', one.id, 'equals')])
  const both = one.min !== undefined || one.max !== undefined
  return [
    demand('wish', {
      subject: both ? `${one.id}.equals` : one.id,
      from: one.equals,
      of: one.of,
      min: level,
      max: level,
      because: message('heights.wish.equals', {
        height: heightWords(one.of),
        other: heightWords(one.equals),
      }),
      basis: wished,
      about: [one.id],
    }),
  ]
}
