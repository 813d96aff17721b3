import type { RoomPoint } from '../../core/plan/types'
import type { Placed, Spot } from './place-labels'

/** A text as it is written, and what it is written with. */
export interface Text {
  readonly placed: Placed
  readonly node: HTMLElement
  readonly line: SVGLineElement | null
  /** The spot it is about, in the room. */
  readonly point: RoomPoint
  /** It goes with the unit on its way. */
  readonly rides: boolean
}

/** Writes every text where it was placed, with its leader, and hides those that found no room. */
export function writeTexts(
  layer: HTMLElement,
  nodes: ReadonlyMap<string, HTMLElement>,
  width: number,
  placed: readonly Placed[],
  about: (p: Placed) => Pick<Text, 'point' | 'rides'> | null,
): readonly Text[] {
  const at = new Map(placed.map((p) => [p.id, p]))
  const lines = new Map<string, SVGLineElement>()
  for (const line of layer.querySelectorAll<SVGLineElement>('[data-leader]')) {
    const id = line.dataset['leader'] ?? ''
    lines.set(id, line)
    setLeader(line, at.get(id)?.leader ?? null, 0, 0)
  }
  const texts: Text[] = []
  for (const [id, node] of nodes) {
    const p = at.get(id)
    node.style.visibility = p === undefined ? 'hidden' : 'visible'
    if (p === undefined) continue
    node.style.transform = shiftTo(p.x, p.y)
    // What is said at a flag goes where there is room for it.
    node.dataset['side'] = p.x > width / 2 ? 'left' : 'right'
    const spot = about(p)
    if (spot !== null) texts.push({ placed: p, node, line: lines.get(id) ?? null, ...spot })
  }
  return texts
}

/** Moves a text as far as its spot has moved since it was placed; out of sight with it. */
export function moveText({ placed, node, line }: Text, spot: Spot | null): void {
  node.style.visibility = spot === null ? 'hidden' : 'visible'
  const [dx, dy] = spot === null ? [0, 0] : [spot.x - placed.anchor.x, spot.y - placed.anchor.y]
  if (spot !== null) node.style.transform = shiftTo(placed.x + dx, placed.y + dy)
  if (line !== null && placed.leader !== null) setLeader(line, spot === null ? null : placed.leader, dx, dy)
}

const shiftTo = (x: number, y: number) => `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px)`

function setLeader(line: SVGLineElement, leader: Placed['leader'], dx: number, dy: number): void {
  line.style.visibility = leader === null ? 'hidden' : 'visible'
  if (leader === null) return
  line.setAttribute('x1', (leader.from.x + dx).toFixed(1))
  line.setAttribute('y1', (leader.from.y + dy).toFixed(1))
  line.setAttribute('x2', (leader.to.x + dx).toFixed(1))
  line.setAttribute('y2', (leader.to.y + dy).toFixed(1))
}
