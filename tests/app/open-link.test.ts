/** An address with a kitchen in it: opened beside what was open, which is kept; or refused, and nothing is changed. */
import { describe, expect, test, vi } from 'vitest'
import { type Keeps, openLink } from '../../src/app/open-link'
import { makeActions } from '../../src/state/actions'
import { linkOf } from '../../src/state/link'
import { type Kept, makeStore } from '../../src/state/store'
import { directWorker } from '../support/direct-worker'
import { sceneFile } from '../support/kitchens'

const MILL_LANE = sceneFile('l-shape') as { readonly name: string }
const GARDEN_FLAT = sceneFile('one-wall') as { readonly name: string }

async function opened(kitchen: unknown = MILL_LANE) {
  const store = makeStore()
  const actions = makeActions(store, directWorker, () => '2026-11-25T10:20:00.000Z')
  actions.open(kitchen)
  await answered(store)
  return { store, actions }
}

const answered = (store: ReturnType<typeof makeStore>) =>
  vi.waitUntil(() => store.getState().pending === null, { timeout: 15_000 })

const kept: Kept = { id: 'new', revision: 0 }
const keeps = (others: Partial<Keeps> = {}): Keeps => ({
  fresh: (name) => ({ kept, name }),
  flush: () => undefined,
  wouldLose: () => false,
  ...others,
})

describe('a link', () => {
  test('is opened as a further kitchen, in a place of its own', async () => {
    const { store, actions } = await opened()
    await openLink(await linkOf(GARDEN_FLAT), store, actions, keeps())
    await answered(store)
    expect(store.getState()).toMatchObject({ kitchen: GARDEN_FLAT, kept, problems: [] })
  })

  test('to a kitchen called like one that is kept gets a name of its own', async () => {
    const { store, actions } = await opened()
    const changed = { ...MILL_LANE, units: [] }
    const fresh: Keeps['fresh'] = (name) => ({ kept, name: `${name} 2` })
    await openLink(await linkOf(changed), store, actions, keeps({ fresh }))
    await answered(store)
    expect(store.getState().kitchen).toEqual({ ...changed, name: 'Mill Lane 2' })
  })

  test('that comes before anything is open waits for what was open last, so that it is kept', async () => {
    const store = makeStore()
    const actions = makeActions(store, directWorker, () => '2026-11-25T10:20:00.000Z')
    const seen: unknown[] = []
    store.subscribe((s, before) => s.kitchen !== before.kitchen && seen.push(s.kitchen))
    const opening = openLink(await linkOf(GARDEN_FLAT), store, actions, keeps())
    await new Promise((resolve) => setTimeout(resolve, 100))
    actions.open(MILL_LANE)
    await opening
    await answered(store)
    expect(seen).toEqual([MILL_LANE, GARDEN_FLAT])
  })

  test('to what is open already changes nothing', async () => {
    const { store, actions } = await opened()
    const before = store.getState()
    await openLink(await linkOf(MILL_LANE), store, actions, keeps())
    expect(store.getState()).toBe(before)
  })
})

describe('what is open stays', () => {
  const newer = { ...GARDEN_FLAT, version: 99, rooms: [{ id: 'attic' }] }
  test.each([
    ['a broken link', 'kitchen=not-a-link', 'the link', 'bad-text'],
    ['a link to something else', '', 'format', 'not-this-format'],
    ['a link to a file of a newer version', 'newer', 'version', 'newer-version'],
  ])('after %s, and the reason is told', async (_, part, path, kind) => {
    const { store, actions } = await opened()
    const before = store.getState()
    const link = part === '' ? await linkOf({ a: 1 }) : part === 'newer' ? await linkOf(newer) : part
    await openLink(link, store, actions, keeps())
    await answered(store)
    const after = store.getState()
    expect(after.kitchen).toBe(before.kitchen)
    expect(after.plan).toBe(before.plan)
    expect(after.kept).toBe(before.kept)
    expect(after.problems).toMatchObject([{ path, kind }])
    expect(after.problems[0]?.mend).not.toBe('')
  })

  test('where it could not be kept: the link is not opened', async () => {
    const { store, actions } = await opened()
    const flush = vi.fn()
    await openLink(await linkOf(GARDEN_FLAT), store, actions, keeps({ flush, wouldLose: () => true }), 50)
    expect(flush).toHaveBeenCalled()
    expect(store.getState().kitchen).toEqual(MILL_LANE)
    expect(store.getState().problems[0]?.message).toContain('would be lost')
  })
})
