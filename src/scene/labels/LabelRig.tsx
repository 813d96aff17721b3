import { useFrame, useThree } from '@react-three/fiber'
import { type RefObject, useEffect, useRef } from 'react'
import { type Camera, Vector3 } from 'three'
import type { RoomPoint } from '../../core/plan/types'
import type { Flag } from './flags-of'
import type { Label } from './labels-of'
import {
  type Level,
  type Placed,
  placeLabels,
  type Rectangle,
  type Segment,
  type Spot,
  type Wanted,
} from './place-labels'
import { GAP, NARROW, thinnedOut } from './thin-out'

/** Things on the picture that no text may cover. */
export interface LabelObstacles {
  /** Fixing points: round marks. */
  readonly marks: readonly RoomPoint[]
  /** Edges of the part in hand. */
  readonly edges: readonly (readonly [RoomPoint, RoomPoint])[]
  /** Plates on the walls, by their corners. */
  readonly plates: readonly (readonly RoomPoint[])[]
}

/** Half the size of a round mark, px. */
const MARK = 8
const MARGIN = 6
/** A flag stands clear of the outline round its spot, px. */
const FLAG_LIFT = 10
const scratch = new Vector3()

/** Millimetres of the room to pixels of the picture; null behind the eye. */
function project(p: RoomPoint, camera: Camera, width: number, height: number): Spot | null {
  scratch.set(p.x / 1000, p.z / 1000, -p.y / 1000).project(camera)
  if (scratch.z > 1 || scratch.z < -1) return null
  return { x: ((scratch.x + 1) / 2) * width, y: ((1 - scratch.y) / 2) * height }
}

function isSpot(spot: Spot | null): spot is Spot {
  return spot !== null
}

/** After each frame puts every text of the overlay where it belongs; one overlay, no text in the 3D. */
export function LabelRig({
  labels: all,
  flags,
  obstacles,
  overlay,
  covered,
}: {
  labels: readonly Label[]
  flags: readonly Flag[]
  obstacles: LabelObstacles
  overlay: RefObject<HTMLDivElement | null>
  /** What lies over the picture: no text goes under it. */
  covered: readonly RefObject<HTMLElement | null>[]
}) {
  const invalidate = useThree((s) => s.invalidate)
  const sizes = useRef(new Map<string, { width: number; height: number }>())
  useEffect(() => {
    if (all.length >= 0 && flags.length >= 0) invalidate()
  }, [all, flags, invalidate])

  useFrame(({ camera, size }) => {
    const layer = overlay.current
    if (layer === null) return
    const isNarrow = size.width < NARROW
    const labels = thinnedOut(all, size.width)
    const shown = (p: RoomPoint) => project(p, camera, size.width, size.height)
    const nodes = new Map(
      [...layer.querySelectorAll<HTMLElement>('[data-label]')].map((n) => [n.dataset['label'] ?? '', n]),
    )
    const flagged = flags.flatMap((flag): Wanted[] => {
      const node = nodes.get(flag.id)
      const anchor = shown(flag.spot.at)
      if (node === undefined || anchor === null) return []
      const { offsetWidth: width, offsetHeight: height } = node
      return [
        { id: flag.id, width, height, anchors: [anchor], likes: 'above', lift: FLAG_LIFT, hasLeader: true },
      ]
    })
    const wanted = labels.flatMap((label): Wanted[] => {
      const node = nodes.get(label.id)
      if (node === undefined) return []
      const { width, height } = sizeOf(sizes.current, node, label, isNarrow)
      const anchors = label.anchors.map(shown).filter(isSpot)
      if (label.fits !== null && !isWideEnough(label.fits.map(shown), width)) return []
      const [from = null, to = null] = (label.along ?? []).map(shown)
      return [
        {
          id: label.id,
          width,
          height,
          anchors,
          likes: label.likes,
          lift: liftOver(from, to, width),
          mindsLines: label.along !== null,
          isFixed: label.moves === 'no',
          hasLeader: label.moves === 'with-leader',
          ...levelOf(label, shown),
        },
      ]
    })
    const plates = obstacles.plates.map((p) => around(p.map(shown).filter(isSpot))).filter((r) => r !== null)
    const over = covered.flatMap((box) => rectangleOver(box.current, layer))
    const marks = [...obstacles.marks.map(shown).filter(isSpot).map(round), ...plates, ...over]
    const edges = obstacles.edges.flatMap(([a, b]): Segment[] => {
      const [from, to] = [shown(a), shown(b)]
      return from === null || to === null ? [] : [{ from, to }]
    })
    const lines = labels.flatMap((label): Segment[] => {
      const [from, to] = label.along === null ? [null, null] : label.along.map(shown)
      return from == null || to == null ? [] : [{ from, to, of: label.id }]
    })
    const unnamed = all.flatMap((l) => (labels.includes(l) ? [] : (levelOf(l, shown).level ?? [])))
    const bounds = { x: MARGIN, y: MARGIN, width: size.width - 2 * MARGIN, height: size.height - 2 * MARGIN }
    // What the step is about is written first, then the flags, then the rest.
    const strong = new Set(labels.filter((l) => l.isStrong).map((l) => l.id))
    const inOrder = [
      ...wanted.filter((w) => strong.has(w.id)),
      ...flagged,
      ...wanted.filter((w) => !strong.has(w.id)),
    ]
    write(
      layer,
      nodes,
      bounds.width,
      placeLabels(inOrder, bounds, marks, [...edges, ...lines], isNarrow ? GAP.narrow : GAP.wide, unnamed),
    )
  }, -1)
  return null
}

/** The level line a text names, as it is drawn. */
function levelOf({ level, along }: Label, shown: (p: RoomPoint) => Spot | null): { level?: Level } {
  const [from = null, to = null] = (along ?? []).map(shown)
  if (level === undefined || from === null || to === null) return {}
  const [a, b] = level.within.map((p) => shown(p)?.x)
  const within = [Math.min(a ?? -Infinity, b ?? -Infinity), Math.max(a ?? Infinity, b ?? Infinity)] as const
  return { level: { ...level, within, line: { from, to }, ends: level.ends.map(shown).filter(isSpot) } }
}

/** Where an element lies over the picture. */
function rectangleOver(element: HTMLElement | null, layer: HTMLElement): readonly Rectangle[] {
  if (element === null) return []
  const [a, b] = [element.getBoundingClientRect(), layer.getBoundingClientRect()]
  return [{ x: a.x - b.x, y: a.y - b.y, width: a.width, height: a.height }]
}

function round({ x, y }: Spot): Rectangle {
  return { x: x - MARK, y: y - MARK, width: 2 * MARK, height: 2 * MARK }
}

function around(spots: readonly Spot[]): Rectangle | null {
  if (spots.length === 0) return null
  const [xs, ys] = [spots.map((s) => s.x), spots.map((s) => s.y)]
  const [x, y] = [Math.min(...xs), Math.min(...ys)]
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
}

/** How far a slanting line rises over half the width of the text on it. */
function liftOver(a: Spot | null, b: Spot | null, width: number): number {
  if (a === null || b === null || Math.abs(a.x - b.x) < 1) return 0
  return Math.min(40, (Math.abs((a.y - b.y) / (a.x - b.x)) * width) / 2)
}

function isWideEnough([a, b]: readonly (Spot | null)[], width: number): boolean {
  return a != null && b != null && Math.abs(a.x - b.x) >= width
}

/** Measured once for each text; the fonts are packaged, and until they are in, nothing is kept. */
function sizeOf(
  kept: Map<string, { width: number; height: number }>,
  node: HTMLElement,
  label: Label,
  isNarrow: boolean,
): { width: number; height: number } {
  const key = `${isNarrow} ${label.isStrong} ${label.text}`
  const known = kept.get(key)
  if (known !== undefined) return known
  const size = { width: node.offsetWidth, height: node.offsetHeight }
  const areFontsIn = document.fonts === undefined || document.fonts.status === 'loaded'
  if (size.width > 0 && areFontsIn) kept.set(key, size)
  return size
}

function write(
  layer: HTMLElement,
  nodes: ReadonlyMap<string, HTMLElement>,
  width: number,
  placed: readonly Placed[],
): void {
  const at = new Map(placed.map((p) => [p.id, p]))
  for (const [id, node] of nodes) {
    const p = at.get(id)
    node.style.visibility = p === undefined ? 'hidden' : 'visible'
    if (p === undefined) continue
    node.style.transform = `translate(${p.x.toFixed(1)}px, ${p.y.toFixed(1)}px)`
    // What is said at a flag goes where there is room for it.
    node.dataset['side'] = p.x > width / 2 ? 'left' : 'right'
  }
  for (const line of layer.querySelectorAll<SVGLineElement>('[data-leader]')) {
    const leader = at.get(line.dataset['leader'] ?? '')?.leader ?? null
    line.style.visibility = leader === null ? 'hidden' : 'visible'
    if (leader === null) continue
    line.setAttribute('x1', leader.from.x.toFixed(1))
    line.setAttribute('y1', leader.from.y.toFixed(1))
    line.setAttribute('x2', leader.to.x.toFixed(1))
    line.setAttribute('y2', leader.to.y.toFixed(1))
  }
}
