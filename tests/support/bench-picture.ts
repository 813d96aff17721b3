import { launchChromium } from './chromium'
import { serveFolder } from './serve-dist'
import { builtSizes } from './size-check'

type Say = (name: string, figures: Readonly<Record<string, unknown>>) => void

/** The picture in a real browser: first frame, script per frame, draw calls, idle frames; and what has to be fetched. */
export async function benchPicture(say: Say) {
  const { firstLoadKb, sceneKb } = builtSizes()
  say('size', {
    firstLoadGzipKb: round(firstLoadKb),
    sceneGzipKb: sceneKb === undefined ? null : round(sceneKb),
  })
  const served = await serveFolder()
  const browser = await launchChromium()
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' })
  await page.addInitScript(countFrames)
  const start = performance.now()
  await page.goto(`${served.origin}/#rehearse`)
  await page.locator('.scene[data-draw-calls]').waitFor({ timeout: 60_000 })
  say('first-frame', { ms: Math.round(performance.now() - start) })

  const steps: { readonly calls: number; readonly jsMs: number }[] = []
  for (let i = 0; i < 30; i++) {
    await page.keyboard.press('ArrowRight')
    await page.waitForTimeout(120)
    steps.push(await page.evaluate(readFrame))
  }
  const calls = steps.map((s) => s.calls)
  const js = steps.map((s) => s.jsMs).sort((a, b) => a - b)
  say('draw-calls', { most: Math.max(...calls), steps: steps.length })
  say('js-per-frame', { medianMs: round(js[Math.floor(js.length / 2)] ?? 0), mostMs: round(js.at(-1) ?? 0) })

  await page.waitForTimeout(1500)
  const before = (await page.evaluate(readFrame)).frames
  await page.waitForTimeout(2000)
  say('idle-frames', { in2s: (await page.evaluate(readFrame)).frames - before })
  await browser.close()
  await served.close()
}

const round = (n: number) => Math.round(n * 100) / 100

/** Runs in the page before anything else: counts what WebGL draws, and times the callbacks that draw it. */
function countFrames() {
  const seen = { calls: 0, frames: 0, jsMs: 0, last: 0 }
  ;(globalThis as unknown as { benchSeen: typeof seen }).benchSeen = seen
  const proto = WebGL2RenderingContext.prototype
  for (const name of [
    'drawElements',
    'drawArrays',
    'drawElementsInstanced',
    'drawArraysInstanced',
  ] as const) {
    const draw = proto[name] as (...args: unknown[]) => void
    Object.assign(proto, {
      [name](this: WebGL2RenderingContext, ...args: unknown[]) {
        seen.calls++
        draw.apply(this, args)
      },
    })
  }
  const raf = globalThis.requestAnimationFrame.bind(globalThis)
  globalThis.requestAnimationFrame = (callback) =>
    raf((time) => {
      const calls = seen.calls
      const start = performance.now()
      callback(time)
      if (seen.calls === calls) return
      seen.frames++
      seen.jsMs = performance.now() - start
      seen.last = seen.calls - calls
    })
}

function readFrame() {
  const { benchSeen } = globalThis as unknown as {
    benchSeen: { frames: number; jsMs: number; last: number }
  }
  return { frames: benchSeen.frames, jsMs: benchSeen.jsMs, calls: benchSeen.last }
}
