import type { Field } from '../field'
import { shownTyped } from '../typed'

/** What stands in the kitchen file, as one would have written it on the sheet by hand. */

type Thing = Readonly<Record<string, unknown>>
const thingOf = (value: unknown): Thing =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Thing) : {}

/** A distance along a wall: `1200`, and `R 300` where it was taken from the right end. */
export function alongWritten(value: unknown): string {
  const along = thingOf(value)
  const at = shownTyped(along['at'])
  return at !== '' && along['from'] === 'right' ? `R ${at}` : at
}

/** A height: `+350` above the line, `−400` below it, `F 900` from the floor. */
function heightWritten(value: unknown): string {
  const height = thingOf(value)
  const written = (key: string, before: string): string => {
    const text = shownTyped(height[key])
    return text === '' ? '' : `${before}${text}`
  }
  return written('up', '+') || written('down', '−') || written('aboveFloor', 'F ')
}

function orderWritten(value: unknown): string {
  const order = thingOf(value)
  if (order['rightOf'] !== undefined) return `right of ${String(order['rightOf'])}`
  if (order['leftOf'] !== undefined) return `left of ${String(order['leftOf'])}`
  return alongWritten(order['left'])
}

/** A place has three columns: its wall, along it, out from it. */
export function placeWritten(value: unknown): readonly [string, string, string] {
  const place = thingOf(value)
  const wall = typeof place['wall'] === 'string' ? place['wall'] : ''
  return [wall, alongWritten(place['along']), shownTyped(place['out'])]
}

/** One field, for one cell; a place is for `placeWritten`, and a list has cells of its own. */
export function written(field: Field, value: unknown): string {
  switch (field.kind) {
    case 'along':
      return alongWritten(value)
    case 'height':
      return heightWritten(value)
    case 'order':
      return orderWritten(value)
    case 'place':
      return placeWritten(value).filter(Boolean).join(' · ')
    case 'yes-no':
      return value === true ? 'yes' : value === false ? 'no' : ''
    case 'choice':
      return field.options.find(([word]) => word === value)?.[1] ?? ''
    case 'choices':
    case 'refs':
      return Array.isArray(value) ? value.map((one) => wordsOf(field, one)).join(', ') : ''
    case 'list':
      return ''
    default:
      return shownTyped(value)
  }
}

const wordsOf = (field: Field, value: unknown): string =>
  (field.kind === 'choices' ? field.options.find(([word]) => word === value)?.[1] : undefined) ??
  String(value)
