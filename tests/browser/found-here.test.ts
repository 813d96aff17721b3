/** What has been found, at its place in the picture and beside it; what can hurt, before anything else. */
import type { Browser, Page } from 'playwright-core'
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

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }

/** Whether all of an element can be seen where it stands: within the screen, and under nothing. */
function isWhollySeen(page: Page, selector: string): Promise<boolean> {
  return page.evaluate((s) => {
    const element = [...document.querySelectorAll<HTMLElement>(s)].find((e) => e.closest('[inert]') === null)
    if (element === undefined) return false
    const { left, right, top, bottom } = element.getBoundingClientRect()
    const spots = [top + 2, (top + bottom) / 2, bottom - 2].map((y) =>
      document.elementFromPoint((left + right) / 2, y),
    )
    return spots.every((e) => e !== null && (element.contains(e) || e.contains(element)))
  }, selector)
}

test('in the hand what can hurt, and that the work is held, are seen without scrolling', async () => {
  const watched = await openedApp(browser, origin, '#rehearse', PHONE)
  for (const id of [
    'stand-up:tall-1',
    'restrain:tall-1',
    'drill-rail:rail-1',
    'hang:wall-1',
    'place:base-3',
  ]) {
    await goTo(watched, `#rehearse/${id}`)
    await watched.page.locator('.slip .hurt-line').waitFor()
    expect(await isWhollySeen(watched.page, '.slip .hurt-line'), id).toBe(true)
  }
  await goTo(watched, '#rehearse/restrain:tall-1')
  expect(await isWhollySeen(watched.page, '.slip .hold-point > p')).toBe(true)
  expect(await isWhollySeen(watched.page, '.steps .held .link')).toBe(true)
  await watched.page.locator('.slip .hurt-line').click()
  expect(await isWhollySeen(watched.page, '.slip .caution')).toBe(true)
  await watched.close()
})

test('on the day the button that counts the checks brings the first of them before the eye', async () => {
  const watched = await openedApp(browser, origin, '#day', PHONE)
  const { page } = watched
  expect(await isWhollySeen(page, '.day .checks li')).toBe(false)
  await page.getByRole('button', { name: '2 checks to answer first' }).click()
  expect(await isWhollySeen(page, '.day .checks li')).toBe(true)
  expect(await page.evaluate(() => document.activeElement?.matches('.day .checks input'))).toBe(true)
  await watched.close()
})

test('a flag opens its finding beside the picture, which stays as it is', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/place:base-3', {
    viewport: { width: 1280, height: 800 },
  })
  const { page } = watched
  await page.locator('.scene[data-draw-calls]').waitFor()
  const flag = page.getByRole('button', { name: 'Found here, A: No stud behind a base bracket' })
  await flag.hover()
  expect(await flag.locator('.scene-flag-words').isVisible()).toBe(true)
  const before = await flag.boundingBox()
  await flag.click()
  await page.waitForFunction(() =>
    document.activeElement?.matches('[data-finding="bracket-needs-timber:base-3"]'),
  )
  expect(await isWhollySeen(page, '[data-finding="bracket-needs-timber:base-3"] h3')).toBe(true)
  expect(await flag.boundingBox()).toEqual(before)
  expect(watched.complaints).toEqual([])
  await watched.close()
})

test('a finding of the list turns the picture to its place, and the picture turns back', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/place:base-3', {
    viewport: { width: 1280, height: 800 },
  })
  const { page } = watched
  await page.locator('.scene[data-draw-calls]').waitFor()
  await stillPicture(page)
  const flag = page.locator('.scene-flag').first()
  const before = await flag.boundingBox()
  await page.getByRole('button', { name: 'Show it in the picture: No stud behind a base bracket' }).click()
  const drawn = await stillPicture(page)
  expect(await flag.boundingBox()).not.toEqual(before)
  const box = await page.locator('.picture').boundingBox()
  const now = await flag.boundingBox()
  // Its place is in the middle of the picture, the flag a little over it.
  expect(
    Math.abs((now?.x ?? 0) + (now?.width ?? 0) / 2 - ((box?.x ?? 0) + (box?.width ?? 0) / 2)),
  ).toBeLessThan(60)
  // And then nothing more is drawn.
  await page.waitForTimeout(1000)
  expect(Number(await page.locator('.scene').getAttribute('data-frame'))).toBe(drawn)
  await page.getByRole('button', { name: 'As it was' }).click()
  await stillPicture(page)
  expect(await flag.boundingBox()).toEqual(before)
  await watched.close()
})

test('a link to a finding comes to its step, with its words before the eye', async () => {
  const watched = await openedApp(browser, origin, '#survey', { viewport: { width: 1280, height: 800 } })
  const { page } = watched
  await goTo(watched, '#rehearse/drill-rail:rail-1/hole-refused:rail.rail-1.a-s4')
  await page.waitForFunction(() =>
    document.activeElement?.matches('[data-finding="hole-refused:rail.rail-1.a-s4"]'),
  )
  expect(await page.evaluate(() => window.location.hash)).toBe('#rehearse/drill-rail:rail-1')
  expect(watched.complaints).toEqual([])
  await watched.close()
})
