import {
  headAfter,
  inTheWay,
  type Keeper,
  type KeptKitchen,
  newestFirst,
  type Version,
  versionsToDrop,
} from '../../src/keep/keeper'

/** What two tabs of one browser share. */
export interface Shelf {
  readonly kitchens: Map<string, KeptKitchen>
  readonly versions: Map<string, Version>
  readonly desk: { open?: string }
  /** Set to make every call fail so, as a full or forbidden store does. */
  fails: Error | null
  /** Each write, as it began. */
  readonly writes: string[]
}

export const emptyShelf = (): Shelf => ({
  kitchens: new Map(),
  versions: new Map(),
  desk: {},
  fails: null,
  writes: [],
})

/** Keeps kitchens in memory, as the browser's own store does: later, whole or not at all. */
export function memoryKeeper(shelf: Shelf): Keeper {
  const after = async <T>(work: () => T): Promise<T> => {
    await new Promise((resolve) => setTimeout(resolve, 1))
    if (shelf.fails !== null) throw shelf.fails
    return work()
  }
  const versionsOf = (of: string) =>
    [...shelf.versions.values()].filter((version) => version.of === of).sort(newestFirst)
  return {
    heads: () => after(() => [...shelf.kitchens.values()].map(({ head }) => head)),
    read: (id) => after(() => shelf.kitchens.get(id)),
    write: (id, change, texts, over) => {
      shelf.writes.push(texts.kitchen)
      return after(() => {
        const kept = shelf.kitchens.get(id)?.head
        const stopped = inTheWay(kept, over, change.writer)
        if (stopped !== undefined) return stopped
        const head = headAfter(id, kept, change)
        shelf.kitchens.set(id, { head, ...texts })
        return { kind: 'written', head }
      })
    },
    mark: (id, marks) =>
      after(() => {
        const kept = shelf.kitchens.get(id)
        if (kept === undefined) return undefined
        const head = { ...kept.head, ...marks }
        shelf.kitchens.set(id, { ...kept, head })
        return head
      }),
    forget: (id) =>
      after(() => {
        shelf.kitchens.delete(id)
        for (const version of versionsOf(id)) shelf.versions.delete(version.id)
      }),
    versions: (of) => after(() => versionsOf(of)),
    version: (id) => after(() => shelf.versions.get(id)),
    keepVersion: (version) =>
      after(() => {
        const before = versionsOf(version.of)
        const isSame = before[0]?.kitchen === version.kitchen && before[0].log === version.log
        if (version.why !== 'named' && isSame) return
        if (version.why !== 'named') for (const old of versionsToDrop(before)) shelf.versions.delete(old.id)
        shelf.versions.set(version.id, version)
      }),
    lastOpen: () => after(() => shelf.desk.open),
    setLastOpen: (id) =>
      after(() => {
        shelf.desk.open = id
      }),
  }
}
