/**
 * Plans of real kitchens, spoilt by chance: the checker refuses every spoilt one and accepts every one left alone. One
 * thousand at a time; with DRYRUN_LONG=1 in the environment, twenty thousand.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import { workThrough } from '../../src/core/plan/entry'
import type { Plan } from '../../src/core/plan/types'
import { ROOT } from '../support/root'
import { chance, type Kitchen, SPOILS } from './mutations'

const COUNT = process.env['DRYRUN_LONG'] === '1' ? 20_000 : 1000
const LONG = COUNT * 1000

interface File extends Kitchen {
  readonly floor: { readonly readings: readonly { readonly drop: number }[] }
}
interface Planned {
  readonly name: string
  readonly kitchen: Kitchen
  readonly plan: Plan
}

function scene(name: string): File {
  return JSON.parse(readFileSync(join(ROOT, 'scenes', `${name}.dryrun.json`), 'utf8')) as File
}

/** The same room with a floor that was read a little differently. */
function onAnotherFloor(file: File, seed: number): File {
  const next = chance(seed)
  const readings = file.floor.readings.map((r) => ({ ...r, drop: r.drop + Math.round(next() * 6 - 3) }))
  return { ...file, floor: { ...file.floor, readings } }
}

const KITCHENS: readonly (readonly [string, () => File])[] = [
  ['one-wall', () => scene('one-wall')],
  ['l-shape', () => scene('l-shape')],
  ...[1, 2, 3, 4].map(
    (seed) => [`one-wall, floor ${seed}`, () => onAnotherFloor(scene('one-wall'), seed)] as const,
  ),
  ...[1, 2].map((seed) => [`l-shape, floor ${seed}`, () => onAnotherFloor(scene('l-shape'), seed)] as const),
]

const planned: Planned[] = []

beforeAll(() => {
  for (const [name, file] of KITCHENS) {
    const kitchen = file()
    const outcome = workThrough(kitchen)
    if (outcome.kind !== 'plan') throw new Error(`${name} gives no plan`)
    planned.push({ name, kitchen, plan: outcome.plan })
  }
}, LONG)

test.each(KITCHENS.map(([name]) => name))('the plan for %s is accepted', (name) => {
  const { kitchen, plan } = planned.find((p) => p.name === name) as Planned
  expect(checkPlan(kitchen, plan)).toEqual({ ok: true, refusals: [] })
})

test(
  `${COUNT} spoilt plans are refused`,
  () => {
    const kinds = Object.keys(SPOILS)
    const refused = new Map(kinds.map((kind) => [kind, 0]))
    const accepted: string[] = []
    let done = 0
    for (let seed = 1; done < COUNT; seed++) {
      const kind = kinds[seed % kinds.length] ?? ''
      const next = chance(seed)
      const one = planned[Math.floor(next() * planned.length)] as Planned
      const spoilt = SPOILS[kind]?.(one.kitchen, one.plan, next)
      if (spoilt === null || spoilt === undefined) continue
      done++
      if (checkPlan(spoilt.kitchen, spoilt.plan).ok)
        accepted.push(`seed ${seed}, ${one.name}: ${kind}: ${spoilt.how}`)
      else refused.set(kind, (refused.get(kind) ?? 0) + 1)
    }
    console.log([...refused].map(([kind, count]) => `${String(count).padStart(6)}  ${kind}`).join('\n'))
    expect(accepted).toEqual([])
  },
  LONG,
)
