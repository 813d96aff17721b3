import { _roots } from '@react-three/fiber'
import {
  BufferGeometry,
  Color,
  DoubleSide,
  Float32BufferAttribute,
  type InterleavedBufferAttribute,
  Mesh,
  MeshBasicMaterial,
  type Object3D,
  type PerspectiveCamera,
  Scene,
  Vector3,
  type WebGLRenderer,
} from 'three'
import type { LineMaterial } from 'three/addons/lines/LineMaterial.js'
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js'
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js'
import { type Carriage, extentOf, roomPoint } from '../../../src/core/plan/travel-path'
import type { LocalBox, RoomPoint } from '../../../src/core/plan/types'
import { idColour } from '../../../src/scene/ids'
import { lineMaterials } from '../../../src/scene/materials'

/** The drawing of a picture that stands on the page: what three holds of it. */
export interface Drawn {
  readonly gl: WebGLRenderer
  readonly scene: Scene
  readonly camera: PerspectiveCamera
  readonly width: number
  readonly height: number
}

/** Pixels of a picture, four bytes each, rows from the bottom up as the graphics give them. */
export interface Pixels {
  readonly width: number
  readonly height: number
  readonly data: Uint8Array
}

export function drawnIn(canvas: HTMLCanvasElement): Drawn {
  const root = _roots.get(canvas)
  if (root === undefined) throw new Error('no picture in this canvas')
  const { gl, scene, camera } = root.store.getState()
  const { width, height } = canvas
  return { gl, scene, camera: camera as PerspectiveCamera, width, height }
}

/** Draws a scene with the picture's own camera and reads what came of it. */
export function render({ gl, camera, width, height }: Drawn, scene: Object3D): Pixels {
  gl.setRenderTarget(null)
  gl.render(scene, camera)
  const context = gl.getContext()
  const data = new Uint8Array(width * height * 4)
  context.readPixels(0, 0, width, height, context.RGBA, context.UNSIGNED_BYTE, data)
  return { width, height, data }
}

/** Where a point of the room lies in the picture, px from the left and from the bottom; null behind the eye. */
export function project({ camera, width, height }: Drawn, p: RoomPoint): { x: number; y: number } | null {
  const v = new Vector3(p.x / 1000, p.z / 1000, -p.y / 1000).project(camera)
  if (v.z > 1 || v.z < -1) return null
  return { x: ((v.x + 1) / 2) * width, y: ((v.y + 1) / 2) * height }
}

const near = (a: number, b: number) => Math.abs(a - b) < 1e-4

/** The parts of some ids alone: their faces and strokes, everything else gone. */
export function alone(scene: Scene, ids: readonly number[]): Scene {
  const colours = ids.map((id) => new Color(idColour(id)))
  const isWanted = (r: number, g: number, b: number) =>
    colours.some((c) => near(c.r, r) && near(c.g, g) && near(c.b, b))
  const found = new Scene()
  scene.updateMatrixWorld()
  scene.traverse((object) => {
    const kept =
      object instanceof LineSegments2
        ? keptLines(object, isWanted)
        : object instanceof Mesh
          ? keptFaces(object, isWanted)
          : null
    if (kept === null) return
    kept.matrixAutoUpdate = false
    kept.matrix.copy(object.matrixWorld)
    kept.renderOrder = object.renderOrder
    found.add(kept)
  })
  found.background = new Color('#000000')
  return found
}

type IsWanted = (r: number, g: number, b: number) => boolean

function keptFaces(mesh: Mesh, isWanted: IsWanted): Mesh | null {
  const points = mesh.geometry.getAttribute('position')
  const colours = mesh.geometry.getAttribute('color')
  if (colours === undefined) return null
  const [p, c]: [number[], number[]] = [[], []]
  for (let i = 0; i < points.count; i += 1) {
    if (!isWanted(colours.getX(i), colours.getY(i), colours.getZ(i))) continue
    p.push(points.getX(i), points.getY(i), points.getZ(i))
    c.push(colours.getX(i), colours.getY(i), colours.getZ(i))
  }
  return p.length === 0 ? null : new Mesh(geometryOf(p, c), mesh.material)
}

function geometryOf(points: readonly number[], colours: readonly number[]): BufferGeometry {
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new Float32BufferAttribute(points, 3))
  geometry.setAttribute('color', new Float32BufferAttribute(colours, 3))
  return geometry
}

function keptLines(lines: LineSegments2, isWanted: IsWanted): LineSegments2 | null {
  const from = lines.geometry.getAttribute('instanceStart') as InterleavedBufferAttribute
  const to = lines.geometry.getAttribute('instanceEnd') as InterleavedBufferAttribute
  const colours = lines.geometry.getAttribute('instanceColorStart') as InterleavedBufferAttribute | undefined
  if (colours === undefined) return null
  const [p, c]: [number[], number[]] = [[], []]
  for (let i = 0; i < from.count; i += 1) {
    const [r, g, b] = [colours.getX(i), colours.getY(i), colours.getZ(i)]
    if (!isWanted(r, g, b)) continue
    p.push(from.getX(i), from.getY(i), from.getZ(i), to.getX(i), to.getY(i), to.getZ(i))
    c.push(r, g, b, r, g, b)
  }
  if (p.length === 0) return null
  const geometry = new LineSegmentsGeometry()
  geometry.setPositions(p)
  geometry.setColors(c)
  return new LineSegments2(geometry, lines.material)
}

/** A round spot of 16 px at a point of the room, pulled forward as the picture's own marks are. */
export function disc(p: RoomPoint, id: number): Object3D {
  const geometry = new LineSegmentsGeometry()
  const [x, y, z] = [p.x / 1000, p.z / 1000, -p.y / 1000]
  geometry.setPositions([x, y, z, x, y + 0.0005, z])
  const { r, g, b } = new Color(idColour(id))
  geometry.setColors([r, g, b, r, g, b])
  discMaterial ??= lineMaterials.ring.clone()
  discMaterial.linewidth = 2 * DISC
  const made = new LineSegments2(geometry, discMaterial)
  made.renderOrder = 20
  return made
}
let discMaterial: LineMaterial | undefined
export const DISC = 8

const flat = new MeshBasicMaterial({ vertexColors: true, side: DoubleSide, toneMapped: false })
/** A flat piece of the room with its own id. */
export function piece(corners: readonly RoomPoint[], id: number): Object3D {
  const c = new Color(idColour(id))
  const points: number[] = []
  const colours: number[] = []
  for (let i = 1; i + 1 < corners.length; i += 1) {
    for (const k of [0, i, i + 1]) {
      const p = corners[k] as RoomPoint
      points.push(p.x / 1000, p.z / 1000, -p.y / 1000)
      colours.push(c.r, c.g, c.b)
    }
  }
  return new Mesh(geometryOf(points, colours), flat)
}
/** Boxes of one body where it stands, in one id. */
export function boxes(at: Carriage, solid: readonly LocalBox[], id: number): Object3D {
  const group = new Scene()
  const extent = extentOf(solid)
  for (const b of solid) {
    const c = (k: number) =>
      roomPoint(at, extent, { x: k & 1 ? b.x1 : b.x0, y: k & 2 ? b.y1 : b.y0, z: k & 4 ? b.z1 : b.z0 })
    for (const round of FACES) group.add(piece(round.map(c), id))
  }
  return group
}
const FACES = [
  [0, 2, 6, 4],
  [1, 3, 7, 5],
  [0, 1, 5, 4],
  [2, 3, 7, 6],
  [0, 1, 3, 2],
  [4, 5, 7, 6],
] as const

/** Something that stands in the way: put into a picture to see that it is noticed. */
export function occluder(at: RoomPoint, size: number): Object3D {
  const faces = [-1, 1].flatMap((s) => [[at.x + s * size, at.y, at.z] as const])
  const group = new Scene()
  for (const [x, y, z] of faces) {
    for (const [dx, dy] of [
      [size, 0],
      [0, size],
    ] as const) {
      group.add(
        piece(
          [
            { x: x - dx, y: y - dy, z: z - size },
            { x: x + dx, y: y + dy, z: z - size },
            { x: x + dx, y: y + dy, z: z + size },
            { x: x - dx, y: y - dy, z: z + size },
          ],
          OCCLUDER,
        ),
      )
    }
  }
  return group
}
/** An id no part of a picture has. */
const OCCLUDER = 30_000

/** For every id how many pixels show it. */
export function countIds({ data }: Pixels): ReadonlyMap<number, number> {
  const counts = new Map<number, number>()
  for (let i = 0; i < data.length; i += 4) {
    const id = idOf(data[i] ?? 0, data[i + 1] ?? 0, data[i + 2] ?? 0)
    if (id >= 0) counts.set(id, (counts.get(id) ?? 0) + 1)
  }
  return counts
}

/** The id a colour of the id picture stands for; −1: nothing. Steps as in ids.ts, by 8. */
export function idOf(red: number, green: number, blue: number): number {
  return (red >> 3) + (green >> 3) * 32 + (blue >> 3) * 1024 - 1
}
