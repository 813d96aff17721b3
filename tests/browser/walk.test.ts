/** The whole rehearsal of Mill Lane by keyboard alone. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { goTo, openedApp } from '../support/opened-app'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium()
})
afterAll(() => browser?.close())

test('every step can be reached with the keys, tells itself, and asks nobody else for anything', async () => {
  const watched = await openedApp(browser, origin, '#rehearse', { viewport: { width: 800, height: 500 } })
  const { page } = watched
  const slider = page.getByRole('slider', { name: 'Step' })
  const count = Number(await slider.getAttribute('aria-valuemax'))
  expect(count).toBeGreaterThan(80)

  const seen = new Set<string>()
  for (let step = 1; step <= count; step++) {
    await page.waitForFunction(
      (n) => document.querySelector('.slip .where')?.textContent?.includes(`step ${n} of`),
      step,
    )
    const at = await page.evaluate(() => ({
      hash: window.location.hash,
      title: document.querySelector('.slip h1')?.textContent ?? '',
      said: document.querySelector('[role=slider]')?.getAttribute('aria-valuetext') ?? '',
      focus: document.activeElement?.id ?? '',
    }))
    expect(at.title).not.toBe('')
    expect(at.said).toContain(at.title)
    if (step > 1) expect(at.focus).toBe('step-title')
    seen.add(at.hash)
    await page.keyboard.press('ArrowRight')
  }
  expect(seen.size).toBe(count)
  await page.keyboard.press('Home')
  await page.locator('.slip .where', { hasText: `step 1 of ${count}` }).waitFor()

  expect(watched.complaints).toEqual([])
  expect(watched.requestsOffOrigin).toEqual([])
  await watched.close()
})

test('the tape keeps the focus while it is used, and the skip link leads to the heading', async () => {
  const watched = await openedApp(browser, origin, '#rehearse', { viewport: { width: 1280, height: 800 } })
  const { page } = watched
  await page.getByRole('slider').focus()
  await page.keyboard.press('PageUp')
  await page.locator('.slip .where', { hasText: 'step 11 of' }).waitFor()
  expect(await page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('slider')

  await page.reload()
  await page.locator('.slip h1').waitFor()
  await page.locator('.slip .where', { hasText: 'step 11 of' }).waitFor()
  await page.keyboard.press('Tab')
  expect(await page.evaluate(() => document.activeElement?.className)).toBe('skip')
  await page.keyboard.press('Enter')
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('step-title')
  await goTo(watched, '#survey')
  expect(watched.complaints).toEqual([])
  await watched.close()
})

test('whatever takes the focus shows it', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/hang:wall-3', {
    viewport: { width: 1280, height: 800 },
  })
  const { page } = watched
  await page.locator('.scene').waitFor()
  const bare: string[] = []
  for (let i = 0; i < 25; i++) {
    await page.keyboard.press('Tab')
    const found = await page.evaluate(() => {
      const element = document.activeElement as HTMLElement
      const { outlineStyle, outlineWidth } = getComputedStyle(element)
      return {
        name: element.outerHTML.slice(0, 80),
        isBare: outlineStyle === 'none' || outlineWidth === '0px',
        isBody: element === document.body,
      }
    })
    if (found.isBare && !found.isBody) bare.push(found.name)
  }
  expect(bare).toEqual([])
  await watched.close()
})
