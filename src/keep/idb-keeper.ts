import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import {
  type Change,
  headAfter,
  inTheWay,
  type Keeper,
  type KeptHead,
  type KeptTexts,
  newestFirst,
  type Version,
  versionsToDrop,
  type Written,
} from './keeper'

const NAME = 'dry-run'
/** One more for each change of what is kept and how; a database of a newer one is not touched. */
const VERSION = 1
/** How long an answer may take before it is given up, ms: some browsers never give one. */
const PATIENCE = 10_000
/** While it is being cleared it cannot be opened for a moment: how long until it is tried again, ms. */
const TRIES = [200, 1000]

interface Schema extends DBSchema {
  kitchens: { key: string; value: KeptHead }
  documents: { key: string; value: KeptTexts }
  versions: { key: string; value: Version; indexes: { of: string } }
  desk: { key: string; value: string }
}

/** What an unfinished answer ends as when the connection is closed under it: by a clearing, or without a word. */
const CUT_OFF = ['InvalidStateError', 'AbortError', 'UnknownError']

const ALL = ['kitchens', 'documents', 'versions'] as const

/** An error by its name alone: what went wrong is told by that. */
function called(name: string, message: string, cause?: unknown): Error {
  return Object.assign(new Error(message, { cause }), { name })
}

/** A transaction whose failure is told by what was asked in it, and not once more by itself. */
function begun<T extends { readonly done: Promise<void> }>(tx: T): T {
  tx.done.catch(() => undefined)
  return tx
}

function within<T>(answer: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(called('TimeoutError', 'the browser gave no answer')), PATIENCE)
  })
  return Promise.race([answer, late]).finally(() => clearTimeout(timer))
}

/**
 * Keeps kitchens in this browser's IndexedDB.
 *
 * @param onLost called when the database was closed under us: it was cleared, or a newer version of this tool wants it
 */
export function idbKeeper(onLost: () => void): Keeper {
  let open: Promise<IDBPDatabase<Schema>> | undefined
  const lost = () => {
    open = undefined
    onLost()
  }
  const connect = async (tries: readonly number[] = TRIES): Promise<IDBPDatabase<Schema>> => {
    if (typeof indexedDB === 'undefined' || indexedDB === null) throw called('NoStoreError', 'no IndexedDB')
    try {
      return await within(
        openDB<Schema>(NAME, VERSION, {
          upgrade(db) {
            db.createObjectStore('kitchens', { keyPath: 'id' })
            db.createObjectStore('documents')
            db.createObjectStore('versions', { keyPath: 'id' }).createIndex('of', 'of')
            db.createObjectStore('desk')
          },
          blocking(_, __, event) {
            ;(event.target as IDBDatabase).close()
            lost()
          },
          terminated: lost,
        }),
      )
    } catch (error) {
      const { name } = error as Error
      if (name === 'VersionError' || name === 'QuotaExceededError') throw error
      const [pause, ...further] = tries
      if (pause === undefined) throw called('NoStoreError', 'IndexedDB cannot be opened', error)
      await new Promise((resolve) => setTimeout(resolve, pause))
      return connect(further)
    }
  }
  /** What the closing of the connection cut off is asked once more, over a new one. */
  const using = async <T>(work: (db: IDBPDatabase<Schema>) => Promise<T>): Promise<T> => {
    const database = () => {
      open ??= connect()
      open.catch(() => {
        open = undefined
      })
      return open
    }
    const db = await database()
    try {
      return await within(work(db))
    } catch (error) {
      if (!CUT_OFF.includes((error as Error).name)) throw error
      open = undefined
      return within(work(await database()))
    }
  }

  return {
    heads: () => using((db) => db.getAll('kitchens')),
    read: (id) =>
      using(async (db) => {
        const tx = begun(db.transaction(ALL))
        const [head, texts] = await Promise.all([
          tx.objectStore('kitchens').get(id),
          tx.objectStore('documents').get(id),
        ])
        return head === undefined || texts === undefined ? undefined : { head, ...texts }
      }),
    write: (id, change, texts, over) =>
      using(async (db) => {
        const written = await writeOver(db, id, change, texts, over)
        if (written.kind === 'written') await readBack(db, written.head, texts)
        return written
      }),
    mark: (id, marks) =>
      using(async (db) => {
        const tx = begun(db.transaction('kitchens', 'readwrite'))
        const head = await tx.store.get(id)
        const marked = head === undefined ? undefined : { ...head, ...marks }
        await Promise.all([marked === undefined ? undefined : tx.store.put(marked), tx.done])
        return marked
      }),
    forget: (id) =>
      using(async (db) => {
        const tx = begun(db.transaction(ALL, 'readwrite'))
        const versions = await tx.objectStore('versions').index('of').getAllKeys(id)
        await Promise.all([
          tx.objectStore('kitchens').delete(id),
          tx.objectStore('documents').delete(id),
          ...versions.map((key) => tx.objectStore('versions').delete(key)),
          tx.done,
        ])
      }),
    versions: (of) =>
      using(async (db) => {
        const all = await db.getAllFromIndex('versions', 'of', of)
        return all.map(({ kitchen: _, log: __, ...head }) => head).sort(newestFirst)
      }),
    version: (id) => using((db) => db.get('versions', id)),
    keepVersion: (version) =>
      using(async (db) => {
        const tx = begun(db.transaction('versions', 'readwrite', { durability: 'strict' }))
        const before = (await tx.store.index('of').getAll(version.of)).sort(newestFirst)
        const [newest] = before
        const isSame = newest?.kitchen === version.kitchen && newest.log === version.log
        const isAsked = version.why === 'named'
        const drop = isAsked || isSame ? [] : versionsToDrop(before)
        await Promise.all([
          isAsked || !isSame ? tx.store.put(version) : undefined,
          ...drop.map((old) => tx.store.delete(old.id)),
          tx.done,
        ])
      }),
    lastOpen: () => using((db) => db.get('desk', 'open')),
    setLastOpen: (id) =>
      using(async (db) => {
        await db.put('desk', id, 'open')
      }),
  }
}

/** Head and both files in one transaction: all of it is there after it, or none. */
async function writeOver(
  db: IDBPDatabase<Schema>,
  id: string,
  change: Change,
  texts: KeptTexts,
  over: number,
): Promise<Written> {
  const tx = begun(db.transaction(['kitchens', 'documents'], 'readwrite', { durability: 'strict' }))
  const kept = await tx.objectStore('kitchens').get(id)
  const stopped = inTheWay(kept, over, change.writer)
  if (stopped !== undefined) {
    await tx.done
    return stopped
  }
  const head = headAfter(id, kept, change)
  const puts = [tx.objectStore('documents').put(texts, id), tx.objectStore('kitchens').put(head)]
  tx.commit()
  await Promise.all([...puts, tx.done])
  return { kind: 'written', head }
}

/** What was written must be there as it was written, unless somebody has written over it since. */
async function readBack(db: IDBPDatabase<Schema>, written: KeptHead, texts: KeptTexts): Promise<void> {
  const tx = begun(db.transaction(['kitchens', 'documents']))
  const [head, kept] = await Promise.all([
    tx.objectStore('kitchens').get(written.id),
    tx.objectStore('documents').get(written.id),
  ])
  if (head !== undefined && head.revision > written.revision) return
  const isSame =
    head?.revision === written.revision && kept?.kitchen === texts.kitchen && kept.log === texts.log
  if (!isSame) throw called('ReadBackError', 'what was written does not come back')
}
