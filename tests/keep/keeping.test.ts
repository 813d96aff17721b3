/** The keeping over a store in memory that tabs share, with the real state and the real planner. */
import { beforeEach, describe, expect, test } from 'vitest'
import { type Keeping, keepingOf, MANY_EDITS } from '../../src/keep/keeping'
import type { OldKept } from '../../src/keep/old-kept'
import { type AppActions, makeActions } from '../../src/state/actions'
import { kitchenName } from '../../src/state/kitchen-name'
import { type AppStore, makeStore } from '../../src/state/store'
import { directWorker } from '../support/direct-worker'
import { sceneText } from '../support/kitchens'
import { emptyShelf, memoryKeeper, type Shelf } from '../support/memory-keeper'

interface Tab {
  readonly store: AppStore
  readonly actions: AppActions
  readonly keeping: Keeping
  readonly open: { id: string | null }
}

const own = (name: string) => ({ format: 'dryrun-kitchen', version: 1, name })
const demo = async () => sceneText('no-order')
const fullStore = () => Object.assign(new Error('no room'), { name: 'QuotaExceededError' })

let shelf: Shelf
let listeners: (() => void)[]
let ids: number
let time: number
let old: OldKept | undefined
let asked: number
beforeEach(() => {
  shelf = emptyShelf()
  listeners = []
  ids = 0
  time = 0
  old = undefined
  asked = 0
})

/** A tab beside those that are open; `hears`: what the others tell reaches it. */
async function openTab({
  hears = true,
  open = { id: null as string | null },
  starts = true,
} = {}): Promise<Tab> {
  const store = makeStore()
  const actions = makeActions(store, directWorker, () => '2026-11-25T10:20:00.000Z')
  let mine: (() => void) | undefined
  const keeping = keepingOf(store, actions, memoryKeeper(shelf), {
    now: () => new Date(Date.UTC(2026, 10, 25, 10, 0, time++)).toISOString(),
    newId: () => `id-${ids++}`,
    tabs: {
      tell: () => {
        for (const listener of listeners) if (listener !== mine) listener()
      },
      listen: (onTold) => {
        mine = onTold
        if (hears) listeners.push(onTold)
      },
    },
    tabOpen: {
      get: () => open.id,
      set: (id) => {
        open.id = id
      },
    },
    old: {
      read: () => old,
      remove: () => {
        old = undefined
      },
    },
    askToStay: async () => {
      asked += 1
      return false
    },
  })
  const tab = { store, actions, keeping, open }
  if (starts) {
    await keeping.start(demo)
    await settled(tab)
  }
  return tab
}

/** Until the planner has answered and all is written. */
async function settled(...tabs: readonly Tab[]): Promise<void> {
  for (let calm = 0; calm < 3; calm++) {
    await new Promise((resolve) => setTimeout(resolve, 10))
    for (const { store, keeping } of tabs) {
      while (store.getState().working) await new Promise((resolve) => setTimeout(resolve, 5))
      await keeping.tryAgain()
    }
  }
}

/** Lets what is written be written, without looking whether anything has changed. */
const written = () => new Promise((resolve) => setTimeout(resolve, 40))

const rename = ({ actions }: Tab, name: string) => actions.edit([{ set: 'name', to: name }])
const keptNames = () => [...shelf.kitchens.values()].map(({ head }) => head.name).sort()
const keptOf = (name: string) => {
  const found = [...shelf.kitchens.values()].find(({ head }) => head.name === name)
  if (found === undefined) throw new Error(`${name} is not kept: ${keptNames()}`)
  return found
}
const openName = ({ store }: Tab) => kitchenName(store.getState().kitchen)

async function tabWith(name: string): Promise<Tab> {
  const tab = await openTab()
  tab.actions.open(own(name))
  await settled(tab)
  return tab
}

describe('what is open is kept', () => {
  test('each edit at once, both files and the step; and opened again as it was', async () => {
    const tab = await tabWith('Back room')
    tab.actions.edit([{ set: 'survey.by', to: 'Ines' }])
    tab.actions.log({ kind: 'done', operation: 'check-delivery:room' })
    await settled(tab)
    tab.actions.step(3)
    await settled(tab)
    const { at } = tab.store.getState()
    expect(at).not.toBe(tab.store.getState().plan?.operations[0]?.id)

    const again = await openTab({ open: tab.open })
    expect(again.store.getState().kitchen).toEqual({ ...own('Back room'), survey: { by: 'Ines' } })
    expect(again.store.getState().log.entries).toHaveLength(1)
    expect(again.store.getState().at).toBe(at)
    expect(keptOf('Back room').head).toMatchObject({ edits: 2, at })
  })

  test('an edit is on its way before anything else is done, and of many the latest is written', async () => {
    const tab = await tabWith('A')
    const before = shelf.writes.length
    rename(tab, 'n0')
    await Promise.resolve()
    expect(shelf.writes).toHaveLength(before + 1)
    for (let i = 1; i <= 200; i++) rename(tab, `n${i}`)
    await settled(tab)
    expect(keptNames()).toContain('n200')
    // One under way and one with all the rest, and not two hundred.
    expect(shelf.writes.length - before).toBeLessThanOrEqual(3)
    expect(keptOf('n200').head.edits).toBe(201)
  })

  test('stepping is no change of the kitchen: its revision stays', async () => {
    const tab = await openTab()
    tab.actions.open(sceneText('one-wall'))
    await settled(tab)
    const { revision } = keptOf('Garden flat').head
    tab.actions.step(2)
    await settled(tab)
    expect(keptOf('Garden flat').head).toMatchObject({ revision, at: tab.store.getState().at })
  })

  test('letters typed into one field are one edit; taking it back is another', async () => {
    const tab = await tabWith('A')
    for (const name of ['B', 'Ba', 'Bat']) tab.actions.edit([{ set: 'name', to: name }], 'name')
    await settled(tab)
    expect(keptOf('Bat').head.edits).toBe(1)
    tab.actions.undo()
    await settled(tab)
    expect(keptOf('A').head.edits).toBe(2)
  })

  test('a kitchen that does not go together yet is kept, and opened beside another to be mended', async () => {
    const tab = await tabWith('A')
    const id = tab.open.id as string
    tab.actions.edit([{ set: 'survey.houseBuilt', to: 'long ago' }])
    await settled(tab)
    expect(tab.store.getState().isBehind).toBe(true)
    tab.actions.open(own('B'))
    await settled(tab)
    expect(openName(tab)).toBe('B')
    await tab.keeping.open(id)
    await settled(tab)
    expect(tab.store.getState()).toMatchObject({ isBehind: true, plan: null, kept: { id } })
    expect(tab.store.getState().kitchen).toMatchObject({ name: 'A', survey: { houseBuilt: 'long ago' } })
    expect(tab.store.getState().problems.length).toBeGreaterThan(0)
  })
})

describe('several kitchens', () => {
  test('one that is begun, one that is opened, a copy: each has its own place', async () => {
    const tab = await tabWith('A')
    const begun = tab.keeping.fresh('A')
    expect(begun.name).toBe('A 2')
    tab.actions.open(own(begun.name), undefined, { kept: begun.kept })
    await settled(tab)
    await tab.keeping.copy(tab.open.id as string)
    await settled(tab)
    expect(keptNames()).toEqual(['A', 'A 2', 'A 2 (copy)', "Everybody's wishes"])
    expect(JSON.parse(keptOf('A 2 (copy)').kitchen)).toEqual(own('A 2 (copy)'))
    expect(openName(tab)).toBe('A 2')
    await tab.keeping.open(keptOf('A').head.id)
    await settled(tab)
    rename(tab, 'A, changed')
    await settled(tab)
    expect(keptNames()).toEqual(['A 2', 'A 2 (copy)', 'A, changed', "Everybody's wishes"])
  })

  test('a tab loaded again opens its own; a new one what was opened last', async () => {
    const first = await tabWith('A')
    const second = await openTab()
    expect(openName(second)).toBe('A')
    second.actions.open(own('B'))
    await settled(second)
    expect(openName(await openTab())).toBe('B')
    expect(openName(await openTab({ open: first.open }))).toBe('A')
  })

  test('taken out: another is opened, it is not opened at the start, and it comes back; removed, it is gone', async () => {
    const tab = await tabWith('A')
    const id = tab.open.id as string
    await tab.keeping.keepVersion('before')
    await tab.keeping.takeOut(id)
    await settled(tab)
    expect(openName(tab)).toBe("Everybody's wishes")
    expect(openName(await openTab({ open: { id } }))).toBe("Everybody's wishes")
    await tab.keeping.bringBack(id)
    expect(keptOf('A').head.takenOutAt).toBeNull()
    await tab.keeping.takeOut(id)
    await tab.keeping.forget(id)
    expect(keptNames()).toEqual(["Everybody's wishes"])
    expect([...shelf.versions.values()]).toEqual([])
  })

  test('what is taken out in one tab and typed into in another is back in the list', async () => {
    const tab = await tabWith('A')
    const other = await openTab()
    await other.keeping.takeOut(tab.open.id as string)
    rename(tab, 'A, wanted')
    await settled(tab)
    expect(keptOf('A, wanted').head.takenOutAt).toBeNull()
  })
})

describe('versions', () => {
  test('one is kept by name, and returned to as one edit that can be taken back', async () => {
    const tab = await tabWith('A')
    await tab.keeping.keepVersion('as measured')
    tab.actions.edit([{ set: 'survey.by', to: 'Ines' }])
    await settled(tab)
    const [version] = tab.keeping.store.getState().versions
    expect(version).toMatchObject({ name: 'as measured', why: 'named' })
    await tab.keeping.returnTo(version?.id as string)
    await settled(tab)
    expect(JSON.parse(keptOf('A').kitchen)).toEqual(own('A'))
    // What was left by returning is a version too.
    expect(tab.keeping.store.getState().versions.map(({ why }) => why)).toEqual(['return', 'named'])
    tab.actions.undo()
    await settled(tab)
    expect(JSON.parse(keptOf('A').kitchen)).toEqual({ ...own('A'), survey: { by: 'Ines' } })
  })

  test('the day log goes on when a version is returned to, and comes back with one that was replaced', async () => {
    const tab = await tabWith('A')
    await tab.keeping.keepVersion('empty')
    tab.actions.log({ kind: 'done', operation: 'check-delivery:room' })
    await settled(tab)
    const empty = tab.keeping.store.getState().versions[0]?.id as string
    await tab.keeping.returnTo(empty)
    await settled(tab)
    expect(tab.store.getState().log.entries).toHaveLength(1)

    tab.actions.open({ ...own('A'), survey: { by: 'somebody else' } })
    await settled(tab)
    expect(tab.store.getState().log.entries).toEqual([])
    const [replaced] = tab.keeping.store.getState().versions
    await tab.keeping.returnTo(replaced?.id as string)
    await settled(tab)
    expect(tab.store.getState().log.entries).toHaveLength(1)
    expect(JSON.parse(keptOf('A').kitchen)).toEqual(own('A'))
  })

  test('a file of the same name takes the place of the open kitchen, which stays as a version', async () => {
    const tab = await tabWith('A')
    tab.actions.edit([{ set: 'survey.by', to: 'Ines' }])
    tab.actions.open({ ...own('A'), survey: { by: 'Bea' } })
    await settled(tab)
    expect(keptNames()).toEqual(['A', "Everybody's wishes"])
    const [version] = [...shelf.versions.values()]
    expect(version).toMatchObject({ of: tab.open.id, why: 'file', name: 'A' })
    expect(JSON.parse(version?.kitchen ?? '')).toMatchObject({ survey: { by: 'Ines' } })
    expect(JSON.parse(keptOf('A').kitchen)).toMatchObject({ survey: { by: 'Bea' } })
  })

  test('of those nobody asked for the last twenty stay, and every one with a name', async () => {
    const tab = await tabWith('A')
    await tab.keeping.keepVersion('mine')
    for (let i = 0; i < 25; i++) {
      tab.actions.edit([{ set: 'survey.by', to: `${i}` }])
      tab.actions.open(own('A'))
      await settled(tab)
    }
    const whys = [...shelf.versions.values()].map(({ why }) => why)
    expect(whys.filter((why) => why === 'file')).toHaveLength(20)
    expect(whys.filter((why) => why === 'named')).toHaveLength(1)
  })

  test('a kitchen for practice opened afresh takes the place of its namesake, whose changes stay as a version', async () => {
    const tab = await openTab()
    tab.actions.edit([{ set: 'survey.by', to: 'Ines' }])
    tab.actions.open(own('B'))
    await settled(tab)
    tab.actions.open(await demo())
    await settled(tab)
    expect(keptNames()).toEqual(['B', "Everybody's wishes"])
    const changed = [...shelf.versions.values()].filter(({ kitchen }) => kitchen.includes('Ines'))
    expect(changed.length).toBeGreaterThan(0)
    expect(keptOf("Everybody's wishes").kitchen).not.toContain('Ines')
  })
})

test('one for practice that came by a link is listed, and stays as a version when the invented one is opened', async () => {
  const tab = await openTab()
  const { kept } = tab.keeping.fresh('Practice')
  tab.actions.open({ ...own('Practice'), demo: true, survey: { by: 'a friend' } }, undefined, { kept })
  await settled(tab)
  expect(keptOf('Practice').head.edits).toBe(1)
  tab.actions.open(own('B'))
  await settled(tab)
  tab.actions.open({ ...own('Practice'), demo: true })
  await settled(tab)
  expect(keptNames().filter((name) => name === 'Practice')).toHaveLength(1)
  expect([...shelf.versions.values()].some(({ kitchen }) => kitchen.includes('a friend'))).toBe(true)
})

describe('two tabs with the same kitchen', () => {
  test.each([true, false])('neither writes over the other unseen (told of it: %s)', async (hears) => {
    const a = await tabWith('A')
    const b = await openTab({ hears })
    rename(a, 'A by the first')
    await written()
    rename(b, 'A by the second')
    await written()
    expect(b.keeping.store.getState().trouble).toBe('elsewhere')
    expect(a.keeping.store.getState().trouble).toBeNull()
    expect(keptNames()).toContain('A by the first')
    expect(keptNames()).not.toContain('A by the second')
    expect(b.keeping.wouldLose()).toBe(true)

    // Typing goes on, and is held back.
    rename(b, 'A by the second, further')
    await written()
    expect(keptNames()).toContain('A by the first')
    await b.keeping.keepOwn()
    await settled(b)
    expect(keptNames()).toEqual([
      'A by the first',
      'A by the second, further (from another tab)',
      "Everybody's wishes",
    ])
    expect(b.keeping.store.getState().trouble).toBeNull()
    expect(b.keeping.wouldLose()).toBe(false)
  })

  test('taking the other’s keeps what was typed here as a version of it, and goes on from there', async () => {
    const a = await tabWith('A')
    const b = await openTab({ hears: false })
    rename(a, 'A by the first')
    rename(b, 'A by the second')
    await written()
    const [behind, ahead] = a.keeping.store.getState().trouble === 'elsewhere' ? [a, b] : [b, a]
    const lost = openName(behind)
    await behind.keeping.takeOther()
    await settled(behind)
    expect(openName(behind)).toBe(openName(ahead))
    expect([...shelf.versions.values()].map(({ name, why }) => [name, why])).toEqual([[lost, 'elsewhere']])
    rename(behind, 'A by both')
    await settled(behind)
    expect(keptNames()).toContain('A by both')
    expect(behind.keeping.store.getState().trouble).toBeNull()
  })

  test('a tab that only looks on is told as soon as the other has changed something', async () => {
    const a = await tabWith('A')
    const b = await openTab()
    rename(a, 'A, changed')
    await written()
    expect(b.keeping.store.getState().trouble).toBe('elsewhere')
    expect(b.keeping.wouldLose()).toBe(false)
    await b.keeping.takeOther()
    await settled(b)
    expect(openName(b)).toBe('A, changed')
    expect([...shelf.versions.values()]).toEqual([])
  })

  test('one that was not told is told when it is looked at again', async () => {
    const a = await tabWith('A')
    const b = await openTab({ hears: false })
    rename(a, 'A, changed')
    await written()
    expect(b.keeping.store.getState().trouble).toBeNull()
    b.keeping.lookAgain()
    await written()
    expect(b.keeping.store.getState().trouble).toBe('elsewhere')
  })

  test('opening something else without having chosen loses nothing', async () => {
    const a = await tabWith('A')
    const b = await openTab()
    rename(a, 'A by the first')
    await written()
    rename(b, 'A by the second')
    b.actions.open(own('B'))
    await settled(b)
    expect(keptNames()).toEqual([
      'A by the first',
      'A by the second (from another tab)',
      'B',
      "Everybody's wishes",
    ])
    expect(b.keeping.store.getState().trouble).toBeNull()
  })

  test('a file of the same name opened without having chosen takes nobody’s place', async () => {
    const a = await tabWith('A')
    const b = await openTab()
    a.actions.edit([{ set: 'survey.by', to: 'the first' }])
    await written()
    b.actions.edit([{ set: 'survey.by', to: 'the second' }])
    b.actions.open(own('A'))
    await settled(b)
    const all = [...shelf.kitchens.values()].map(({ kitchen }) => kitchen).join()
    expect(all).toContain('the first')
    expect(all).toContain('the second')
    expect(keptNames().filter((name) => name.startsWith('A'))).toEqual(['A', 'A', 'A (from another tab)'])
    expect(a.keeping.store.getState().trouble).toBeNull()
    b.actions.edit([{ set: 'survey.by', to: 'the third' }])
    await settled(b)
    expect(b.keeping.store.getState().trouble).toBeNull()
  })

  test('two tabs that type at once, by chance: every edit is in a kitchen or a version, or told', async () => {
    const a = await tabWith('A')
    const b = await openTab({ hears: false })
    for (let i = 0; i < 20; i++) {
      const tab = i % 3 === 0 ? b : a
      tab.actions.edit([{ set: 'survey.by', to: `${tab === a ? 'a' : 'b'}${i}` }])
      await new Promise((resolve) => setTimeout(resolve, (i * 7) % 5))
    }
    await written()
    const stopped = [a, b].filter(({ keeping }) => keeping.store.getState().trouble === 'elsewhere')
    expect(stopped).toHaveLength(1)
    for (const tab of stopped) await tab.keeping.keepOwn()
    await settled(a, b)
    const all = [...shelf.kitchens.values()].map(({ kitchen }) => kitchen).join()
    expect(all).toContain('"a19"')
    expect(all).toContain('"b18"')
  })
})

describe('where keeping fails', () => {
  test('a full store is told; what is typed is kept as soon as there is room', async () => {
    const tab = await tabWith('A')
    shelf.fails = fullStore()
    rename(tab, 'B')
    await written()
    expect(tab.keeping.store.getState().trouble).toBe('full')
    expect(tab.keeping.wouldLose()).toBe(true)
    tab.keeping.savedAsFile()
    expect(tab.keeping.wouldLose()).toBe(false)
    rename(tab, 'C')
    await written()
    expect(keptNames()).toContain('A')
    shelf.fails = null
    await tab.keeping.tryAgain()
    await written()
    expect(keptNames()).toContain('C')
    expect(keptOf('C').head.edits).toBe(2)
    expect(tab.keeping.store.getState().trouble).toBeNull()
  })

  test.each([
    ['NoStoreError', 'none'],
    ['VersionError', 'newer'],
    ['TimeoutError', 'broken'],
  ])('%s at the start: told, and the given kitchen is open', async (name, trouble) => {
    shelf.fails = Object.assign(new Error(name), { name })
    const tab = await openTab({ starts: false })
    await tab.keeping.start(demo)
    await written()
    expect(tab.keeping.store.getState().trouble).toBe(trouble)
    expect(tab.store.getState().noPlan).not.toBeNull()
    expect(tab.keeping.wouldLose()).toBe(false)
  })

  test('cleared while it is open: what is open is kept anew, and it is told', async () => {
    const tab = await tabWith('A')
    shelf.kitchens.clear()
    rename(tab, 'B')
    await written()
    expect(keptNames()).toEqual(['B'])
    expect(tab.keeping.store.getState().trouble).toBe('gone')
    tab.keeping.putAway()
    expect(tab.keeping.store.getState().trouble).toBeNull()

    shelf.kitchens.clear()
    tab.keeping.lookAgain()
    await written()
    await written()
    expect(keptNames()).toEqual(['B'])
  })

  test('a write that was made and not answered is not taken for another tab’s', async () => {
    const tab = await tabWith('A')
    const { head, ...texts } = keptOf('A')
    shelf.kitchens.set(head.id, { head: { ...head, revision: head.revision + 1 }, ...texts })
    rename(tab, 'B')
    await written()
    expect(tab.keeping.store.getState().trouble).toBeNull()
    expect(keptNames()).toContain('B')
  })

  test('a kept file of a newer version is told, and stays as it is whatever is opened after it', async () => {
    const tab = await tabWith('A')
    const { head } = keptOf('A')
    const newer = '{"format":"dryrun-kitchen","version":99,"name":"A", "unheard": [1 , 2]}'
    shelf.kitchens.set(head.id, { head, kitchen: newer, log: '{"entries":[]}' })
    const again = await openTab({ open: tab.open })
    expect(again.store.getState().kitchen).toBeNull()
    expect(again.store.getState().problems[0]?.kind).toBe('newer-version')
    again.actions.open(own('A'))
    await settled(again)
    rename(again, 'A2')
    await settled(again)
    expect(shelf.kitchens.get(head.id)?.kitchen).toBe(newer)
    await again.keeping.open(head.id)
    await settled(again)
    expect(openName(again)).toBe('A2')
    expect(shelf.kitchens.get(head.id)?.kitchen).toBe(newer)
  })
})

describe('what an earlier version kept', () => {
  const entries = [{ id: 'e1', kind: 'done', operation: 'check-delivery:room' }]
  beforeEach(() => {
    old = { kitchen: own('From before'), log: { format: 'dryrun-daylog', version: 1, entries } }
  })

  test('is taken over once, opened, and removed where it was', async () => {
    const tab = await openTab()
    expect(openName(tab)).toBe('From before')
    expect(tab.store.getState().log.entries).toEqual(entries)
    expect(old).toBeUndefined()
    await openTab()
    expect(keptNames()).toEqual(['From before'])
  })

  test('stays where it was, and is open all the same, where nothing can be kept', async () => {
    shelf.fails = fullStore()
    const tab = await openTab({ starts: false })
    await tab.keeping.start(demo)
    await written()
    expect(openName(tab)).toBe('From before')
    expect(old).toBeDefined()
    expect(tab.keeping.store.getState().trouble).toBe('full')
  })

  test('of a newer version is taken over as it is', async () => {
    old = {
      kitchen: { format: 'dryrun-kitchen', version: 99, name: 'Newer' },
      log: { format: 'dryrun-daylog', version: 1, entries },
    }
    const tab = await openTab()
    expect(tab.store.getState().problems[0]?.kind).toBe('newer-version')
    expect(JSON.parse(keptOf('Newer').kitchen)).toEqual({
      format: 'dryrun-kitchen',
      version: 99,
      name: 'Newer',
    })
  })
})

test('the browser is asked to keep it all once there is a kitchen of one’s own, and once only', async () => {
  const tab = await openTab()
  tab.actions.edit([{ set: 'survey.by', to: 'Ines' }])
  await settled(tab)
  expect(asked).toBe(0)
  tab.actions.open(own('A'))
  await settled(tab)
  rename(tab, 'B')
  await settled(tab)
  expect(asked).toBe(1)
  expect(tab.keeping.store.getState().isPromised).toBe(false)
})

test('edits are counted from the last file on, and a reminder put off waits for as many again', async () => {
  const tab = await tabWith('A')
  for (let i = 0; i < 5; i++) rename(tab, `A${i}`)
  await settled(tab)
  const head = () => keptOf(openName(tab)).head
  expect(head()).toMatchObject({ edits: 5, savedEdits: 0, savedAt: null })
  tab.keeping.savedAsFile()
  await settled(tab)
  expect(head()).toMatchObject({ edits: 5, savedEdits: 5 })
  expect(head().savedAt).not.toBeNull()
  tab.keeping.notNow()
  await settled(tab)
  expect(head().remindAt).toBe(5 + MANY_EDITS)
})
