import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { workThrough } from '../../src/core/plan/entry'
import { launchChromium } from './chromium'
import { ROOT } from './root'
import { buildGallery } from './scene-gallery/build-gallery'
import { scriptFrames } from './script-frames'
import { serveFolder } from './serve-dist'
import { stillPicture } from './still-picture'

type Say = (name: string, figures: Readonly<Record<string, unknown>>) => void

const SIZE = { width: 1440, height: 900 }
const FRAMES = 60
/** Operations at which much moves: a unit on its way before a furnished wall, and a tool. */
const MOVING = ['hang:wall-3', 'place:base-2', 'drill-rail:rail-1']

/** What motion costs: script a frame, a frame beside the same triangles drawn by three.js alone, and what is left behind. */
export async function benchMotion(say: Say) {
  const browser = await launchChromium()
  await scriptPerFrame(browser, say)
  await besidePlain(browser, say)
  await leftBehind(browser, say)
  await browser.close()
}

const round = (n: number) => Math.round(n * 100) / 100

/**
 * Script of the whole page for each frame that is drawn while an operation is shown being done, from the press to its end:
 * ours, React's, three's, clearing up, and what calls to WebGL do on this thread. Apart from that, how long such a script
 * was begun and not computing: waiting in a call for the renderer, or for a core of the machine, which the software renderer
 * keeps busy. The two together are what passes by the clock. As it is, and with calls that draw left out, so that neither
 * the renderer nor its few frames are in the figures.
 */
async function scriptPerFrame(browser: Browser, say: Say) {
  const served = await serveFolder()
  for (const id of MOVING)
    for (const isDrawn of [true, false]) {
      const page = await browser.newPage({ viewport: SIZE })
      if (!isDrawn) await page.addInitScript(drawNothing)
      await page.goto(`${served.origin}/#survey`)
      await page.getByRole('button', { name: 'Mill Lane' }).first().click()
      await page.goto(`${served.origin}/#rehearse/${id}`)
      await page.locator(`.scene[data-draw-calls][data-operation="${id}"]`).waitFor({ timeout: 60_000 })
      await stillPicture(page)
      const frames = await scriptFrames(page, async () => {
        await page.getByRole('button', { name: 'Again' }).click()
        await page.waitForTimeout(300)
        await stillPicture(page)
      })
      say('script-per-frame', {
        operation: id,
        drawn: isDrawn,
        frames: frames.length,
        script: spread(frames.map((f) => f.scriptMs)),
        heldUp: spread(frames.map((f) => f.heldUpMs)),
      })
      await page.close()
    }
  await served.close()
}

/** Mean, median and most, ms. */
function spread(of: readonly number[]) {
  const sorted = [...of].sort((a, b) => a - b)
  return {
    meanMs: round(of.reduce((sum, n) => sum + n, 0) / Math.max(1, of.length)),
    medianMs: round(sorted[Math.floor(sorted.length / 2)] ?? 0),
    mostMs: round(sorted.at(-1) ?? 0),
  }
}

/** Runs in the page before anything else: what would have pixels drawn does nothing; every other call is made. */
function drawNothing() {
  const proto = WebGL2RenderingContext.prototype as unknown as Record<string, () => void>
  for (const name of ['drawElements', 'drawArrays', 'drawElementsInstanced', 'drawArraysInstanced', 'clear'])
    proto[name] = () => {}
}

async function besidePlain(browser: Browser, say: Say) {
  const folder = buildGallery()
  const served = await serveFolder(folder)
  const outcome = workThrough(JSON.parse(readFileSync(join(ROOT, 'scenes/l-shape.dryrun.json'), 'utf8')))
  if (outcome.kind !== 'plan') throw new Error('l-shape gives no plan')
  const page = await browser.newPage({ viewport: SIZE })
  await page.goto(`${served.origin}/`, { waitUntil: 'networkidle' })
  await page.evaluate((plan) => {
    window.galleryPlan = plan
  }, outcome.plan)
  for (const id of MOVING) {
    const seen = await page.evaluate(([i, n]) => window.frameTimes?.(i, n), [id, FRAMES] as const)
    if (seen === undefined) throw new Error('the gallery measures nothing')
    const { ours, plain } = seen
    say('frame-beside-plain', {
      operation: id,
      oursMs: round(ours.meanMs),
      plainMs: round(plain.meanMs),
      ratio: round(ours.meanMs / plain.meanMs),
      drawn: ours.frames,
      triangles: plain.triangles,
    })
  }
  await page.close()
  await served.close()
  rmSync(folder, { recursive: true })
}

/** Steps gone through, and after how many what the graphics hold is counted. */
const STEPS = 1000
const COUNTED_AT = [100, 400, 700, STEPS]

/** Buffers, textures and vertex arrays that are alive after many steps: flat, or something is left behind. */
async function leftBehind(browser: Browser, say: Say) {
  const served = await serveFolder()
  const page = await browser.newPage({ viewport: { width: 900, height: 600 }, reducedMotion: 'reduce' })
  await page.addInitScript(countAlive)
  await page.goto(`${served.origin}/#survey`)
  await page.getByRole('button', { name: 'Mill Lane' }).first().click()
  await page.goto(`${served.origin}/#rehearse`)
  await page.locator('.scene[data-draw-calls]').waitFor({ timeout: 60_000 })
  const alive: Record<string, unknown>[] = []
  // To and fro over the same twenty steps, so that the same pictures come again.
  for (let i = 1; i <= STEPS; i += 1) {
    await page.keyboard.press(Math.floor((i - 1) / 20) % 2 === 0 ? 'ArrowRight' : 'ArrowLeft')
    await drawnAnew(page)
    if (COUNTED_AT.includes(i)) alive.push({ after: i, ...(await page.evaluate(readAlive)) })
  }
  if (alive.some(({ buffers }) => buffers === 0))
    throw new Error('the graphics hold nothing: nothing is counted')
  say('alive-after-steps', { counts: alive })
  await served.close()
}

/** Until the step is drawn. */
const drawnAnew = (page: Page) =>
  page.evaluate(
    () =>
      new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 0)))),
  )

/**
 * Runs in the page before anything else. No function in here has a name: what runs this file may mark names in a way the
 * page does not know, and nothing would be counted.
 */
function countAlive() {
  const alive: Record<string, number> = { buffers: 0, textures: 0, vertexArrays: 0 }
  Object.assign(globalThis, { benchAlive: alive })
  const proto = WebGL2RenderingContext.prototype as unknown as Record<string, (...a: unknown[]) => unknown>
  for (const [name, make, drop] of [
    ['buffers', 'createBuffer', 'deleteBuffer'],
    ['textures', 'createTexture', 'deleteTexture'],
    ['vertexArrays', 'createVertexArray', 'deleteVertexArray'],
  ] as const) {
    const [made, dropped] = [proto[make], proto[drop]]
    if (made === undefined || dropped === undefined) continue
    proto[make] = function (this: unknown, ...a: unknown[]) {
      alive[name] = (alive[name] ?? 0) + 1
      return made.apply(this, a)
    }
    proto[drop] = function (this: unknown, ...a: unknown[]) {
      if (a[0] !== null && a[0] !== undefined) alive[name] = (alive[name] ?? 0) - 1
      return dropped.apply(this, a)
    }
  }
}
const readAlive = () => ({ ...(globalThis as unknown as { benchAlive: Record<string, number> }).benchAlive })
