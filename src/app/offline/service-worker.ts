/**
 * Keeps every built file on the device and answers from there first, so that the app opens and works when there is no line.
 * A newer version is fetched whole beside the one in use, and waits until it is asked for.
 */
declare const KEPT_FILES: readonly (readonly [address: string, integrity: string])[]
declare const KEPT_VERSION: string

interface LateEvent extends Event {
  waitUntil(done: Promise<unknown>): void
}
interface FetchEvent extends LateEvent {
  readonly request: Request
  respondWith(answer: Promise<Response>): void
}
interface Scope {
  readonly registration: { readonly scope: string }
  readonly clients: { claim(): Promise<void> }
  skipWaiting(): Promise<void>
  addEventListener(type: 'install' | 'activate', listener: (event: LateEvent) => void): void
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void
  addEventListener(type: 'message', listener: (event: MessageEvent<unknown>) => void): void
}

const worker = self as unknown as Scope
/** The folder the app is in: two copies on one host must not touch each other's files. */
const folder = worker.registration.scope
const OURS = `dry-run ${folder} `
const CACHE = OURS + KEPT_VERSION
const files = KEPT_FILES
const addresses = new Set(files.map(([path]) => new URL(path, folder).href))

worker.addEventListener('install', (event) => event.waitUntil(keepAll()))
worker.addEventListener('activate', (event) => event.waitUntil(takeOver()))
worker.addEventListener('message', ({ data }) => {
  if (data === 'use-it-now') void worker.skipWaiting()
})
worker.addEventListener('fetch', (event) => {
  const address = addressOf(event.request)
  if (address !== undefined) event.respondWith(answer(event.request, address))
})

/** All or nothing: half a version would be one that breaks when the line does. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(CACHE)
  try {
    await Promise.all(files.map((file) => keep(cache, file)))
  } catch (error) {
    await caches.delete(CACHE)
    throw error
  }
}

/** The hash is held against what comes, so that a page kept too long on its way is never put beside newer scripts. */
async function keep(cache: Cache, [path, integrity]: (typeof files)[number]): Promise<void> {
  const address = new URL(path, folder).href
  // The name of a file under assets/ changes with what is in it: one of the version in use need not be fetched again.
  const held = path.startsWith('assets/') ? await caches.match(address, { ignoreVary: true }) : undefined
  const response = held ?? (await fetch(address, { integrity, cache: 'no-cache' }))
  if (!response.ok) throw new Error(`${response.status}: ${path}`)
  // A page that was sent on from another address may not be shown again as it came.
  await cache.put(address, response.redirected ? new Response(response.body, response) : response)
}

/** Of the older versions the last is left: a page that still shows it may yet want a part of it. */
async function takeOver(): Promise<void> {
  const older = (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== CACHE)
  await Promise.all(older.slice(0, -1).map((name) => caches.delete(name)))
  await worker.clients.claim()
}

/** Where what is asked for is kept; undefined: it is none of ours. */
function addressOf({ method, mode, url }: Request): string | undefined {
  if (method !== 'GET') return undefined
  const { origin, pathname } = new URL(url)
  const address = origin + (mode === 'navigate' ? pathname.replace(/\/index\.html$/, '/') : pathname)
  const isOurs = addresses.has(address) || address.startsWith(`${folder}assets/`)
  return isOurs ? address : undefined
}

async function answer(request: Request, address: string): Promise<Response> {
  const cache = await caches.open(CACHE)
  const kept = await cache.match(address, { ignoreVary: true })
  return kept ?? (await caches.match(address, { ignoreVary: true })) ?? fetch(request)
}
