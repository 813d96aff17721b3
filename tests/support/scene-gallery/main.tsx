/**
 * The 3D view alone, for tests and for looking at: the sample plan, or one handed over as `window.galleryPlan`.
 * `window.show` draws an operation and answers with what was drawn.
 */
import '@fontsource-variable/atkinson-hyperlegible-mono'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import type { Plan } from '../../../src/core/plan/types'
import { english } from '../../../src/core/words/en'
import { sceneWords } from '../../../src/core/words/en/scene'
import { makeViews, roundedAspect } from '../../../src/scene/camera/views'
import { type SceneReady, Walkthrough, type WalkthroughProps } from '../../../src/scene/Walkthrough'
import { samplePlan } from '../sample-plan'

export type Shown = SceneReady & { readonly seen: unknown; readonly eye: unknown; readonly target: unknown }
export type Show = (id: string, t: number, more?: Partial<WalkthroughProps>) => Promise<Shown>

declare global {
  interface Window {
    galleryPlan?: Plan
    show?: Show
  }
}

Object.assign(english, sceneWords)
const place = document.getElementById('root')
if (place === null) throw new Error('no root')
const root = createRoot(place)
let count = 0

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
            const { seen, eye, target } = makeViews(plan, aspect).at(index)
            resolve({ ...ready, seen, eye, target })
          }}
          {...more}
        />
      </StrictMode>,
    )
  })
