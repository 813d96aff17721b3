/** Mounts the app; the only file that finds the DOM root. */
import '@fontsource-variable/atkinson-hyperlegible-mono'
import '@fontsource-variable/atkinson-hyperlegible-next'
import './ui/app.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app/App'
import { afterTyping } from './app/after-typing'
import { demos } from './app/demos'
import { keepOpen } from './app/keep-open'
import { keepOnDevice } from './app/offline/newer-version'
import { fetchAllPlaces } from './app/places'
import { makeActions } from './state/actions'
import type { PlanWorker } from './state/planner'
import { makeStore } from './state/store'

const root = document.getElementById('root')
if (root === null) throw new Error('index.html has no element with id "root"')

const store = makeStore()
const actions = makeActions(
  store,
  () =>
    afterTyping(
      new Worker(new URL('./worker/plan-worker.ts', import.meta.url), {
        type: 'module',
      }) as unknown as PlanWorker,
    ),
  () => new Date().toISOString(),
)
const keeping = keepOpen(store, actions)
fetchAllPlaces()
if (import.meta.env.PROD) void keepOnDevice()
if (demos[0] !== undefined) void keeping.start(demos[0].text)

createRoot(root).render(
  <StrictMode>
    <App store={store} actions={actions} keeping={keeping} />
  </StrictMode>,
)
