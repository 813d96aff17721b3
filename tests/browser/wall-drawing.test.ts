/** The drawing of a wall on a screen: nothing lettered on it touches, it enlarges in the hand, findings lead to their words. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { goTo, openedApp } from '../support/opened-app'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium()
})
afterAll(() => browser?.close())

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }

/** Texts of the drawing in front whose letters, as the browser sets them, lie over one another. */
const touching = (page: Page) =>
  page.evaluate(() => {
    const svg = [...document.querySelectorAll('svg.wall-drawing')].find(
      (s) => s.getBoundingClientRect().width > 0,
    )
    const boxes = [...(svg?.querySelectorAll('text') ?? [])].map((t) => {
      const { left, right, top, bottom } = t.getBoundingClientRect()
      const air = (bottom - top) * 0.2
      return { text: t.textContent ?? '', left, right, top: top + air, bottom: bottom - air }
    })
    const pairs = boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter(
          (b) =>
            a.left + 0.5 < b.right &&
            b.left + 0.5 < a.right &&
            a.top + 0.5 < b.bottom &&
            b.top + 0.5 < a.bottom,
        )
        .map((b) => `${a.text} and ${b.text}`),
    )
    return { letters: boxes.length, pairs }
  })

describe.each(['Mill Lane', 'Garden flat', 'Long galley', 'Maple Street'])('%s', (name) => {
  test('no lettering touches on any wall', async () => {
    const watched = await openedApp(browser, origin, '#survey', { viewport: { width: 1440, height: 900 } })
    const { page } = watched
    await page.getByRole('button', { name }).click()
    await page.locator('.which').getByText(name).waitFor()
    await goTo(watched, '#paper')
    const walls = await page
      .locator('.choices a[href*="wall:"]')
      .evaluateAll((all) => all.map((a) => a.getAttribute('href') ?? ''))
    expect(walls.length).toBeGreaterThan(0)
    for (const hash of walls) {
      await goTo(watched, hash)
      const { letters, pairs } = await touching(page)
      expect(letters, hash).toBeGreaterThan(5)
      expect(pairs, hash).toEqual([])
    }
    expect(watched.complaints).toEqual([])
    await watched.close()
  })
})

test('in the hand the whole wall fits across; a touch enlarges it until its letters are 16 high, and it can be pushed along', async () => {
  const watched = await openedApp(browser, origin, '#paper/wall:a', PHONE)
  const { page } = watched
  const overview = await page.locator('.overview:visible svg').boundingBox()
  expect(overview?.x).toBeGreaterThanOrEqual(0)
  expect((overview?.x ?? 0) + (overview?.width ?? 999)).toBeLessThanOrEqual(390)
  await page.locator('.overview:visible').click()
  const letters = await page
    .locator('.wall-drawing:visible > g text')
    .evaluateAll((all) =>
      all.map(
        (t) =>
          Number.parseFloat(getComputedStyle(t).fontSize) * ((t as SVGTextElement).getScreenCTM()?.a ?? 0),
      ),
    )
  expect(Math.min(...letters.filter((size) => size > 0))).toBeGreaterThanOrEqual(16)
  const left = () => page.locator('.drawing .scroll:visible').evaluate((e) => e.scrollLeft)
  expect(await left()).toBe(0)
  await page.getByRole('button', { name: 'To the right of the wall' }).click()
  expect(await left()).toBeGreaterThan(100)
  await page.getByRole('button', { name: 'The whole wall' }).click()
  expect(await page.locator('.overview:visible').count()).toBe(1)
  await watched.close()
})

test('a flag leads to its words, the words lead back to the flag, again and again', async () => {
  const watched = await openedApp(browser, origin, '#paper/wall:a', {
    viewport: { width: 1440, height: 900 },
  })
  const { page } = watched
  const focused = () => page.evaluate(() => document.activeElement?.id ?? '')
  const flag = page.locator('.wall-drawing:visible a.flag').first()
  const id = (await flag.getAttribute('id'))?.replace('flag ', '') ?? ''
  for (const _ of [1, 2]) {
    await flag.click()
    await expect.poll(focused).toBe(`words ${id}`)
    await page.locator(`[id="words ${id}"] a.letter`).click()
    await expect.poll(focused).toBe(`flag ${id}`)
    const box = await flag.boundingBox()
    expect((box?.y ?? -1) >= 0 && (box?.y ?? 999) < 900).toBe(true)
  }
  await watched.close()
})

test('in the hand a finding of the survey leads to its flag on the enlarged drawing', async () => {
  const watched = await openedApp(browser, origin, '#survey', PHONE)
  const { page } = watched
  const link = page.locator('.findings a[href*="stud-not-confirmed"]').first()
  await link.click()
  await page.locator('.drawing.large').waitFor()
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.id ?? ''))
    .toMatch(/^flag stud-not-confirmed/)
  const box = await page.locator('a.flag:focus').boundingBox()
  expect((box?.x ?? -1) >= 0 && (box?.x ?? 999) < 390).toBe(true)
  await watched.close()
})
