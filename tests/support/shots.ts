/**
 * `npm run shots -- [--fresh] [--size=phone,desk] [#place ...]`: pictures of the built app, into shots/. Without a place,
 * all four; `--fresh`: dist is as it should be, so it is not built again. `--whole`: all of the page, not only what the
 * screen shows. `--readme`: the picture of README.md instead.
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

const README_PICTURE = 'assets/rehearse.png'
/** How long after the step comes to the hook, ms: the unit is over its place and not in it yet. */
const README_MOMENT = 1500

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
const served = await serveFolder(process.env['SHOTS_DIST'])
const browser = await launchChromium()
if (args.includes('--readme')) await readmePicture()
else await allPictures()
await browser.close()
await served.close()

async function allPictures(): Promise<void> {
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
      if (args.includes('--whole')) {
        const height = await page.evaluate(() =>
          Math.max(...[...document.querySelectorAll('main, main *')].map((e) => e.scrollHeight)),
        )
        await page.setViewportSize({ ...viewport, height: Math.min(height + 150, 8000) })
        await page.waitForTimeout(300)
      }
      await page.screenshot({ path: join(folder, `${place}-${name}.png`) })
      await page.setViewportSize(viewport)
      console.log(`shots/${place}-${name}.png`)
    }
    await page.close()
  }
}

/** A wall unit on its way to the rail, stopped at the same moment each time: the page's clock is wound by hand. */
async function readmePicture(): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } })
  await page.clock.install()
  await page.goto(`${served.origin}/#rehearse/second-fix:wall-2`)
  await page.locator('.stage .scene[data-draw-calls]').waitFor()
  await page.locator('.which').getByText('working').waitFor({ state: 'detached' })
  await page.clock.pauseAt(Date.now() + 60_000)
  await page.locator('.steps .button.main').click()
  for (let ms = 0; ms < README_MOMENT; ms += 50) await page.clock.runFor(50)
  await page.screenshot({ path: join(ROOT, README_PICTURE) })
  console.log(README_PICTURE)
}
