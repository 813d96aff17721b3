/** The command line as a user has it: a process of its own, its exit code, what it prints, and the same bytes each time. */
import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'vite'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { randomFrom } from '../support/prng'
import { shuffledSets } from '../support/random-kitchen'
import { ROOT } from '../support/root'

const LONG = process.env['DRYRUN_LONG'] === '1'
const PATIENCE = 120_000

interface Ended {
  readonly code: number
  readonly out: string
  readonly err: string
}

/** From its sources, as `npm run plan` runs it. */
const runFromSources = (...words: readonly string[]): Promise<Ended> =>
  ended(['--import', 'tsx', join('src', 'cli', 'plan.ts'), ...words])

/** Put into one file beforehand, as most of such a process is spent in translating the sources. */
const runPlan = (...words: readonly string[]): Promise<Ended> => ended([join(folder, 'plan.js'), ...words])

function ended(command: readonly string[]): Promise<Ended> {
  return new Promise((resolve) => {
    execFile(process.execPath, command, { cwd: ROOT, maxBuffer: 2 ** 28 }, (error, out, err) => {
      resolve({ code: typeof error?.code === 'number' ? error.code : error === null ? 0 : -1, out, err })
    })
  })
}

const sceneFile = (name: string): string => join('scenes', `${name}.dryrun.json`)
const sceneText = (name: string): string => readFileSync(join(ROOT, sceneFile(name)), 'utf8')
const expectedExit = (name: string): number =>
  (JSON.parse(readFileSync(join(ROOT, 'scenes', `${name}.expected.json`), 'utf8')) as { exit: number }).exit

let folder = ''
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'dry-run-cli-'))
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'silent',
    ssr: { noExternal: true },
    build: { ssr: 'src/cli/plan.ts', outDir: folder, emptyOutDir: false },
  })
})
afterAll(() => rmSync(folder, { recursive: true }))

function written(name: string, text: string): string {
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}

describe('--json --check', () => {
  test.each(['one-wall', 'l-shape', 'no-order', 'galley', 'north-american'])(
    'of %s ends as its sidecar says, and prints JSON',
    async (name) => {
      const { code, out, err } = await runPlan(sceneFile(name), '--json', '--check')
      expect({ code, err }).toEqual({ code: expectedExit(name), err: '' })
      expect(() => JSON.parse(out) as unknown).not.toThrow()
    },
    PATIENCE,
  )

  test(
    'a plan in which two operations have changed places is refused, with 4 and the reason',
    async () => {
      const { out } = await runPlan(sceneFile('one-wall'), '--json')
      const plan = JSON.parse(out) as { operations: { id: string }[] }
      const at = (id: string): number => plan.operations.findIndex((o) => o.id === id)
      const [hang, lock] = [at('hang:wall-1'), at('lock:wall-1')]
      expect(hang).toBeGreaterThan(0)
      const operations = plan.operations.map(
        (o, i) => plan.operations[i === hang ? lock : i === lock ? hang : i] ?? o,
      )
      const broken = written('broken.json', JSON.stringify({ ...plan, operations }))
      const ended = await runPlan(sceneFile('one-wall'), '--json', '--check', '--plan', broken)
      expect(ended.code).toBe(4)
      expect(ended.err).toContain('The checker refuses this plan')
      const whole = written('whole.json', out)
      expect((await runPlan(sceneFile('one-wall'), '--json', '--check', '--plan', whole)).code).toBe(0)
    },
    PATIENCE,
  )

  test(
    'the same bytes over 20 runs, half of them with all that is a set shuffled',
    async () => {
      const name = LONG ? 'l-shape' : 'one-wall'
      const file: unknown = JSON.parse(sceneText(name))
      const first = await runFromSources(sceneFile(name), '--json')
      for (let run = 1; run < 20; run += 2) {
        const shuffled = shuffledSets(randomFrom(run), file as Parameters<typeof shuffledSets>[1])
        expect(JSON.stringify(shuffled)).not.toBe(JSON.stringify(file))
        const path = written(`shuffled-${run}.dryrun.json`, JSON.stringify(shuffled))
        const both = await Promise.all([runPlan(sceneFile(name), '--json'), runPlan(path, '--json')])
        for (const { out } of both) expect(out === first.out, `run ${run}`).toBe(true)
      }
    },
    PATIENCE * 3,
  )
})

describe('what cannot be read', () => {
  test(
    'is refused with 2, its place and the mend, and nothing on the way of the plan',
    async () => {
      const cut = written('cut.dryrun.json', sceneText('one-wall').slice(0, 900))
      const negative = written(
        'negative.dryrun.json',
        sceneText('one-wall').replace('"length": 3200', '"length": -3200'),
      )
      const [noFile, broken, below, noOption, nothing] = await Promise.all([
        runPlan('scenes/nowhere.dryrun.json'),
        runPlan(cut),
        runPlan(negative),
        runPlan(sceneFile('one-wall'), '--whither'),
        runPlan(),
      ])
      for (const ended of [noFile, broken, below, noOption, nothing]) {
        expect(ended.code).toBe(2)
        expect(ended.out).toBe('')
        expect(ended.err).not.toMatch(/\n +at |Error:/)
      }
      expect(noFile.err).toContain('cannot be read')
      expect(broken.err).toMatch(/line \d+/)
      expect(below.err).toContain('walls "a" › length')
      expect(noOption.err).toContain('--whither is no option')
      expect(nothing.err).toContain('no FILE given')
    },
    PATIENCE,
  )
})

describe('questions', () => {
  test(
    '--why, --first and the readable plan answer in sentences; an operation that is not there is refused',
    async () => {
      const [whole, why, first, none] = await Promise.all([
        runPlan(sceneFile('one-wall')),
        runPlan(sceneFile('one-wall'), '--why', 'hang:wall-2'),
        runPlan(sceneFile('one-wall'), '--first', 'hang:wall-2'),
        runPlan(sceneFile('one-wall'), '--why', 'hang:wall-99'),
      ])
      expect([whole.code, why.code, first.code, none.code]).toEqual([0, 0, 0, 2])
      expect(whole.out).toContain('Hang wall unit 2')
      for (const { out } of [why, first]) expect(out).toMatch(/[A-Z][^\n]{20,}\./)
      expect(none.err).toContain('no operation "hang:wall-99"')
    },
    PATIENCE,
  )
})
