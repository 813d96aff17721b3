import { useFrame, useThree } from '@react-three/fiber'
import { type RefObject, useEffect, useRef } from 'react'
import { type Camera, Matrix4, Vector3 } from 'three'
import type { StandingUnit } from '../../core/plan/standing-at'
import type { RoomPoint } from '../../core/plan/types'
import type { Moment } from '../../core/staging/staging'
import { matrixOf } from '../Carried'
import { FRAME, type Now } from '../run'
import type { Flag } from './flags-of'
import type { Label } from './labels-of'
import {
  type Level,
  type Obstacle,
  placeLabels,
  type Rectangle,
  type Segment,
  type Spot,
  type Wanted,
} from './place-labels'
import { GAP, NARROW, thinnedOut } from './thin-out'
import { moveText, type Text, writeTexts } from './write-texts'

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
export const MARK = 8
const MARGIN = 6
/** A flag stands clear of the outline round its spot, px. */
const FLAG_LIFT = 10
/** While the camera goes, texts keep to their spots, and are placed anew once in so many frames and when it has come. */
const PLACED_EVERY = 8
const scratch = new Vector3()

/** Millimetres of the room to pixels of the picture; null behind the eye. `by`: moved so first, in the room. */
function project(
  p: RoomPoint,
  camera: Camera,
  width: number,
  height: number,
  by: Matrix4 | null,
): Spot | null {
  scratch.set(p.x, p.y, p.z)
  if (by !== null) scratch.applyMatrix4(by)
  scratch.set(scratch.x / 1000, scratch.z / 1000, -scratch.y / 1000).project(camera)
  if (scratch.z > 1 || scratch.z < -1) return null
  return { x: ((scratch.x + 1) / 2) * width, y: ((1 - scratch.y) / 2) * height }
}

function isSpot(spot: Spot | null): spot is Spot {
  return spot !== null
}

interface Props {
  readonly labels: readonly Label[]
  readonly flags: readonly Flag[]
  readonly obstacles: LabelObstacles
  readonly overlay: RefObject<HTMLDivElement | null>
  /** What lies over the picture: no text goes under it. */
  readonly covered: readonly RefObject<HTMLElement | null>[]
  /** The unit on its way, where it was as the texts were thought of; `now`: where things are in the frame that is drawn. */
  readonly moving: StandingUnit | null
  /** When that was. */
  readonly moment: Moment | null
  readonly now: RefObject<Now | null>
}

/** What the texts were last placed for, and where everything was then. */
interface Last {
  readonly for: readonly unknown[]
  readonly camera: Matrix4
  /** How the picture was raised. */
  raised: number
  readonly unit: Matrix4
  texts: readonly Text[]
  /** Frames since. */
  age: number
}

/**
 * Puts every text of the overlay where it belongs; one overlay, no text in the 3D. They are placed in every frame that is
 * drawn because something else changed. While only the camera or a unit is on its way, each goes along with its spot, and
 * where nothing moves that has a text, nothing is touched.
 */
export function LabelRig(props: Props) {
  const { labels, flags, obstacles, overlay, moving, moment, now } = props
  const invalidate = useThree((s) => s.invalidate)
  const sizes = useRef(new Map<string, { width: number; height: number }>())
  const last = useRef<Last | null>(null)
  const ride = useRef(new Matrix4())
  useEffect(() => {
    if (labels.length >= 0 && flags.length >= 0) invalidate()
  }, [labels, flags, invalidate])

  useFrame(({ camera, size }) => {
    const layer = overlay.current
    if (layer === null) return
    const unit = now.current?.unit ?? null
    const by = unit === null || moving === null ? null : ride.current
    const was = last.current
    const isSame =
      was !== null &&
      was.for[0] === labels &&
      was.for[1] === flags &&
      was.for[2] === obstacles &&
      was.for[3] === moment &&
      was.for[4] === size
    const isTurned = was === null || was.raised !== raisedIn(camera) || !was.camera.equals(camera.matrixWorld)
    const isCarried = unit !== null && was !== null && !was.unit.equals(unit)
    if (by !== null && unit !== null && moving !== null && (isCarried || !isSame))
      by.copy(matrixOf(moving.unit, moving)).invert().premultiply(unit)
    const isPlaced = isSame && (!isTurned || was.age < PLACED_EVERY)
    if (isPlaced && now.current !== null && !isTurned && !isCarried && was.age === 0) return
    if (isPlaced && (isTurned || isCarried)) {
      was.age += 1
      was.camera.copy(camera.matrixWorld)
      was.raised = raisedIn(camera)
      if (unit !== null) was.unit.copy(unit)
      for (const text of was.texts) {
        if (!isTurned && !text.rides) continue
        moveText(text, project(text.point, camera, size.width, size.height, text.rides ? by : null))
      }
      // Placed as they come to rest.
      invalidate()
      return
    }
    last.current = {
      for: [labels, flags, obstacles, moment, size],
      camera: was?.camera.copy(camera.matrixWorld) ?? camera.matrixWorld.clone(),
      raised: raisedIn(camera),
      unit: unit === null ? (was?.unit ?? new Matrix4()) : (was?.unit.copy(unit) ?? unit.clone()),
      texts: placeAll(props, layer, sizes.current, camera, size, by),
      age: 0,
    }
  }, FRAME.texts)
  return null
}

/** How far the middle of the picture is from the line of the eye: the one part of the projection that changes with no size. */
const raisedIn = (camera: Camera) => camera.projectionMatrix.elements[9] ?? 0

/** Places every text anew. `by`: how far the unit on its way has come since they were thought of. */
function placeAll(
  { labels: all, flags, obstacles, covered, moving }: Props,
  layer: HTMLElement,
  sizes: Map<string, { width: number; height: number }>,
  camera: Camera,
  size: { readonly width: number; readonly height: number },
  by: Matrix4 | null,
): readonly Text[] {
  const isNarrow = size.width < NARROW
  const labels = thinnedOut(all, size.width)
  const shown = (p: RoomPoint) => project(p, camera, size.width, size.height, null)
  const riders = new Set<string>(
    moving === null
      ? []
      : [
          `name:${moving.unit.unit}`,
          ...flags.flatMap((f) => (f.spot.unit === moving.unit.unit ? [f.id] : [])),
        ],
  )
  const points = new Map<Spot, RoomPoint>()
  const spotOf = (id: string) => (p: RoomPoint) => {
    const spot = project(p, camera, size.width, size.height, riders.has(id) ? by : null)
    if (spot !== null) points.set(spot, p)
    return spot
  }
  const nodes = new Map(
    [...layer.querySelectorAll<HTMLElement>('[data-label]')].map((n) => [n.dataset['label'] ?? '', n]),
  )
  const flagged = flags.flatMap((flag): Wanted[] => {
    const node = nodes.get(flag.id)
    const anchor = spotOf(flag.id)(flag.spot.at)
    if (node === undefined || anchor === null) return []
    const { offsetWidth: width, offsetHeight: height } = node
    return [
      { id: flag.id, width, height, anchors: [anchor], likes: 'above', lift: FLAG_LIFT, hasLeader: true },
    ]
  })
  const wanted = labels.flatMap((label): Wanted[] => {
    const node = nodes.get(label.id)
    if (node === undefined) return []
    const { width, height } = sizeOf(sizes, node, label, isNarrow)
    const anchors = label.anchors.map(spotOf(label.id)).filter(isSpot)
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
        isNearest: label.isNearest === true,
        ...levelOf(label, spotOf(label.id)),
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
  const gap = isNarrow ? GAP.narrow : GAP.wide
  const placed = placeLabels(inOrder, bounds, marks, [...edges, ...lines], gap, unnamed)
  return writeTexts(layer, nodes, bounds.width, placed, (p) => {
    const point = points.get(p.anchor)
    return point === undefined ? null : { point, rides: riders.has(p.id) }
  })
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

function round({ x, y }: Spot): Obstacle {
  return { x: x - MARK, y: y - MARK, width: 2 * MARK, height: 2 * MARK, isHole: true }
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
