/** Nothing in any place that axe objects to, in the hand. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { STATES, violations } from '../support/axe-places'
import { launchChromium } from '../support/chromium'
import { goTo, openedApp } from '../support/opened-app'
import type { WatchedPage } from '../support/watched-page'

const origin = inject('origin')
let browser: Browser
let watched: WatchedPage
beforeAll(async () => {
  browser = await launchChromium()
  watched = await openedApp(browser, origin, '#survey', { viewport: { width: 390, height: 844 } })
})
afterAll(() => browser?.close())

/** In a short run every fourth state; the desk has others. All of both by DRYRUN_LONG=1. */
const LOOKED_AT =
  process.env['DRYRUN_LONG'] === '1'
    ? STATES
    : STATES.filter((_, i) => i % 4 === 3 || i === STATES.length - 1)

test.each(LOOKED_AT)('$name', async ({ hash, open }) => {
  await goTo(watched, hash)
  await open?.(watched.page)
  expect(await violations(watched.page)).toEqual([])
})
