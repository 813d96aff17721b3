/** A text to be written on the picture, in CSS pixels from its top left. */
export interface Wanted {
  readonly id: string
  readonly width: number
  readonly height: number
  /** Spots it may belong to, the best first. */
  readonly anchors: readonly Spot[]
  /** Where it likes to be: over its spot, above it, below it, or beside it. */
  readonly likes: 'on' | 'above' | 'below' | 'right'
  /** Raised by so much, so that a slanting line under it isn't touched, px. */
  readonly lift?: number
  /** Keeps off lines on the wall too, except its own. */
  readonly mindsLines?: boolean
  /** Left out rather than moved aside. */
  readonly isFixed?: boolean
  /** Gets a thin line to its spot when it had to move. */
  readonly hasLeader?: boolean
}
export interface Spot {
  readonly x: number
  readonly y: number
}
export interface Rectangle {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}
export interface Segment {
  readonly from: Spot
  readonly to: Spot
  /** Of an edge that only texts about lines keep off: the text that belongs to it and may touch it. */
  readonly of?: string
}
/** Where a text stands: its rectangle, and a thin line to its spot when it had to move away from it. */
export interface Placed extends Rectangle {
  readonly id: string
  readonly leader: Segment | null
}

/** Between a text and what it belongs to, and at least between any two, px. */
const GAP = 3
/** A text further from its spot than this gets a line to it, px. */
const NEAR = 16
const SHIFTS = [0, 1, -1, 2, -2, 3, -3, 4, -4] as const

/**
 * Writes each text where it meets no other text, no fixing mark and no edge of the part in hand, moving it aside if it
 * must. Earlier ones choose first. One that finds no room is left out: what it says is in the words beside the picture.
 */
export function placeLabels(
  wanted: readonly Wanted[],
  bounds: Rectangle,
  marks: readonly Rectangle[],
  edges: readonly Segment[],
  gap = GAP,
): readonly Placed[] {
  const taken: Rectangle[] = []
  const placed: Placed[] = []
  for (const label of wanted) {
    const found = spotsFor(label, gap).find(
      ({ rectangle }) =>
        isWithin(rectangle, bounds) &&
        !marks.some((mark) => overlap(rectangle, mark, GAP)) &&
        !taken.some((other) => overlap(rectangle, other, gap)) &&
        !edges.some((edge) => minds(label, edge) && crosses(edge, rectangle)),
    )
    if (found === undefined) continue
    taken.push(found.rectangle)
    placed.push({
      id: label.id,
      ...found.rectangle,
      leader: found.isMoved && label.hasLeader === true ? leaderTo(found.anchor, found.rectangle) : null,
    })
  }
  return placed
}

const minds = (label: Wanted, edge: Segment) =>
  edge.of === undefined || (label.mindsLines === true && edge.of !== label.id)

interface Possible {
  readonly rectangle: Rectangle
  readonly anchor: Spot
  readonly isMoved: boolean
}

/** Every place a text may stand, best first: at each spot as it likes, then moved up or down, then beside. */
function spotsFor(label: Wanted, gap: number): readonly Possible[] {
  const { width, height, likes, lift = 0 } = label
  const first = (a: Spot): Spot => {
    if (likes === 'above') return { x: a.x - width / 2, y: a.y - height - GAP - lift }
    if (likes === 'below') return { x: a.x - width / 2, y: a.y + GAP + lift }
    if (likes === 'right') return { x: a.x + 2 * GAP, y: a.y - height / 2 }
    return { x: a.x - width / 2, y: a.y - height / 2 }
  }
  const at = (anchor: Spot, p: Spot, isMoved: boolean): Possible => ({
    anchor,
    isMoved,
    rectangle: { ...p, width, height },
  })
  const under = (a: Spot): Spot => ({ x: a.x - width / 2, y: a.y + GAP + lift })
  const straight = [
    ...label.anchors.map((a) => at(a, first(a), false)),
    ...(label.mindsLines === true ? label.anchors.map((a) => at(a, under(a), false)) : []),
  ]
  if (label.isFixed === true) return straight
  const moved = label.anchors.flatMap((a) =>
    SHIFTS.flatMap((n) =>
      [0, -1, 1].map((m) => {
        const p = first(a)
        return at(a, { x: p.x + m * (width / 2 + 4 * GAP), y: p.y + n * (height + gap) }, true)
      }),
    ),
  )
  return [...straight, ...moved]
}

const isWithin = (r: Rectangle, b: Rectangle) =>
  r.x >= b.x && r.y >= b.y && r.x + r.width <= b.x + b.width && r.y + r.height <= b.y + b.height

export function overlap(a: Rectangle, b: Rectangle, gap = 0): boolean {
  return (
    a.x < b.x + b.width + gap &&
    b.x < a.x + a.width + gap &&
    a.y < b.y + b.height + gap &&
    b.y < a.y + a.height + gap
  )
}

/** Whether a segment goes through a rectangle drawn in by 2 px, which is as much as a text may cover an edge. */
export function crosses({ from, to }: Segment, r: Rectangle): boolean {
  let [enter, leave] = [0, 1]
  for (const [p, d, low, high] of [
    [from.x, to.x - from.x, r.x + 2, r.x + r.width - 2],
    [from.y, to.y - from.y, r.y + 2, r.y + r.height - 2],
  ] as const) {
    if (Math.abs(d) < 1e-9) {
      if (p <= low || p >= high) return false
      continue
    }
    const [a, z] = d > 0 ? [(low - p) / d, (high - p) / d] : [(high - p) / d, (low - p) / d]
    enter = Math.max(enter, a)
    leave = Math.min(leave, z)
    if (enter >= leave) return false
  }
  return true
}

function leaderTo(anchor: Spot, r: Rectangle): Segment | null {
  const to = {
    x: Math.max(r.x, Math.min(r.x + r.width, anchor.x)),
    y: Math.max(r.y, Math.min(r.y + r.height, anchor.y)),
  }
  return Math.hypot(to.x - anchor.x, to.y - anchor.y) > NEAR ? { from: anchor, to } : null
}
