/** How high one block of the sheet is, in any one unit: what stands over its rows, each of them, and what follows. */
export interface Height {
  readonly head: number
  readonly rows: readonly number[]
  readonly foot: number
}

/** A block on a page, or as many of its rows as go on it. */
export interface Piece {
  readonly block: number
  readonly from: number
  readonly to: number
}

/** A table is not begun for fewer rows than these. */
const LEAST_ROWS = 2

/**
 * Lays blocks on pages, one after the other. A table that does not fit goes on over the page, between two rows, with its
 * head again; everything else stays whole.
 */
export function pagesOf(blocks: readonly Height[], room: number): readonly (readonly Piece[])[] {
  const pages: Piece[][] = [[]]
  let left = room
  const put = (piece: Piece, height: number) => {
    pages.at(-1)?.push(piece)
    left -= height
  }
  const turn = () => {
    if (pages.at(-1)?.length !== 0) pages.push([])
    left = room
  }
  blocks.forEach(({ head, rows, foot }, block) => {
    let from = 0
    do {
      let to = rowsThatFit(rows, from, left - head, foot)
      if (to - from < Math.min(LEAST_ROWS, rows.length - from) || (rows.length === 0 && head > left)) {
        turn()
        to = Math.max(rowsThatFit(rows, from, left - head, foot), Math.min(from + 1, rows.length))
      }
      const height = rows.slice(from, to).reduce((sum, row) => sum + row, head)
      put({ block, from, to }, to === rows.length ? height + foot : height)
      from = to
    } while (from < rows.length)
  })
  return pages
}

/** The row up to which they fit; what follows the last of them has to fit with it. */
function rowsThatFit(rows: readonly number[], from: number, room: number, foot: number): number {
  let left = room
  let to = from
  while (to < rows.length) {
    const row = rows[to] ?? 0
    if (row + (to === rows.length - 1 ? foot : 0) > left) break
    left -= row
    to += 1
  }
  return to
}
