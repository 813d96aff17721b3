import { useEffect, useMemo } from 'react'
import { BufferGeometry, Color, Float32BufferAttribute, Mesh, type Object3D } from 'three'
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js'
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js'
import { type Ids, idColour } from './ids'
import { faceMaterial, lineMaterials, washMaterial } from './materials'
import type { Sketch, Strokes, Surface, Weight } from './sketch'

/** How a sketch is shown: in its colours, or every part in the flat colour of its id. */
export interface IdPicture {
  readonly ids: Ids
  /** Only these parts; left out: all. */
  readonly only?: readonly string[] | undefined
}

const ORDER: readonly Weight[] = ['hair', 'fine', 'bold', 'ring', 'dot', 'bar']

/** Puts a sketch on the screen: one draw call for faces, one for washes, one for each weight of line it uses. */
export function Drawing({ sketch, idPicture }: { sketch: Sketch; idPicture: IdPicture | null }) {
  const objects = useMemo(() => objectsOf(sketch, idPicture), [sketch, idPicture])
  useEffect(
    () => () => {
      for (const object of objects) object.geometry.dispose()
    },
    [objects],
  )
  return (
    <group>
      {objects.map((object) => (
        <primitive key={object.uuid} object={object} />
      ))}
    </group>
  )
}

type Drawn = Object3D & { geometry: BufferGeometry }

/** What a sketch is put on the screen with. */
export function objectsOf(sketch: Sketch, ids: IdPicture | null): readonly Drawn[] {
  const drawn: Drawn[] = []
  const faces = surfaceMesh(sketch.faces, false, ids)
  if (faces !== null) drawn.push(faces)
  const washes = ids === null ? surfaceMesh(sketch.washes, true, null) : null
  if (washes !== null) drawn.push(washes)
  for (const [i, weight] of ORDER.entries()) {
    const lines = lineSegments(sketch.strokes[weight], weight, ids)
    if (lines === null) continue
    lines.renderOrder = 1 + i
    drawn.push(lines)
  }
  return drawn
}

/** Places in the list of those that belong to a part that is shown, and the colour each is shown in. */
function coloursOf(
  parts: readonly string[],
  colours: readonly string[],
  ids: IdPicture | null,
): { readonly shown: readonly number[]; readonly colour: (at: number) => Color } {
  const all = parts.map((_, i) => i)
  if (ids === null) return { shown: all, colour: (i) => linear(colours[i] ?? '#000000') }
  const only = ids.only === undefined ? null : new Set(ids.only)
  const order = new Map(ids.ids.map((name, i) => [name, i]))
  return {
    shown: only === null ? all : all.filter((i) => only.has(parts[i] ?? '')),
    colour: (i) => linear(idColour(order.get(parts[i] ?? '') ?? -1)),
  }
}

const seen = new Map<string, Color>()
/** The colour as the renderer counts it; made once for each name. */
function linear(name: string): Color {
  const known = seen.get(name)
  if (known !== undefined) return known
  const colour = new Color(name)
  seen.set(name, colour)
  return colour
}

function surfaceMesh(surface: Surface, isWash: boolean, ids: IdPicture | null): Drawn | null {
  const { shown, colour } = coloursOf(surface.parts, surface.colours, ids)
  if (shown.length === 0) return null
  const size = isWash ? 4 : 3
  const points = new Float32Array(shown.length * 3)
  const colours = new Float32Array(shown.length * size)
  for (const [k, i] of shown.entries()) {
    const c = colour(i)
    for (let axis = 0; axis < 3; axis += 1) points[k * 3 + axis] = surface.points[i * 3 + axis] ?? 0
    colours.set(isWash ? [c.r, c.g, c.b, surface.opacities[i] ?? 1] : [c.r, c.g, c.b], k * size)
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new Float32BufferAttribute(points, 3))
  geometry.setAttribute('color', new Float32BufferAttribute(colours, size))
  const mesh = new Mesh(geometry, isWash ? washMaterial : faceMaterial)
  mesh.name = isWash ? 'washes' : 'faces'
  return mesh
}

function lineSegments(strokes: Strokes, weight: Weight, ids: IdPicture | null): Drawn | null {
  const { shown, colour } = coloursOf(strokes.parts, strokes.colours, ids)
  if (shown.length === 0) return null
  const points = new Float32Array(shown.length * 6)
  const colours = new Float32Array(shown.length * 6)
  for (const [k, i] of shown.entries()) {
    for (let n = 0; n < 6; n += 1) points[k * 6 + n] = strokes.points[i * 6 + n] ?? 0
    const c = colour(i)
    colours.set([c.r, c.g, c.b, c.r, c.g, c.b], k * 6)
  }
  const geometry = new LineSegmentsGeometry()
  geometry.setPositions(points)
  geometry.setColors(colours)
  const lines = new LineSegments2(geometry, lineMaterials[weight])
  lines.name = weight
  return lines
}
