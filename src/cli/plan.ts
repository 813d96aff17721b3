/**
 * The planner on the command line: `npm run -s plan -- FILE [--log DAYLOG] [--json] [--why ID] [--first ID] [--check]`.
 *
 * Exit code: 0 a plan; 1 a plan with a stop, or an ask of the dangerous class; 2 a file refused; 3 no order possible;
 * 4 the checker refuses the plan; 70 the program itself is at fault.
 */
import { readFileSync } from 'node:fs'
import { checkPlan } from '../checker/check-plan'
import { parseKitchenText } from '../core/kitchen/parse-kitchen'
import type { Problem } from '../core/kitchen/problem'
import { type Outcome, workThrough } from '../core/plan/entry'
import { readWrittenPlan, writtenPlan } from '../core/plan/plan-file'
import { readableNoPlan, readablePlan, readableWhy, readableWhyNotFirst } from '../core/plan/readable'
import type { Plan } from '../core/plan/types'
import { withWaysOut } from '../core/plan/ways-out'

interface Options {
  readonly file: string
  readonly log: string | null
  readonly json: boolean
  readonly check: boolean
  readonly why: string | null
  readonly first: string | null
  /** A plan to check instead of the one worked out: how a plan from elsewhere is judged. */
  readonly plan: string | null
}

const USAGE = `Usage: npm run -s plan -- FILE [options]
  FILE            a kitchen file (.dryrun.json)
  --log DAYLOG    a day log to lay over it
  --json          the plan as JSON (schema: assets/plan.schema.json)
  --why ID        why an operation comes where it does
  --first ID      what stands against doing it first
  --check         have the independent checker prove the plan
  --plan PLAN     with --check: judge this plan instead of working one out
Exit: 0 plan · 1 plan with dangerous findings · 2 file refused · 3 no order possible · 4 checker refuses · 70 a fault of the program`

function readOptions(words: readonly string[]): Options | string {
  const value = { log: null, why: null, first: null, plan: null } as Record<string, string | null>
  const flags = new Set<string>()
  let file: string | null = null
  for (let i = 0; i < words.length; i++) {
    const word = words[i] as string
    const name = word.replace(/^--/, '')
    if (word === '--json' || word === '--check') flags.add(name)
    else if (word.startsWith('--') && name in value) {
      const next = words[++i]
      if (next === undefined) return `${word} wants something after it`
      value[name] = next
    } else if (word.startsWith('--')) return `${word} is no option`
    else if (file === null) file = word
    else return `one FILE at a time: ${word} is too many`
  }
  if (file === null) return 'no FILE given'
  return {
    file,
    json: flags.has('json'),
    check: flags.has('check'),
    log: value['log'] ?? null,
    why: value['why'] ?? null,
    first: value['first'] ?? null,
    plan: value['plan'] ?? null,
  }
}

function readText(path: string): string | null {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return null
  }
}

function problemLines(file: string, problems: readonly Problem[]): string {
  const lines = problems.map((p) => `  ${p.path === '' ? 'the file' : p.path}: ${p.message}\n      ${p.mend}`)
  return `${file} is refused; nothing was planned.\n${lines.join('\n')}\n`
}

function refuse(text: string): number {
  process.stderr.write(text)
  return 2
}

function run(words: readonly string[]): number {
  const options = readOptions(words)
  if (typeof options === 'string') return refuse(`${options}\n\n${USAGE}\n`)
  const text = readText(options.file)
  if (text === null) return refuse(`${options.file} cannot be read. Is the name right?\n`)
  const parsed = parseKitchenText(text)
  if (!parsed.ok) return refuse(problemLines(options.file, parsed.error))
  const log = options.log === null ? null : readJson(options.log)
  if (log === undefined) return refuse(`${options.log} cannot be read as JSON.\n`)
  const outcome = workThrough(parsed.value.file, log)
  return answer(options, parsed.value.file, log, outcome)
}

function readJson(path: string): unknown {
  const text = readText(path)
  if (text === null) return undefined
  try {
    return JSON.parse(text) as unknown
  } catch {
    return undefined
  }
}

function answer(options: Options, kitchen: unknown, log: unknown, outcome: Outcome): number {
  if (outcome.kind === 'refused') return refuse(problemLines(options.log ?? options.file, outcome.problems))
  if (outcome.kind === 'no-order') {
    process.stdout.write(
      options.json ? `${JSON.stringify(writtenPlan(outcome.noPlan))}\n` : readableNoPlan(outcome.noPlan),
    )
    return 3
  }
  // Ways out are planned anew one by one: only where they are shown.
  const asksOne = options.why !== null || options.first !== null
  const plan = asksOne && !options.json ? outcome.plan : withWaysOut(outcome.plan, kitchen, log)
  const wrongId = unknownId(plan, [options.why, options.first])
  if (wrongId !== null) return refuse(`There is no operation "${wrongId}" in this plan.\n`)
  if (options.check) {
    const given = readWrittenPlan(
      options.plan === null ? JSON.parse(JSON.stringify(writtenPlan(plan))) : readJson(options.plan),
    )
    const report = checkPlan(kitchen, given, log)
    if (!report.ok) {
      const lines = report.refusals.map((r) => `  ${r.rule}: ${r.say}`)
      process.stderr.write(`The checker refuses this plan:\n${lines.join('\n')}\n`)
      return 4
    }
    if (!options.json) process.stdout.write('The checker accepts this plan.\n')
  }
  process.stdout.write(said(options, plan))
  return plan.findings.some((f) => f.weight === 'stop' || (f.weight === 'ask' && f.dangerous)) ? 1 : 0
}

function unknownId(plan: Plan, ids: readonly (string | null)[]): string | null {
  return ids.find((id) => id !== null && !plan.operations.some((o) => o.id === id)) ?? null
}

function said(options: Options, plan: Plan): string {
  if (options.json) return `${JSON.stringify(writtenPlan(plan))}\n`
  if (options.why !== null) return readableWhy(plan, options.why)
  if (options.first !== null) return readableWhyNotFirst(plan, options.first)
  return readablePlan(plan)
}

/** A fault of the program must not look like a plan with findings: it has an exit code of its own. */
function runOrOwnUp(words: readonly string[]): number {
  try {
    return run(words)
  } catch (error) {
    const trace = error instanceof Error ? (error.stack ?? error.message) : String(error)
    process.stderr.write(
      `The planner stopped: a fault of the program, not of your file. No plan was made.\n${trace}\n`,
    )
    return 70
  }
}

// Whoever reads may stop reading, as `head` does: that is no fault of ours to complain of.
process.stdout.on('error', () => process.exit())
process.exitCode = runOrOwnUp(process.argv.slice(2))
