import { act } from 'react'
import { createRoot } from 'react-dom/client'
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { App } from '../../src/app/App'
import { keepingOf, MANY_EDITS } from '../../src/keep/keeping'
import { readOldKept, removeOldKept } from '../../src/keep/old-kept'
import { makeActions } from '../../src/state/actions'
import { makeStore } from '../../src/state/store'
import { directWorker } from '../support/direct-worker'
import { sceneText } from '../support/kitchens'
import { emptyShelf, memoryKeeper } from '../support/memory-keeper'

// The app fetches its other places when they are asked for; here they are there at once.
beforeAll(() =>
  Promise.all([
    import('../../src/ui/survey/SurveyPlace'),
    import('../../src/ui/paper/OnPaper'),
    import('../../src/ui/day/OnTheDay'),
    import('../../src/ui/rehearse/FlatPicture'),
  ]),
)
let shelf = emptyShelf()
beforeEach(() => {
  shelf = emptyShelf()
  window.localStorage.clear()
  window.location.hash = ''
})
afterEach(() => {
  document.body.innerHTML = ''
})

const settled = () => act(async () => new Promise((resolve) => setTimeout(resolve, 50)))

/** The app as main.tsx puts it together, with the planner on the same thread. */
async function start() {
  const store = makeStore()
  const actions = makeActions(store, directWorker, () => '2026-11-25T10:20:00.000Z')
  let ids = shelf.kitchens.size * 1000
  const keeping = keepingOf(store, actions, memoryKeeper(shelf), {
    now: () => '2026-11-25T10:20:00.000Z',
    newId: () => `id-${ids++}`,
    tabs: { tell: () => undefined, listen: () => undefined },
    tabOpen: { get: () => null, set: () => undefined },
    old: { read: () => readOldKept(window.localStorage), remove: () => removeOldKept(window.localStorage) },
    askToStay: async () => null,
  })
  const place = document.body.appendChild(document.createElement('div'))
  const root = createRoot(place)
  await act(async () => root.render(<App store={store} actions={actions} keeping={keeping} />))
  await act(async () => keeping.start(async () => sceneText('one-wall')))
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
  expect([...shelf.kitchens.values()][0]?.log).toContain('check-delivery:room')

  const again = await start()
  expect(again.store.getState().plan?.operations.find((o) => o.id === 'check-delivery:room')?.done).toBe(true)
  await again.close()
})

test('what was kept and can no longer be read is told, and stays kept whatever else is opened', async () => {
  const kept = { kitchen: { format: 'dryrun-kitchen', version: 99 }, log: { entries: [] } }
  window.localStorage.setItem('dry-run/documents', JSON.stringify(kept))
  const { place, actions, close } = await start()
  expect(place.querySelector('h1')?.textContent).toBe('The file could not be used.')
  await go('#survey')
  expect(place.querySelector('[role=alert]')?.textContent).toContain('newer version')
  await act(async () => actions.open(sceneText('one-wall')))
  await settled()
  const [newer, other] = [...shelf.kitchens.values()]
  expect(JSON.parse(newer?.kitchen ?? '')).toEqual(kept.kitchen)
  expect(other?.kitchen).toContain('Garden flat')
  expect(window.localStorage.getItem('dry-run/documents')).toBeNull()
  await close()
})

test.each(['{', 'null', '{"kitchen": {}}', '{"kitchen": {}, "log": {"entries": 3}}'])(
  'an old store that holds %s is passed over, and left as it is',
  async (text) => {
    window.localStorage.setItem('dry-run/documents', text)
    expect(readOldKept(window.localStorage)).toBeUndefined()
    const { store, close } = await start()
    expect(store.getState().plan?.name).toBe('Garden flat')
    expect(window.localStorage.getItem('dry-run/documents')).toBe(text)
    await close()
  },
)

test('after many edits a file is asked for, with their number; that can be put off, and a file settles it', async () => {
  const { place, actions, close } = await start()
  const reminder = () => place.querySelector('.save-reminder')
  await act(async () => actions.open({ format: 'dryrun-kitchen', version: 1, name: 'Back room' }))
  await settled()
  await go('#survey')
  const edit = (count: number) =>
    act(async () => {
      for (let i = 0; i < count; i++) actions.edit([{ set: 'survey.by', to: `${i}` }])
      await new Promise((resolve) => setTimeout(resolve, 50))
    })
  await edit(MANY_EDITS - 1)
  await settled()
  expect(reminder()).toBeNull()
  await edit(1)
  await settled()
  expect(reminder()?.textContent).toContain('100 edits since this kitchen was last saved as a file.')
  const press = async (name: string) => {
    const button = [...(reminder()?.querySelectorAll('button') ?? [])].find((b) => b.textContent === name)
    await act(async () => button?.click())
    await settled()
  }
  await press('Not now')
  expect(reminder()).toBeNull()
  await edit(MANY_EDITS)
  await settled()
  expect(reminder()?.textContent).toContain('200 edits')
  await press('Save a file')
  expect(reminder()).toBeNull()
  await close()
})

test('keys step while Rehearse is shown, and the heading takes the focus', async () => {
  const { store, place, close } = await start()
  const press = (key: string, on: Element | null = document.body) =>
    act(async () => void on?.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true })))
  await press('ArrowRight')
  expect(store.getState().at).toBe(store.getState().plan?.operations[1]?.id)
  expect(document.activeElement).toBe(place.querySelector('#step-title'))
  for (const key of ['End', 'Home', 'PageDown', 'PageUp']) {
    await press(key)
    expect(store.getState().at, key).toBe(store.getState().plan?.operations[1]?.id)
  }
  await press('End', place.querySelector('[role=slider]'))
  expect(store.getState().at).toBe(store.getState().plan?.operations.at(-1)?.id)
  await go('#day')
  await press('ArrowLeft')
  expect(store.getState().at).toBe(store.getState().plan?.operations.at(-1)?.id)
  await close()
})
