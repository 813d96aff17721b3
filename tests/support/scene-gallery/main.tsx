/**
 * The 3D view alone, for tests and for looking at: the sample plan, or one handed over as `window.galleryPlan`.
 * `window.show` draws an operation and answers with what was drawn.
 */
import '@fontsource-variable/atkinson-hyperlegible-mono'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import type { Plan } from '../../../src/core/plan/types'
import { stagingAt } from '../../../src/core/staging'
import { secondsOf } from '../../../src/core/staging/staging'
import { roundedAspect, viewsOf } from '../../../src/core/views/views'
import { partAt } from '../../../src/scene/ids'
import { type SceneReady, Walkthrough, type WalkthroughProps } from '../../../src/scene/Walkthrough'
import { samplePlan } from '../sample-plan'
import { type Frames, nextFrames, plainFrames } from './plain'

export type Shown = SceneReady & { readonly seen: unknown; readonly eye: unknown; readonly target: unknown }
export type Show = (id: string, t: number, more?: Partial<WalkthroughProps>) => Promise<Shown>

/** Pixels of each part of the id picture that is shown. */
export type CountParts = () => Record<string, number>

declare global {
  interface Window {
    galleryPlan?: Plan
    show?: Show
    countParts?: CountParts
    /** Mean time of a frame while an operation is shown being done, and of the same triangles drawn by three.js alone. */
    frameTimes?: (
      id: string,
      n: number,
    ) => Promise<{
      readonly ours: { readonly meanMs: number; readonly frames: number }
      readonly plain: Frames
    }>
  }
}

const place = document.getElementById('root')
if (place === null) throw new Error('no root')
const root = createRoot(place)
let count = 0
let parts: readonly string[] = []

window.show = (id, t, more = {}) =>
  new Promise((resolve) => {
    const plan = window.galleryPlan ?? samplePlan
    const found = plan.operations.findIndex((o) => o.id === id)
    const index = id === 'end' ? plan.operations.length : found
    const aspect = roundedAspect(place.clientWidth, place.clientHeight)
    count += 1
    root.render(
      <StrictMode>
        <Walkthrough
          key={more.reducedMotion === false ? 'same' : count}
          plan={plan}
          index={index}
          t={t}
          reducedMotion
          onReady={(ready) => {
            const { seen, eye, target } = viewsOf(plan, aspect).at(index)
            parts = ready.parts
            resolve({ ...ready, seen, eye, target })
          }}
          {...more}
        />
      </StrictMode>,
    )
  })

window.countParts = () => {
  const canvas = document.querySelector('canvas')
  const copy = document.createElement('canvas')
  copy.width = canvas?.width ?? 0
  copy.height = canvas?.height ?? 0
  const flat = copy.getContext('2d', { willReadFrequently: true })
  if (canvas === null || flat === null) throw new Error('no picture to count')
  flat.drawImage(canvas, 0, 0)
  const { data } = flat.getImageData(0, 0, copy.width, copy.height)
  const counts: Record<string, number> = {}
  for (let i = 0; i < data.length; i += 4) {
    const name = partAt(parts, data[i] ?? 0, data[i + 1] ?? 0, data[i + 2] ?? 0)
    if (name !== undefined) counts[name] = (counts[name] ?? 0) + 1
  }
  return counts
}

window.frameTimes = async (id, n) => {
  const plan = window.galleryPlan ?? samplePlan
  const index = plan.operations.findIndex((o) => o.id === id)
  await window.show?.(id, 0, { reducedMotion: false })
  const frameNow = () => Number(document.querySelector<HTMLElement>('.scene')?.dataset['frame'] ?? 0)
  const staging = stagingAt(plan, index)
  if (staging === null) throw new Error(`${id} is not shown being done`)
  const run = { seconds: secondsOf(staging) }
  await nextFrames(5)
  const [since, before] = [performance.now(), frameNow()]
  await new Promise<void>((done) =>
    root.render(
      <StrictMode>
        <Walkthrough
          key="same"
          plan={plan}
          index={index}
          t={0}
          run={run}
          onRunEnd={() => done()}
          reducedMotion={false}
        />
      </StrictMode>,
    ),
  )
  const frames = frameNow() - before
  const ours = { meanMs: (performance.now() - since) / Math.max(1, frames), frames }
  root.render(null)
  const plain = await plainFrames(plan, id, [place.clientWidth, place.clientHeight], n)
  return { ours, plain }
}
