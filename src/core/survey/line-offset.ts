import { type Basis, type Figure, hasValue, known, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import { carriedOffsets, meanOf } from './carried'

const theLine: Basis = { kind: 'geometry', why: 'the first line is height 0: everything is measured from it' }

/**
 * Height of a level line above the first one. The first line is 0, exactly, whatever was typed for it; `line` means the
 * first one where none is called that. Where nothing was typed it is carried on from a line before it, by marks read from
 * both.
 */
export function lineOffset({ lines }: Pick<Kitchen, 'lines'>, id: string): Figure {
  const at = lines.findIndex((line) => line.id === id)
  const line = lines[at]
  if (at === 0 || (line === undefined && id === 'line')) return known(0, 0, 'mm', [], theLine)
  if (line === undefined) return unknown('mm', [factId('lines', id, 'offset')])
  if (hasValue(line.offset) || line.carried.length === 0) return line.offset
  const before = { lines: lines.slice(0, at) }
  return meanOf(carriedOffsets(line, (other) => lineOffset(before, other)))
}
