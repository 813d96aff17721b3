import { type Basis, type Figure, hasValue, quantise, unknown, type ValueFigure } from '../figure'
import { mergedIds } from '../ids'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import { citing, sum } from './sum'

/**
 * Carrying a level line on, as a surveyor books levels: one mark is read from the old line and then from the new one (fore
 * sight and back sight). The new line lies above the old by what it reads down to the mark, less what the old one read.
 * A mark over the line, such as the underside of a board or a ceiling, is read with the staff upside down: up, not down.
 */

type Line = Kitchen['lines'][number]
type Mark = Line['carried'][number]

const byMarks: Basis = { kind: 'geometry', why: 'carried on from another line by marks read from both' }

function level(from: Figure, { up, down }: Mark['there'], sense: 1 | -1): Figure {
  if (!hasValue(up) && !hasValue(down)) {
    const ways = mergedIds([up.from, down.from])
    return sum('mm', byMarks, [from, unknown('mm', ways)])
  }
  const adds = hasValue(up) === (sense === 1)
  const reading = hasValue(up) ? up : down
  return adds ? sum('mm', byMarks, [from, reading]) : sum('mm', byMarks, [from], [reading])
}

/** Height of a line above the first by each mark it was carried by; `offsetOf`: of a line before it. */
export function carriedOffsets(
  { id, carried }: Pick<Line, 'id' | 'carried'>,
  offsetOf: (line: string) => Figure,
): readonly Figure[] {
  return carried.map((mark) => {
    const atMark = level(offsetOf(mark.line), mark.there, 1)
    return citing(level(atMark, mark.here, -1), [factId('lines', id, 'carried', mark.id, 'line')])
  })
}

function within(figures: readonly ValueFigure[]): { low: number; high: number } {
  const values = figures.map(({ value }) => value)
  return { low: Math.min(...values), high: Math.max(...values) }
}

/**
 * Midway between what the marks say, good to what reaches all of them: how far they miss one another is part of the
 * precision. A mark that was not read from both lines is left out, unless it is all there is.
 */
export function meanOf(offsets: readonly Figure[]): Figure {
  const read = offsets.filter(hasValue)
  if (read.length === 0) return offsets[0] ?? unknown('mm', [])
  const { low, high } = within(read)
  const value = (low + high) / 2
  const pm = Math.max(...read.map((one) => Math.abs(one.value - value) + one.pm))
  return {
    state: read.some(({ state }) => state === 'assumed') ? 'assumed' : 'known',
    value: quantise(value),
    pm: quantise(pm),
    unit: 'mm',
    basis: byMarks,
    from: mergedIds(read.map(({ from }) => from)),
  }
}

/** By how much the marks miss one another: the closing error. Null: fewer than two were read from both lines. */
export function spreadOf(offsets: readonly Figure[]): ValueFigure | null {
  const read = offsets.filter(hasValue)
  if (read.length < 2) return null
  const { low, high } = within(read)
  const from = mergedIds(read.map((one) => one.from))
  return { state: 'known', value: quantise(high - low), pm: 0, unit: 'mm', basis: byMarks, from }
}
