import type { Documents, KeptLog } from '../state/store'

/** Where an earlier version of this tool kept the two open documents. */
const KEY = 'dry-run/documents'

export type OldKept = Documents

/** The documents as an earlier version kept them; undefined when there are none, or none that can be read. */
export function readOldKept(storage: Pick<Storage, 'getItem'>): OldKept | undefined {
  try {
    const text = storage.getItem(KEY)
    if (text === null) return undefined
    const kept = JSON.parse(text) as Partial<Documents> | null
    if (kept?.kitchen == null || !Array.isArray((kept.log as KeptLog | undefined)?.entries)) return undefined
    return { kitchen: kept.kitchen, log: kept.log as KeptLog }
  } catch {
    return undefined
  }
}

export function removeOldKept(storage: Pick<Storage, 'removeItem'>): void {
  try {
    storage.removeItem(KEY)
  } catch {
    // A store that cannot be changed is left as it is: what is in it is taken over once more next time.
  }
}
