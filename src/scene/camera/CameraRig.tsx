import { useFrame, useThree } from '@react-three/fiber'
import { useEffect, useLayoutEffect, useRef } from 'react'
import type { PerspectiveCamera } from 'three'
import { FIELD } from '../../core/views/frame-view'
import type { View } from '../../core/views/view'
import { FRAME } from '../run'

/** A camera in terms that can be gone between: what it looks at, from which way, from how far. Radians, mm. */
interface Aim {
  readonly target: readonly [number, number, number]
  readonly azimuth: number
  readonly elevation: number
  readonly distance: number
  /** By what share of its height the picture is raised. */
  readonly raised: number
}

/** What the camera is held at. */
type Held = Pick<View, 'eye' | 'target' | 'raised'>

const SECONDS = 0.7
const METRE = 1000

function aimOf({ eye, target, raised = 0 }: Held): Aim {
  const [dx, dy, dz] = [eye.x - target.x, eye.y - target.y, eye.z - target.z]
  return {
    target: [target.x, target.y, target.z],
    azimuth: Math.atan2(dy, dx),
    elevation: Math.atan2(dz, Math.hypot(dx, dy)),
    distance: Math.hypot(dx, dy, dz),
    raised,
  }
}

/** Part of the way from one aim to another, going round the shorter way. */
export function between(a: Aim, b: Aim, f: number): Aim {
  const mix = (p: number, q: number) => p + (q - p) * f
  const turn = Math.atan2(Math.sin(b.azimuth - a.azimuth), Math.cos(b.azimuth - a.azimuth))
  return {
    target: [mix(a.target[0], b.target[0]), mix(a.target[1], b.target[1]), mix(a.target[2], b.target[2])],
    azimuth: a.azimuth + turn * f,
    elevation: mix(a.elevation, b.elevation),
    distance: mix(a.distance, b.distance),
    raised: mix(a.raised, b.raised),
  }
}

const eased = (f: number) => (f < 0.5 ? 4 * f ** 3 : 1 - (-2 * f + 2) ** 3 / 2)

function point(camera: PerspectiveCamera, aim: Aim): void {
  const level = aim.distance * Math.cos(aim.elevation)
  const [x, y, z] = aim.target
  const eye = [
    x + level * Math.cos(aim.azimuth),
    y + level * Math.sin(aim.azimuth),
    z + aim.distance * Math.sin(aim.elevation),
  ] as const
  // Millimetres with z up become metres with y up.
  camera.position.set(eye[0] / METRE, eye[2] / METRE, -eye[1] / METRE)
  camera.lookAt(x / METRE, z / METRE, -y / METRE)
  camera.updateMatrixWorld()
  // The window on to the picture is let down: what it shows goes up, and nothing is seen from elsewhere.
  const { aspect } = camera
  if (aim.raised !== (camera.view?.offsetY ?? 0)) camera.setViewOffset(aspect, 1, 0, aim.raised, aspect, 1)
}

/** Holds the camera at the view, and goes there smoothly from the one before unless motion isn't wanted. */
export function CameraRig({ framing, isStill }: { framing: Held; isStill: boolean }) {
  const camera = useThree((s) => s.camera) as PerspectiveCamera
  const invalidate = useThree((s) => s.invalidate)
  const now = useRef<Aim | null>(null)
  const way = useRef<{ from: Aim; to: Aim; since: number | null } | null>(null)

  useLayoutEffect(() => {
    camera.fov = FIELD
    camera.near = 0.3
    camera.far = 60
    camera.updateProjectionMatrix()
  }, [camera])

  useEffect(() => {
    const to = aimOf(framing)
    if (now.current === null || isStill) {
      now.current = to
      way.current = null
      point(camera, to)
    } else {
      way.current = { from: now.current, to, since: null }
    }
    invalidate()
  }, [framing, isStill, camera, invalidate])

  useFrame(() => {
    const going = way.current
    if (going === null) return
    going.since ??= performance.now()
    const f = Math.min(1, (performance.now() - going.since) / 1000 / SECONDS)
    now.current = between(going.from, going.to, eased(f))
    point(camera, now.current)
    if (f >= 1) way.current = null
    else invalidate()
  }, FRAME.camera)
  return null
}
