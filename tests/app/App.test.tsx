import { act } from 'react'
import { createRoot } from 'react-dom/client'
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { App } from '../../src/app/App'
import { openAtStart, rememberAlways, remembered } from '../../src/app/remember'
import { makeActions } from '../../src/state/actions'
import { makeStore } from '../../src/state/store'
import { directWorker } from '../support/direct-worker'
import { sceneText } from '../support/kitchens'

// The app fetches its other places when they are asked for; here they are there at once.
beforeAll(() =>
  Promise.all([
    import('../../src/ui/survey/SurveyPlace'),
    import('../../src/ui/paper/OnPaper'),
    import('../../src/ui/day/OnTheDay'),
    import('../../src/ui/rehearse/FlatPicture'),
  ]),
)
beforeEach(() => {
  window.localStorage.clear()
  window.location.hash = ''
})
afterEach(() => {
  document.body.innerHTML = ''
})

const settled = () => act(async () => new Promise((resolve) => setTimeout(resolve, 20)))

/** The app as main.tsx puts it together, with the planner on the same thread. */
async function start() {
  const store = makeStore()
  const actions = makeActions(store, directWorker, () => '2026-11-25T10:20:00.000Z')
  rememberAlways(store)
  const place = document.body.appendChild(document.createElement('div'))
  const root = createRoot(place)
  await act(async () => root.render(<App store={store} actions={actions} />))
  await act(async () => openAtStart(actions, async () => sceneText('one-wall')))
  await settled()
  return { store, actions, place, close: () => act(async () => root.unmount()) }
}

const go = async (hash: string) => {
  await act(async () => {
    window.location.hash = hash
    await new Promise((resolve) => setTimeout(resolve, 20))
  })
}

test('it opens on the first step of the kitchen it is given', async () => {
  const { place, store, close } = await start()
  expect(place.querySelector('.mark')?.textContent).toBe('Dry Run')
  expect(place.querySelector('h1')?.textContent).toBe('Check the delivery')
  expect(place.querySelector('.which')?.textContent).toContain('Garden flat')
  expect(store.getState().place).toBe('rehearse')
  await close()
})

test('the address leads to a place, a sheet or a step, and stepping is written back into it', async () => {
  const { store, actions, close } = await start()
  await go('#paper/work')
  expect(store.getState()).toMatchObject({ place: 'paper', sheet: 'work' })
  await go('#rehearse/hang:wall-2')
  expect(store.getState()).toMatchObject({ place: 'rehearse', at: 'hang:wall-2' })
  await act(async () => actions.step(1))
  expect(decodeURIComponent(window.location.hash)).toBe(`#rehearse/${store.getState().at}`)
  await go('#nowhere')
  expect(store.getState().place).toBe('rehearse')
  await close()
})

test('what is open and written down is there again after a reload', async () => {
  const first = await start()
  await act(async () => first.actions.log({ kind: 'done', operation: 'check-delivery:room' }))
  await settled()
  await first.close()
  expect(remembered()?.log.entries).toHaveLength(1)

  const again = await start()
  expect(again.store.getState().plan?.operations.find((o) => o.id === 'check-delivery:room')?.done).toBe(true)
  await again.close()
})

test('what was kept and can no longer be read is told, and stays kept until something else is opened', async () => {
  const kept = JSON.stringify({ kitchen: { format: 'dryrun-kitchen', version: 99 }, log: { entries: [] } })
  window.localStorage.setItem('dry-run/documents', kept)
  const { place, actions, close } = await start()
  expect(place.querySelector('h1')?.textContent).toBe('The file could not be used.')
  await go('#survey')
  expect(place.querySelector('[role=alert]')?.textContent).toContain('newer version')
  expect(window.localStorage.getItem('dry-run/documents')).toBe(kept)
  await act(async () => actions.open(sceneText('one-wall')))
  await settled()
  expect(window.localStorage.getItem('dry-run/documents')).toContain('Garden flat')
  await close()
})

test.each(['{', 'null', '{"kitchen": {}}', '{"kitchen": {}, "log": {"entries": 3}}'])(
  'a store that holds %s is passed over',
  (text) => {
    window.localStorage.setItem('dry-run/documents', text)
    expect(remembered()).toBeUndefined()
  },
)

test('keys step while Rehearse is shown, and the heading takes the focus', async () => {
  const { store, place, close } = await start()
  const press = (key: string) =>
    act(async () => void document.body.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true })))
  await press('ArrowRight')
  expect(store.getState().at).toBe(store.getState().plan?.operations[1]?.id)
  expect(document.activeElement).toBe(place.querySelector('#step-title'))
  await press('End')
  expect(store.getState().at).toBe(store.getState().plan?.operations.at(-1)?.id)
  await go('#day')
  await press('Home')
  expect(store.getState().at).toBe(store.getState().plan?.operations.at(-1)?.id)
  await close()
})
