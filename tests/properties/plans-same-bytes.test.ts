/**
 * Same inputs, same bytes: over invented kitchens, 500 by default, 20 000 with DRYRUN_LONG=1. What is listed in any
 * order may be listed in another, and nothing changes.
 */
import { beforeAll, expect, test } from 'vitest'
import { workThrough } from '../../src/core/plan/entry'
import { randomFrom } from '../support/prng'
import { randomKitchen, shuffledSets } from '../support/random-kitchen'

const LONG = process.env['DRYRUN_LONG'] === '1'
const SEEDS = LONG ? 20_000 : 500
const TIME_LIMIT = LONG ? 3_600_000 : 240_000
/** Every shuffled run is a second run too; the plain repeat is made for one in so many. */
const REPEAT_EVERY = 10

const again: string[] = []
const shuffled: string[] = []
let moved = 0

function bytesOf(file: unknown): string {
  try {
    return JSON.stringify(workThrough(file))
  } catch (error) {
    return String(error)
  }
}

/** Where two texts part, with what stands about it. */
function parting(seed: number, a: string, b: string): readonly string[] {
  if (a === b) return []
  let at = 0
  while (a[at] === b[at]) at++
  return [`seed ${seed}: …${a.slice(Math.max(0, at - 90), at + 50)}… against …${b.slice(at, at + 50)}…`]
}

beforeAll(() => {
  const started = performance.now()
  for (let seed = 0; seed < SEEDS; seed++) {
    const { file } = randomKitchen(seed)
    const bytes = bytesOf(file)
    const other = shuffledSets(randomFrom(seed + 1_000_000), file)
    if (JSON.stringify(other) !== JSON.stringify(file)) moved++
    shuffled.push(...parting(seed, bytes, bytesOf(other)))
    if (seed % REPEAT_EVERY === 0) again.push(...parting(seed, bytes, bytesOf(structuredClone(file))))
  }
  const took = ((performance.now() - started) / 1000).toFixed(1)
  console.log(
    `${SEEDS} invented kitchens, ${moved} really shuffled, ${Math.ceil(SEEDS / REPEAT_EVERY)} repeated, in ${took} s`,
  )
}, TIME_LIMIT)

test('the shuffling shuffles', () => {
  expect(moved).toBeGreaterThan(SEEDS * 0.9)
})

test('the same kitchen gives the same bytes again', () => {
  expect(again.slice(0, 12)).toEqual([])
})

test('shuffled sets give the same bytes', () => {
  expect(shuffled.slice(0, 12)).toEqual([])
})
