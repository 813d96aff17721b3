/** Mounts the app; the only file that finds the DOM root. */
import '@fontsource-variable/atkinson-hyperlegible-mono'
import '@fontsource-variable/atkinson-hyperlegible-next'
import './ui/app.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app/App'
import { demos } from './app/demos'
import { fetchAllPlaces } from './app/places'
import { openAtStart, rememberAlways } from './app/remember'
import { makeActions } from './state/actions'
import type { PlanWorker } from './state/planner'
import { makeStore } from './state/store'

const root = document.getElementById('root')
if (root === null) throw new Error('index.html has no element with id "root"')

const store = makeStore()
const actions = makeActions(
  store,
  () =>
    new Worker(new URL('./worker/plan-worker.ts', import.meta.url), {
      type: 'module',
    }) as unknown as PlanWorker,
  () => new Date().toISOString(),
)
rememberAlways(store)
fetchAllPlaces()
if (demos[0] !== undefined) void openAtStart(actions, demos[0].text)

createRoot(root).render(
  <StrictMode>
    <App store={store} actions={actions} />
  </StrictMode>,
)
