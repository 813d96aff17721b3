/** Everything typed can be taken back, and made again, to the same bytes. */
import { describe, expect, test } from 'vitest'
import { PAGES } from '../../src/core/form/pages'
import { renamed, thingsAt } from '../../src/core/form/rename'
import { furtherThing, listAt, thingAt } from '../../src/core/form/things'
import { makeActions } from '../../src/state/actions'
import { makeStore } from '../../src/state/store'
import { directWorker } from '../support/direct-worker'
import { sceneFile } from '../support/kitchens'
import { type Random, randomFrom } from '../support/prng'

function opened(kitchen: unknown, worker = directWorker) {
  const store = makeStore({ kitchen })
  return { store, actions: makeActions(store, worker, () => '2026-01-01T08:00') }
}

/** A planner that never answers: only the editing is looked at. */
const idle = () => ({
  postMessage: () => undefined,
  onmessage: null,
  onerror: null,
  terminate: () => undefined,
})

const answered = () => new Promise((resolve) => setTimeout(resolve))

const bytes = (store: ReturnType<typeof makeStore>): string => JSON.stringify(store.getState().kitchen)

/** One edit as a hand makes them: a figure, a mark, a further thing, one thing fewer. */
function randomEdit(random: Random, { store, actions }: ReturnType<typeof opened>): void {
  const { kitchen } = store.getState()
  const lists = PAGES.flatMap((page) => page.fields).flatMap((f) => (f.kind === 'list' ? [f.key] : []))
  const list = random.pick(lists)
  const things = thingsAt(list)
  const there = listAt(kitchen, list)
  const one = there.length === 0 ? undefined : random.pick(there)
  if (things === undefined) return
  const what = random.next()
  if (one === undefined || what < 0.15) {
    actions.edit([{ add: list, item: furtherThing(things, kitchen, list) }])
  } else if (what < 0.3) actions.edit([{ remove: `${list}.${String(one['id'])}` }])
  else if (what < 0.4) {
    const next = renamed(kitchen, list, String(one['id']), `mark-${random.int(0, 999)}`)
    if (next !== undefined) actions.replace(next)
  } else {
    const field = random.pick(things.fields)
    if (!['length', 'number', 'text'].includes(field.kind)) return
    const path = `${list}.${String(one['id'])}.${field.key}`
    const figures = ['', '2', '24', '240', '34 1/2 in']
    const letters = figures.slice(0, random.int(1, figures.length))
    for (const typed of letters) actions.edit([{ set: path, to: typed }], path)
    actions.settle()
  }
}

describe('200 random edits', () => {
  test.each([1, 2, 3, 4, 5])('taken back one by one and made again give the same bytes (seed %i)', (seed) => {
    const app = opened(sceneFile(seed % 2 === 0 ? 'l-shape' : 'one-wall'), idle)
    const random = randomFrom(seed)
    const states = [bytes(app.store)]
    while (states.length <= 200) {
      const before = app.store.getState().past.length
      randomEdit(random, app)
      if (app.store.getState().past.length > before) states.push(bytes(app.store))
    }
    for (const state of [...states].reverse()) {
      expect(bytes(app.store) === state).toBe(true)
      app.actions.undo()
    }
    expect(app.store.getState().past).toEqual([])
    for (const state of states) {
      expect(bytes(app.store) === state).toBe(true)
      app.actions.redo()
    }
    expect(app.store.getState().future).toEqual([])
  })
})

describe('an edit', () => {
  test('is there at once, and planned after', async () => {
    const { store, actions } = opened(sceneFile('one-wall'))
    actions.edit([{ set: 'name', to: 'Another name' }])
    await answered()
    expect(store.getState().kitchen).toMatchObject({ name: 'Another name' })
    expect(store.getState().plan?.name).toBe('Another name')
    actions.undo()
    await answered()
    expect(store.getState().plan?.name).not.toBe('Another name')
  })

  test('that makes the file unreadable stays, with what is wrong beside it; the last plan stays too', async () => {
    const { store, actions } = opened(sceneFile('one-wall'))
    actions.edit([{ set: 'name', to: 'Before' }])
    await answered()
    actions.edit([{ set: 'walls.a.length', to: -5 }])
    await answered()
    expect(thingAt(store.getState().kitchen, 'walls.a.length')).toBe(-5)
    expect(store.getState().problems[0]?.path).toBe('walls "a" › length')
    expect(store.getState().plan?.name).toBe('Before')
    actions.edit([{ set: 'walls.a.length', to: 3200 }])
    await answered()
    expect(store.getState().problems).toEqual([])
  })

  test('letters typed into one field are one edit; the next field is another', async () => {
    const { store, actions } = opened(sceneFile('one-wall'))
    const start = bytes(store)
    for (const to of [3, 32, 320]) actions.edit([{ set: 'walls.a.length', to }], 'walls.a.length')
    actions.settle()
    actions.edit([{ set: 'walls.a.length', to: 3201 }], 'walls.a.length')
    await answered()
    expect(store.getState().past.length).toBe(2)
    actions.undo()
    await answered()
    expect(thingAt(store.getState().kitchen, 'walls.a.length')).toBe(320)
    actions.undo()
    await answered()
    expect(bytes(store)).toBe(start)
  })

  test('another kitchen begins with nothing to take back; one that is refused takes nothing away', async () => {
    const { store, actions } = opened(sceneFile('one-wall'))
    actions.edit([{ set: 'name', to: 'Mine' }])
    await answered()
    actions.open('{"not": "a kitchen"}')
    await answered()
    expect(store.getState().kitchen).toMatchObject({ name: 'Mine' })
    expect(store.getState().past.length).toBe(1)
    actions.open(sceneFile('l-shape'))
    await answered()
    expect(store.getState().past).toEqual([])
  })
})
