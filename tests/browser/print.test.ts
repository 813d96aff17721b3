/** The sheets on A3, laid across: every wall drawing whole on a page of its own. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { openedApp } from '../support/opened-app'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium()
})
afterAll(() => browser?.close())

/** A3 laid across, in points. */
const A3 = { width: 1190.55, height: 841.89 }
const MARGIN_MM = 12
const PX_PER_MM = 96 / 25.4

test('all sheets are printed, each on A3 across', async () => {
  const watched = await openedApp(browser, origin, '#paper')
  const { page } = watched
  const sheets = await page.locator('.sheet').count()
  expect(sheets).toBeGreaterThanOrEqual(5)
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1')
  const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)]
  expect(boxes.length).toBeGreaterThanOrEqual(sheets)
  for (const [, width, height] of boxes) {
    expect(Number(width)).toBeCloseTo(A3.width, -1)
    expect(Number(height)).toBeCloseTo(A3.height, -1)
  }
  await watched.close()
})

test('in print a wall drawing, what is said under it and its head go on one page; nothing of the screen is printed', async () => {
  const width = Math.round((420 - 2 * MARGIN_MM) * PX_PER_MM)
  const pageHeight = (297 - 2 * MARGIN_MM) * PX_PER_MM
  const watched = await openedApp(browser, origin, '#paper', { viewport: { width, height: 900 } })
  const { page } = watched
  await page.emulateMedia({ media: 'print' })
  const heights = await page.evaluate(() =>
    [...document.querySelectorAll('.wall-sheet')].map((sheet) => {
      const top = sheet.getBoundingClientRect().top
      return (sheet.querySelector('.under-drawing')?.getBoundingClientRect().bottom ?? Number.NaN) - top
    }),
  )
  expect(heights.length).toBeGreaterThan(1)
  for (const height of heights) expect(height).toBeLessThan(pageHeight)
  expect(await page.locator('.masthead').isVisible()).toBe(false)
  expect(await page.locator('.choices').first().isVisible()).toBe(false)
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('.rows td, .rows th')].map((cell) =>
      Number.parseFloat(getComputedStyle(cell).fontSize),
    ),
  )
  const hasChecks = await page.locator('.to-check .write').count()
  expect(hasChecks).toBeGreaterThan(50)
  // 12 points, so that it is read at arm’s length through dust; the order of work 11, its minutes 10.
  expect(Math.min(...small)).toBeGreaterThanOrEqual(13.3)
  await watched.close()
})

test('a printed wall is true to the scale it names, and none of its letters is under 9 points', async () => {
  const width = Math.round((420 - 2 * MARGIN_MM) * PX_PER_MM)
  const watched = await openedApp(browser, origin, '#paper', { viewport: { width, height: 900 } })
  const { page } = watched
  await page.emulateMedia({ media: 'print' })
  const walls = await page.evaluate(() =>
    [...document.querySelectorAll('.wall-sheet')].map((sheet) => {
      const svg = sheet.querySelector('svg.wall-drawing') as SVGSVGElement
      const scale = /1 : ([\d.]+)/.exec(sheet.querySelector('.fill-in')?.textContent ?? '')?.[1]
      const bar = [...svg.querySelectorAll('rect')].find((r) => r.getAttribute('width') === '500')
      const texts = [...svg.querySelectorAll('text')].map(
        (t) => Number.parseFloat(getComputedStyle(t).fontSize) * (svg.getScreenCTM()?.a ?? 0),
      )
      const edges = svg.getBoundingClientRect()
      const page = sheet.getBoundingClientRect()
      return {
        scale: Number(scale),
        bar: bar?.getBoundingClientRect().width ?? 0,
        smallest: Math.min(...texts),
        isWhole: edges.left >= page.left - 1 && edges.right <= page.right + 1,
        blanks: [...sheet.querySelectorAll('.fill-in p')].map((p) => p.textContent),
      }
    }),
  )
  expect(walls.length).toBeGreaterThan(1)
  for (const { scale, bar, smallest, isWhole, blanks } of walls) {
    expect(bar / PX_PER_MM).toBeCloseTo(500 / scale, 1)
    expect(smallest).toBeGreaterThanOrEqual((9 * 96) / 72)
    expect(isWhole).toBe(true)
    expect(blanks).toContain('Date')
    expect(blanks).toContain('Checked by')
  }
  await watched.close()
})
