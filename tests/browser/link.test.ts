/** A kitchen goes from one browser to another in an address, and as a table from a spreadsheet. */
import { readFileSync } from 'node:fs'
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

const SMALL = {
  format: 'dryrun-kitchen',
  version: 1,
  name: 'Utility room',
  walls: [{ id: 'a', length: 2400 }],
  units: [{ id: 'base-1', kind: 'base', wall: 'a', order: { left: { at: 0 } }, width: 600 }],
}

test('a link opens its kitchen beside the one that was open, once; a broken one changes nothing', async () => {
  const giving = await openedApp(browser, origin, '#survey')
  await giving.page.getByLabel('Open a kitchen file').setInputFiles({
    name: 'x.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(SMALL)),
  })
  await giving.page.locator('.matrix svg').waitFor()
  const link = await giving.page.getByRole('textbox', { name: 'Link to this kitchen' }).inputValue()
  expect(link).toMatch(/^http:\/\/localhost:\d+\/#kitchen=[\w-]+$/)
  await giving.close()

  const watched = await openedApp(browser, origin, '#survey')
  const { page } = watched
  await page.getByRole('heading', { name: 'Found in Mill Lane' }).waitFor()
  // Something is changed in what is open, so that it is worth keeping.
  await goTo(watched, '#survey/house')
  await page.locator('[data-fact="survey.by"]').fill('A. Fitter')
  await goTo(watched, new URL(link).hash)
  await page.getByRole('heading', { name: 'Found in Utility room' }).waitFor()
  expect(new URL(page.url()).hash).toBe('#survey')
  await page.locator('[data-kitchen="Mill Lane"]').waitFor()
  await page.locator('[data-kitchen="Utility room"]').waitFor()

  await page.reload()
  await page.getByRole('heading', { name: 'Found in Utility room' }).waitFor()
  await goTo(watched, `${new URL(link).hash.slice(0, -12)}`)
  const alert = page.getByRole('alert')
  await alert.getByText('the link').waitFor()
  expect(await alert.textContent()).toContain('Utility room is still open')
  expect(watched.complaints).toEqual([])
  await watched.close()
})

test('lines pasted from a spreadsheet are units after one press, and gone after one Take back', async () => {
  const watched = await openedApp(browser, origin, '#survey/units')
  const { page } = watched
  const marks = page.locator('.things[data-list=units] > .marks [data-mark]')
  const before = await marks.count()
  await page.getByRole('button', { name: 'Spreadsheet: Units' }).click()
  await page
    .locator('.table-panel textarea')
    .fill('Mark\tWhat\tBack to wall\tWidth\nnew-1\tbase unit\ta\t600\nnew-2\tbase unit\ta\t23 5/8 in\n')
  await page.getByRole('button', { name: 'Add 2' }).click()
  await page.locator('[data-mark=new-2]').waitFor()
  expect(await marks.count()).toBe(before + 2)

  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save this list as CSV' }).click()
  const text = readFileSync(await (await download).path(), 'utf8')
  expect(text).toContain('new-2,base unit')
  expect(text).toContain('23 5/8 in')

  await page.getByRole('button', { name: 'Take back' }).click()
  expect(await marks.count()).toBe(before)
  expect(watched.complaints).toEqual([])
  await watched.close()
})
