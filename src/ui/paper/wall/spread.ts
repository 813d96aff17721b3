/** How wide a text of the figures' letter is. */
export const textWidth = (text: string, size: number): number => text.length * size * 0.62

/** The longest line under the scale bar, in letters of full size. */
export const SCALE_BAR_LETTERS = 21

/** Labels in one column, moved just far enough that none touches the next; a crowd stays centred on where it wanted to be. */
export function spread(wanted: readonly number[], apart: number): readonly number[] {
  const order = wanted.map((at, i) => ({ at, i })).sort((a, b) => a.at - b.at || a.i - b.i)
  const crowds: { members: number[]; start: number }[] = []
  for (const { at, i } of order) {
    crowds.push({ members: [i], start: at })
    for (
      let last = crowds.at(-1), before = crowds.at(-2);
      last && before;
      last = crowds.at(-1), before = crowds.at(-2)
    ) {
      if (before.start + before.members.length * apart <= last.start) break
      const members = [...before.members, ...last.members]
      const middle =
        members.reduce((sum, m, k) => sum + (wanted[m] as number) - k * apart, 0) / members.length
      crowds.splice(-2, 2, { members, start: middle })
    }
  }
  const out = new Array<number>(wanted.length)
  for (const { members, start } of crowds) {
    members.forEach((m, k) => {
      out[m] = start + k * apart
    })
  }
  return out
}

/** The row each label of a line goes to so that none touches the next in its row; first come, first row. */
export function stagger(
  centres: readonly number[],
  widths: readonly number[],
  gap: number,
): readonly number[] {
  const ends: number[] = []
  const order = centres.map((at, i) => ({ at, i })).sort((a, b) => a.at - b.at || a.i - b.i)
  const rows = new Array<number>(centres.length)
  for (const { at, i } of order) {
    const half = (widths[i] as number) / 2
    let row = ends.findIndex((end) => end + gap <= at - half)
    if (row < 0) row = ends.length
    ends[row] = at + half
    rows[i] = row
  }
  return rows
}

export interface Box {
  readonly x: number
  readonly y: number
  readonly w: number
  readonly h: number
}

export function overlaps(a: Box, b: Box): boolean {
  return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h
}

export interface Anchor {
  readonly x: number
  readonly y: number
  /** Size of its label. */
  readonly w: number
  readonly h: number
}

/**
 * A place beside each mark for its label, touching no mark and no other label: below right if that is free, then round
 * the mark, then further out; nearer to its own mark than to any other, as long as there is such a place. y grows downwards; the place is the label's top left corner.
 */
export function placeLabels(
  anchors: readonly Anchor[],
  radius: number,
  taken: readonly Box[],
): readonly Box[] {
  const marks = anchors.map((a) => ({ x: a.x - radius, y: a.y - radius, w: 2 * radius, h: 2 * radius }))
  const placed: Box[] = []
  for (const anchor of anchors) {
    const tries = candidates(anchor, radius)
    const isFree = (box: Box) => ![...marks, ...placed, ...taken].some((other) => overlaps(box, other))
    const isNearest = (box: Box) =>
      anchors.every((other) => other === anchor || distance(box, anchor) < distance(box, other))
    placed.push(tries.find((box) => isFree(box) && isNearest(box)) ?? tries.find(isFree) ?? (tries[0] as Box))
  }
  return placed
}

/** From a point to the nearest edge of a box. */
export function distance({ x, y, w, h }: Box, point: { readonly x: number; readonly y: number }): number {
  const dx = Math.max(x - point.x, 0, point.x - x - w)
  const dy = Math.max(y - point.y, 0, point.y - y - h)
  return Math.hypot(dx, dy)
}

function candidates({ x, y, w, h }: Anchor, radius: number): readonly Box[] {
  return [1, 2, 3, 4].flatMap((ring) => {
    const r = radius * (0.9 + 0.1 * ring) + (ring - 1) * h * 0.6
    const beside = [
      { x: x + r, y: y - h / 2 },
      { x: x + r * 0.75, y: y + r * 0.75 },
      { x: x - w / 2, y: y + r },
      { x: x - w / 2, y: y - r - h },
      { x: x - r - w, y: y - h / 2 },
      { x: x - r * 0.75 - w, y: y + r * 0.75 },
      { x: x + r * 0.75, y: y - r * 0.75 - h },
      { x: x - r * 0.75 - w, y: y - r * 0.75 - h },
    ]
    return beside.map((at) => ({ ...at, w, h }))
  })
}
