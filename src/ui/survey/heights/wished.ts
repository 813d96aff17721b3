import type { Field } from '../../../core/form/field'
import { listAt, nextMark, thingAt } from '../../../core/form/things'
import { heightWishes } from '../../../core/form/wishes'
import type { HeightName } from '../../../core/kitchen/kinds'
import type { Edit } from '../../../core/plan/types'

/** Wishes for a height, as they stand in the kitchen file. */

const LIST = 'wishes.heights'
/** How marks of wishes are made, as on the page they are typed on. */
const THINGS = (heightWishes as Extract<Field, { kind: 'list' }>).things
/** What a height is measured from where nothing is said. */
const MAIN = 'line'

/** The wish that sets limits to this height: the first there is. */
function wishOn(kitchen: unknown, of: HeightName) {
  return listAt(kitchen, LIST).find(
    (wish) => wish['of'] === of && (wish['min'] !== undefined || wish['max'] !== undefined),
  )
}

/** The mark of that wish; undefined where nothing is wished. */
export function wishMark(kitchen: unknown, of: HeightName): string | undefined {
  const wish = wishOn(kitchen, of)
  return wish === undefined ? undefined : String(wish['id'])
}

/** A height wished to the millimetre, from the main line; undefined where a range is wished, or nothing. */
export function wishedAt(kitchen: unknown, of: HeightName): number | undefined {
  const wish = wishOn(kitchen, of)
  const [min, max] = [wish?.['min'], wish?.['max']].map((height) => fromMain(kitchen, height))
  return min !== undefined && min === max ? min : undefined
}

function fromMain(kitchen: unknown, height: unknown): number | undefined {
  const line = thingAt(height, 'line')
  if (line !== undefined && line !== mainLine(kitchen)) return undefined
  const [up, down] = [thingAt(height, 'up'), thingAt(height, 'down')]
  if (typeof up === 'number') return up
  return typeof down === 'number' ? -down : undefined
}

const mainLine = (kitchen: unknown): unknown => listAt(kitchen, 'lines')[0]?.['id'] ?? MAIN

/** Wishes a height at a millimetre from the line; a wish there is for it already gives way to it. */
export function wishEdits(kitchen: unknown, of: HeightName, mm: number): readonly Edit[] {
  const line = mainLine(kitchen)
  const height = {
    ...(mm < 0 ? { down: -mm } : { up: mm }),
    ...(line === MAIN ? {} : { line }),
  }
  const mark = wishMark(kitchen, of)
  if (mark === undefined) {
    const id = nextMark(THINGS, listAt(kitchen, LIST), THINGS.mark)
    return [{ add: LIST, item: { id, of, min: height, max: height } }]
  }
  return [
    { set: `${LIST}.${mark}.min`, to: height },
    { set: `${LIST}.${mark}.max`, to: height },
    { set: `${LIST}.${mark}.place`, to: undefined },
  ]
}

export const unwishEdits = (mark: string): readonly Edit[] => [{ remove: `${LIST}.${mark}` }]
