import type { AppActions } from '../state/actions'
import type { AppStore, Documents, KeptLog } from '../state/store'

/** Where the two documents are kept on this device. */
const KEY = 'dry-run/documents'

/** The documents as last kept; undefined when there are none, or when this browser keeps nothing. */
export function remembered(): Documents | undefined {
  try {
    const text = window.localStorage.getItem(KEY)
    if (text === null) return undefined
    const kept = JSON.parse(text) as Partial<Documents> | null
    if (kept?.kitchen == null || !Array.isArray((kept.log as KeptLog | undefined)?.entries)) return undefined
    return kept as Documents
  } catch {
    return undefined
  }
}

/** Keeps both documents whenever one of them changes, so that a closed page loses nothing. */
export function rememberAlways(store: AppStore): () => void {
  return store.subscribe((state, before) => {
    if (state.kitchen === null || (state.kitchen === before.kitchen && state.log === before.log)) return
    try {
      window.localStorage.setItem(KEY, JSON.stringify({ kitchen: state.kitchen, log: state.log }))
    } catch {
      // A full or forbidden store is no reason to stop: the files can still be saved by hand.
    }
  })
}

/** Opens what was kept, or else what is given. What was kept and can no longer be read stays kept, and is told. */
export async function openAtStart(actions: AppActions, first: () => Promise<string>): Promise<void> {
  const kept = remembered()
  if (kept === undefined) actions.open(await first())
  else actions.open(kept.kitchen, kept.log)
}
