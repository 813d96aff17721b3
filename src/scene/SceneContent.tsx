import { useThree } from '@react-three/fiber'
import { type RefObject, useEffect, useMemo, useRef } from 'react'
import type { Trial } from '../core/levelling/trial-heights'
import type { Standing, StandingUnit } from '../core/plan/standing-at'
import type { Plan } from '../core/plan/types'
import type { Moment, Staging } from '../core/staging/staging'
import { leftOutOf } from '../core/views/kept'
import type { RoomShape } from '../core/views/room-shape'
import { shownAt } from '../core/views/upturned'
import type { View } from '../core/views/view'
import { Carried, matrixOf } from './Carried'
import { CameraRig } from './camera/CameraRig'
import { Drawing, type IdPicture } from './Drawing'
import type { Flag } from './labels/flags-of'
import { LabelRig } from './labels/LabelRig'
import type { Label } from './labels/labels-of'
import { obstaclesOf } from './labels/obstacles-of'
import { Running } from './Running'
import type { Now, Run } from './run'
import { partsIn } from './sketch'
import { type Found, isArriving, movingUnit, sketchScene } from './sketch-scene'
import { piecesOf, spaceOf } from './tools/pieces'
import { Staged } from './tools/Staged'
import { waitingOf } from './tools/waiting'

export interface SceneContentProps {
  readonly plan: Plan
  readonly index: number
  /** 0..1 of the way of the unit that moves; 1 when the operation is done. */
  readonly t: number
  /** What is being done just then, and with what. */
  readonly moment: Moment | null
  /** It goes on by itself from there; left out or null: it stands still. */
  readonly showing?: Showing | null
  readonly room: RoomShape
  readonly view: View
  readonly labels: readonly Label[]
  readonly found: Found
  /** Levelling that is tried; null: none. */
  readonly tried?: Trial | null
  readonly flags: readonly Flag[]
  readonly layer: RefObject<HTMLDivElement | null>
  readonly covered: readonly RefObject<HTMLElement | null>[]
  /** The camera jumps to each view. */
  readonly isStill: boolean
  readonly idPicture: { readonly only?: readonly string[] | undefined } | null
  /** Told the parts of the picture whenever it is drawn anew. */
  readonly onParts?: ((parts: readonly string[]) => void) | undefined
}

/** An operation that is shown being done. */
export interface Showing {
  readonly run: Run
  readonly staging: Staging
  readonly onMoment: (run: Run, t: number) => void
  readonly onEnd: (run: Run) => void
}

/** Millimetres, z up, become metres, y up: here and nowhere else (the camera and the texts say so where they differ). */
const UPRIGHT = [-Math.PI / 2, 0, 0] as const
const METRES = 0.001

/** What is in the canvas: the drawing of one operation, the unit on its way, the camera and the texts' places. */
export function SceneContent(props: SceneContentProps) {
  const { plan, index, t, moment, room, view, labels, found, flags, layer, isStill, onParts } = props
  const { showing = null } = props
  const invalidate = useThree((s) => s.invalidate)
  const now = useRef<Now | null>(null)
  // By what is in them: another look at the same walls draws nothing anew.
  const [walls, kept] = [view.hidden.join(' '), (view.kept ?? []).join(' ')]
  const leftOut = useMemo(() => leftOutOf({ hidden: idsIn(walls), kept: idsIn(kept) }), [walls, kept])
  const standing = useStanding(plan, index, t)
  const still = useStanding(plan, index, t >= 1 ? 1 : 0)
  const moving = movingUnit(plan, standing)
  const isNearlyThere = moving !== null && isArriving(moving.unit, moving)
  const scene = useMemo(
    () => sketchScene(plan, still, room, leftOut, isNearlyThere, found, props.tried),
    [plan, still, room, leftOut, isNearlyThere, found, props.tried],
  )
  const act = moment?.act ?? null
  const { eye } = view
  const pieces = useMemo(
    () => (act === null ? [] : piecesOf(act, waitingOf(act, { standing: still, room, eye }))),
    [act, still, room, eye],
  )
  const carried = useMemo(
    () => (act?.motion.kind === 'carry' ? movedSince(still, moving) : null),
    [act, still, moving],
  )
  const parts = useMemo(
    () =>
      partsIn([
        scene.still,
        ...(scene.moving === null ? [] : [scene.moving.sketch]),
        ...pieces.map(({ sketch }) => sketch),
      ]),
    [scene, pieces],
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

  const fixed = useMemo(() => obstaclesOf(plan, standing, view), [plan, standing, view])
  const obstacles = useMemo(
    () => (act === null ? fixed : { ...fixed, plates: [...fixed.plates, ...spaceOf(act, pieces)] }),
    [fixed, act, pieces],
  )
  return (
    <>
      <CameraRig framing={view} isStill={isStill} />
      {showing !== null && (
        <Running
          run={showing.run}
          plan={plan}
          index={index}
          staging={showing.staging}
          unit={moving?.unit ?? null}
          now={now}
          onMoment={showing.onMoment}
          onEnd={showing.onEnd}
        />
      )}
      <LabelRig
        labels={labels}
        flags={flags}
        obstacles={obstacles}
        overlay={layer}
        covered={props.covered}
        moving={moving}
        moment={moment}
        now={now}
      />
      <group name="room" rotation={[...UPRIGHT]} scale={METRES}>
        <Drawing sketch={scene.still} idPicture={idPicture} />
        {scene.moving !== null && moving !== null && (
          <Carried unit={moving.unit} at={moving} now={now}>
            <Drawing sketch={scene.moving.sketch} idPicture={idPicture} />
          </Carried>
        )}
        {moment !== null && (
          <Staged
            act={act}
            pieces={pieces}
            progress={moment.progress}
            carried={carried}
            now={now}
            idPicture={idPicture}
          />
        )}
      </group>
    </>
  )
}

const idsIn = (list: string) => list.split(' ').filter((id) => id !== '')

/** Where the moving unit is, and back from where it was as the operation began. */
function movedSince(start: Standing, moving: StandingUnit | null) {
  const was = start.units.find((u) => u.unit.unit === moving?.unit.unit)
  if (moving === null || was === undefined) return null
  return { at: matrixOf(moving.unit, moving), fromStart: matrixOf(was.unit, was).invert() }
}

/** What stands at one moment, worked out once for it. */
export function useStanding(plan: Plan, index: number, t: number): Standing {
  return useMemo(() => shownAt(plan, index, t), [plan, index, t])
}
