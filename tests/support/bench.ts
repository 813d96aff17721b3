/**
 * `npm run bench`: how fast, how large. One JSON line a figure; never a test, because machines differ. With a browser and
 * a built app it also measures typing and the picture; without, it says so in a line and goes on.
 */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { blockingGraphs } from '../../src/core/placing/blocking'
import { workThrough } from '../../src/core/plan/entry'
import { benchMotion } from './bench-motion'
import { benchPicture } from './bench-picture'
import { benchTyping } from './bench-typing'
import { largeKitchen } from './large-kitchen'
import { ROOT } from './root'

function say(name: string, figures: Readonly<Record<string, unknown>>) {
  console.log(JSON.stringify({ name, ...figures }))
}

/** Median and least of several runs, ms, once warm. */
function timed(run: () => void, runs: number) {
  for (let i = 0; i < 3; i++) run()
  const took = Array.from({ length: runs }, () => {
    const start = performance.now()
    run()
    return performance.now() - start
  }).sort((a, b) => a - b)
  const round = (ms: number | undefined) => Math.round((ms ?? 0) * 100) / 100
  return { medianMs: round(took[Math.floor(runs / 2)]), leastMs: round(took[0]), runs }
}

for (const count of [10, 30, 60, 100]) {
  const kitchen = largeKitchen(count)
  const outcome = workThrough(kitchen)
  const operations = outcome.kind === 'plan' ? outcome.plan.operations.length : null
  say('plan', { units: count, outcome: outcome.kind, operations, ...timed(() => workThrough(kitchen), 15) })
}
for (const name of ['one-wall', 'l-shape']) {
  const kitchen: unknown = JSON.parse(readFileSync(join(ROOT, `scenes/${name}.dryrun.json`), 'utf8'))
  say('plan', { scene: name, ...timed(() => workThrough(kitchen), 15) })
}

const boxes = Array.from({ length: 60 }, (_, i) => {
  const [x, y, z] = [(i % 10) * 620, Math.floor(i / 10) * 700, (i % 3) * 800]
  return { id: `box-${i}`, x0: x, x1: x + 600, y0: y, y1: y + 560, z0: z, z1: z + 720 }
})
say('blocking-graphs', { boxes: 60, ...timed(() => void blockingGraphs(boxes), 30) })

if (existsSync(join(ROOT, 'dist/index.html'))) {
  await benchTyping(say)
  await benchPicture(say)
  await benchMotion(say)
} else say('picture', { skipped: 'no built app: run npm run build first' })
