import type { Edit } from '../plan/types'
import type { Forced } from './what-if'

/** One of the order wishes of a kitchen file, as far as it can be told what it asks. */
interface Wished {
  readonly id: string
  readonly before?: Readonly<Record<string, unknown>>
  readonly after?: Readonly<Record<string, unknown>>
}

function wishesOf(kitchen: unknown): readonly Wished[] {
  const list = (kitchen as { wishes?: { order?: unknown } } | null)?.wishes?.order
  return Array.isArray(list) ? list : []
}

/** Whether a wish is that one operation comes before another, and no more than that. */
function asks(wish: Wished, before: string, after: string): boolean {
  const names = (side: Wished['before'], id: string) =>
    side?.['operation'] === id && side['kind'] === undefined && side['on'] === undefined
  return names(wish.before, before) && names(wish.after, after)
}

/** The wish that one operation comes before another, as an edit of the kitchen file: one that asked the opposite goes. */
export function orderWishEdits(kitchen: unknown, { before, after }: Forced): readonly Edit[] {
  const wishes = wishesOf(kitchen)
  const taken = new Set(wishes.map(({ id }) => id))
  let number = 1
  while (taken.has(`order-${number}`)) number += 1
  const item = { id: `order-${number}`, before: { operation: before }, after: { operation: after } }
  const opposite = wishes.filter((wish) => asks(wish, after, before))
  return [
    ...opposite.map(({ id }) => ({ remove: `wishes.order.${id}` })),
    ...(wishes.some((wish) => asks(wish, before, after)) ? [] : [{ add: 'wishes.order', item }]),
  ]
}
