import { useThree } from '@react-three/fiber'
import { type RefObject, useEffect, useMemo } from 'react'
import { type Standing, standingAt } from '../core/plan/standing-at'
import type { Plan } from '../core/plan/types'
import { Carried } from './Carried'
import { CameraRig } from './camera/CameraRig'
import type { View } from './camera/choose-view'
import { Drawing, type IdPicture } from './Drawing'
import type { Flag } from './labels/flags-of'
import { LabelRig } from './labels/LabelRig'
import type { Label } from './labels/labels-of'
import { obstaclesOf } from './labels/obstacles-of'
import type { RoomShape } from './room-shape'
import { partsIn } from './sketch'
import { type Found, isArriving, movingUnit, sketchScene } from './sketch-scene'

export interface SceneContentProps {
  readonly plan: Plan
  readonly index: number
  readonly t: number
  readonly room: RoomShape
  readonly view: View
  readonly labels: readonly Label[]
  readonly found: Found
  readonly flags: readonly Flag[]
  readonly layer: RefObject<HTMLDivElement | null>
  readonly covered: readonly RefObject<HTMLElement | null>[]
  /** The camera jumps to each view. */
  readonly isStill: boolean
  readonly idPicture: { readonly only?: readonly string[] | undefined } | null
  /** Told the parts of the picture whenever it is drawn anew. */
  readonly onParts?: ((parts: readonly string[]) => void) | undefined
}

/** Millimetres, z up, become metres, y up: here and nowhere else (the camera and the texts say so where they differ). */
const UPRIGHT = [-Math.PI / 2, 0, 0] as const
const METRES = 0.001

/** What is in the canvas: the drawing of one operation, the unit on its way, the camera and the texts' places. */
export function SceneContent(props: SceneContentProps) {
  const { plan, index, t, room, view, labels, found, flags, layer, isStill, onParts } = props
  const invalidate = useThree((s) => s.invalidate)
  const hiddenKey = view.hidden.join(' ')
  const standing = useStanding(plan, index, t)
  const still = useStanding(plan, index, t >= 1 ? 1 : 0)
  const moving = movingUnit(plan, standing)
  const isNearlyThere = isArriving(moving)
  const scene = useMemo(
    () =>
      sketchScene(
        plan,
        still,
        room,
        new Set(hiddenKey === '' ? [] : hiddenKey.split(' ')),
        isNearlyThere,
        found,
      ),
    [plan, still, room, hiddenKey, isNearlyThere, found],
  )
  const parts = useMemo(
    () => partsIn(scene.moving === null ? [scene.still] : [scene.still, scene.moving.sketch]),
    [scene],
  )
  const isIdPicture = props.idPicture !== null
  const only = props.idPicture?.only
  const idPicture = useMemo(
    (): IdPicture | null => (isIdPicture ? { ids: parts, only } : null),
    [isIdPicture, parts, only],
  )
  useEffect(() => {
    onParts?.(parts)
    invalidate()
  }, [parts, onParts, invalidate])

  const obstacles = useMemo(() => obstaclesOf(plan, standing, view), [plan, standing, view])
  return (
    <>
      <CameraRig framing={view} isStill={isStill} />
      <LabelRig labels={labels} flags={flags} obstacles={obstacles} overlay={layer} covered={props.covered} />
      <group name="room" rotation={[...UPRIGHT]} scale={METRES}>
        <Drawing sketch={scene.still} idPicture={idPicture} />
        {scene.moving !== null && moving !== null && (
          <Carried unit={moving.unit} at={moving}>
            <Drawing sketch={scene.moving.sketch} idPicture={idPicture} />
          </Carried>
        )}
      </group>
    </>
  )
}

/** What stands at one moment, worked out once for it. */
export function useStanding(plan: Plan, index: number, t: number): Standing {
  return useMemo(() => standingAt(plan, index, t), [plan, index, t])
}
