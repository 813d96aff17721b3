/** What is kept in a real browser: several kitchens, two tabs, and a store that is full, forbidden, cleared or newer. */
import { readFileSync } from 'node:fs'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { goTo, openedApp } from '../support/opened-app'
import type { WatchedPage } from '../support/watched-page'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium(['--disable-3d-apis'])
})
afterAll(() => browser?.close())

const BY = '[data-fact="survey.by"]'
/** No edit older than this is ever lost, ms. */
const WRITTEN_WITHIN = 1000
const NAME = '[data-fact="name"]'
/** Without WebGL the browser says so, and that is no matter here. */
const real = ({ complaints }: WatchedPage) => complaints.filter((c) => !/WebGL/i.test(c))

const which = (page: Page, name: string) =>
  expect.poll(() => page.locator('.which').textContent(), { timeout: 30_000 }).toBe(name)

async function begin(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Begin your own kitchen' }).click()
  await page.getByRole('link', { name: 'On to: House and line' }).click()
  await page.locator(BY).waitFor()
  await which(page, 'My kitchen')
}

/** The kitchen file as it is saved by a button. */
async function saved(page: Page, name: string): Promise<unknown> {
  const arrives = page.waitForEvent('download')
  await page.getByRole('button', { name }).first().click()
  return JSON.parse(readFileSync(await (await arrives).path(), 'utf8'))
}

async function anotherTab(context: BrowserContext): Promise<Page> {
  const page = await context.newPage()
  await page.goto(`${origin}/#survey/house`)
  await page.locator(BY).waitFor()
  await expect.poll(() => page.locator('.which').textContent()).toContain('My kitchen')
  return page
}

const notice = (page: Page) => page.locator('.keep-notice')

describe('in this browser', () => {
  test('what is typed is there after loading again; kitchens are listed, copied, taken out and brought back', async () => {
    const watched = await openedApp(browser, origin, '#survey')
    const { page } = watched
    expect(await page.locator('.your-kitchens').textContent()).toContain('None yet')
    await begin(page)
    await page.locator(BY).fill('Ines')
    await page.waitForTimeout(WRITTEN_WITHIN)
    await page.reload()
    await page.locator(BY).waitFor()
    expect(await page.locator(BY).inputValue()).toBe('Ines')
    await page.locator(NAME).fill('Back room')

    await goTo(watched, '#survey')
    const list = page.locator('.your-kitchens')
    await list.getByText('Back room', { exact: true }).waitFor()
    expect(await list.textContent()).toContain('open · changed')
    await page.getByRole('button', { name: 'Copy Back room' }).click()
    await page.getByRole('button', { name: 'Open Back room (copy)' }).click()
    await which(page, 'Back room (copy)')
    await page.getByRole('button', { name: 'Take out Back room (copy)' }).click()
    await which(page, 'Back room')
    await list.getByText('Taken out: 1 kitchen').click()
    await page.getByRole('button', { name: 'Bring back Back room (copy)' }).click()
    await page.getByRole('button', { name: 'Open Back room (copy)' }).waitFor()
    expect(await list.locator('[data-promised]').getAttribute('data-promised')).toMatch(/^(true|false)$/)
    expect(real(watched)).toEqual([])
    await watched.close()
  })

  test('a version is kept by name and returned to', async () => {
    const watched = await openedApp(browser, origin, '#survey')
    const { page } = watched
    await begin(page)
    await page.locator(BY).fill('Ines')
    await goTo(watched, '#survey')
    await page.getByText('Versions of the open kitchen: none yet').click()
    await page.getByLabel('Name of this version').fill('as measured')
    await page.getByRole('button', { name: 'Keep this version' }).click()
    await page.getByRole('button', { name: 'Return to as measured' }).waitFor()
    await goTo(watched, '#survey/house')
    await page.locator(BY).fill('Bea')
    await goTo(watched, '#survey')
    const details = page.locator('.versions')
    await details.locator('summary').click()
    await page.getByRole('button', { name: 'Return to as measured' }).click()
    await details.getByText('before an earlier version was taken').waitFor()
    await goTo(watched, '#survey/house')
    expect(await page.locator(BY).inputValue()).toBe('Ines')
    expect(real(watched)).toEqual([])
    await watched.close()
  })

  test('what an earlier version of this tool kept is open, and its old place is empty', async () => {
    const watched = await openedApp(browser, origin, '#survey')
    const { page } = watched
    const kitchen = { format: 'dryrun-kitchen', version: 1, name: 'From before' }
    const log = { format: 'dryrun-daylog', version: 1, entries: [] }
    await page.evaluate(
      (kept) => localStorage.setItem('dry-run/documents', kept),
      JSON.stringify({ kitchen, log }),
    )
    await page.reload()
    await which(page, 'From before')
    await page.locator('[data-kitchen="From before"]').waitFor()
    expect(await page.evaluate(() => localStorage.getItem('dry-run/documents'))).toBeNull()
    expect(real(watched)).toEqual([])
    await watched.close()
  })
})

test('two tabs: the second is told, keeps its own as another kitchen or takes the other’s; neither is lost', async () => {
  const watched = await openedApp(browser, origin, '#survey')
  const first = watched.page
  await begin(first)
  await first.locator(BY).fill('the first')
  const second = await anotherTab(first.context())
  const third = await anotherTab(first.context())
  await first.locator(BY).fill('the first, further')
  await notice(second).waitFor()
  expect(await notice(second).textContent()).toContain('changed in another tab')
  await second.locator(BY).fill('the second')
  await notice(third).waitFor()
  await third.getByRole('button', { name: 'Take the other one' }).click()
  await notice(third).waitFor({ state: 'detached' })
  await expect.poll(() => third.locator(BY).inputValue()).toBe('the first, further')

  await second.getByRole('button', { name: 'Keep mine as another kitchen' }).click()
  await which(second, 'My kitchen (from another tab)')
  await notice(second).waitFor({ state: 'detached' })
  await second.reload()
  await second.locator(BY).waitFor()
  await expect.poll(() => second.locator(BY).inputValue()).toBe('the second')
  await first.reload()
  await first.locator(BY).waitFor()
  expect(await first.locator(BY).inputValue()).toBe('the first, further')
  await watched.close()
})

describe('where nothing can be kept it is told, and the file can be saved all the same', () => {
  test('no IndexedDB', async () => {
    const context = await browser.newContext()
    await context.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }))
    const page = await context.newPage()
    await page.goto(`${origin}/#survey`)
    await notice(page).waitFor()
    expect(await notice(page).textContent()).toContain('Nothing is kept in this browser.')
    await begin(page)
    await page.locator(BY).fill('Ines')
    expect(await saved(page, 'Save this kitchen as a file')).toMatchObject({ survey: { by: 'Ines' } })
    await page.getByRole('button', { name: 'Put this away' }).click()
    await page.locator(BY).fill('Bea')
    await page.waitForTimeout(200)
    expect(await notice(page).count()).toBe(0)
    await context.close()
  })

  test('no room; and when there is room again it is kept', async () => {
    const context = await browser.newContext()
    await context.addInitScript(() => {
      const put = IDBObjectStore.prototype.put
      IDBObjectStore.prototype.put = function (...args) {
        if ('isFull' in window) throw new DOMException('no room', 'QuotaExceededError')
        return put.apply(this, args)
      }
    })
    const page = await context.newPage()
    await page.goto(`${origin}/#survey`)
    await page.locator('.which').getByText('Mill Lane').waitFor()
    await begin(page)
    await page.evaluate(() => Object.assign(window, { isFull: true }))
    await page.locator(BY).fill('Ines')
    await notice(page).waitFor()
    expect(await notice(page).textContent()).toContain('There is no room left here.')
    expect(await saved(page, 'Save this kitchen as a file')).toMatchObject({ survey: { by: 'Ines' } })
    await page.evaluate(() => Reflect.deleteProperty(window, 'isFull'))
    await page.getByRole('button', { name: 'Try again' }).click()
    await notice(page).waitFor({ state: 'detached' })
    await page.reload()
    await page.locator(BY).waitFor()
    expect(await page.locator(BY).inputValue()).toBe('Ines')
    await context.close()
  })

  test('cleared while it is open, between edits or in the midst of one: what is open is kept again', async () => {
    const watched = await openedApp(browser, origin, '#survey')
    const { page } = watched
    await begin(page)
    const talk = await page.context().newCDPSession(page)
    const clear = () => talk.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' })
    for (const name of ['Ines', 'Bea', 'Ines again']) {
      await page.locator(BY).fill(name)
      if (name === 'Ines') await page.waitForTimeout(WRITTEN_WITHIN)
      await clear()
      await notice(page).waitFor()
      expect(await notice(page).textContent()).toContain('was cleared from this browser')
      await page.getByRole('button', { name: 'Put this away' }).click()
    }
    await page.reload()
    await page.locator(BY).waitFor()
    expect(await page.locator(BY).inputValue()).toBe('Ines again')
    await watched.close()
  })

  test('kept by a newer version: told, and left as it is', async () => {
    const context = await browser.newContext()
    const page = await context.newPage()
    await page.goto(`${origin}/assets/`)
    const version = () =>
      page.evaluate(async () => (await indexedDB.databases()).find(({ name }) => name === 'dry-run')?.version)
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const opening = indexedDB.open('dry-run', 99)
          opening.onsuccess = () => {
            opening.result.close()
            resolve()
          }
        }),
    )
    await page.goto(`${origin}/#survey`)
    await notice(page).waitFor()
    expect(await notice(page).textContent()).toContain('newer version')
    await begin(page)
    expect(await saved(page, 'Save this kitchen as a file')).toMatchObject({ name: 'My kitchen' })
    expect(await version()).toBe(99)
    await context.close()
  })
})
