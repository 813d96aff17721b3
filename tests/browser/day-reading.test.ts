/** A level reading on the day: once the low end is touched, every turn stands in sight over the buttons. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { workThrough } from '../../src/core/plan/entry'
import { launchChromium } from '../support/chromium'
import { ROOT } from '../support/root'

const origin = inject('origin')
let browser: Browser
beforeAll(async () => {
  browser = await launchChromium()
})
afterAll(() => browser?.close())

const kitchen: unknown = JSON.parse(readFileSync(join(ROOT, 'scenes/l-shape.dryrun.json'), 'utf8'))

/** The two documents as kept, with everything before one operation done. */
function doneUpTo(id: string) {
  const outcome = workThrough(kitchen)
  if (outcome.kind !== 'plan') throw new Error(outcome.kind)
  const { operations } = outcome.plan
  const before = operations.slice(
    0,
    operations.findIndex((o) => o.id === id),
  )
  const entries = before.map((o, i) => ({ id: `e${i + 1}`, kind: 'done', operation: o.id }))
  return { kitchen, log: { format: 'dryrun-daylog', version: 1, entries } }
}

describe.each([
  { screen: 'a telephone', width: 390, height: 844 },
  { screen: 'a tablet on its side', width: 1024, height: 768 },
])('on $screen', ({ width, height }) => {
  test.each([
    { unit: 'wall unit 2', id: 'level:wall-2', turns: 1 },
    { unit: 'base unit 2', id: 'level:base-2', turns: 2 },
  ])('$unit', async ({ unit, id, turns }) => {
    const page = await browser.newPage({ viewport: { width, height }, reducedMotion: 'reduce' })
    await page.addInitScript(
      (kept) => localStorage.setItem('dry-run/documents', kept),
      JSON.stringify(doneUpTo(id)),
    )
    await page.goto(`${origin}/#day`)
    await page.getByRole('heading', { name: `Level ${unit}` }).waitFor()
    await page.getByRole('button', { name: 'Right end low' }).click()
    const told = page.locator('.turns .told')
    await told.first().waitFor()
    expect(await told.count()).toBe(turns)
    const words = page.locator('.tolds > :last-child')
    const bar = await page.locator('.day .end').boundingBox()
    await expect
      .poll(async () => {
        const box = await words.boundingBox()
        return (box?.y ?? height) + (box?.height ?? 0)
      })
      .toBeLessThanOrEqual(bar?.y ?? 0)
    expect((await told.first().boundingBox())?.y).toBeGreaterThan(0)
    await page.close()
  })
})
