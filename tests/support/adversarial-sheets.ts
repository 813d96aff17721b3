import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { hasValue } from '../../src/core/figure'
import type { KitchenFile } from '../../src/core/kitchen/schema'
import { type MessageValue, message } from '../../src/core/message'
import { finding } from '../../src/core/plan/finding'
import type { Finding, NoPlan, OrderConflict, Plan, Weight } from '../../src/core/plan/types'
import { RULES } from '../../src/core/rules/index'
import { WOVEN } from '../../src/core/trade/answers'
import { ROOT } from './root'

/**
 * Kitchens made to mislead, each with a sheet of answers worked by hand: what must be said, what must not, figures.
 * Written without sight of the code. What was mended in a sheet afterwards stands in it beside what stood there first.
 */

const FOLDER = join(ROOT, 'tests', 'adversarial', 'kitchens')

export interface SheetFigure {
  readonly what: string
  readonly worked: string
  /** Null: the plan must not know it. */
  readonly value: number | null
  readonly tolerance: number
  readonly where: string
  /** Where in the plan it is read, in the grammar of `valuesOf`; null: the plan does not print it. */
  readonly read: string | null
}

export interface SheetSaying {
  readonly mode: string
  readonly orModes?: readonly string[]
  readonly weight?: Weight
  /** Lighter weights that are right too. */
  readonly orWeights?: readonly Weight[]
  readonly about: readonly string[]
  readonly naming?: 'any' | 'all'
  /** Narrower than its mode: the one rule that is meant. */
  readonly rule?: string
  readonly why: string
}

export interface Sheet {
  readonly case: string
  readonly exit: number
  /** How it came out the first time it was asked, before anything was mended in the program or here: lines that could be read. */
  readonly first?: { readonly agreed: number; readonly of: number; readonly missed: readonly string[] }
  readonly figures: readonly SheetFigure[]
  readonly mustSay: readonly SheetSaying[]
  readonly mustNotSay: readonly SheetSaying[]
  /** Facts that no way out of a finding about this may change. */
  readonly mustNotOffer?: readonly { readonly about: string; readonly edit: string; readonly why: string }[]
}

export const KITCHENS: readonly string[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.dryrun.json'))
  .map((name) => name.replace('.dryrun.json', ''))
  .sort()

function read(name: string): unknown {
  return JSON.parse(readFileSync(join(FOLDER, name), 'utf8'))
}

export const kitchenOf = (name: string): KitchenFile => read(`${name}.dryrun.json`) as KitchenFile
export const sheetOf = (name: string): Sheet => read(`${name}.answers.json`) as Sheet

/** Rules that no table gives a failure mode, with those a sheet may mean by them. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  'wishes-refused': ['F91'],
  'hole-past-50': ['F30'],
  'hole-near-band': ['F30', 'F31', 'F32', 'F33'],
  'trace-first': ['F30', 'F33'],
  'region-not-chosen': ['F30'],
  'rail-spacing': ['F20', 'F21'],
  'rail-overhang': ['F21'],
  'height-demand-unknown': ['F11', 'F58', 'F50'],
  'height-marginal': ['F60'],
  'hardware-not-known': ['F58'],
  'lift-over-filter': ['F88'],
  'lift-not-known': ['F88'],
}

/** What a clash of heights is about, by the demands that make it. */
const DEMANDS: Readonly<Record<string, string>> = {
  'bay-in': 'F60',
  'bay-out': 'F15',
  'hook-on': 'F58',
  'plinth-cover': 'F13',
  'window-board': 'F95',
}

/** A clash is of the modes its demands name; of legs only, when nothing but the reach of legs is in it. */
function modesOfClash({ id }: Finding): readonly string[] {
  const demands = id
    .replace('heights-clash:', '')
    .split('+')
    .map((demand) => demand.split(':')[0] ?? '')
  return demands.every((d) => d === 'leg-reach') ? ['F11'] : demands.flatMap((d) => DEMANDS[d] ?? [])
}

/** What a hole that may not be drilled is of, by the band it lies in. */
const BANDS: Readonly<Record<string, readonly string[]>> = {
  'accessory-vertical': ['F30', 'F33'],
  'accessory-horizontal': ['F30', 'F33'],
  service: ['F30', 'F31'],
  corner: ['F32'],
  ceiling: ['F32'],
  lintel: ['F27'],
}

/** The modes of a refused hole; all of its rule's where it names no band. */
function modesOfHole({ rule, about }: Finding): readonly string[] {
  const bands = about.flatMap((id) => BANDS[id.split('.')[0] ?? ''] ?? [])
  return bands.length > 0 ? bands : modesOf(rule)
}

function modesOf(rule: string): readonly string[] {
  const own = RULES.find((r) => r.id === rule)?.catches ?? []
  return [...own, ...(WOVEN[rule] ?? []), ...(ALSO[rule] ?? [])]
}

/** Whether a finding is of the failure mode, or the rule, that a line of the sheet means. */
export function isOfMode(finding: Finding, { mode, orModes = [], rule }: SheetSaying): boolean {
  if (rule !== undefined) return finding.rule === rule
  const modes =
    finding.rule === 'heights-clash'
      ? modesOfClash(finding)
      : finding.rule === 'hole-refused'
        ? modesOfHole(finding)
        : modesOf(finding.rule)
  return modes.some((m) => m === mode || orModes.includes(m))
}

/** The smallest set of wishes that cannot all hold, as a sheet asks for it: a stop about those wishes and no others. */
export function wishesRefused({ wishes, reasons }: OrderConflict): Finding {
  const say = message('wishes-refused', { wishes: wishes.join(', '), reasons: reasons.join(', ') })
  const rule = 'wishes-refused'
  return finding({ rule, subjects: wishes, weight: 'stop', say, basis: { kind: 'wish' } })
}

/** Everything a finding names: what it is about, the wall it is shown on, the things its id is made of. */
export function namedBy(finding: Finding): ReadonlySet<string> {
  return new Set([...finding.about, finding.where?.wall ?? '', ...finding.id.split(/[:+.]/)])
}

/**
 * The values of a line of the sheet. A path goes through the plan by names, things of a list by their id:
 * `units[wall-1].hookOn.there`; `mid(a, b)` and `count(list)` are worked; terms are added and taken off. `found(F33,
 * wall-1)` is every figure that a finding of that mode about that thing says, or that with a number added. None: the plan
 * does not know it.
 */
export function valuesOf(
  what: string,
  plan: Plan | NoPlan | null,
  findings: readonly Finding[],
): readonly number[] {
  const found = /^found\((F\d+), ([\w-]+)\)(?: ([+-]) ([\d.]+))?$/.exec(what)
  if (found !== null) {
    const [, mode = '', about = '', sign = '+', more = '0'] = found
    return saidAbout(mode, about, findings).map((v) => v + Number(`${sign}${more}`))
  }
  if (plan === null) return []
  const terms = what.split(/ (?=[+-] )/)
  const values = terms.map((term) => termValue(plan, term))
  return values.some((v) => v === null) ? [] : [values.reduce<number>((sum, v) => sum + (v as number), 0)]
}

/** What the plan holds at a path, as it is. */
export function heldAt(what: string, plan: Plan | NoPlan | null): unknown {
  return plan === null ? undefined : thingAt(plan, what)
}

function termValue(plan: Plan | NoPlan, term: string): number | null {
  const sign = term.startsWith('- ') ? -1 : 1
  const bare = term.replace(/^[+-] /, '')
  const value = Number.isFinite(Number(bare)) ? Number(bare) : worked(plan, bare)
  return value === null ? null : sign * value
}

function worked(plan: Plan | NoPlan, text: string): number | null {
  const mid = /^mid\((.+), (.+)\)$/.exec(text)
  if (mid !== null) {
    const [a, b] = [worked(plan, mid[1] ?? ''), worked(plan, mid[2] ?? '')]
    return a === null || b === null ? null : (a + b) / 2
  }
  const count = /^count\((.+)\)$/.exec(text)
  const at = thingAt(plan, count?.[1] ?? text)
  return count === null ? numberOf(at) : Array.isArray(at) ? at.length : null
}

const NAMES = ['id', 'unit', 'wall', 'of', 'rail', 'foot', 'part']

function thingAt(plan: Plan | NoPlan, path: string): unknown {
  const steps = path.match(/[^.[\]]+(?=[.[]|$)|\[[^\]]+\]/g) ?? []
  return steps.reduce<unknown>((thing, step) => {
    if (thing === null || typeof thing !== 'object') return undefined
    if (!step.startsWith('[')) return (thing as Readonly<Record<string, unknown>>)[step]
    const name = step.slice(1, -1)
    const list = thing as readonly Readonly<Record<string, unknown>>[]
    return /^\d+$/.test(name)
      ? list[Number(name)]
      : list.find((one) => NAMES.some((key) => one[key] === name))
  }, plan)
}

function numberOf(thing: unknown): number | null {
  if (typeof thing === 'number') return thing
  const figure = thing as { readonly state?: string; readonly value?: number } | null | undefined
  return typeof figure?.value === 'number' ? figure.value : null
}

function saidAbout(mode: string, about: string, findings: readonly Finding[]): readonly number[] {
  const its = findings.filter((f) => isOfMode(f, { mode, about: [], why: '' }) && namedBy(f).has(about))
  return its.flatMap((f) => [
    ...f.figures.flatMap((figure) => (hasValue(figure) ? [figure.value] : [])),
    ...Object.values(f.say.values).flatMap(numbersIn),
  ])
}

function numbersIn(value: MessageValue): readonly number[] {
  const number = typeof value === 'string' ? null : numberOf(value)
  return number === null ? [] : [number]
}
