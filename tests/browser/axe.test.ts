/** Nothing in any place that axe objects to, on a desk and in the hand. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { goTo, openedApp } from '../support/opened-app'
import type { WatchedPage } from '../support/watched-page'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium()
})
afterAll(() => browser?.close())

async function violations(page: Page): Promise<readonly string[]> {
  const found = await new AxeBuilder({ page }).analyze()
  return found.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map((n) => n.html.slice(0, 200)).join(' | ')}`,
  )
}

/** What else has to be open in a place for all of it to be looked at. */
const STATES: readonly { name: string; hash: string; open?: (page: Page) => Promise<void> }[] = [
  { name: 'Rehearse', hash: '#rehearse/second-fix:wall-3' },
  {
    name: 'Rehearse, asked why and what a figure stands on',
    hash: '#rehearse/level:wall-3',
    open: async (page) => {
      await page.getByRole('button', { name: 'Why now?' }).click()
      await page.locator('.slip-figures button').first().click()
      await page.getByRole('button', { name: 'Look round' }).click()
    },
  },
  { name: 'Survey and delivery', hash: '#survey' },
  { name: 'On paper, first sheet', hash: '#paper/first' },
  { name: 'On paper, a wall', hash: '#paper/wall:a' },
  { name: 'On paper, heights', hash: '#paper/heights' },
  { name: 'On paper, order of work', hash: '#paper/work' },
  {
    name: 'On the day',
    hash: '#day',
    open: (page) => page.locator('.day-log summary').click(),
  },
  {
    name: 'On the day, trouble',
    hash: '#day',
    open: (page) => page.getByRole('button', { name: 'Something is wrong' }).click(),
  },
]

describe.each([
  { screen: 'desk', viewport: { width: 1280, height: 800 } },
  { screen: 'phone', viewport: { width: 390, height: 844 } },
])('on a $screen', ({ viewport }) => {
  let watched: WatchedPage
  beforeAll(async () => {
    watched = await openedApp(browser, origin, '#survey', { viewport })
  })
  afterAll(() => watched?.close())

  test.each(STATES)('$name', async ({ hash, open }) => {
    await goTo(watched, hash)
    await open?.(watched.page)
    expect(await violations(watched.page)).toEqual([])
  })
})
