import type { Browser, BrowserContextOptions, Page } from 'playwright-core'

export type WatchedPage = {
  readonly page: Page
  /** Console errors and warnings, uncaught errors, failed requests; grows while the page lives. */
  readonly complaints: readonly string[]
  /** Addresses outside the app's own origin that the page asked for; each was refused. */
  readonly requestsOffOrigin: readonly string[]
  readonly close: () => Promise<void>
}

export type WatchedOptions = BrowserContextOptions & { readonly keepsOnDevice?: boolean }

/**
 * `@react-three/fiber` 9 still makes a THREE.Clock, and three 0.187 says so at every start; a software renderer tells of
 * each picture that is handed to the page.
 */
const KNOWN = /THREE\.Clock: This module has been deprecated|GPU stall due to ReadPixels/

/**
 * A page in a fresh browser context that notes whatever goes wrong and can't reach anything but the app's origin. It does
 * not keep the app for offline work, which takes longer than most tests, unless it is asked to.
 */
export async function watchedPage(
  browser: Browser,
  origin: string,
  { keepsOnDevice = false, ...options }: WatchedOptions = {},
): Promise<WatchedPage> {
  const context = await browser.newContext(options)
  if (!keepsOnDevice)
    await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'))
  const complaints: string[] = []
  const requestsOffOrigin: string[] = []
  await context.route(
    (url) => url.origin !== origin && url.protocol !== 'data:' && url.protocol !== 'blob:',
    (route) => {
      requestsOffOrigin.push(route.request().url())
      return route.abort()
    },
  )
  const page = await context.newPage()
  page.on('console', (message) => {
    const worth = message.type() === 'error' || message.type() === 'warning'
    if (worth && !KNOWN.test(message.text())) complaints.push(`${message.type()}: ${message.text()}`)
  })
  page.on('pageerror', (error) => complaints.push(`uncaught: ${error.stack ?? error.message}`))
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`)
  })
  return { page, complaints, requestsOffOrigin, close: () => context.close() }
}
