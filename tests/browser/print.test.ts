/** The sheets on A3, laid across: every wall drawing whole on a page of its own; the survey sheet on A4 and US Letter. */
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

test('the survey sheet is printed by itself on A4 and on US Letter, in few pages, and nothing of it is cut', async () => {
  const watched = await openedApp(browser, origin, '#survey/sheet')
  const { page } = watched
  await page.locator('.survey-pages').waitFor()
  const sheets = await page.locator('.survey-paper').count()
  expect(sheets).toBeGreaterThanOrEqual(2)
  expect(sheets).toBeLessThanOrEqual(6)
  for (const [format, width] of [
    ['A4', 595.9],
    ['Letter', 612],
  ] as const) {
    const pdf = (await page.pdf({ format })).toString('latin1')
    const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) [\d.]+\]/g)]
    expect(boxes.length).toBe(sheets)
    expect(Number(boxes[0]?.[1])).toBeCloseTo(width, -1)
  }
  await page.emulateMedia({ media: 'print' })
  const seen = await page.evaluate(() => {
    const all = [...document.querySelectorAll('.survey-paper, .survey-paper *')].filter(
      (e) => e instanceof HTMLElement,
    )
    return {
      shown: [
        ...document.querySelectorAll('.masthead, .survey-head, .to-print > .sheet, .sheet-head'),
      ].filter((e) => e.getBoundingClientRect().height > 0).length,
      heights: [...document.querySelectorAll('.survey-paper')].map((p) => p.getBoundingClientRect().height),
      cut: all.filter((e) => e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).display !== 'inline')
        .length,
      letters: Math.min(
        ...all
          .filter((e) => e.textContent !== '')
          .map((e) => Number.parseFloat(getComputedStyle(e).fontSize)),
      ),
      rows: Math.min(
        ...[...document.querySelectorAll('.survey-paper tbody tr, .survey-paper .line-row')].map(
          (r) => r.getBoundingClientRect().height,
        ),
      ),
    }
  })
  expect(seen.shown).toBe(0)
  // Of US Letter, the lower of the two, with margins of 7 mm.
  for (const height of seen.heights) expect(height).toBeLessThan((279.4 - 14) * PX_PER_MM)
  expect(seen.cut).toBe(0)
  expect(seen.letters).toBeGreaterThanOrEqual((9 * 96) / 72)
  expect(seen.rows).toBeGreaterThanOrEqual(8 * PX_PER_MM)
  await watched.close()
})
