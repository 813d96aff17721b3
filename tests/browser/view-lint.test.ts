/** The measuring of views itself: good pictures pass, and one in which something is wrong does not. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { workThrough } from '../../src/core/plan/entry'
import { makeViews } from '../../src/core/views/views'
import { launchChromium } from '../support/chromium'
import { sceneFile } from '../support/scene-sheets'
import { type Measurer, measurer } from '../support/view-lint/measure-plan'
import { type Checked, RULES } from '../support/view-lint/rules'

const SIZE = { width: 390, height: 823 }
const outcome = workThrough(sceneFile('one-wall'))
if (outcome.kind !== 'plan') throw new Error('no plan')
const { plan } = outcome
const at = (id: string) => plan.operations.findIndex((o) => o.id === id)
const hanging = at('hang:wall-2')

let browser: Browser
let measure: Measurer
beforeAll(async () => {
  browser = await launchChromium()
  measure = await measurer(browser)
}, 120_000)
afterAll(async () => {
  await browser?.close()
  await measure?.close()
})

const failing = (checked: readonly Checked[]) =>
  checked.flatMap(({ asked, verdicts }) =>
    RULES.flatMap((rule) => {
      const verdict = verdicts[rule]
      return verdict.kind === 'fails' ? [`${asked.id} ${rule} ${verdict.figure}`] : []
    }),
  )
const failedRules = (checked: readonly Checked[]) =>
  RULES.filter((rule) => checked.some((c) => c.verdicts[rule].kind === 'fails'))

test('pictures as they are chosen pass every rule', async () => {
  const checked = await measure.judge(plan, SIZE, [hanging - 1, hanging, at('fix:base-1')])
  expect(failing(checked)).toEqual([])
  expect(checked.filter((c) => c.verdicts.B2.kind === 'passes').length).toBeGreaterThan(1)
}, 120_000)

test('something put before the part in hand is noticed', async () => {
  const checked = await measure.judge(plan, SIZE, [hanging], { plant: true })
  expect(failedRules(checked)).toEqual(expect.arrayContaining(['B1', 'B2', 'B3']))
}, 120_000)

test('a camera that was chosen for something else is noticed', async () => {
  const { eye, target } = makeViews(plan, 0.5).at(hanging)
  const behind = { eye: { x: 2 * target.x - eye.x, y: 2 * target.y - eye.y, z: eye.z }, target }
  const turned = await measure.judge(plan, SIZE, [hanging], { camera: behind })
  expect(failedRules(turned)).toContain('B2')
  const far = { eye: { x: 6 * eye.x - 5 * target.x, y: 6 * eye.y - 5 * target.y, z: eye.z }, target }
  expect(failedRules(await measure.judge(plan, SIZE, [hanging], { camera: far }))).toContain('B4')
}, 120_000)
