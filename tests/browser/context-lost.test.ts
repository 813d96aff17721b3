/** Phones take the graphics context away in the background; the picture has to come back by itself. */

import type { Browser, Page } from 'playwright-core'
import { PNG } from 'pngjs'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { goTo, openedApp } from '../support/opened-app'
import { stillPicture } from '../support/still-picture'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium()
})
afterAll(() => browser?.close())

/** How many different colours the picture shows: one or two while there is none. */
async function colors(page: Page): Promise<number> {
  const { data } = PNG.sync.read(await page.locator('.picture canvas').screenshot())
  const seen = new Set<number>()
  for (let i = 0; i < data.length; i += 4)
    seen.add(((data[i] ?? 0) << 16) | ((data[i + 1] ?? 0) << 8) | (data[i + 2] ?? 0))
  return seen.size
}

/** Labels lie over the canvas; only the picture itself is to be counted. */
const withoutLabels = (page: Page) =>
  page.addStyleTag({ content: '.scene-labels, .look-round { display: none }' })

test('context lost: it says so and the words go on; given back: the picture is there again', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/hang:wall-3', {
    viewport: { width: 900, height: 600 },
    // The labels are taken away by a style of the test's own, which the policy of the page refuses.
    bypassCSP: true,
  })
  const { page } = watched
  await page.locator('.scene[data-draw-calls]').waitFor()
  await withoutLabels(page)
  const before = await colors(page)
  expect(before).toBeGreaterThan(20)

  await page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('.picture canvas')
    const lose = canvas?.getContext('webgl2')?.getExtension('WEBGL_lose_context')
    Object.assign(window, { giveBack: () => lose?.restoreContext() })
    lose?.loseContext()
  })
  await page.locator('.scene-note').waitFor()
  await page.getByRole('button', { name: /^Next:/ }).click()
  await page.getByRole('heading', { name: 'Level wall unit 3' }).waitFor()
  await page.getByRole('button', { name: 'Back' }).click()

  await page.evaluate(() => (window as unknown as { giveBack: () => void }).giveBack())
  await page.locator('.scene-note').waitFor({ state: 'detached' })
  await stillPicture(page)
  expect(await colors(page)).toBeGreaterThan(before / 2)
  await watched.close()
})

test('going to another place and back keeps the one context there is', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/hang:wall-3', {
    viewport: { width: 900, height: 600 },
    bypassCSP: true,
  })
  const { page } = watched
  await page.locator('.scene[data-draw-calls]').waitFor()
  await page.evaluate(() => Object.assign(window, { first: document.querySelector('.picture canvas') }))
  for (const hash of ['#survey', '#paper', '#day']) {
    await goTo(watched, hash)
    const showing = await page.evaluate(
      () =>
        [...document.querySelectorAll('.kept *')].filter((e) =>
          e.checkVisibility({ opacityProperty: true, visibilityProperty: true }),
        ).length,
    )
    expect(showing, hash).toBe(0)
  }
  await goTo(watched, '#rehearse')
  const isSame = await page.evaluate(
    () => (window as unknown as { first: Element }).first === document.querySelector('.picture canvas'),
  )
  expect(isSame).toBe(true)
  await withoutLabels(page)
  expect(await colors(page)).toBeGreaterThan(20)
  expect(watched.complaints).toEqual([])
  await watched.close()
})
