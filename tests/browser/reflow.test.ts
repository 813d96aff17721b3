/** Narrow screens and large letters: nothing sticks out, and the way on is always in sight. */
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

const PLACES = [
  '#survey',
  '#survey/first',
  '#survey/walls',
  '#survey/units',
  '#rehearse/second-fix:wall-3',
  '#paper/wall:a',
  '#paper/heights',
  '#paper/work',
  '#day',
] as const

/** Elements that stick out of the page to the side; what scrolls within its own box may be as wide as it likes. */
const sticksOut = (page: Page) =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth
    const place = document.querySelector('main')
    const out = [...document.querySelectorAll<HTMLElement>('main > :not([inert]) *, header *')].filter(
      (e) => {
        if (e.closest('.scroll, svg, .visually-hidden, .scene, .skip') !== null) return false
        const box = e.getBoundingClientRect()
        return box.width > 1 && box.height > 1 && (box.right > width + 1 || box.left < -1)
      },
    )
    const isWide = (place?.scrollWidth ?? 0) > width + 1
    return [
      ...(isWide ? [`main is ${place?.scrollWidth} wide`] : []),
      ...out.slice(0, 5).map((e) => e.outerHTML.slice(0, 100)),
    ]
  })

async function nextIsInSight(page: Page): Promise<boolean> {
  const next = page.getByRole('button', { name: /^Next:/ })
  const box = await next.boundingBox()
  const { height, width } = page.viewportSize() ?? { height: 0, width: 0 }
  if (box === null || box.y < 0 || box.y + box.height > height + 1 || box.x + box.width > width + 1)
    return false
  return page.evaluate(
    ([x, y]) => document.elementFromPoint(x as number, y as number)?.closest('.steps') != null,
    [box.x + box.width / 2, box.y + box.height / 2],
  )
}

const SIZES = [
  { name: '320 wide', width: 320, height: 640 },
  { name: '320 by 256: a desk screen at 400 %', width: 320, height: 256 },
  { name: '640 by 400: a desk screen at 200 %', width: 640, height: 400 },
  { name: 'a telephone on its side', width: 844, height: 390 },
  { name: 'a telephone', width: 390, height: 844 },
  { name: 'a tablet', width: 768, height: 1024 },
  { name: 'a small desk screen', width: 1024, height: 768 },
]

/** Two frames: what answers to a new size by a drawing of its own has drawn. */
const settled = (page: Page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))))

describe('at every size', () => {
  let watched: WatchedPage
  beforeAll(async () => {
    watched = await openedApp(browser, origin, '#rehearse', { viewport: SIZES[0] ?? null })
  })
  afterAll(() => watched?.close())

  test.each(PLACES)('%s: nothing sticks out, and Next is in sight', async (hash) => {
    await goTo(watched, hash)
    for (const { name, width, height } of SIZES) {
      await watched.page.setViewportSize({ width, height })
      await settled(watched.page)
      expect(await sticksOut(watched.page), name).toEqual([])
      if (hash.startsWith('#rehearse')) expect(await nextIsInSight(watched.page), name).toBe(true)
    }
  })
})

test('letters twice as large at 1280: nothing sticks out, Next is in sight, the slip can be read', async () => {
  const watched = await openedApp(browser, origin, '#rehearse', {
    viewport: { width: 1280, height: 800 },
    // The letters are made larger by a style of the test's own, which the policy of the page refuses.
    bypassCSP: true,
  })
  const { page } = watched
  await page.addStyleTag({ content: 'html { font-size: 200% !important }' })
  for (const hash of PLACES) {
    await goTo(watched, hash)
    expect(await sticksOut(page), hash).toEqual([])
  }
  await goTo(watched, '#rehearse/hang:wall-3')
  expect(await nextIsInSight(page)).toBe(true)
  const slip = await page.locator('.slip').boundingBox()
  expect(slip?.height).toBeGreaterThan(200)
  await watched.close()
})
