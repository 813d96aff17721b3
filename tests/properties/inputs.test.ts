/**
 * Whatever comes in, from a file, a spreadsheet or a link: it is refused with a place and a way to mend it, or planned,
 * and the plan is accepted by the checker. Nothing is thrown, nothing takes long, nothing reaches the language itself.
 *
 * Two thousand mangled inputs; fifty thousand with DRYRUN_LONG=1. A fault names its number: the same number is the same
 * input again.
 */
import { beforeAll, describe, expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import { thingsAt } from '../../src/core/form/rename'
import { tableRead } from '../../src/core/form/table/read-rows'
import { hasTable, tableOf } from '../../src/core/form/table/write-rows'
import { listAt } from '../../src/core/form/things'
import { withEdits } from '../../src/core/kitchen/edit'
import { parseKitchen } from '../../src/core/kitchen/parse-kitchen'
import type { Problem } from '../../src/core/kitchen/problem'
import { linkOf, textOfLink } from '../../src/state/link'
import { rowsOf } from '../../src/ui/survey/table/rows-of'
import { answer } from '../../src/worker/answer'
import { sceneFile } from '../support/kitchens'
import { listPaths } from '../support/lists'
import { mangledFile, mangledLink, mangledTable } from '../support/mangled'
import { type Random, randomFrom } from '../support/prng'
import { randomKitchen } from '../support/random-kitchen'

const LONG = process.env['DRYRUN_LONG'] === '1'
const TIME_LIMIT = LONG ? 7_200_000 : 240_000
const COUNTS = LONG
  ? { files: 20_000, tables: 15_000, links: 15_000 }
  : { files: 800, tables: 600, links: 600 }

/** Longest that one input may take, ms of work; a busy machine makes nothing of it longer. */
const MOST_MS = 1000

/** Lists longer than those of any kitchen are read and looked through; how long planning takes is for the bench. */
const MOST_PLANNED = 100

/** Sound kitchens of a few units, so that many can be planned. */
const KITCHENS: readonly unknown[] = [
  { ...(sceneFile('no-order') as object), wishes: {} },
  sceneFile('no-order'),
  sceneFile('one-wall'),
  ...[1, 2, 3, 4].map((seed) => randomKitchen(seed, { most: 2 }).file),
]

/** Two bare walls: what a table is added to. */
const ROOM = {
  format: 'dryrun-kitchen',
  version: 1,
  name: 'Room',
  walls: [
    { id: 'a', length: 3000 },
    { id: 'b', length: 2400 },
  ],
}

interface Tally {
  readonly faults: string[]
  readonly slow: string[]
  refused: number
  planned: number
  noOrder: number
}
const tally = (): Tally => ({ faults: [], slow: [], refused: 0, planned: 0, noOrder: 0 })

const OWN = [Object.prototype, Array.prototype, Function.prototype].map((p) => Reflect.ownKeys(p).length)

/** One input: what is wrong with what came of it. */
async function tried(into: Tally, name: string, work: () => Promise<readonly string[]>): Promise<void> {
  const before = process.cpuUsage()
  try {
    const wrong = await work()
    if (wrong.length > 0) into.faults.push(`${name}: ${wrong.slice(0, 3).join(' | ')}`)
  } catch (thrown) {
    into.faults.push(
      `${name} threw ${thrown instanceof Error ? thrown.stack?.slice(0, 400) : String(thrown)}`,
    )
  }
  const { user, system } = process.cpuUsage(before)
  const ms = (user + system) / 1000
  if (ms > MOST_MS) into.slow.push(`${name}: ${Math.round(ms)} ms`)
  const own = [Object.prototype, Array.prototype, Function.prototype].map((p) => Reflect.ownKeys(p).length)
  if (String(own) !== String(OWN) || 'polluted' in {}) into.faults.push(`${name} reached the language itself`)
}

/** Every problem says what, where and how to mend it. */
function untold(problems: readonly Problem[]): readonly string[] {
  if (problems.length === 0) return ['refused without a reason']
  return problems.flatMap(({ path, message, mend }) =>
    [path, message, mend].some((words) => words.trim() === '') || message.length > 2000
      ? [`not well told: ${path}: ${message}: ${mend}`]
      : [],
  )
}

/** What came of a kitchen file, as the app itself asks for it. */
function judged(into: Tally, kitchen: unknown): readonly string[] {
  const { outcome, kitchen: read } = answer({ id: 1, kitchen, log: null })
  if (outcome.kind === 'refused') {
    into.refused++
    return untold(outcome.problems)
  }
  if (outcome.kind === 'no-order') {
    into.noOrder++
    const { conflicts, loops, trapped } = outcome.noPlan
    return conflicts.length + loops.length + trapped.length > 0 ? [] : ['no order, and no reason']
  }
  into.planned++
  const report = checkPlan(read, outcome.plan)
  return report.ok ? [] : report.refusals.map((refusal) => `the checker refuses: ${JSON.stringify(refusal)}`)
}

describe('mangled files', () => {
  const of = tally()
  beforeAll(async () => {
    for (let i = 0; i < COUNTS.files; i++) {
      const random = randomFrom(i)
      const text = mangledFile(random.pick(KITCHENS), random)
      await tried(of, `file ${i}`, async () => judged(of, text))
    }
  }, TIME_LIMIT)

  test('are refused well told, or planned and accepted by the checker', () => {
    expect(of.faults).toEqual([])
    expect(Math.min(of.refused, of.planned)).toBeGreaterThan(COUNTS.files / 20)
  })
  test('take no longer than a second each', () => expect(of.slow).toEqual([]))
})

describe('mangled tables', () => {
  const of = tally()
  const seen = { added: 0, troubles: 0, refused: 0 }
  const sources = KITCHENS.flatMap((kitchen) =>
    listPaths(kitchen).flatMap((path) => {
      const things = thingsAt(path)
      return things !== undefined && hasTable(things) && listAt(kitchen, path).length > 0
        ? [{ path, things, list: listAt(kitchen, path) }]
        : []
    }),
  )
  const one = async (random: Random): Promise<readonly string[]> => {
    // Lists of a wall go onto a wall that the room has.
    const { path: from, things, list } = random.pick(sources)
    const path = from.replace(/^walls\.[^.]+/, 'walls.a')
    const text = mangledTable(tableOf(things, list), random)
    const rows = await rowsOf(text, things)
    if (typeof rows === 'string') return rows === '' ? ['refused without a reason'] : []
    const read = tableRead(rows, things, ROOM, path)
    seen.added += read.added.length
    seen.troubles += read.cells.length + read.lines.length + read.notUnderstood.length
    const troubles = [...read.cells, ...read.lines, ...read.notUnderstood]
    const wrong = troubles.filter(
      ({ row, column, why }) => row < 1 || row > rows.length || column === 0 || why === '',
    )
    if (wrong.length > 0) return [`not well told: ${JSON.stringify(wrong[0])}`]
    if (read.edits.length === 0) {
      seen.refused++
      return read.refused === null && read.lines.length === 0 ? ['nothing came of it, and no reason'] : []
    }
    const kitchen = withEdits(ROOM, read.edits)
    if (kitchen === undefined) return ['its edits cannot be made']
    if (read.edits.length <= MOST_PLANNED) return judged(of, kitchen)
    const parsed = parseKitchen(kitchen)
    return parsed.ok ? [] : untold(parsed.error)
  }
  beforeAll(async () => {
    for (let i = 0; i < COUNTS.tables; i++) await tried(of, `table ${i}`, () => one(randomFrom(100_000 + i)))
  }, TIME_LIMIT)

  test('tell what is not understood, and the rest is refused well told or planned', () => {
    expect(of.faults).toEqual([])
    expect(Math.min(of.planned, seen.added, seen.troubles, seen.refused)).toBeGreaterThan(COUNTS.tables / 50)
  })
  test('take no longer than a second each', () => expect(of.slow).toEqual([]))
})

describe('mangled links', () => {
  const of = tally()
  const seen = { broken: 0, files: 0 }
  beforeAll(async () => {
    const links = await Promise.all(KITCHENS.map(linkOf))
    for (let i = 0; i < COUNTS.links; i++) {
      const random = randomFrom(200_000 + i)
      const which = random.int(0, KITCHENS.length - 1)
      const link = mangledLink(links[which] ?? '', KITCHENS[which], random)
      await tried(of, `link ${i}`, async () => {
        const text = await textOfLink(link)
        if (typeof text !== 'string') {
          seen.broken++
          return untold([text])
        }
        seen.files++
        return judged(of, text)
      })
    }
  }, TIME_LIMIT)

  test('are refused well told, or what they carry is taken like any file', () => {
    expect(of.faults).toEqual([])
    expect(Math.min(seen.broken, seen.files, of.planned)).toBeGreaterThan(COUNTS.links / 50)
  })
  test('take no longer than a second each', () => expect(of.slow).toEqual([]))
})
