import { type SceneKey, sayInScene } from './say-in-scene'
import './scene.css'
import { type RefObject, useCallback, useMemo, useRef, useState } from 'react'
import type { Trial } from '../core/levelling/trial-heights'
import { letteredFindings } from '../core/plan/findings-at'
import type { Standing } from '../core/plan/standing-at'
import type { Plan } from '../core/plan/types'
import { stagingAt } from '../core/staging'
import { momentAt } from '../core/staging/staging'
import { clearOf } from '../core/views/clear-of'
import type { Framing } from '../core/views/frame-view'
import type { View } from '../core/views/view'
import { roundedAspect, viewsOf } from '../core/views/views'
import { sceneWords } from '../core/words/en/scene'
import type { Display } from '../core/words/format'
import { ContextWatch } from './ContextWatch'
import { asChosen, canBeDrawn, fixedView, type Look, turnedView } from './camera/look'
import { viewOfSpot } from './camera/look-at'
import { FrameWatch } from './FrameWatch'
import { flagsOf } from './labels/flags-of'
import { LabelLayer } from './labels/LabelLayer'
import { MARK } from './labels/LabelRig'
import { labelsOf } from './labels/labels-of'
import { PictureKey } from './PictureKey'
import { palette } from './palette'
import { findingSpots } from './parts/findings'
import { type Run, wayAt } from './run'
import { SceneCanvas } from './SceneCanvas'
import { SceneContent, useStanding } from './SceneContent'
import { useBoxSize } from './use-box-size'
import { useCovers } from './use-covers'
import { hasWebGl } from './web-gl'

/** What a picture was made of, told after its frame. */
export interface SceneReady {
  readonly drawCalls: number
  /** Names of the parts drawn, in the order of their ids. */
  readonly parts: readonly string[]
}

export interface WalkthroughProps {
  readonly plan: Plan
  /** Place of the operation in `plan.operations`; their number for the finished room. */
  readonly index: number
  /** 0..1 through it, where it stands still. */
  readonly t: number
  /** It is shown being done from its start, by the picture's own clock, and `t` does not count; told when that is over. */
  readonly run?: Run | null
  readonly onRunEnd?: (run: Run) => void
  /** The camera jumps and nothing moves by itself. */
  readonly reducedMotion: boolean
  /** After each first frame of a picture. */
  readonly onReady?: (ready: SceneReady) => void
  readonly display?: Display
  /** The user's own turn of the view. */
  readonly look?: Look
  /** A camera that is given instead of chosen, millimetres in the room's frame. */
  readonly camera?: Framing
  /** The finding that is open beside the picture, and whether the picture turns to its place. */
  readonly finding?: { readonly id: string; readonly isLookedAt: boolean } | null
  /** Levelling that is tried at this operation. */
  readonly tried?: Trial | null
  /** Opens the finding of a flag. */
  readonly onFinding?: (finding: string) => void
  /** What lies over the picture, as buttons do: no text goes under it. */
  readonly covered?: RefObject<HTMLElement | null>
  /** Every part in its own flat colour (see ids.ts), without texts; `only` draws just those parts. */
  readonly idBuffer?: { readonly only?: readonly string[] }
}

/** A picture as wide as this, px, has its key open while the bare room is looked at. */
const ROOM_FOR_KEY = 900

/** What a picture shows in which nothing stands and nobody works on one wall: without it, it would look like nothing. */
function captionOf({ operation, units, planned }: Standing): keyof typeof sceneWords | null {
  if (units.length > 0 || operation === null || operation.wall !== null) return null
  return planned.length > 0 ? 'scene.bare-room.planned' : 'scene.bare-room'
}

const nobody = () => {}

/** The room while one operation is under way: draws what the plan says and decides nothing. */
export function Walkthrough(props: WalkthroughProps) {
  const canDraw = useMemo(hasWebGl, [])
  if (!canBeDrawn(props.plan)) return <Note text="scene.nothing-placed" />
  if (!canDraw) return <Note text="scene.no-webgl" />
  return <Picture {...props} />
}

function Note({ text }: { text: SceneKey }) {
  return (
    <div className="scene">
      <p className="scene-note">{sayInScene(text)}</p>
    </div>
  )
}

function Picture(props: WalkthroughProps) {
  const { plan, index, reducedMotion, onReady, idBuffer, display = 'mm', look = asChosen, camera } = props
  const { finding = null, onFinding = nobody, tried = null, run = null, onRunEnd = nobody } = props
  const box = useRef<HTMLDivElement>(null)
  const layer = useRef<HTMLDivElement>(null)
  const size = useBoxSize(box)
  const [isLost, setIsLost] = useState(false)
  const key = useRef<HTMLDivElement>(null)
  const sign = useRef<HTMLParagraphElement>(null)
  const [shownParts, setShownParts] = useState<readonly string[]>([])
  const parts = useRef<readonly string[]>([])
  const ready = useRef<readonly string[] | null>(null)

  const aspect = size === null ? null : roundedAspect(size.width, size.height)
  const views = useMemo(() => (aspect === null ? null : viewsOf(plan, aspect)), [plan, aspect])
  const staging = useMemo(() => stagingAt(plan, index), [plan, index])
  const [told, setTold] = useState<{ readonly run: Run; readonly t: number } | null>(null)
  const t = run === null ? props.t : told?.run === run ? told.t : 0
  const onMoment = useCallback((of: Run, at: number) => setTold({ run: of, t: at }), [])
  const showing = useMemo(
    () => (run === null || staging === null ? null : { run, staging, onMoment, onEnd: onRunEnd }),
    [run, staging, onMoment, onRunEnd],
  )
  const moment = useMemo(() => (staging === null ? null : momentAt(staging, t)), [staging, t])
  const way = wayAt(moment, t)
  const standing = useStanding(plan, index, way)
  const open = finding?.id ?? null
  const found = useMemo(
    () => ({ lettered: letteredFindings(plan, standing.operation, open), open }),
    [plan, standing.operation, open],
  )
  const covered = useMemo(() => [props.covered, key, sign].flatMap((box) => box ?? []), [props.covered])
  const covers = useCovers(box, covered, size, `${index} ${shownParts.length > 0}`)
  const lookedAt = finding?.isLookedAt === true ? open : null
  // A finding is looked at where it is as the step begins, so that nothing turns while a part is on its way.
  const start = useStanding(plan, index, 0)
  const isCovered = props.covered !== undefined
  const view = useMemo(() => {
    if (views === null || aspect === null || size === null) return null
    const picture = { covers, aspect: size.width / size.height, mark: MARK / size.height }
    const inSight = (v: View) => (isCovered ? clearOf(v, views.about(index), picture) : v)
    const { room } = views
    if (camera !== undefined) return fixedView(camera, room)
    const chosen = views.at(index)
    const all = lookedAt === null ? [] : findingSpots(plan, start, found.lettered, room, new Set())
    const spot = all.find((s) => s.finding.id === lookedAt)
    const held = spot === undefined ? inSight(chosen) : viewOfSpot(chosen, spot, room, aspect)
    return turnedView(held, look, room)
  }, [views, index, look, camera, aspect, lookedAt, plan, start, found, covers, size, isCovered])
  const isIdPicture = idBuffer !== undefined
  const labels = useMemo(
    () =>
      view === null || views === null || isIdPicture
        ? []
        : labelsOf(plan, standing, view, views.room, display),
    [plan, standing, view, views, display, isIdPicture],
  )
  const flags = useMemo(() => {
    if (view === null || views === null || isIdPicture) return []
    const spots = findingSpots(plan, standing, found.lettered, views.room, new Set(view.hidden))
    return flagsOf(spots, open)
  }, [plan, standing, view, views, found, open, isIdPicture])
  const caption = captionOf(standing)
  const onParts = useCallback((names: readonly string[]) => {
    parts.current = names
    setShownParts(names)
  }, [])
  const onFrame = useCallback(
    (drawCalls: number, frame: number) => {
      if (box.current !== null) {
        box.current.dataset['drawCalls'] = String(drawCalls)
        box.current.dataset['frame'] = String(frame)
      }
      if (ready.current === parts.current) return
      ready.current = parts.current
      onReady?.({ drawCalls, parts: parts.current })
    },
    [onReady],
  )

  return (
    <div className="scene" ref={box} data-operation={standing.operation?.id ?? ''}>
      {view !== null && views !== null && size !== null && (
        <SceneCanvas key={isIdPicture ? 'ids' : 'picture'} size={size} isIdPicture={isIdPicture}>
          <color attach="background" args={[idBuffer === undefined ? palette.plaster : '#000000']} />
          <SceneContent
            plan={plan}
            index={index}
            t={way}
            moment={moment}
            showing={showing}
            room={views.room}
            view={view}
            labels={labels}
            found={found}
            tried={tried}
            flags={flags}
            layer={layer}
            covered={covered}
            isStill={reducedMotion || camera !== undefined}
            idPicture={idBuffer ?? null}
            onParts={onParts}
          />
          <ContextWatch onChange={setIsLost} />
          <FrameWatch onFrame={onFrame} />
        </SceneCanvas>
      )}
      {caption !== null && !isIdPicture && (
        <p className="scene-caption" ref={sign}>
          {sceneWords[caption]}
        </p>
      )}
      <LabelLayer labels={labels} flags={flags} layer={layer} onFinding={onFinding} />
      {!isIdPicture && size !== null && (
        <PictureKey
          box={key}
          parts={shownParts}
          isOpenFirst={standing.planned.length > 0 && size.width >= ROOM_FOR_KEY}
        />
      )}
      {isLost && (
        <p className="scene-note" role="status">
          {sayInScene('scene.context-lost')}
        </p>
      )}
    </div>
  )
}
