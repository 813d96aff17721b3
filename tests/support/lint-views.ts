/**
 * `npm run lint:views [-- scene ...] [--size=960x600,390x823]`: holds the real picture of every operation to the rules of
 * what must be seen, and ends with 1 when it does not.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { workThrough } from '../../src/core/plan/entry'
import { launchChromium } from './chromium'
import { ROOT } from './root'
import { measurer } from './view-lint/measure-plan'
import { holds, type Sheet, tableOf } from './view-lint/table'

const ENDING = '.dryrun.json'
const asked = process.argv.slice(2)
const option = (name: string) => asked.find((a) => a.startsWith(`--${name}=`))?.slice(name.length + 3)
const named = asked.filter((a) => !a.startsWith('--'))
const scenes =
  named.length > 0
    ? named
    : readdirSync(join(ROOT, 'scenes'))
        .filter((f) => f.endsWith(ENDING))
        .map((f) => f.slice(0, -ENDING.length))
const sizes = (option('size') ?? '960x600,390x823').split(',')
const only = option('only')?.split(',')

const browser = await launchChromium()
const { judge, close } = await measurer(browser)
const sheets: Sheet[] = []
for (const scene of scenes) {
  const outcome = workThrough(JSON.parse(readFileSync(join(ROOT, 'scenes', `${scene}${ENDING}`), 'utf8')))
  if (outcome.kind !== 'plan') {
    console.log(`${scene}: no plan, no pictures`)
    continue
  }
  const { plan } = outcome
  const places =
    only && plan.operations.flatMap((o, i) => (only.includes(o.id) || only.includes(o.kind) ? [i] : []))
  for (const size of sizes) {
    const [width = 0, height = 0] = size.split('x').map(Number)
    const start = performance.now()
    sheets.push({ scene, size, checked: await judge(plan, { width, height }, places) })
    console.error(`${scene} ${size}: ${Math.round((performance.now() - start) / 1000)} s`)
  }
}
await close()
await browser.close()
const into = option('json')
if (into !== undefined) writeFileSync(into, JSON.stringify(sheets))
console.log(tableOf(sheets))
process.exitCode = holds(sheets) ? 0 : 1
