import type { Browser } from 'playwright-core'
import { type WatchedOptions, type WatchedPage, watchedPage } from './watched-page'

/** The built app in a page of its own, at a place, its first plan worked out. */
export async function openedApp(
  browser: Browser,
  origin: string,
  hash: string,
  options: WatchedOptions = {},
): Promise<WatchedPage> {
  const watched = await watchedPage(browser, origin, { reducedMotion: 'reduce', ...options })
  await watched.page.goto(`${origin}/${hash}`)
  await arrived(watched)
  return watched
}

/** Goes to a place of an app that is open, by its address, as a link does. */
export async function goTo(watched: WatchedPage, hash: string): Promise<void> {
  await watched.page.evaluate((to) => {
    window.location.hash = to
  }, hash)
  await arrived(watched)
}

async function arrived({ page }: WatchedPage): Promise<void> {
  await page.waitForFunction(() => {
    const said = document.querySelector('.which')?.textContent ?? ''
    return said !== '' && !said.includes('working it out')
  })
  await page.locator('main > :not([inert]) h1:visible').first().waitFor()
}
