/** Files in and out: a bad one changes nothing, a good one is opened, what is kept comes back. */
import { readFileSync } from 'node:fs'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { goTo, openedApp } from '../support/opened-app'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium()
})
afterAll(() => browser?.close())

const open = (page: Page, label: string, text: string) =>
  page
    .getByLabel(label)
    .setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(text) })

const BAD = JSON.stringify({
  format: 'dryrun-kitchen',
  version: 1,
  name: 'Bad',
  walls: [{ id: 'a', lenght: 3000 }],
})

test('a bad file is refused with its place and how to mend it; the open kitchen stays', async () => {
  const watched = await openedApp(browser, origin, '#survey')
  const { page } = watched
  await open(page, 'Open a kitchen file', BAD)
  const alert = page.getByRole('alert')
  await alert.waitFor()
  const text = await alert.innerText()
  expect(text).toContain('Mill Lane is still open')
  expect(text).toContain('walls "a"')
  expect(text).toMatch(/Did you mean "length"\?/)

  await open(page, 'Open a kitchen file', 'not json at all')
  await page.getByText('line 1, column 1').waitFor()
  await goTo(watched, '#rehearse')
  expect(await page.locator('.slip h1').textContent()).toBe('Check the delivery')
  expect(await page.locator('.which').textContent()).toContain('Mill Lane')
  expect(watched.complaints).toEqual([])
  await watched.close()
})

test('another kitchen is opened, saved, and still there after a reload', async () => {
  const watched = await openedApp(browser, origin, '#survey')
  const { page } = watched
  await page.getByRole('button', { name: 'Garden flat' }).click()
  await page.getByRole('heading', { name: 'Found in Garden flat' }).waitFor()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save this kitchen file' }).click()
  const saved = await download
  expect(saved.suggestedFilename()).toBe('garden-flat.dryrun.json')
  const file = JSON.parse(readFileSync(await saved.path(), 'utf8')) as {
    readonly name: string
    readonly format: string
  }
  expect(file).toMatchObject({ name: 'Garden flat', format: 'dryrun-kitchen' })

  await page.reload()
  await page.getByRole('heading', { name: 'Found in Garden flat' }).waitFor()
  expect(watched.complaints).toEqual([])
  await watched.close()
})

test('the day: what is done is written down, saved as a file, and read again', async () => {
  const watched = await openedApp(browser, origin, '#day', { viewport: { width: 390, height: 844 } })
  const { page } = watched
  for (const box of await page.locator('.day .checks input').all()) await box.check()
  await page.getByRole('button', { name: 'Done', exact: true }).click()
  await page.getByText('step 2 of').waitFor()
  await page.locator('.day-log summary').click()
  expect(await page.locator('.day-log li').innerText()).toContain('Done: Check the delivery')
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save the day log' }).click()
  const text = readFileSync(await (await download).path(), 'utf8')
  expect(JSON.parse(text)).toMatchObject({ format: 'dryrun-daylog', kitchen: 'Mill Lane' })

  await page.getByRole('button', { name: /^That entry was wrong/ }).click()
  await page.locator('.day h1').getByText('Check the delivery').waitFor()
  await page.locator('.day-log summary').click()
  await open(page, 'Open a day log', text)
  await page.getByText('step 2 of').waitFor()
  expect(watched.complaints).toEqual([])
  await watched.close()
})
