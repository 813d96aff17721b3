/**
 * `npm run shots -- [--fresh] [--size=phone,desk] [#place ...]`: pictures of the built app, into shots/. Without a place,
 * all four; `--fresh`: dist is as it should be, so it is not built again.
 */
import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { buildApp } from './build-app'
import { launchChromium } from './chromium'
import { ROOT } from './root'
import { serveFolder } from './serve-dist'

const SCREENS = [
  { name: 'phone', viewport: { width: 390, height: 844 } },
  { name: 'tablet', viewport: { width: 768, height: 1024 } },
  { name: 'small', viewport: { width: 1024, height: 768 } },
  { name: 'desk', viewport: { width: 1440, height: 900 } },
  { name: 'large', viewport: { width: 2560, height: 1440 } },
]
const PLACES = ['#survey', '#rehearse', '#paper', '#day']

const args = process.argv.slice(2)
const sizes = args
  .find((a) => a.startsWith('--size='))
  ?.slice('--size='.length)
  .split(',')
const asked = args.filter((a) => a.startsWith('#'))

if (!args.includes('--fresh')) {
  const built = buildApp()
  if (!built.ok) throw new Error(built.output)
}
const folder = join(ROOT, 'shots')
await mkdir(folder, { recursive: true })
const served = await serveFolder()
const browser = await launchChromium()
for (const { name, viewport } of SCREENS.filter((s) => sizes?.includes(s.name) ?? true)) {
  const page = await browser.newPage({ viewport, reducedMotion: 'reduce' })
  for (const hash of asked.length === 0 ? PLACES : asked) {
    await page.goto(`${served.origin}/${hash}`)
    await page.locator('main > :not([inert]) h1:visible').first().waitFor()
    if (hash.startsWith('#rehearse'))
      await page.locator('.stage :is(.scene[data-draw-calls], .flat)').waitFor()
    await page.locator('.which').getByText('working').waitFor({ state: 'detached' })
    await page.waitForTimeout(300)
    const place = hash.replace(/[^a-z0-9]+/gi, '-').replace(/^-|-$/g, '')
    await page.screenshot({ path: join(folder, `${place}-${name}.png`) })
    console.log(`shots/${place}-${name}.png`)
  }
  await page.close()
}
await browser.close()
await served.close()
