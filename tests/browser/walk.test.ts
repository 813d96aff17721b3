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
      title: (document.querySelector('.slip h1')?.textContent ?? '').replaceAll('\u00a0', ' '),
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
  await slider.focus()
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

test('the skip link lies over no control', async () => {
  const watched = await openedApp(browser, origin, '#rehearse')
  const { page } = watched
  const covered = () =>
    page.evaluate(() => {
      const skip = document.querySelector('.skip')?.getBoundingClientRect() ?? new DOMRect()
      const controls = document.querySelectorAll(
        'header a, main > :not([inert]) :is(button, a, select, label)',
      )
      return [...controls]
        .filter((e) => {
          const box = e.getBoundingClientRect()
          const isBeside = box.left >= skip.right || box.right <= skip.left
          return box.width > 1 && !isBeside && box.top < skip.bottom && box.bottom > skip.top
        })
        .map((e) => e.textContent)
    })
  for (const hash of ['#rehearse', '#survey', '#paper', '#day']) {
    await goTo(watched, hash)
    for (const [width, height] of [
      [1280, 860],
      [844, 390],
      [740, 900],
      [390, 844],
    ] as const) {
      await page.setViewportSize({ width, height })
      await page.locator('.skip').focus()
      expect(await covered(), `${hash} at ${width}`).toEqual([])
      const skip = await page.locator('.skip').boundingBox()
      expect(skip?.x, `${hash} at ${width}`).toBeGreaterThanOrEqual(0)
    }
  }
  await watched.close()
})

test('what a question opens is in sight, and the question still', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/hang:wall-3')
  const { page } = watched
  for (const [width, height] of [
    [1280, 860],
    [390, 844],
    [390, 500],
  ] as const) {
    await page.setViewportSize({ width, height })
    for (const name of ['Why now?', 'How it comes to this', 'Could this come first?']) {
      const place = `${name} at ${width} by ${height}`
      const asked = page.getByRole('button', { name, exact: true })
      // As low as it can be and still be pressed.
      await asked.evaluate((e) => e.scrollIntoView({ block: 'end' }))
      await asked.click()
      const answer = page.locator('.why > div')
      await answer.waitFor()
      const seen = await answer.evaluate((e) => {
        const top = (selector: string) => document.querySelector(selector)?.getBoundingClientRect().top ?? 0
        const box = e.getBoundingClientRect()
        return { below: top('.steps') - box.top, asked: top('.why > [aria-expanded=true]') }
      })
      expect(seen.below, place).toBeGreaterThan(100)
      expect(seen.asked, place).toBeGreaterThan(0)
      await asked.click()
      await answer.waitFor({ state: 'detached' })
    }
  }
  await watched.close()
})

test('every place opens at its top, also where the place before was read far down', async () => {
  const watched = await openedApp(browser, origin, '#survey', { viewport: { width: 390, height: 540 } })
  const { page } = watched
  const top = () => page.locator('main').evaluate((main) => main.scrollTop)
  for (const place of ['#rehearse', '#paper', '#day', '#survey']) {
    await page.locator('main').evaluate((main) => main.scrollTo(0, main.scrollHeight))
    expect(await top(), place).toBeGreaterThan(0)
    await page.locator(`.places a[href="${place}"]`).click()
    await page.locator('main > :not([inert]) h1:visible').first().waitFor()
    expect(await top(), place).toBe(0)
  }
  await watched.close()
})

test('the hook of the tape stays off the buttons, and the ring round a word off the lines beside it', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/second-fix:wall-1', {
    viewport: { width: 1440, height: 900 },
  })
  const { page } = watched
  const word = page.locator('.slip .trade-word').first()
  await word.waitFor()
  // The keyboard is in use: a ring is drawn.
  await page.keyboard.press('Tab')
  await word.focus()
  const { ring, line } = await word.evaluate((e) => ({
    ring: Number.parseFloat(getComputedStyle(e, '::before').height),
    line: Number.parseFloat(getComputedStyle(e).lineHeight),
  }))
  expect(ring).toBeGreaterThan(line / 2)
  expect(ring).toBeLessThan(line + 4)

  await page.getByRole('slider').focus()
  await page.keyboard.press('End')
  await page.locator('.next-words', { hasText: 'This is the last step' }).waitFor()
  const hook = await page.locator('.tape .hook').boundingBox()
  const buttons = await page.locator('.steps .button').all()
  for (const button of buttons) {
    const box = await button.boundingBox()
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(hook?.y ?? 0)
  }
  expect(buttons).toHaveLength(2)
  await watched.close()
})

test('End and Home go to the ends of the slip, and of the work only on the tape', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/hang:wall-3', {
    viewport: { width: 1280, height: 800 },
  })
  const { page } = watched
  // Until its letters and its picture are there, the slip changes its height under the keys.
  await page.locator('.scene').waitFor()
  await page.evaluate(() => document.fonts.ready)
  const at = () => page.locator('.slip').evaluate((slip) => slip.scrollTop)
  const step = await page.locator('.slip .where').textContent()
  await page.getByRole('button', { name: /^Next:/ }).focus()
  let before = await at()
  for (const [key, isDown] of [
    ['PageDown', true],
    ['PageUp', false],
    ['End', true],
    ['Home', false],
  ] as const) {
    await page.keyboard.press(key)
    const now = await at()
    expect(isDown ? now > before : now < before, `${key}: from ${before} to ${now}`).toBe(true)
    expect(await page.locator('.slip .where').textContent(), key).toBe(step)
    before = now
  }
  expect(before).toBe(0)
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
