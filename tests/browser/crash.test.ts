/**
 * The browser killed at random moments while somebody types: nothing older than a second is lost, and what is kept opens.
 * Ten times; a hundred with DRYRUN_LONG=1.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { type KillableChromium, killableChromium } from '../support/killable-chromium'
import { randomFrom } from '../support/prng'

const KILLS = process.env['DRYRUN_LONG'] === '1' ? 100 : 10
const MOST_LOST_MS = 1000
const FIELD = '[data-fact="survey.by"]'

const origin = inject('origin')
let folder: string
let running: KillableChromium | undefined
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'dry-run-crash-'))
})
afterAll(async () => {
  await running?.kill()
  rmSync(folder, { recursive: true, force: true })
})

interface Edit {
  readonly text: string
  readonly begun: number
  isMade: boolean
}

async function start(): Promise<{ readonly chromium: KillableChromium; readonly page: Page }> {
  const chromium = await killableChromium(folder)
  running = chromium
  const page = chromium.context.pages()[0] ?? (await chromium.context.newPage())
  await page.goto(`${origin}/#survey/house`)
  await page.locator(FIELD).waitFor()
  return { chromium, page }
}

const isOwn = (page: Page) =>
  expect.poll(() => page.locator('.which').textContent(), { timeout: 20_000 }).toContain('My kitchen')

/** Types one thing after the other until the browser is gone. */
async function typeAway(page: Page, edits: Edit[], from: number): Promise<void> {
  try {
    for (let number = from; ; number++) {
      const edit: Edit = { text: `edit ${number}`, begun: Date.now(), isMade: false }
      edits.push(edit)
      await page.locator(FIELD).fill(edit.text)
      edit.isMade = true
    }
  } catch {
    // The browser is gone.
  }
}

test(`killed ${KILLS} times while typing`, { timeout: KILLS * 30_000 }, async () => {
  const random = randomFrom(7)
  const edits: Edit[] = []
  let { chromium, page } = await start()
  await page.evaluate(() => {
    window.location.hash = '#survey'
  })
  await page.getByRole('button', { name: 'Begin your own kitchen' }).click()
  await page.getByRole('link', { name: 'On to: House and line' }).click()
  await page.locator(FIELD).waitFor()
  await isOwn(page)
  // That the kitchen was begun is an edit too, and no older than any other may it be lost.
  await page.waitForTimeout(MOST_LOST_MS)

  let [mostLost, lostEdits] = [0, 0]
  for (let kill = 0; kill < KILLS; kill++) {
    const first = edits.length
    const typing = typeAway(page, edits, first)
    await new Promise((resolve) => setTimeout(resolve, random.int(50, 1200)))
    const killedAt = await chromium.kill()
    await typing

    ;({ chromium, page } = await start())
    await isOwn(page)
    const kept = await page.locator(FIELD).inputValue()
    expect(await page.getByRole('alert').count()).toBe(0)
    const last = edits.findIndex(({ text }) => text === kept)
    // What is there is something that was typed, or what was there before this round.
    expect(last >= 0 || (kept === '' && first === 0)).toBe(true)
    const lost = edits.slice(last + 1).filter(({ isMade }) => isMade)
    const oldest = lost[0] === undefined ? 0 : killedAt - lost[0].begun
    mostLost = Math.max(mostLost, oldest)
    lostEdits += lost.length
    expect(oldest).toBeLessThan(MOST_LOST_MS)
    // What was lost was not typed, from here on.
    edits.length = last + 1
  }
  console.log(
    `Killed ${KILLS} times in ${edits.length} edits: ${lostEdits} edits lost in all, the oldest of them made ${mostLost} ms before.`,
  )
  expect(edits.length).toBeGreaterThan(KILLS)
})
