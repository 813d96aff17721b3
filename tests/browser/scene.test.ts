/** The 3D view in a real browser: what can really be seen, what it costs, what it asks the network for. */
import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { workThrough } from '../../src/core/plan/entry'
import { overlap } from '../../src/scene/labels/place-labels'
import { launchChromium } from '../support/chromium'
import { ROOT } from '../support/root'
import { samplePlan } from '../support/sample-plan'
import { buildGallery } from '../support/scene-gallery/build-gallery'
import type { Shown } from '../support/scene-gallery/main'
import { type Served, serveFolder } from '../support/serve-dist'
import { stillPicture } from '../support/still-picture'
import { type WatchedPage, watchedPage } from '../support/watched-page'

const MOST_DRAW_CALLS = 60
/** Methods B.4: share of the part in hand, and of each fixing mark, that must really be seen. */
const PART = 0.6
const MARK = 0.9

let folder: string
let served: Served
let browser: Browser

beforeAll(async () => {
  folder = buildGallery()
  served = await serveFolder(folder)
  browser = await launchChromium()
})
afterAll(async () => {
  await browser?.close()
  await served?.close()
  rmSync(folder, { recursive: true })
})

async function open(width: number, height: number): Promise<WatchedPage> {
  const watched = await watchedPage(browser, served.origin, { viewport: { width, height } })
  await watched.page.goto(`${served.origin}/`, { waitUntil: 'networkidle' })
  return watched
}

type Page = WatchedPage['page']
/** Pixels of every part in the id picture of one moment; with `only`, of those parts drawn alone. */
function count(page: Page, id: string, t: number, only?: readonly string[]): Promise<Record<string, number>> {
  return page.evaluate(
    async ([i, at, parts]) => {
      await window.show?.(i as string, at as number, {
        idBuffer: parts === null ? {} : { only: parts as string[] },
      })
      return window.countParts?.() ?? {}
    },
    [id, t, only ?? null] as const,
  )
}

/** By DRYRUN_LONG=1; and by `npm run lint:views`, some steps of which view-lint.test.ts looks at in every run. */
const COUNTED = process.env['DRYRUN_LONG'] === '1' ? ['l-shape', 'one-wall'] : []

describe.each(COUNTED)('what is really seen in a planned kitchen', (scene) => {
  test(`${scene}: every part in hand and every mark drilled or made`, async () => {
    const file: unknown = JSON.parse(readFileSync(join(ROOT, `scenes/${scene}.dryrun.json`), 'utf8'))
    const outcome = workThrough(file)
    if (outcome.kind !== 'plan') throw new Error(`${scene} gives no plan`)
    const { plan } = outcome
    const { page, close } = await open(900, 600)
    await page.evaluate((p) => {
      window.galleryPlan = p
    }, plan)
    const lacking: string[] = []
    let counted = 0
    for (const operation of plan.operations) {
      const unit = plan.paths[operation.path ?? -1]?.unit ?? operation.changes[0]?.unit
      const isUnitDrawn = unit !== undefined && operation.kind !== 'assemble'
      const wanted = [
        ...(isUnitDrawn ? [{ name: `unit:${unit}`, share: PART }] : []),
        ...plan.holes
          .filter((h) => h.verdict !== 'refused' && operation.holes.includes(h.id))
          .map((h) => ({ name: `hole:${h.id}`, share: MARK })),
      ]
      if (wanted.length === 0) continue
      const all = await count(page, operation.id, 0)
      for (const { name, share } of wanted) {
        const alone = (await count(page, operation.id, 0, [name]))[name] ?? 0
        const seen = (all[name] ?? 0) / alone
        counted += 1
        // A mark of a few pixels is counted to two of them.
        if (!(seen + 2 / alone >= share))
          lacking.push(`${operation.id}: ${name} ${seen.toFixed(2)} of ${alone} px`)
      }
    }
    expect(counted).toBeGreaterThan(20)
    expect(lacking).toEqual([])
    await close()
  }, 600_000)
})

describe('what it costs', () => {
  test('every operation keeps to the draw calls allowed, asks nothing of other hosts and complains of nothing', async () => {
    const { page, complaints, requestsOffOrigin, close } = await open(320, 240)
    const calls: number[] = []
    for (const { id } of samplePlan.operations) {
      const shown: Shown | undefined = await page.evaluate((i) => window.show?.(i, 0.5), id)
      calls.push(shown?.drawCalls ?? Number.POSITIVE_INFINITY)
    }
    expect(Math.min(...calls)).toBeGreaterThan(0)
    expect(Math.max(...calls)).toBeLessThanOrEqual(MOST_DRAW_CALLS)
    expect(requestsOffOrigin).toEqual([])
    expect(complaints).toEqual([])
    await close()
  }, 300_000)

  test('idle it draws nothing, and with reduced motion nothing moves after the first frames', async () => {
    const { page, close } = await open(640, 400)
    await page.evaluate(() => window.show?.('hang:wall-2', 0.5))
    const before = await stillPicture(page)
    await page.waitForTimeout(1500)
    expect(Number(await page.locator('.scene').getAttribute('data-frame'))).toBe(before)
    await close()
  })
})

describe('camera', () => {
  test('goes from view to view by steps, or at once for those who ask for no motion', async () => {
    const { page, close } = await open(640, 400)
    const frames = async (reducedMotion: boolean) => {
      const more = { reducedMotion, key: undefined }
      await page.evaluate((m) => window.show?.('place:base-3', 1, m), more)
      const from = await stillPicture(page)
      await page.evaluate((m) => window.show?.('place:base-4', 0, m), more)
      return (await stillPicture(page)) - from
    }
    expect(await frames(false)).toBeGreaterThan(4)
    expect(await frames(true)).toBeLessThan(5)
    await close()
  })
})

describe('texts', () => {
  test.each([
    [1440, 900],
    [1024, 768],
    [390, 500],
  ])('at %i × %i none touches another and none leaves the picture', async (width, height) => {
    const { page, close } = await open(width, height)
    let most = 0
    for (const [id, t] of [
      ['set-out-heights:long', 0],
      ['set-out-widths:long', 0],
      ['mark-holes:long', 0],
      ['hang:wall-2', 0.6],
      ['second-fix:wall-2', 0],
      ['place:base-2', 0.4],
    ] as const) {
      await page.evaluate(([i, at]) => window.show?.(i, at), [id, t] as const)
      await page.waitForTimeout(200)
      const boxes = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('.scene-labels [data-label]')]
          .filter((n) => n.style.visibility === 'visible')
          .map((n) => {
            const { x, y, width: w, height: h } = n.getBoundingClientRect()
            return { text: n.textContent, x, y, width: w, height: h }
          }),
      )
      most = Math.max(most, boxes.length)
      for (const [i, a] of boxes.entries()) {
        expect(a.x >= 0 && a.y >= 0 && a.x + a.width <= width && a.y + a.height <= height).toBe(true)
        // On a narrow picture they keep further apart, or two figures read as one.
        const gap = width < 560 ? 6 : 0
        for (const b of boxes.slice(i + 1))
          expect(overlap(a, b, gap) ? `${a.text} on ${b.text}` : '').toBe('')
      }
    }
    expect(most).toBeGreaterThan(3)
    await close()
  })
})

describe('when the graphics context is taken away', () => {
  test('it says so, and the picture comes back as it was', async () => {
    const { page, close } = await open(640, 400)
    await page.evaluate(() => window.show?.('hang:wall-2', 0.5, { idBuffer: {} }))
    const before = await page.evaluate(() => window.countParts?.())
    expect(Object.keys(before ?? {}).length).toBeGreaterThan(10)
    await page.evaluate(() => {
      const gl = document.querySelector('canvas')?.getContext('webgl2')
      const lose = gl?.getExtension('WEBGL_lose_context')
      Object.assign(window, { lose })
      lose?.loseContext()
    })
    await page.locator('.scene-note').waitFor({ timeout: 10_000 })
    await page.evaluate(() => {
      const { lose } = window as unknown as { lose?: WEBGL_lose_context }
      lose?.restoreContext()
    })
    await page.locator('.scene-note').waitFor({ state: 'detached', timeout: 10_000 })
    await page.waitForTimeout(1000)
    expect(await page.evaluate(() => window.countParts?.())).toEqual(before)
    await close()
  })
})
