/** How long a newer version is given to take over before the page is loaded again anyway: some browsers never tell. */
const PATIENCE_MS = 3000
/** A page may stay open for days: how often it asks whether there is a newer version. */
const ASK_EVERY_MS = 60 * 60_000

let registration: ServiceWorkerRegistration | undefined
let isHere = false
const listeners = new Set<() => void>()

/** Whether a newer version of the app is on this device, waiting to be used. */
export const newerVersion = {
  subscribe(listener: () => void): () => void {
    listeners.add(listener)
    return () => listeners.delete(listener)
  },
  isHere: (): boolean => isHere,
  /** Loads the page again with it. Only ever at the user's word: a step under way is not to be taken from their hands. */
  use(): void {
    let isLoading = false
    const load = () => {
      if (isLoading) return
      isLoading = true
      window.location.reload()
    }
    const waiting = registration?.waiting
    if (!waiting) {
      load()
      return
    }
    navigator.serviceWorker.addEventListener('controllerchange', load)
    setTimeout(load, PATIENCE_MS)
    waiting.postMessage('use-it-now')
  },
}

/** Keeps the app on this device, where the browser can: over https, or served on this machine itself. */
export async function keepOnDevice(): Promise<void> {
  if (!('serviceWorker' in navigator)) return
  await allLoaded()
  try {
    registration = await navigator.serviceWorker.register('./service-worker.js', { updateViaCache: 'none' })
  } catch {
    return // The app works all the same, as long as there is a line.
  }
  watch(registration)
}

/** What the first step needs goes first on a poor line. */
async function allLoaded(): Promise<void> {
  if (document.readyState === 'complete') return
  await new Promise((resolve) => window.addEventListener('load', resolve, { once: true }))
}

function watch(kept: ServiceWorkerRegistration): void {
  const look = () => {
    if (kept.waiting !== null && kept.active !== null) tell()
  }
  kept.addEventListener('updatefound', () => kept.installing?.addEventListener('statechange', look))
  kept.installing?.addEventListener('statechange', look)
  look()
  // Another page of the app took the newer version: this one still shows the older.
  if (navigator.serviceWorker.controller !== null)
    navigator.serviceWorker.addEventListener('controllerchange', tell)
  askNowAndThen(kept)
}

function askNowAndThen(kept: ServiceWorkerRegistration): void {
  let asked = Date.now()
  const ask = () => {
    if (!navigator.onLine || document.hidden || Date.now() - asked < ASK_EVERY_MS) return
    asked = Date.now()
    kept.update().catch(() => undefined)
  }
  setInterval(ask, ASK_EVERY_MS / 4)
  document.addEventListener('visibilitychange', ask)
}

function tell(): void {
  isHere = true
  for (const listener of listeners) listener()
}
