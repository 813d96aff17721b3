/** `npm run shots [#hash ...]`: pictures of the built app on a phone and on a desk screen, into shots/. */
import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { buildApp } from './build-app'
import { launchChromium } from './chromium'
import { ROOT } from './root'
import { serveFolder } from './serve-dist'

const SCREENS = [
  { name: 'phone', viewport: { width: 390, height: 844 } },
  { name: 'desk', viewport: { width: 1280, height: 800 } },
]

const built = buildApp()
if (!built.ok) throw new Error(built.output)
const folder = join(ROOT, 'shots')
await mkdir(folder, { recursive: true })
const served = await serveFolder()
const browser = await launchChromium()
const asked = process.argv.slice(2)
for (const hash of asked.length === 0 ? [''] : asked) {
  for (const { name, viewport } of SCREENS) {
    const page = await browser.newPage({ viewport })
    await page.goto(`${served.origin}/${hash}`, { waitUntil: 'networkidle' })
    const place = hash.replace(/[^a-z0-9]+/gi, '-').replace(/^-|-$/g, '') || 'start'
    await page.screenshot({ path: join(folder, `${place}-${name}.png`) })
    console.log(`shots/${place}-${name}.png`)
    await page.close()
  }
}
await browser.close()
await served.close()
