import { Mesh, PerspectiveCamera, Scene, WebGLRenderer } from 'three'
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js'
import { standingAt } from '../../../src/core/plan/standing-at'
import type { Plan } from '../../../src/core/plan/types'
import { FIELD } from '../../../src/core/views/frame-view'
import { leftOutOf } from '../../../src/core/views/kept'
import { viewsOf } from '../../../src/core/views/views'
import { objectsOf } from '../../../src/scene/Drawing'
import { nothingFound, sketchScene } from '../../../src/scene/sketch-scene'

/** Mean time between two frames, ms, and how many triangles each drew. */
export interface Frames {
  readonly meanMs: number
  readonly triangles: number
}

/**
 * The same triangles as the picture of an operation, drawn by nothing but three.js: what a frame costs where nothing is
 * worked out. The camera moves a little each frame, so that none is left out.
 */
export async function plainFrames(
  plan: Plan,
  id: string,
  size: readonly [number, number],
  n: number,
): Promise<Frames> {
  const index = plan.operations.findIndex((o) => o.id === id)
  const views = viewsOf(plan, size[0] / size[1])
  const view = views.at(index)
  const { still, moving } = sketchScene(
    plan,
    standingAt(plan, index, 0),
    views.room,
    leftOutOf(view),
    false,
    nothingFound,
  )
  const scene = new Scene()
  for (const sketch of moving === null ? [still] : [still, moving.sketch])
    scene.add(...objectsOf(sketch, null))
  scene.rotation.x = -Math.PI / 2
  scene.scale.setScalar(0.001)
  const camera = new PerspectiveCamera(FIELD, size[0] / size[1], 0.3, 60)
  const renderer = new WebGLRenderer({ antialias: true })
  renderer.setSize(...size)
  // Where ours was, so that showing it costs the same.
  Object.assign(renderer.domElement.style, { position: 'fixed', inset: '0' })
  document.body.append(renderer.domElement)
  scene.traverse((o) => {
    if (o instanceof LineSegments2) o.material.resolution.set(...size)
  })
  const { eye, target } = view
  const draw = (at: number) => {
    camera.position.set((eye.x + at) / 1000, eye.z / 1000, -eye.y / 1000)
    camera.lookAt(target.x / 1000, target.z / 1000, -target.y / 1000)
    renderer.render(scene, camera)
  }
  const meanMs = await meanFrame(n, draw)
  const { triangles } = renderer.info.render
  renderer.domElement.remove()
  renderer.dispose()
  scene.traverse((o) => {
    if (o instanceof Mesh) o.geometry.dispose()
  })
  return { meanMs, triangles }
}

/** Draws n frames, one a turn of the screen, and gives the mean time of one; the first five only warm up. */
async function meanFrame(n: number, draw: (at: number) => void): Promise<number> {
  let start = 0
  for (let i = 0; i < n + 5; i += 1) {
    await nextFrames(1)
    if (i === 5) start = performance.now()
    draw(i)
  }
  await nextFrames(1)
  return (performance.now() - start) / n
}

/** Until so many turns of the screen have gone by. */
export async function nextFrames(n: number): Promise<void> {
  for (let i = 0; i < n; i += 1) await new Promise((resolve) => requestAnimationFrame(resolve))
}
