/** Draws assets/icon.svg anew at the sizes in which devices ask for it. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { launchChromium } from './chromium'
import { ROOT } from './root'

const SIZES = [180, 192, 512]

const svg = readFileSync(join(ROOT, 'assets/icon.svg'), 'utf8')
const browser = await launchChromium()
const page = await browser.newPage()
await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`)
for (const size of SIZES) {
  await page.setViewportSize({ width: size, height: size })
  await page.screenshot({ path: join(ROOT, `assets/icon-${size}.png`) })
  console.log(`assets/icon-${size}.png`)
}
await browser.close()
