/**
 * A whole kitchen typed in from blank at the keyboard alone, one fact a field, off the sheet of the shipped one: what is
 * planned of it is the same to the byte. And from blank with nothing known, no figure that would rest on it appears.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { PAGES } from '../../src/core/form/pages'
import { workThrough } from '../../src/core/plan/entry'
import { writtenPlan } from '../../src/core/plan/plan-file'
import { launchChromium } from '../support/chromium'
import { openedApp } from '../support/opened-app'
import { ROOT } from '../support/root'
import { differing, leavesOf, type Typed, TypingHand } from '../support/typing-hand'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  // Typing has no picture beside it.
  browser = await launchChromium(['--disable-3d-apis'])
})
afterAll(() => browser?.close())

/** The larger one takes a minute and a half of typing: it is typed with DRYRUN_LONG=1. */
const TYPED = process.env['DRYRUN_LONG'] === '1' ? ['one-wall', 'l-shape'] : ['one-wall']

/** The kitchen file as it is saved. */
async function saved(page: Page): Promise<unknown> {
  await page.evaluate(() => {
    window.location.hash = '#survey'
  })
  const arrives = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save this kitchen file' }).click()
  return JSON.parse(readFileSync(await (await arrives).path(), 'utf8'))
}

async function toPage(page: Page, id: string): Promise<void> {
  await page.evaluate((to) => {
    window.location.hash = `#survey/${to}`
  }, id)
  await page.locator('.page-form h2').first().waitFor()
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('H2')
}

test.each(TYPED)('the kitchen of %s, typed in from its sheet', { timeout: 600_000 }, async (name) => {
  const sheet: unknown = JSON.parse(readFileSync(join(ROOT, `scenes/${name}.dryrun.json`), 'utf8'))
  const watched = await openedApp(browser, origin, '#survey', { viewport: { width: 1440, height: 900 } })
  const { page } = watched
  await page.getByRole('button', { name: 'Begin your own kitchen' }).click()
  await page.locator('.page-form h2').first().waitFor()

  const all: Typed[] = []
  const typed = async (pages: readonly string[], open?: readonly string[]): Promise<void> => {
    for (const id of pages) {
      await toPage(page, id)
      const hand = new TypingHand(page, sheet, open)
      await hand.wholePage()
      all.push(hand.typed)
    }
  }
  await typed(PAGES.map(({ id }) => id))
  const once = differing(sheet, await saved(page))
  // What points at things listed on a later page is typed when they are there.
  const later = PAGES.filter((p) =>
    p.fields.some((f) => once.some((path) => path.startsWith(`${f.key}.`) || path === f.key)),
  )
  await typed(
    later.map(({ id }) => id),
    once,
  )
  const file = await saved(page)
  const sum = (key: keyof Typed): number => all.reduce((total, one) => total + one[key], 0)
  console.log(
    `${name}: typed ${sum('fields')} fields with ${sum('keys')} keys, ${once.length} of them the second time round.`,
  )
  const [wanted, there] = [leavesOf(sheet), leavesOf(file)]
  expect(
    differing(sheet, file).map(
      (path) => `${path}: on the sheet ${wanted.get(path)}, typed ${there.get(path)}`,
    ),
  ).toEqual([])
  const planned = (kitchen: unknown): string => JSON.stringify(writtenPlan(workThrough(kitchen)))
  expect(parting(planned(file), planned(sheet))).toBe('')
  expect(watched.complaints).toEqual([])
  await watched.close()
})

/** Where two plans part, with what stands about it; empty where they are the same to the byte. */
function parting(one: string, other: string): string {
  if (one === other) return ''
  let at = 0
  while (one[at] === other[at]) at++
  return `…${one.slice(Math.max(0, at - 90), at + 60)}… against …${other.slice(at, at + 60)}…`
}
