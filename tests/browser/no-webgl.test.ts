/** Without 3D everything is still there to be read, and the wall drawing takes the place of the picture. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { goTo, openedApp } from '../support/opened-app'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium(['--disable-3d-apis'])
})
afterAll(() => browser?.close())

test('the slip, the wall and the way on are all there', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/hang:wall-3')
  const { page } = watched
  expect(await page.evaluate(() => document.createElement('canvas').getContext('webgl2'))).toBeNull()
  await page.locator('.stage svg.wall-drawing').waitFor()
  expect(await page.locator('.stage canvas').count()).toBe(0)
  const title = await page.locator('.slip h1').textContent()
  expect(title?.replaceAll('\u00a0', ' ')).toBe('Hang wall unit 3')
  expect(await page.locator('.stage svg').textContent()).toContain('wall unit 3')

  await page.getByRole('button', { name: /^Next:/ }).click()
  await page.getByRole('heading', { name: 'Level wall unit 3' }).waitFor()
  for (const hash of ['#survey', '#paper', '#day']) {
    await goTo(watched, hash)
    expect((await page.locator('main').innerText()).length).toBeGreaterThan(200)
  }
  expect(watched.complaints).toEqual([])
  await watched.close()
})

test('in the hand its letters can be read, and it stands where the work is', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/drill-rail:rail-2', {
    viewport: { width: 390, height: 844 },
  })
  const { page } = watched
  await page.locator('.stage svg.wall-drawing').waitFor()
  const seen = await page.evaluate(() => {
    const svg = document.querySelector<SVGSVGElement>('.stage svg.wall-drawing')
    const stage = document.querySelector('.stage')?.getBoundingClientRect()
    if (svg == null || stage === undefined) throw new Error('no drawing')
    const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width
    const texts = [...svg.querySelectorAll('text')]
    const isInSight = (e: Element) => {
      const box = e.getBoundingClientRect()
      return (
        box.left >= stage.left &&
        box.right <= stage.right &&
        box.top >= stage.top &&
        box.bottom <= stage.bottom
      )
    }
    return {
      smallest: Math.min(...texts.map((t) => Number.parseFloat(getComputedStyle(t).fontSize) * scale)),
      inSight: texts.filter(isInSight).map((t) => t.textContent),
    }
  })
  expect(seen.smallest).toBeGreaterThanOrEqual(13)
  // The two holes of that rail.
  expect(seen.inSight).toEqual(expect.arrayContaining(['20', '23']))
  await watched.close()
})

test('the 3D part is not even fetched', async () => {
  const asked: string[] = []
  const watched = await openedApp(browser, origin, '#survey')
  watched.page.on('request', (request) => asked.push(request.url()))
  await goTo(watched, '#rehearse/hang:wall-3')
  await watched.page.locator('.stage svg.wall-drawing').waitFor()
  expect(asked.filter((url) => /Walkthrough/.test(url))).toEqual([])
  await watched.close()
})
