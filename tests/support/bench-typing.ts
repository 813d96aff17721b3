import type { Page } from 'playwright-core'
import { linkOf } from '../../src/state/link'
import { launchChromium } from './chromium'
import { largeKitchen } from './large-kitchen'
import { serveFolder } from './serve-dist'

type Say = (name: string, figures: Readonly<Record<string, unknown>>) => void

const UNITS = 60
/** Of a quick hand: ms from key to key. */
const PACE = 90
/** After the first load, ms. */
const SETTLED = 3000

/** What is typed over what stands there, by the path of its field. */
const OVER: Readonly<Record<'units' | 'walls', Readonly<Record<string, string>>>> = {
  units: {
    'units.base-20.name': 'Pan drawers by the hob',
    'units.base-20.width': '598.5',
    'units.base-20.height': '720',
    'units.base-20.depth': '565',
    'units.base-20.board': '18.5',
    'units.base-20.massEmpty': '31.25',
    'units.base-20.contents': '45',
    'units.base-20.legs.max': '175',
  },
  walls: {
    'walls.a.name': 'Long wall to the garden',
    'walls.a.length': '9402.5',
    'walls.a.thickness': '255',
    'walls.a.tracedDepth': '95',
    'walls.a.cornerRight.thisLeg': '900',
    'walls.a.cornerRight.nextLeg': '1200',
    'walls.a.cornerRight.across': '1500.5',
  },
}

/**
 * A letter typed into a large kitchen, in the built app, while the worker plans: from the key's own time to the frame
 * after the field shows it.
 */
export async function benchTyping(say: Say, folder?: string) {
  const served = await serveFolder(folder)
  const browser = await launchChromium()
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' })
  await page.addInitScript(timeKeys)
  await page.goto(`${served.origin}/#${await linkOf(largeKitchen(UNITS))}`)
  await page.locator('.which', { hasText: `${UNITS} units` }).waitFor({ timeout: 60_000 })
  for (const place of ['units', 'walls'] as const) {
    await page.evaluate((to) => {
      window.location.hash = `#survey/${to}`
    }, place)
    const took = await typeOver(page, place)
    say('typing', { page: place, units: UNITS, ...figuresOf(took) })
  }
  await browser.close()
  await served.close()
}

async function typeOver(page: Page, place: 'units' | 'walls'): Promise<readonly number[]> {
  const mark = place === 'units' ? 'base-20' : 'a'
  await page.locator(`[data-list="${place}"] > .marks [data-mark="${mark}"]`).click()
  await page.locator('.which').getByText('working').waitFor({ state: 'detached' })
  // What is fetched and kept on the device after the first load is not what is measured.
  await page.waitForTimeout(SETTLED)
  await page.evaluate(() => {
    ;(globalThis as unknown as Timed).keysTimed.length = 0
  })
  let keys = 0
  for (const [path, text] of Object.entries(OVER[place])) {
    await page.locator(`input[data-fact="${path}"]`).selectText()
    await page.keyboard.type(text, { delay: PACE })
    keys += text.length
  }
  await page.waitForFunction((all) => (globalThis as unknown as Timed).keysTimed.length >= all, keys)
  return page.evaluate(() => (globalThis as unknown as Timed).keysTimed)
}

interface Timed {
  readonly keysTimed: number[]
}

/** Runs in the page before anything else: times each key that is typed into a field. */
function timeKeys() {
  const keysTimed: number[] = []
  Object.assign(globalThis, { keysTimed })
  let pressed = 0
  document.addEventListener('keydown', ({ timeStamp }) => (pressed = timeStamp), true)
  document.addEventListener(
    'input',
    () => {
      const at = pressed
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel()
        // A task after the frame: it has been handed over to be shown.
        port1.onmessage = () => keysTimed.push(performance.now() - at)
        port2.postMessage(null)
      })
    },
    true,
  )
}

function figuresOf(took: readonly number[]) {
  const sorted = [...took].sort((a, b) => a - b)
  const at = (share: number) => Math.round((sorted[Math.ceil(share * sorted.length) - 1] ?? 0) * 10) / 10
  return { n: sorted.length, medianMs: at(0.5), p95Ms: at(0.95), worstMs: at(1) }
}
