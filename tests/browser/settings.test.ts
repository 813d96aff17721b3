/** What people ask of their own machine, and thumbs: letters, targets, forced colours, no motion. */
import type { Browser } from 'playwright-core'
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

const PLACES = [
  '#survey',
  '#rehearse/second-fix:wall-3',
  '#rehearse/stand-up:tall-1',
  '#paper/wall:a',
  '#paper/heights',
  '#paper/work',
  '#day',
] as const

test('in the hand: letters of 16 at least, and targets of 44', async () => {
  const watched = await openedApp(browser, origin, '#rehearse', {
    viewport: { width: 390, height: 844 },
    hasTouch: true,
  })
  for (const hash of PLACES) {
    await goTo(watched, hash)
    const { small, tight } = await watched.page.evaluate(() => {
      const shown = [...document.querySelectorAll<HTMLElement>('main > :not([inert]) *, header *')].filter(
        (e) => {
          const box = e.getBoundingClientRect()
          return (
            box.width > 1 &&
            box.height > 1 &&
            e.closest('svg, .scene, .visually-hidden, .only-print') === null
          )
        },
      )
      const hasText = (e: HTMLElement) =>
        [...e.childNodes].some((n) => n.nodeType === 3 && (n.textContent ?? '').trim() !== '')
      const isInText = (e: HTMLElement) => getComputedStyle(e).display === 'inline'
      return {
        small: shown
          .filter((e) => hasText(e) && Number.parseFloat(getComputedStyle(e).fontSize) < 16)
          .map((e) => e.outerHTML.slice(0, 90)),
        tight: shown
          .filter(
            (e) =>
              e.matches(
                'a, button, summary, label, input:not([type=checkbox]):not([type=file]), [role=slider]',
              ) && !isInText(e),
          )
          .filter((e) => e.getBoundingClientRect().height < 44)
          .map((e) => e.outerHTML.slice(0, 90)),
      }
    })
    expect(small, hash).toEqual([])
    expect(tight, hash).toEqual([])
  }
  await watched.close()
})

test('with forced colours what is chosen can still be told from what is not', async () => {
  const watched = await openedApp(browser, origin, '#paper', { forcedColors: 'active' })
  const { page } = watched
  const background = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((e) => getComputedStyle(e).backgroundColor)
  expect(await background('.choices .button[aria-current=true]')).not.toBe(
    await background('.choices .button:not([aria-current])'),
  )
  await goTo(watched, '#day')
  expect(await background('.day .button.main')).not.toBe(await background('.day .pair .button'))
  await watched.close()
})

test('for people who ask for it nothing moves: a step is drawn, and then no frame more', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/hang:wall-3', {
    viewport: { width: 900, height: 600 },
  })
  const { page } = watched
  await page.locator('.scene[data-draw-calls]').waitFor()
  await page.evaluate(countDrawing)
  const drawn = () => page.evaluate(() => (window as unknown as { drawn: number }).drawn)
  await page.keyboard.press('ArrowRight')
  await page.locator('.slip h1', { hasText: 'Level wall unit 3' }).waitFor()
  await stillPicture(page)
  const afterStep = await drawn()
  expect(afterStep).toBeGreaterThan(0)
  await page.waitForTimeout(1500)
  expect(await drawn()).toBe(afterStep)
  expect(await page.getByRole('button', { name: 'Again' }).count()).toBe(0)
  await watched.close()
})

test('for everybody else the part travels its way once, and again when asked', async () => {
  const watched = await openedApp(browser, origin, '#rehearse/restore-supply:room', {
    viewport: { width: 640, height: 480 },
    reducedMotion: 'no-preference',
  })
  const { page } = watched
  await page.locator('.scene[data-draw-calls]').waitFor()
  await goTo(watched, '#rehearse/hang:wall-3')
  await page.getByRole('button', { name: 'Again' }).waitFor()
  await stillPicture(page)
  await page.evaluate(countDrawing)
  const before = await stillPicture(page)
  await page.getByRole('button', { name: 'Again' }).click()
  await page.waitForFunction(
    (frame) => Number(document.querySelector('.scene')?.getAttribute('data-frame')) > frame + 1,
    before,
  )
  expect(await page.evaluate(() => (window as unknown as { drawn: number }).drawn)).toBeGreaterThan(1)
  expect(watched.complaints).toEqual([])
  await watched.close()
})

/** Counts, from now on, how often anything is drawn into the picture. */
function countDrawing(): void {
  const gl = document.querySelector<HTMLCanvasElement>('.picture canvas')?.getContext('webgl2')
  if (!gl) throw new Error('there is no picture')
  const counted = window as unknown as { drawn: number }
  counted.drawn = 0
  for (const name of [
    'drawElements',
    'drawArrays',
    'drawElementsInstanced',
    'drawArraysInstanced',
  ] as const) {
    const draw = gl[name].bind(gl) as (...args: number[]) => void
    Object.assign(gl, {
      [name]: (...args: number[]) => {
        counted.drawn += 1
        draw(...args)
      },
    })
  }
}
