import { createStore, type StoreApi } from 'zustand/vanilla'
import type { AppActions } from '../state/actions'
import { freeName, isPractice, kitchenName, renamed } from '../state/kitchen-name'
import { type AppState, type AppStore, emptyLog, type Kept, type KeptLog } from '../state/store'
import {
  type Keeper,
  type KeptHead,
  type KeptTexts,
  textsOf,
  type VersionHead,
  type VersionReason,
} from './keeper'
import type { OldKept } from './old-kept'
import { type Trouble, troubleOf } from './trouble'
import { type Snapshot, writeQueue } from './write-queue'

/** A file is asked for after so many edits, and again after so many more. */
export const MANY_EDITS = 100

/** What the screens show of the keeping. */
export interface KeepState {
  /** Null while nothing has been read yet. */
  readonly kitchens: readonly KeptHead[] | null
  readonly open: string | null
  /** Edits in the open kitchen since its last file, where they are so many that a file is to be asked for; else 0. */
  readonly editsToSave: number
  /** Versions of the open kitchen, newest first. */
  readonly versions: readonly VersionHead[]
  readonly trouble: Trouble | null
  /** The user has read of the trouble: it is not told again while it lasts. */
  readonly isPutAway: boolean
  /** Whether the browser has promised to keep it all until it is removed; null: not asked, or it cannot say. */
  readonly isPromised: boolean | null
}

/** What the keeping needs of the browser round it; a test gives its own. */
export interface Surroundings {
  readonly now: () => string
  readonly newId: () => string
  /** To and from the other tabs. */
  readonly tabs: { tell(): void; listen(onTold: () => void): void }
  /** The kitchen this tab had open before it was loaded again. */
  readonly tabOpen: { get(): string | null; set(id: string): void }
  /** What an earlier version of this tool kept, until it has been taken over. */
  readonly old: { read(): OldKept | undefined; remove(): void }
  /** Asks the browser to keep what is kept, once; says whether it promised. */
  readonly askToStay: () => Promise<boolean | null>
}

export interface Keeping {
  readonly store: StoreApi<KeepState>
  /** Opens what was open last, or what is given where nothing is kept. */
  start(first: () => Promise<string>): Promise<void>
  /** An id and a name that no kept kitchen has, for one that is begun. */
  fresh(name: string): { readonly kept: Kept; readonly name: string }
  open(id: string): Promise<void>
  copy(id: string): Promise<void>
  takeOut(id: string): Promise<void>
  bringBack(id: string): Promise<void>
  /** Removes what was taken out, for good. */
  forget(id: string): Promise<void>
  keepVersion(name: string): Promise<void>
  returnTo(version: string): Promise<void>
  /** The open kitchen was saved as a file. */
  savedAsFile(): void
  /** Says nothing of saving a file for a while. */
  notNow(): void
  /** Of two tabs that changed the same kitchen: what is open here becomes another kitchen. */
  keepOwn(): Promise<void>
  /** What the other tab has is opened; what is open here stays as a version of it. */
  takeOther(): Promise<void>
  tryAgain(): Promise<void>
  /** Puts away what was told. */
  putAway(): void
  /** Writes what is not written; looks whether what is kept is still there. */
  flush(): void
  lookAgain(): void
  /** Whether closing the page now would lose an edit. */
  wouldLose(): boolean
}

/** Keeps whatever is open, as it changes, and opens what is kept. */
export function keepingOf(app: AppStore, actions: AppActions, keeper: Keeper, around: Surroundings): Keeping {
  const store = createStore<KeepState>()(() => ({
    kitchens: null,
    open: null,
    editsToSave: 0,
    versions: [],
    trouble: null,
    isPutAway: false,
    isPromised: null,
  }))
  store.subscribe((state) => {
    const editsToSave = editsToSaveIn(state)
    if (editsToSave !== state.editsToSave) store.setState({ editsToSave })
  })
  let known: Kept | null = null
  let first: () => Promise<string> = async () => ''
  let savedFile: unknown = null
  let wasAsked = false

  const tell = (trouble: Trouble) =>
    store.setState((before) => (before.trouble === trouble ? {} : { trouble, isPutAway: false }))
  const told = (error: unknown) => tell(troubleOf(error))
  const heads = (): readonly KeptHead[] => store.getState().kitchens ?? []
  const headOf = (id: string | undefined) => heads().find((head) => head.id === id)
  const names = () => heads().map(({ name }) => name)
  const show = (head: KeptHead | undefined) => {
    if (head === undefined) return
    const others = heads().filter(({ id }) => id !== head.id)
    store.setState({ kitchens: [...others, head].sort(newestChange) })
  }
  /** What was told is settled; what is held back is still to be told. */
  const clear = (...kinds: readonly Trouble[]) => {
    const left = known !== null && queue.isHeld(known.id) ? 'elsewhere' : null
    store.setState(({ trouble }) => (trouble !== null && kinds.includes(trouble) ? { trouble: left } : {}))
  }

  /** Once there is a kitchen of one's own. */
  const askToStay = () => {
    if (wasAsked || !heads().some((head) => !head.isPractice)) return
    wasAsked = true
    void around.askToStay().then((isPromised) => store.setState({ isPromised }))
  }

  const queue = writeQueue(keeper, around.newId(), around.now, {
    onWritten(head) {
      show(head)
      clear('full', 'broken', 'none')
      around.tabs.tell()
      askToStay()
    },
    onElsewhere(head) {
      show(head)
      if (head.id === known?.id) tell('elsewhere')
      else if (queue.waiting(head.id) !== undefined) keepLeft(head.id, queue.waiting(head.id))
    },
    onGone: () => tell('gone'),
    onFailed: told,
  })
  /** After all that waits; what goes wrong is told. */
  const job = async (work: () => Promise<unknown>): Promise<void> => {
    try {
      await queue.run(work)
    } catch (error) {
      told(error)
    }
  }

  const readAgain = async () => {
    store.setState({ kitchens: [...(await keeper.heads())].sort(newestChange) })
    if (known !== null) store.setState({ versions: await keeper.versions(known.id) })
  }
  const keepAs = async (
    of: string,
    texts: KeptTexts,
    why: VersionReason,
    name = kitchenName(parsed(texts.kitchen)),
  ) => {
    const version = { id: around.newId(), of, name, keptAt: around.now(), why, ...texts }
    await keeper.keepVersion(version)
    if (of === known?.id) store.setState({ versions: await keeper.versions(of) })
  }
  /** What was left while another tab had the say becomes a kitchen of its own. */
  const keepLeft = (id: string, left: Snapshot | undefined) => {
    if (left === undefined) return
    queue.start(id, headOf(id)?.revision ?? 0)
    const name = freeName(`${kitchenName(left.kitchen)} (from another tab)`, names())
    queue.put(around.newId(), { ...left, kitchen: renamed(left.kitchen, name) })
  }

  /** Something else was opened: it gets its place, and what stood there or was left is kept as a version. */
  const opened = (state: AppState, before: AppState) => {
    const left = known
    const wasHeld = left !== null && queue.isHeld(left.id)
    if (left !== null && wasHeld && state.kept?.id !== left.id) keepLeft(left.id, queue.waiting(left.id))
    if (state.kept === null) {
      known = placeFor(state, left, before, wasHeld)
      app.setState({ kept: known })
      queue.put(known.id, { ...snapshotOf(state), edits: 0 })
    } else {
      known = state.kept
      queue.start(known.id, known.revision)
      // One for practice that came by a link is not the one everybody has: it counts as changed.
      const edits = Number(isPractice(state.kitchen))
      if (known.revision === 0) queue.put(known.id, { ...snapshotOf(state), edits })
    }
    clear('elsewhere')
    const { id } = known
    store.setState({ open: id, versions: [] })
    around.tabOpen.set(id)
    void job(async () => {
      await keeper.setLastOpen(id)
      const versions = await keeper.versions(id)
      if (id === known?.id) store.setState({ versions })
    })
  }
  /**
   * A file takes the place of the open kitchen of its name, one for practice that of its namesake for practice; whatever
   * else is opened is a further kitchen. What is replaced, and what was left with edits in it, is kept as a version.
   */
  const placeFor = (state: AppState, left: Kept | null, before: AppState, wasHeld: boolean): Kept => {
    const texts = textsOf(state.kitchen, state.log)
    const keepOld = (of: string, old: () => Promise<KeptTexts | undefined>) =>
      void job(async () => {
        const kept = await old()
        if (kept === undefined || (kept.kitchen === texts.kitchen && kept.log === texts.log)) return
        await keepAs(of, { kitchen: kept.kitchen, log: kept.log }, 'file')
      })
    const same = heads().find(
      ({ id, ...head }) =>
        (isPractice(state.kitchen) || id === left?.id) &&
        !(wasHeld && id === left?.id) &&
        head.name === kitchenName(state.kitchen) &&
        head.isPractice === isPractice(state.kitchen) &&
        head.takenOutAt === null,
    )
    if (left !== null && before.kitchen !== null) {
      const edits = (headOf(left.id)?.edits ?? 0) + (queue.waiting(left.id)?.edits ?? 0)
      const leftTexts = textsOf(before.kitchen, before.log)
      if (same?.id === left.id || edits > 0) keepOld(left.id, async () => leftTexts)
    }
    if (same === undefined) return { id: around.newId(), revision: 0 }
    if (same.id !== left?.id) {
      const waits = queue.waiting(same.id)
      queue.start(same.id, same.revision)
      keepOld(same.id, async () =>
        waits === undefined ? keeper.read(same.id) : textsOf(waits.kitchen, waits.log),
      )
    }
    return { id: same.id, revision: same.revision }
  }

  app.subscribe((state, before) => {
    if (state.kitchen === null) return
    if (state.kept === null || state.kept !== known) return opened(state, before)
    const { id } = state.kept
    const isLogged = state.log !== before.log
    if (state.kitchen !== before.kitchen || isLogged) {
      const edits = Number(state.past !== before.past) + Number(isLogged)
      queue.put(id, { ...snapshotOf(state), edits })
    } else if (state.at !== before.at && queue.seen(id) > 0) {
      const waits = queue.waiting(id)
      if (waits !== undefined) queue.put(id, { ...waits, at: state.at, edits: 0 })
      else void queue.mark(id, { at: state.at }).catch(() => undefined)
    }
  })

  /** False where it is not there any more. */
  const openKept = async (id: string): Promise<boolean> => {
    const kept = await keeper.read(id)
    if (kept === undefined) {
      await readAgain()
      return false
    }
    const { head } = kept
    show(head)
    const place = { kept: { id, revision: head.revision }, at: head.at }
    actions.open(parsed(kept.kitchen), logOf(kept.log), place)
    return true
  }
  const openNext = async (but: string) => {
    const next = heads().find((head) => head.id !== but && head.takenOutAt === null)
    if (next === undefined || !(await openKept(next.id))) actions.open(await first())
  }
  const mark = (id: string, marks: Parameters<Keeper['mark']>[1]) =>
    job(async () => {
      show(await keeper.mark(id, marks))
      around.tabs.tell()
    })
  /** Whether what is open is still kept, and as it was when this tab last saw it. */
  const look = () =>
    job(async () => {
      await readAgain()
      clear('none')
      if (!queue.hasEdits()) clear('full', 'broken')
      void queue.flush()
      const id = known?.id
      if (id === undefined || queue.seen(id) === 0) return
      const head = headOf(id)
      if (head === undefined) queue.put(id, { ...snapshotOf(app.getState()), edits: 0 })
      else if (head.revision > queue.seen(id)) {
        queue.hold(id)
        tell('elsewhere')
      }
    })
  around.tabs.listen(look)

  return {
    store,
    async start(demo) {
      first = demo
      const old = around.old.read()
      try {
        await readAgain()
        askToStay()
        const taken = old === undefined ? undefined : await takeOver(old)
        const last = taken ?? around.tabOpen.get() ?? (await keeper.lastOpen())
        const there = heads().filter(({ takenOutAt }) => takenOutAt === null)
        const head = there.find(({ id }) => id === last) ?? there[0]
        if (head !== undefined && (await openKept(head.id))) return
      } catch (error) {
        told(error)
        if (old !== undefined) return actions.open(old.kitchen, old.log)
      }
      actions.open(await first())
    },
    fresh: (name) => ({ kept: { id: around.newId(), revision: 0 }, name: freeName(name, names()) }),
    open: (id) => job(async () => id === known?.id || openKept(id)),
    copy: (id) =>
      job(async () => {
        const kept = await keeper.read(id)
        if (kept === undefined) return readAgain()
        const name = freeName(`${kept.head.name} (copy)`, names())
        const kitchen = renamed(parsed(kept.kitchen), name)
        queue.put(around.newId(), { kitchen, log: logOf(kept.log), at: kept.head.at, edits: kept.head.edits })
      }),
    async takeOut(id) {
      await mark(id, { takenOutAt: around.now() })
      if (id === known?.id) await job(() => openNext(id))
    },
    bringBack: (id) => mark(id, { takenOutAt: null }),
    forget: (id) =>
      job(async () => {
        await keeper.forget(id)
        around.tabs.tell()
        await readAgain()
      }),
    async keepVersion(name) {
      const { kitchen, log, kept } = app.getState()
      if (kept !== null) await job(() => keepAs(kept.id, textsOf(kitchen, log), 'named', name))
    },
    returnTo: (id) =>
      job(async () => {
        const version = await keeper.version(id)
        const { kitchen, log, kept } = app.getState()
        if (version === undefined || kept === null || version.of !== kept.id) return
        await keepAs(kept.id, textsOf(kitchen, log), 'return')
        actions.replace(parsed(version.kitchen))
        const was = logOf(version.log)
        // The day log only ever grows: one that holds all of this one and more comes back with its version.
        if (was.entries.length > log.entries.length && holdsAll(was, log)) actions.openLog(version.log)
      }),
    savedAsFile() {
      const { kitchen, kept } = app.getState()
      savedFile = kitchen
      if (kept === null) return
      void job(async () => {
        const edits = headOf(kept.id)?.edits ?? 0
        const marks = { savedEdits: edits, savedAt: around.now(), remindAt: edits + MANY_EDITS }
        show(await keeper.mark(kept.id, marks))
      })
    },
    notNow() {
      const head = headOf(known?.id)
      if (head !== undefined) void mark(head.id, { remindAt: head.edits + MANY_EDITS })
    },
    async keepOwn() {
      const { kitchen } = app.getState()
      if (known === null) return
      queue.start(known.id, headOf(known.id)?.revision ?? 0)
      known = { id: around.newId(), revision: 0 }
      app.setState({ kept: known })
      store.setState({ open: known.id, versions: [], trouble: null })
      around.tabOpen.set(known.id)
      const { id } = known
      actions.replace(renamed(kitchen, freeName(`${kitchenName(kitchen)} (from another tab)`, names())))
      await job(() => keeper.setLastOpen(id))
    },
    takeOther: () =>
      job(async () => {
        const { kitchen, log, kept } = app.getState()
        if (kept === null) return
        if (queue.waiting(kept.id) !== undefined) await keepAs(kept.id, textsOf(kitchen, log), 'elsewhere')
        await openKept(kept.id)
      }),
    async tryAgain() {
      const { kitchen, kept } = app.getState()
      if (kitchen !== null && kept !== null && queue.waiting(kept.id) === undefined) return look()
      await queue.flush()
      if (store.getState().kitchens === null) await job(readAgain)
    },
    putAway() {
      store.setState({ isPutAway: true })
      clear('gone')
    },
    flush: () => void queue.flush(),
    lookAgain: () => void look(),
    wouldLose: () => queue.hasEdits() && app.getState().kitchen !== savedFile,
  }

  /** What an earlier version kept becomes a kitchen here, and is removed there when it has been read back. */
  async function takeOver({ kitchen, log }: OldKept): Promise<string | undefined> {
    const id = around.newId()
    const change = {
      name: kitchenName(kitchen),
      isPractice: isPractice(kitchen),
      changedAt: around.now(),
      writer: id,
      at: null,
      edits: 1,
    }
    const written = await keeper.write(id, change, textsOf(kitchen, log), 0)
    if (written.kind !== 'written') return undefined
    around.old.remove()
    show(written.head)
    return id
  }
}

const snapshotOf = ({ kitchen, log, at }: AppState) => ({ kitchen, log, at })

const newestChange = (a: KeptHead, b: KeptHead): number =>
  a.changedAt === b.changedAt ? (a.id < b.id ? -1 : 1) : a.changedAt < b.changedAt ? 1 : -1

/** Kitchens for practice need no file; one that was asked for and put off is asked for much later. */
function editsToSaveIn({ kitchens, open }: KeepState): number {
  const head = kitchens?.find(({ id }) => id === open)
  if (head === undefined || head.isPractice || head.edits < head.remindAt) return 0
  const edits = head.edits - head.savedEdits
  return edits >= MANY_EDITS ? edits : 0
}

/** The kitchen as a value; what cannot be read is handed on as it is, to be told by who reads it. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}

function logOf(text: string): KeptLog {
  const log = parsed(text) as Partial<KeptLog> | null
  return Array.isArray(log?.entries) ? (log as KeptLog) : emptyLog
}

function holdsAll(log: KeptLog, other: KeptLog): boolean {
  const mine = new Set(log.entries.map((entry) => JSON.stringify(entry)))
  return other.entries.every((entry) => mine.has(JSON.stringify(entry)))
}
