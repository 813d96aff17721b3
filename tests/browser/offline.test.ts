/** The app is kept on the device: it opens and works when the server is gone, and a newer version waits to be asked for. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { PNG } from 'pngjs'
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from 'vitest'
import { writeServiceWorker } from '../../src/build/offline'
import { launchChromium } from '../support/chromium'
import { goTo, openedApp } from '../support/opened-app'
import { DIST, ROOT } from '../support/root'
import { serveFolder } from '../support/serve-dist'
import { type WatchedPage, watchedPage } from '../support/watched-page'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium()
})
afterAll(() => browser?.close())

const PATH = '/some/folder'
const KEEPS = { keepsOnDevice: true, reducedMotion: 'reduce' } as const

/** A copy of the built app, served some way down a host of its own. */
async function hosted() {
  const host = mkdtempSync(join(tmpdir(), 'dry-run-host-'))
  const folder = join(host, PATH)
  cpSync(DIST, folder, { recursive: true })
  const served = await serveFolder(host)
  onTestFinished(async () => {
    await served.close()
    rmSync(host, { recursive: true })
  })
  return { folder, address: served.origin + PATH, origin: served.origin, stop: served.close }
}

/** Until the whole app is on the device, and answers for this page. */
const kept = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready
    while (navigator.serviceWorker.controller === null) await new Promise((r) => setTimeout(r, 50))
    return caches.keys()
  })

test('kept once, it opens and works in every place with the server gone', async () => {
  const host = await hosted()
  const watched = await watchedPage(browser, host.origin, KEEPS)
  const { page, complaints } = watched
  await page.goto(`${host.address}/`)
  await page.locator('.slip h1').waitFor()
  expect(await kept(page)).toHaveLength(1)
  await host.stop()
  const isGone = await fetch(host.address).then(
    () => false,
    () => true,
  )
  expect(isGone).toBe(true)

  await page.goto('about:blank')
  await page.goto(`${host.address}/index.html#rehearse`)
  await page.locator('.slip .where', { hasText: 'step 1 of' }).waitFor()
  await page.reload()
  await page.locator('.stage .scene[data-draw-calls]').waitFor()
  for (let step = 2; step <= 6; step++) {
    await page.keyboard.press('ArrowRight')
    await page.locator('.slip .where', { hasText: `step ${step} of` }).waitFor()
  }

  await goTo(watched, '#survey/walls')
  const fact = page.locator('input[data-fact^="walls."]').first()
  const name = await fact.getAttribute('data-fact')
  const before = await fact.inputValue()
  await fact.fill(`${Number.parseFloat(before.replace(/[^\d.]/g, '')) + 1} mm`)
  await page.keyboard.press('Tab')
  await goTo(watched, '#survey')
  await page.getByRole('button', { name: 'Take back' }).and(page.locator('[aria-disabled=false]')).waitFor()
  await page.reload()
  await goTo(watched, '#survey/walls')
  expect(await page.locator(`input[data-fact="${name}"]`).inputValue()).not.toBe(before)

  await goTo(watched, '#paper')
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1')
  expect([...pdf.matchAll(/\/MediaBox /g)].length).toBeGreaterThanOrEqual(5)
  await goTo(watched, '#day')
  await page.locator('.day h1').waitFor()

  // A part of the app that was never fetched by the page itself: another invented kitchen.
  await goTo(watched, '#survey')
  await page.getByRole('button', { name: 'Garden flat' }).click()
  await page.getByRole('heading', { name: 'Found in Garden flat' }).waitFor()
  expect(complaints).toEqual([])
  expect(watched.requestsOffOrigin).toEqual([])
  await watched.close()
})

test('a newer version waits: it is offered, and nothing is loaded again until it is asked for', async () => {
  const host = await hosted()
  const watched = await watchedPage(browser, host.origin, KEEPS)
  const { page } = watched
  await page.clock.install()
  await page.goto(`${host.address}/#rehearse`)
  await page.locator('.slip h1').waitFor()
  const [first] = await kept(page)
  await page.keyboard.press('ArrowRight')
  await page.locator('.slip .where', { hasText: 'step 2 of' }).waitFor()
  const other = await page.context().newPage()
  await other.goto(`${host.address}/#day`)
  await other.locator('.day h1').waitFor()
  for (const one of [page, other]) await one.evaluate(() => Object.assign(window, { isSame: true }))
  const isSame = (one: Page) => one.evaluate(() => 'isSame' in window)
  const offer = page.locator('.newer button', { hasText: 'Use it now' })

  // A page that does not go with its list, as when a host still hands out the older one: nothing is kept of it.
  await publish(host.folder, 'Dry Run, newer')
  writeFileSync(join(host.folder, 'index.html'), 'not this one')
  await page.clock.fastForward('01:30:00')
  await page.waitForTimeout(1500)
  await expect.poll(() => page.evaluate(() => caches.keys()), { timeout: 20_000 }).toEqual([first])
  expect(await offer.count()).toBe(0)

  await publish(host.folder, 'Dry Run, newer')
  await page.clock.fastForward('01:30:00')
  await offer.waitFor()
  await page.waitForTimeout(1500)
  expect(await isSame(page)).toBe(true)
  expect(await page.locator('.slip .where').textContent()).toContain('step 2 of')
  // Loaded again by hand it is still the older one, and still offers.
  await page.reload()
  await offer.waitFor()
  expect(await page.title()).toBe('Dry Run')

  await offer.click()
  await page.waitForFunction(() => document.title === 'Dry Run, newer')
  await page.locator('.slip .where', { hasText: 'step 2 of' }).waitFor()
  expect(await offer.count()).toBe(0)
  // The page that did not ask stays as it is, has its parts, and is told.
  await other.locator('.newer button', { hasText: 'Use it now' }).waitFor()
  expect(await isSame(other)).toBe(true)
  await other.evaluate(() => {
    window.location.hash = '#paper'
  })
  await other.locator('.sheet:visible').first().waitFor()
  await other.locator('.newer button', { hasText: 'Later' }).click()
  expect(await other.locator('.newer').textContent()).toBe('')

  // Of the versions before, one is left.
  await publish(host.folder, 'Dry Run, newest')
  await page.reload()
  await offer.click()
  await page.waitForFunction(() => document.title === 'Dry Run, newest')
  const names = await page.evaluate(() => caches.keys())
  expect(names).toHaveLength(2)
  expect(names).not.toContain(first)
  expect(names.every((name) => name.includes(`${PATH}/`))).toBe(true)
  expect(watched.complaints).toEqual([])
  await watched.close()
})

/** Puts a build with another page in the place of the one that is served. */
async function publish(folder: string, title: string): Promise<void> {
  const built = readFileSync(join(DIST, 'index.html'), 'utf8')
  writeFileSync(join(folder, 'index.html'), built.replace(/<title>.*<\/title>/, `<title>${title}</title>`))
  await writeServiceWorker(ROOT, folder)
}

test('a device may install it: the manifest, its pictures and its colours', async () => {
  const watched = await openedApp(browser, origin, '#rehearse', KEEPS)
  const { page } = watched
  await kept(page)
  const session = await page.context().newCDPSession(page)
  const { url, errors, data } = await session.send('Page.getAppManifest')
  expect(errors).toEqual([])
  const { installabilityErrors } = await session.send('Page.getInstallabilityErrors')
  // A page opened beside the user's own, as every test is, may not be installed from.
  expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([])

  const manifest = JSON.parse(data ?? '') as {
    readonly theme_color: string
    readonly background_color: string
    readonly icons: readonly { readonly src: string; readonly sizes: string; readonly type: string }[]
  }
  const colours = await page.evaluate(() => ({
    ground: getComputedStyle(document.documentElement).getPropertyValue('--plaster'),
    theme: document.querySelector('meta[name=theme-color]')?.getAttribute('content'),
  }))
  expect([manifest.theme_color, manifest.background_color, colours.theme]).toEqual(
    Array(3).fill(colours.ground),
  )
  const drawn = manifest.icons.filter(({ type }) => type === 'image/png')
  expect(drawn.map(({ sizes }) => sizes)).toEqual(['192x192', '512x512', '512x512'])
  for (const { src, sizes } of drawn) {
    const { width, height } = PNG.sync.read(Buffer.from(await (await fetch(new URL(src, url))).arrayBuffer()))
    expect(`${width}x${height}`).toBe(sizes)
  }
  await watched.close()
})

/** Notes what the page does against its policy. */
function watchPolicy(): void {
  const noted: string[] = []
  Object.assign(window, { noted })
  document.addEventListener('securitypolicyviolation', (e) =>
    noted.push(`${e.violatedDirective}: ${e.blockedURI} ${e.sourceFile}:${e.lineNumber}`),
  )
}
const notedOn = (page: Page) => page.evaluate(() => (window as unknown as { noted: string[] }).noted)

test('the page has a strict policy, and goes against it nowhere', { timeout: 300_000 }, async () => {
  const watched = await watchedPage(browser, origin, { reducedMotion: 'reduce' })
  const { page } = watched
  await page.addInitScript(watchPolicy)
  // Every other state is gone through by axe.test, which takes what the browser says of the policy for a complaint.
  for (const hash of ['#rehearse', '#survey/walls', '#paper', '#day']) {
    await page.goto('about:blank')
    await page.goto(`${origin}/${hash}`)
    await page.locator('.which').getByText('working').waitFor({ state: 'detached' })
    await page.locator('main > :not([inert]) h1:visible').first().waitFor()
    if (hash.startsWith('#rehearse')) await page.locator('.stage .scene[data-draw-calls]').waitFor()
    await page.waitForTimeout(200)
    expect(await notedOn(page), hash).toEqual([])
  }
  const policy = await page
    .locator('meta[http-equiv=Content-Security-Policy]')
    .evaluate((meta) => meta.getAttribute('content') ?? '')
  expect(policy).toContain("default-src 'self'; script-src 'self'; style-src 'self'")
  for (const none of ['object-src', 'base-uri', 'form-action']) expect(policy).toContain(`${none} 'none'`)
  expect(policy).not.toMatch(/unsafe|\*|https?:/)
  // Nothing that a policy is asked about stands before it.
  const html = readFileSync(join(DIST, 'index.html'), 'utf8')
  expect(html.search(/http-equiv/)).toBeLessThan(html.search(/<script|<link|<style/))
  expect(watched.complaints).toEqual([])
  await watched.close()
})

/** In one page, one after the other: each is refused by itself. */
describe('a planted breach is refused and seen', () => {
  let watched: WatchedPage
  beforeAll(async () => {
    watched = await openedApp(browser, origin, '#rehearse')
    await watched.page.evaluate(watchPolicy)
  })
  afterAll(() => watched?.close())

  test.each([
    ['script in the page', 'script-src-elem', () => append('script', 'window.planted = true')],
    ['style in the page', 'style-src-elem', () => append('style', 'body { color: red }')],
    [
      'a request elsewhere',
      'connect-src',
      () => void fetch('http://elsewhere.invalid/').catch(() => undefined),
    ],
    ['a picture from elsewhere', 'img-src', () => append('img', 'http://elsewhere.invalid/a.png')],
  ])('%s', async (_, directive, plant) => {
    const { page } = watched
    const before = (await notedOn(page)).length
    await page.evaluate(
      `(${plant})(); function append(tag, text) { const e = document.createElement(tag); if (tag === 'img') e.src = text; else e.textContent = text; document.body.append(e) }`,
    )
    await expect.poll(() => notedOn(page)).toHaveLength(before + 1)
    expect((await notedOn(page)).at(-1)).toContain(directive)
    expect(await page.evaluate(() => 'planted' in window)).toBe(false)
  })
})

declare function append(tag: string, text: string): void
