import { assumeProductDefaults } from '../kitchen/assume-defaults'
import type { Kitchen } from '../kitchen/schema'
import { regionPack } from '../region/region'
import { drillLines } from './drill'
import { dishwasherLines, legLines, tallLines } from './heights'
import type { FirstLine } from './line'
import { measuredLines } from './measured'
import { measureLines, strikeLines } from './next'
import { bookLines, borrowLines } from './people'
import { runLines } from './run'

/**
 * What can be said of a kitchen before it is surveyed: does it look like fitting, why nothing is drilled yet, whom to book,
 * what to borrow, which line to strike first, what to measure next. Usual sizes of products may stand in, marked as
 * assumed, as they do in the plan; of a fact of the room that nobody has given nothing is said but that it is to be found out.
 */
export function firstAnswer(asTyped: Kitchen): readonly FirstLine[] {
  const region = regionPack(asTyped.region)
  const kitchen = assumeProductDefaults(asTyped, region)
  return [
    ...runLines(kitchen),
    ...tallLines(kitchen),
    ...legLines(kitchen),
    ...dishwasherLines(kitchen),
    ...drillLines(kitchen, region),
    ...bookLines(kitchen, region),
    ...borrowLines(kitchen),
    ...strikeLines(kitchen),
    ...measureLines(kitchen),
    ...measuredLines(asTyped),
  ]
}
