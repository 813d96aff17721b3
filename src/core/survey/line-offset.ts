import { type Basis, type Figure, known, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'

const theLine: Basis = { kind: 'geometry', why: 'the first line is height 0: everything is measured from it' }

/**
 * Height of a level line above the first one. The first line is 0, exactly, whatever was typed for it; `line` means the
 * first one where none is called that.
 */
export function lineOffset({ lines }: Pick<Kitchen, 'lines'>, id: string): Figure {
  const at = lines.findIndex((line) => line.id === id)
  const line = lines[at]
  if (at === 0 || (line === undefined && id === 'line')) return known(0, 0, 'mm', [], theLine)
  return line === undefined ? unknown('mm', [factId('lines', id, 'offset')]) : line.offset
}
