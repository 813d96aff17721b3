import { AxeBuilder } from '@axe-core/playwright'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { launchChromium } from '../support/chromium'
import { watchedPage } from '../support/watched-page'

const origin = inject('origin')
let browser: Browser

beforeAll(async () => {
  browser = await launchChromium()
})

afterAll(() => browser?.close())

test('the app opens with its title, without complaint and without asking anyone else', async () => {
  const { page, complaints, requestsOffOrigin, close } = await watchedPage(browser, origin)
  await page.goto(origin, { waitUntil: 'networkidle' })

  expect(await page.title()).toBe('Dry Run')
  await page.getByText('Dry Run').first().waitFor()
  expect(complaints).toEqual([])
  expect(requestsOffOrigin).toEqual([])
  await close()
})

test('the watch sees a console error and refuses a request off origin', async () => {
  // The policy of the page would refuse it first, and the watch is to be tried by itself.
  const { page, complaints, requestsOffOrigin, close } = await watchedPage(browser, origin, {
    bypassCSP: true,
  })
  await page.goto(origin, { waitUntil: 'networkidle' })
  await page.evaluate(async () => {
    console.error('planted')
    await fetch('http://elsewhere.invalid/thing').catch(() => undefined)
  })

  expect(complaints).toContain('error: planted')
  expect(requestsOffOrigin).toEqual(['http://elsewhere.invalid/thing'])
  await close()
})

test('the start page has nothing axe objects to', async () => {
  const { page, close } = await watchedPage(browser, origin)
  await page.goto(origin, { waitUntil: 'networkidle' })
  const { violations } = await new AxeBuilder({ page }).analyze()

  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`)).toEqual(
    [],
  )
  await close()
})
