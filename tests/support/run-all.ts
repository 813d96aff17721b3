/**
 * `npm test`: Chromium, build, every Vitest project, and one closing line "N passed, N failed".
 *
 * Each project runs in a process of its own, so a crash of one is counted as a failure and the others still run.
 * A project without a single test, a stray error and a skipped test all fail the run.
 */
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { stripVTControlCharacters } from 'node:util'
import { buildApp } from './build-app'
import { findChromium } from './chromium'
import { ROOT } from './root'
import type { FileReport, RunReport } from './suite-reporter'

const PROJECTS = ['unit', 'alone', 'dom', 'browser'] as const
const PROJECT_TIME_LIMIT_MS = 40 * 60_000

type Tally = { passed: number; failed: number; skipped: number }

const tally: Tally = { passed: 0, failed: 0, skipped: 0 }
const started = performance.now()

const chromium = ensureChromium()
if (chromium === undefined) {
  console.error(
    'Chromium is missing: install it (Debian: apt-get install chromium) or set CHROMIUM_PATH to it, then run npm test again.',
  )
  process.exit(1)
}
process.env['CHROMIUM_PATH'] = chromium

if (build()) for (const project of PROJECTS) await runProject(project)
console.log(`\nAll of it took ${seconds(performance.now() - started)}.`)
const skipped = tally.skipped > 0 ? `, ${tally.skipped} skipped` : ''
console.log(`${tally.passed} passed, ${tally.failed} failed${skipped}`)
process.exitCode = tally.failed > 0 || tally.skipped > 0 || tally.passed === 0 ? 1 : 0

/** Path of a Chromium that starts, installing Debian's if there is none and we may. */
function ensureChromium(): string | undefined {
  const found = findChromium()
  if (found !== undefined) return found
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return undefined
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', 'chromium']]) {
    console.log(`No Chromium here, so: apt-get ${args.join(' ')}`)
    const run = spawnSync('apt-get', ['-qq', ...args], { env, encoding: 'utf8', maxBuffer: 1 << 28 })
    if (run.status !== 0) {
      console.error(tail(`${run.stdout}${run.stderr}`, 20))
      return undefined
    }
  }
  return findChromium()
}

function build(): boolean {
  const from = performance.now()
  const { ok, output } = buildApp()
  if (ok) {
    console.log(`Built the app in ${seconds(performance.now() - from)}.`)
    return true
  }
  tally.failed += 1
  console.log(`FAIL the app doesn't build\n${indent(tail(withoutStack(output), 60))}`)
  return false
}

async function runProject(project: string): Promise<void> {
  const from = performance.now()
  const folder = mkdtempSync(join(tmpdir(), 'dry-run-'))
  const reportPath = join(folder, 'report.json')
  const { ending, output } = await vitest(project, reportPath)
  const report = existsSync(reportPath)
    ? (JSON.parse(readFileSync(reportPath, 'utf8')) as RunReport)
    : undefined
  rmSync(folder, { recursive: true })

  console.log(`\n${project} tests, ${seconds(performance.now() - from)} in all:`)
  const files = report?.files ?? []
  for (const [suite, members] of bySuite(files)) console.log(suiteLine(suite, members))
  for (const file of files) {
    for (const { title, message } of file.failures) fail(`${file.file} > ${title}`, message)
    tally.passed += file.passed
    tally.skipped += file.skipped
  }
  for (const stray of report?.strayErrors ?? []) fail(`${project}: an error outside any test`, stray)
  if (report === undefined) fail(`${project}: Vitest ${ending} and left no report`, tail(output, 60))
  else if (files.every((file) => file.passed + file.skipped + file.failures.length === 0)) {
    fail(`${project}: no tests found`, tail(output, 20))
  } else if (ending !== 'ended with 0' && !anyFailure(report)) {
    fail(`${project}: Vitest ${ending} though no test failed`, tail(output, 60))
  }
}

function vitest(project: string, reportPath: string): Promise<{ ending: string; output: string }> {
  const env: NodeJS.ProcessEnv = { ...process.env, DRY_RUN_REPORT: reportPath, DRY_RUN_DIST_IS_FRESH: 'yes' }
  delete env['NODE_ENV']
  const reporter = join(ROOT, 'tests/support/suite-reporter.ts')
  const args = ['run', '--project', project, `--reporter=${reporter}`, '--allowOnly=false', '--no-color']
  const child = spawn(process.execPath, [join(ROOT, 'node_modules/vitest/vitest.mjs'), ...args], {
    cwd: ROOT,
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
    timeout: PROJECT_TIME_LIMIT_MS,
    killSignal: 'SIGKILL',
  })
  let output = ''
  const keep = (data: Buffer) => {
    output = (output + data.toString()).slice(-100_000)
  }
  child.stdout.on('data', keep)
  child.stderr.on('data', keep)
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ ending: `did not start (${error.message})`, output }))
    child.on('close', (code, signal) => {
      resolve({ ending: code === null ? `was ended by ${signal}` : `ended with ${code}`, output })
    })
  })
}

function anyFailure(report: RunReport): boolean {
  return report.strayErrors.length > 0 || report.files.some((file) => file.failures.length > 0)
}

/** A suite is the first folder under tests. */
function bySuite(files: readonly FileReport[]): readonly (readonly [string, readonly FileReport[]])[] {
  const suites = new Map<string, FileReport[]>()
  for (const file of files) {
    const suite = file.file.split(/[\\/]/)[1] ?? file.file
    suites.set(suite, [...(suites.get(suite) ?? []), file])
  }
  return [...suites].sort(([a], [b]) => (a < b ? -1 : 1))
}

function suiteLine(suite: string, files: readonly FileReport[]): string {
  const sum = (of: (file: FileReport) => number) => files.reduce((total, file) => total + of(file), 0)
  const failed = sum((file) => file.failures.length)
  const counts = `${sum((file) => file.passed)} passed, ${failed} failed`
  const skips = sum((file) => file.skipped)
  const time = seconds(sum((file) => file.ms)).padStart(8)
  return `  ${suite.padEnd(14)} ${time}  ${files.length} files, ${counts}${skips > 0 ? `, ${skips} skipped` : ''}`
}

function fail(title: string, message: string): void {
  tally.failed += 1
  console.log(`FAIL ${title}\n${indent(head(message, 40))}`)
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(1)} s`
}

function indent(text: string): string {
  return stripVTControlCharacters(text).replace(/^/gm, '    ')
}

/** The bundler's own stack says nothing about our source. */
function withoutStack(text: string): string {
  return text.replace(/^\s+at .*\n?/gm, '')
}

function head(text: string, lines: number): string {
  const all = text.split('\n')
  return all.length <= lines
    ? text
    : [...all.slice(0, lines), `... ${all.length - lines} more lines`].join('\n')
}

function tail(text: string, lines: number): string {
  return text.trimEnd().split('\n').slice(-lines).join('\n')
}
