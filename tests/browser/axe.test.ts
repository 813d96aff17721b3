/** Nothing in any place that axe objects to, on a desk; and nothing that goes against the policy of the page. */
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
  watched = await openedApp(browser, origin, '#survey', { viewport: { width: 1280, height: 800 } })
})
afterAll(() => browser?.close())

/** In a short run every fourth state; the telephone has others. All of both by DRYRUN_LONG=1. */
const LOOKED_AT =
  process.env['DRYRUN_LONG'] === '1'
    ? STATES
    : STATES.filter((_, i) => i % 4 === 1 || i === STATES.length - 1)

test.each(LOOKED_AT)('$name', async ({ hash, open }) => {
  await goTo(watched, hash)
  await open?.(watched.page)
  expect(await violations(watched.page)).toEqual([])
})

test('nowhere has the browser complained, nor refused anything by the policy of the page', () => {
  expect(watched.complaints).toEqual([])
})
