import { useFrame, useThree } from '@react-three/fiber'
import { type RefObject, useLayoutEffect, useMemo, useRef } from 'react'
import { Matrix4 } from 'three'
import { segmentsOf } from '../core/plan/standing-at'
import { extentOf, travel } from '../core/plan/travel-path'
import type { Plan, UnitPlan } from '../core/plan/types'
import { type Act, momentAt, type Staging } from '../core/staging/staging'
import { setMatrix } from './Carried'
import { FRAME, type Now, type Run, wayAt } from './run'
import { isArriving } from './sketch-scene'

/**
 * How seldom it is thought over what stands before what, and what is written where, while something moves: ms, and frames,
 * so that where frames are slow not each has to carry it.
 */
const THOUGHT_OVER = { ms: 400, frames: 12 }

interface Props {
  readonly run: Run
  readonly plan: Plan
  readonly index: number
  readonly staging: Staging
  /** The unit on its way. */
  readonly unit: UnitPlan | null
  readonly now: RefObject<Now | null>
  /** Told how far it has come when that changes more than where things are: now and then. */
  readonly onMoment: (run: Run, t: number) => void
  readonly onEnd: (run: Run) => void
}

/**
 * Runs through an operation, frame by frame: says where everything is in each. Nothing is rendered for it but now and then,
 * where a movement begins, where the unit arrives, and a few times a second for the texts.
 */
export function Running({ run, plan, index, staging, unit, now, onMoment, onEnd }: Props) {
  const invalidate = useThree((s) => s.invalidate)
  const matrix = useMemo(() => new Matrix4(), [])
  const way = useMemo(() => {
    const operation = plan.operations[index]
    if (operation === undefined || unit === null) return null
    return { unit, segments: segmentsOf(plan, operation), extent: extentOf(unit.solid) }
  }, [plan, index, unit])
  const going = useRef<{ run: Run; since: number } | null>(null)
  const told = useRef<{ at: number; frames: number; act: Act | null; isArriving: boolean }>(null)
  // Before the next frame is made ready: where things were is never taken for where others are.
  useLayoutEffect(() => {
    invalidate()
    return () => {
      now.current = null
    }
  }, [now, invalidate])

  useFrame(() => {
    const time = performance.now()
    if (going.current?.run !== run) {
      going.current = { run, since: time }
      told.current = null
    }
    const t = Math.min(1, (time - going.current.since) / (1000 * run.seconds))
    const moment = momentAt(staging, t)
    const at = way === null ? null : travel(way.segments, way.extent, wayAt(moment, t))
    if (at !== null && way !== null) setMatrix(matrix, way.unit, at)
    now.current = { unit: at === null ? null : matrix, act: moment.act, progress: moment.progress }
    if (t >= 1) {
      onEnd(run)
      return
    }
    const isThere = at !== null && way !== null && isArriving(way.unit, at)
    const was = told.current
    if (was !== null) was.frames += 1
    const isOther = was === null || was.act !== moment.act || was.isArriving !== isThere
    const isTime = was !== null && time - was.at > THOUGHT_OVER.ms && was.frames >= THOUGHT_OVER.frames
    if (isOther || isTime) {
      told.current = { at: time, frames: 0, act: moment.act, isArriving: isThere }
      // How it begins is drawn already.
      if (was !== null) onMoment(run, t)
    }
    invalidate()
  }, FRAME.now)
  return null
}
