/** The help of a field opens under it, and what was tapped stays where it was tapped: whatever closes above it. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { openedApp } from '../support/opened-app'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium(['--disable-3d-apis'])
})
afterAll(() => browser?.close())

/** Presses on a field where it is; how far it has moved under the finger by then, and whether its help is under it. */
async function tapped(
  page: Page,
  fact: string,
): Promise<{ readonly moved: number; readonly isBelow: boolean }> {
  const field = page.locator(`input[data-fact="${fact}"]`)
  const before = await field.boundingBox()
  if (before === null) throw new Error(`no ${fact}`)
  await page.mouse.move(before.x + 20, before.y + 20)
  await page.mouse.down()
  // What scrolls by itself does so with the next picture.
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))))
  const after = await field.boundingBox()
  await page.mouse.up()
  const help = await page.locator(`.field:has(input[data-fact="${fact}"]) > .how`).boundingBox()
  return {
    // Part of a pixel is nobody’s finger.
    moved: Math.trunc(((after?.y ?? Number.NaN) - before.y) / 1.5) + 0,
    isBelow:
      help !== null && help.height > 10 && help.y >= (after?.y ?? Number.NaN) + (after?.height ?? 0) - 1,
  }
}

/** Fields with help, down the page and up again. */
const WALL = [
  'length',
  'cornerRight.thisLeg',
  'thickness',
  'tracedDepth',
  'otherFaceShift',
  'thickness',
  'cornerRight.thisLeg',
  'length',
].map((key) => `walls.a.${key}`)

test.each([
  ['a desk', 1440, 900],
  ['a hand', 390, 844],
])('in the form on %s', async (_, width, height) => {
  const watched = await openedApp(browser, origin, '#survey/walls', { viewport: { width, height } })
  const { page } = watched
  await page.locator('.page-form h2').first().waitFor()
  let last: string | undefined
  for (const fact of WALL) {
    const field = page.locator(`input[data-fact="${fact}"]`)
    // As much of the way as can be is in sight, so that what closes lies above the finger.
    if (last === undefined) await field.scrollIntoViewIfNeeded()
    else await field.evaluate((e) => e.scrollIntoView({ block: 'end' }))
    expect({ fact, ...(await tapped(page, fact)) }).toEqual({ fact, moved: 0, isBelow: true })
    last = fact
  }
  expect(watched.complaints).toEqual([])
  await watched.close()
})

test('where the page cannot be scrolled to keep it, what stands above it stays open', async () => {
  const watched = await openedApp(browser, origin, '#survey/house', {
    viewport: { width: 390, height: 3000 },
  })
  const { page } = watched
  await page.locator('.page-form h2').first().waitFor()
  const region = page.locator('select[data-fact="region"]')
  await region.focus()
  const help = page.locator('.field:has(select[data-fact="region"]) > .how')
  expect(await help.isVisible()).toBe(true)
  expect((await tapped(page, 'survey.tapePrecision')).moved).toBe(0)
  expect(await help.isVisible()).toBe(true)
  await watched.close()
})
