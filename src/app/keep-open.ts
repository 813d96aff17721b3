import { idbKeeper } from '../keep/idb-keeper'
import { type Keeping, keepingOf } from '../keep/keeping'
import { readOldKept, removeOldKept } from '../keep/old-kept'
import type { AppActions } from '../state/actions'
import type { AppStore } from '../state/store'

const TAB_OPEN = 'dry-run/open'
const ASKED = 'dry-run/asked-to-stay'

/** Keeps what is open in this browser, as it changes, and when the page is put away. */
export function keepOpen(app: AppStore, actions: AppActions): Keeping {
  const keeping = keepingOf(
    app,
    actions,
    idbKeeper(() => keeping.lookAgain()),
    {
      now: () => new Date().toISOString(),
      newId,
      tabs: otherTabs(),
      tabOpen: {
        get: () => quietly(() => window.sessionStorage.getItem(TAB_OPEN)) ?? null,
        set: (id) => quietly(() => window.sessionStorage.setItem(TAB_OPEN, id)),
      },
      old: {
        read: () => quietly(() => readOldKept(window.localStorage)),
        remove: () => quietly(() => removeOldKept(window.localStorage)),
      },
      askToStay,
    },
  )
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') keeping.flush()
    else keeping.lookAgain()
  })
  window.addEventListener('pagehide', () => keeping.flush())
  window.addEventListener('beforeunload', (event) => {
    if (keeping.wouldLose()) event.preventDefault()
  })
  return keeping
}

/** A browser may forbid its stores altogether: then there is nothing. */
function quietly<T>(work: () => T): T | undefined {
  try {
    return work()
  } catch {
    return undefined
  }
}

/** 128 bits of chance; there is no randomUUID where the page does not come over a secure line. */
function newId(): string {
  const bytes = window.crypto.getRandomValues(new Uint8Array(16))
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}

function otherTabs(): { tell(): void; listen(onTold: () => void): void } {
  const channel = quietly(() => new BroadcastChannel('dry-run'))
  return {
    tell: () => channel?.postMessage('changed'),
    listen: (onTold) => channel?.addEventListener('message', onTold),
  }
}

/** Some browsers put the question to the user, so it is put once; after that it is only looked up. */
async function askToStay(): Promise<boolean | null> {
  try {
    if (await navigator.storage.persisted()) return true
    const wasAsked = quietly(() => window.localStorage.getItem(ASKED)) === 'yes'
    quietly(() => window.localStorage.setItem(ASKED, 'yes'))
    return wasAsked ? false : await navigator.storage.persist()
  } catch {
    return null
  }
}
