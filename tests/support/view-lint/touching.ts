import { idOf, type Pixels } from './passes'

/** What a text may cover of another text, a mark or an edge, px. */
const MOST = 2

interface Round {
  readonly x: number
  readonly y: number
  readonly radius: number
}
interface Own {
  /** The part in hand drawn alone, and the whole picture, in ids; rows from the bottom up. */
  readonly own: Pixels
  readonly full: Pixels
  readonly active: ReadonlySet<number>
}

/** The texts that stand over a picture, and what each of them lies on that it must not. */
export function touchingLabels(
  host: HTMLElement,
  marks: readonly Round[],
  part: Own | null,
): { readonly count: number; readonly touching: readonly string[] } {
  const shown = [...host.querySelectorAll<HTMLElement>('.scene-labels [data-label]')]
    .filter((n) => n.style.visibility === 'visible')
    .map((n) => {
      const flag = n.querySelector<HTMLElement>('.scene-flag-letter') ?? n
      const { left, top, right, bottom } = flag.getBoundingClientRect()
      return { id: n.dataset['label'] ?? '', left, top, right, bottom }
    })
  const edge = part === null ? null : edgeOf(part)
  const touching: string[] = []
  for (const [i, a] of shown.entries()) {
    for (const b of shown.slice(i + 1)) {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left)
      const up = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top)
      if (across > MOST && up > MOST) touching.push(`${a.id} on ${b.id}`)
    }
    for (const m of marks) {
      const dx = Math.max(a.left - m.x, 0, m.x - a.right)
      const dy = Math.max(a.top - m.y, 0, m.y - a.bottom)
      if (Math.hypot(dx, dy) < m.radius - MOST) touching.push(`${a.id} on a fixing mark`)
    }
    if (edge?.(a.left + MOST, a.top + MOST, a.right - MOST, a.bottom - MOST) === true) {
      touching.push(`${a.id} across the edge of the part in hand`)
    }
  }
  return { count: shown.length, touching }
}

/** Says whether a rectangle of the page holds a point of the outline of the part in hand that is seen. */
function edgeOf({ own, full, active }: Own): (x0: number, y0: number, x1: number, y1: number) => boolean {
  const { width, height } = own
  const isIn = (pixels: Pixels, x: number, y: number) => {
    const at = (y * width + x) * 4
    return active.has(idOf(pixels.data[at] ?? 0, pixels.data[at + 1] ?? 0, pixels.data[at + 2] ?? 0))
  }
  return (x0, y0, x1, y1) => {
    for (let top = Math.ceil(Math.max(1, y0)); top < Math.min(height - 1, y1); top += 1) {
      const y = height - 1 - top
      for (let x = Math.ceil(Math.max(1, x0)); x < Math.min(width - 1, x1); x += 1) {
        if (!isIn(own, x, y) || !isIn(full, x, y)) continue
        if (!isIn(own, x - 1, y) || !isIn(own, x + 1, y) || !isIn(own, x, y - 1) || !isIn(own, x, y + 1))
          return true
      }
    }
    return false
  }
}
