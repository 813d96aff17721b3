/** `tsx tests/support/scene-gallery/shoot.ts [operation[@t] ...]`: pictures of the 3D view alone, into shots/scene/. */
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Plan } from '../../../src/core/plan/types'
import { launchChromium } from '../chromium'
import { ROOT } from '../root'
import { serveFolder } from '../serve-dist'
import { watchedPage } from '../watched-page'
import { buildGallery } from './build-gallery'

const SCREENS = (process.env['SCREENS'] ?? '1440x900,1024x768,390x500').split(',').map((s) => {
  const [width = 0, height = 0] = s.split('x').map(Number)
  return { width, height }
})
const asked = process.argv.slice(2)
const planFile = process.env['PLAN']

const folder = join(ROOT, 'shots/scene')
mkdirSync(folder, { recursive: true })
const out = buildGallery()
const served = await serveFolder(out)
const browser = await launchChromium()
for (const viewport of SCREENS) {
  const { page, complaints, requestsOffOrigin, close } = await watchedPage(browser, served.origin, {
    viewport,
  })
  await page.goto(`${served.origin}/`, { waitUntil: 'networkidle' })
  if (planFile !== undefined) {
    const plan = JSON.parse(readFileSync(planFile, 'utf8')) as Plan
    await page.evaluate((p) => {
      window.galleryPlan = p
    }, plan)
  }
  for (const one of asked) {
    const [id = '', t = '0'] = one.split('@')
    const ready = await page.evaluate(([i, at]) => window.show?.(i ?? '', Number(at)), [id, t])
    await page.waitForTimeout(150)
    const name = `${one.replace(/[^a-z0-9.]+/gi, '-')}-${viewport.width}x${viewport.height}.png`
    await page.screenshot({ path: join(folder, name) })
    console.log(name, ready?.drawCalls, JSON.stringify(ready?.seen))
  }
  if (complaints.length + requestsOffOrigin.length > 0) console.log(complaints, requestsOffOrigin)
  await close()
}
await browser.close()
await served.close()
rmSync(out, { recursive: true })
