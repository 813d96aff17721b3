/** Writes what a Vitest run found into the file named by DRY_RUN_REPORT, for run-all.ts to read. */
import { writeFileSync } from 'node:fs'
import { relative } from 'node:path'
import type { Reporter, SerializedError, TestModule } from 'vitest/node'
import { ROOT } from './root'

export type Failure = { readonly title: string; readonly message: string }

export type FileReport = {
  /** Path from the repository's folder. */
  readonly file: string
  /** Loading plus running, without waiting for other files. */
  readonly ms: number
  readonly passed: number
  readonly skipped: number
  readonly failures: readonly Failure[]
}

export type RunReport = {
  readonly files: readonly FileReport[]
  /** Errors that belong to no test: they escaped, or the run itself broke. */
  readonly strayErrors: readonly string[]
}

export default class SuiteReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], strayErrors: readonly SerializedError[]): void {
    const path = process.env['DRY_RUN_REPORT']
    if (path === undefined) throw new Error('DRY_RUN_REPORT names no file')
    const report: RunReport = { files: modules.map(fileReport), strayErrors: strayErrors.map(words) }
    writeFileSync(path, JSON.stringify(report))
  }
}

function fileReport(module: TestModule): FileReport {
  const { collectDuration, duration, environmentSetupDuration, setupDuration } = module.diagnostic()
  const failures: Failure[] = module.errors().map((error) => failure('the file itself', [error]))
  let passed = 0
  let skipped = 0
  for (const suite of module.children.allSuites()) {
    if (suite.errors().length > 0) failures.push(failure(suite.fullName, suite.errors()))
  }
  for (const test of module.children.allTests()) {
    const { state, errors } = test.result()
    if (state === 'passed') passed += 1
    else if (state === 'skipped') skipped += 1
    else failures.push(failure(test.fullName, errors ?? [], state))
  }
  return {
    file: relative(ROOT, module.moduleId),
    ms: collectDuration + duration + environmentSetupDuration + setupDuration,
    passed,
    skipped,
    failures,
  }
}

function failure(title: string, errors: readonly SerializedError[], state = 'failed'): Failure {
  const message = errors.length === 0 ? `ended as "${state}" without a message` : errors.map(words).join('\n')
  return { title, message }
}

function words(error: SerializedError): string {
  const place = error.stacks?.find((frame) => !frame.file.includes('node_modules'))
  const where = place === undefined ? '' : `\nat ${relative(ROOT, place.file)}:${place.line}`
  const diff = typeof error['diff'] === 'string' ? `\n${error['diff']}` : ''
  return `${error.name ? `${error.name}: ` : ''}${error.message}${diff}${where}`
}
