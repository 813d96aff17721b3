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
  /** Nearer to its own mark than to any other: somebody drills by it. */
  readonly isNearest?: boolean
  /** It names a level line: it stays on its own side of every other level of that wall. */
  readonly level?: Level
}
export interface Level {
  readonly wall: string
  /** Its height, mm. */
  readonly z: number
  /** As it is drawn. */
  readonly line: Segment
  /** How far across the picture its wall goes there. */
  readonly within: readonly [from: number, to: number]
  /** Those of its ends that show: beside them there is room where lines lie close together. */
  readonly ends: readonly Spot[]
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
/** What texts keep off. */
export interface Obstacle extends Rectangle {
  /** The mark of a fixing: a number beside it is taken for its own. */
  readonly isHole?: boolean
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
  /** The spot it is about, as it was given. */
  readonly anchor: Spot
  readonly leader: Segment | null
}

/** Between a text and what it belongs to, and at least between any two, px. */
const GAP = 3
/** A text further from its spot than this gets a line to it, px. */
const NEAR = 16
const CLOSE = 8
/** How far off the end of its line a text stands, px: so that its leader shows; and how far up or down, in halves of its height. */
const OFF_END = [20, 56] as const
const BESIDE = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6, 7, -7, 8, -8] as const
const SHIFTS = [0, 1, -1, 2, -2, 3, -3, 4, -4] as const

/**
 * Writes each text where it meets no other text, no fixing mark and no edge of the part in hand, moving it aside if it
 * must. Earlier ones choose first. One that finds no room is left out: what it says is in the words beside the picture.
 */
export function placeLabels(
  wanted: readonly Wanted[],
  bounds: Rectangle,
  marks: readonly Obstacle[],
  edges: readonly Segment[],
  gap = GAP,
  /** Level lines that are drawn and get no name. */
  unnamed: readonly Level[] = [],
): readonly Placed[] {
  const levels = wanted.filter((w) => w.level !== undefined)
  const isLevel = new Set(levels.map((w) => w.id))
  const inTurn = (order: readonly Wanted[]) => placedInTurn(order, bounds, marks, edges, gap, unnamed)
  let best = inTurn(wanted)
  let most = best.filter((p) => isLevel.has(p.id)).length
  // Where one level keeps another from its place, more of them may find room from the top down, or from the bottom up.
  for (const way of [-1, 1]) {
    if (most === levels.length) break
    const sorted = [...levels].sort(
      (a, b) => Number(a.isFixed === true) - Number(b.isFixed === true) || way * (heightOf(a) - heightOf(b)),
    )
    const tried = inTurn(wanted.map((w) => (isLevel.has(w.id) ? (sorted.shift() ?? w) : w)))
    const count = tried.filter((p) => isLevel.has(p.id)).length
    if (count > most) [best, most] = [tried, count]
  }
  return best
}

const heightOf = (w: Wanted) => w.level?.z ?? 0

function placedInTurn(
  wanted: readonly Wanted[],
  bounds: Rectangle,
  marks: readonly Obstacle[],
  edges: readonly Segment[],
  gap: number,
  unnamed: readonly Level[],
): readonly Placed[] {
  const taken: Rectangle[] = []
  const placed: Placed[] = []
  const named: { readonly level: Level; readonly rectangle: Rectangle }[] = []
  const levels = [...wanted.flatMap((w) => w.level ?? []), ...unnamed]
  for (const label of wanted) {
    const { level } = label
    const found = spotsFor(label, gap).find(
      (spot) =>
        isWithin(spot.rectangle, bounds) &&
        !marks.some((mark) => overlap(spot.rectangle, mark, GAP)) &&
        !taken.some((other) => overlap(spot.rectangle, other, gap)) &&
        !edges.some((edge) => minds(label, edge) && crosses(edge, spot.rectangle)) &&
        (label.isNearest !== true || isNearestToOwn(spot, marks)) &&
        (level === undefined || keepsOrder(spot, level, levels, named)),
    )
    if (found === undefined) continue
    const { rectangle } = found
    taken.push(rectangle)
    if (level !== undefined) named.push({ level, rectangle })
    placed.push({
      id: label.id,
      ...rectangle,
      anchor: found.anchor,
      leader:
        found.isMoved && label.hasLeader === true ? leaderTo(found.anchor, rectangle, nearOf(label)) : null,
    })
  }
  return placed
}

/** Whether no other mark is nearer to a text than its own, nor lies on the way of its leader. */
function isNearestToOwn({ rectangle, anchor, isMoved }: Possible, marks: readonly Obstacle[]): boolean {
  const holes = marks.filter((m) => m.isHole === true)
  const middles = holes.map((m) => ({ x: m.x + m.width / 2, y: m.y + m.height / 2 }))
  const from = (p: Spot) => Math.hypot(p.x - anchor.x, p.y - anchor.y)
  const own = middles.reduce<Spot | null>((a, b) => (a === null || from(b) < from(a) ? b : a), null)
  const leader = isMoved ? leaderTo(anchor, rectangle, NEAR) : null
  if (own === null) return true
  return middles.every(
    (other, i) =>
      other === own ||
      (away(other, rectangle) >= away(own, rectangle) &&
        (leader === null || !crosses(leader, holes[i] as Rectangle))),
  )
}

/** From a place to the nearest of a rectangle, px. */
const away = ({ x, y }: Spot, r: Rectangle): number =>
  Math.hypot(Math.max(r.x - x, 0, x - r.x - r.width), Math.max(r.y - y, 0, y - r.y - r.height))

/** Levels nearer each other than this are one, mm or px. */
const ONE_LEVEL = 1

/**
 * Whether the name of a level stands above the names of all lower ones of its wall and under those of higher ones, with no
 * other line between it and its own, nor across its leader: somebody marks a wall by it.
 */
function keepsOrder(
  { rectangle, anchor, isMoved }: Possible,
  own: Level,
  levels: readonly Level[],
  named: readonly { readonly level: Level; readonly rectangle: Rectangle }[],
): boolean {
  const isOther = (l: Level) => l.wall === own.wall && Math.abs(l.z - own.z) > ONE_LEVEL
  const leader = isMoved ? leaderTo(anchor, rectangle, 0) : null
  const { x, width } = rectangle
  // Round the corner it would name what is on the next wall.
  if (isMoved && (x < own.within[0] || x + width > own.within[1])) return false
  return (
    named.every((n) => !isOther(n.level) || own.z > n.level.z === rectangle.y < n.rectangle.y) &&
    levels.every(
      (l) =>
        !isOther(l) ||
        (isOnOwnSide(rectangle, own.line, l.line) && (leader === null || !doCross(leader, l.line))),
    )
  )
}

/** Where the other line runs over or under a rectangle, it is not between that and the rectangle's own line. */
function isOnOwnSide({ x, y, width, height }: Rectangle, own: Segment, other: Segment): boolean {
  const [left, right] = [other.from.x, other.to.x].sort((a, b) => a - b) as [number, number]
  const [from, to] = [Math.max(left, x - GAP), Math.min(right, x + width + GAP)]
  if (from >= to) return true
  return [from, to].every((at) => {
    const line = heightAt(other, at)
    const under = line - heightAt(own, at)
    if (Math.abs(under) < ONE_LEVEL) return true
    return under > 0 ? y + height <= line + ONE_LEVEL : y >= line - ONE_LEVEL
  })
}

/** How far down a line is at some place across the picture, on past its ends too. */
function heightAt({ from, to }: Segment, x: number): number {
  const run = to.x - from.x
  return Math.abs(run) < ONE_LEVEL ? from.y : from.y + ((to.y - from.y) * (x - from.x)) / run
}

function doCross(a: Segment, b: Segment): boolean {
  const side = ({ from, to }: Segment, p: Spot) =>
    Math.sign((to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x))
  return side(a, b.from) * side(a, b.to) < 0 && side(b, a.from) * side(b, a.to) < 0
}

/** Levels may lie so close that what is near one is near the next. */
const nearOf = ({ level }: Wanted) => (level === undefined ? NEAR : CLOSE)

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
  const { line, ends = [] } = label.level ?? {}
  const beside = ends.flatMap((e) =>
    [...OFF_END, -width / 2, -0.9 * width].flatMap((off) =>
      BESIDE.map((n) => {
        const isRight = line !== undefined && 2 * e.x > line.from.x + line.to.x
        const x = isRight ? e.x + off : e.x - off - width
        return at(e, { x, y: e.y - height / 2 + (n * height) / 2 }, true)
      }),
    ),
  )
  const moved = label.anchors.flatMap((a) =>
    SHIFTS.flatMap((n) =>
      [0, -1, 1].map((m) => {
        const p = first(a)
        return at(a, { x: p.x + m * (width / 2 + 4 * GAP), y: p.y + n * (height + gap) }, true)
      }),
    ),
  )
  return [...straight, ...beside, ...moved]
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

/** A text may cover 2 px of an edge, and half of that is how wide the edge itself is drawn. */
const COVER = 0.5

/** Whether a segment goes through a rectangle drawn in by as much as a text may cover an edge. */
export function crosses({ from, to }: Segment, r: Rectangle): boolean {
  let [enter, leave] = [0, 1]
  for (const [p, d, low, high] of [
    [from.x, to.x - from.x, r.x + COVER, r.x + r.width - COVER],
    [from.y, to.y - from.y, r.y + COVER, r.y + r.height - COVER],
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

function leaderTo(anchor: Spot, r: Rectangle, near: number): Segment | null {
  const to = {
    x: Math.max(r.x, Math.min(r.x + r.width, anchor.x)),
    y: Math.max(r.y, Math.min(r.y + r.height, anchor.y)),
  }
  return Math.hypot(to.x - anchor.x, to.y - anchor.y) > near ? { from: anchor, to } : null
}
